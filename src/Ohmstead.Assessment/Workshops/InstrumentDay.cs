using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>How often an instrument was used on one day.</summary>
/// <param name="Instrument">Its name, as the record gives it.</param>
/// <param name="Day">The day.</param>
/// <param name="Readings">How many readings and proofs were taken with it.</param>
public readonly record struct InstrumentDay(string Instrument, DateOnly Day, int Readings)
{
    /// <summary>The instruments of visits, in order of the visits and then as they first occur.</summary>
    public static IReadOnlyList<InstrumentDay> Collect(ImmutableArray<BenchVisit> visits)
    {
        var days = new List<InstrumentDay>();
        foreach (var visit in visits)
        {
            var first = days.Count;
            foreach (var reading in visit.Readings)
            {
                Count(days, first, visit, reading.Instrument);
            }

            foreach (var proof in visit.Proofs)
            {
                Count(days, first, visit, proof.Instrument);
            }
        }

        return [.. days];
    }

    private static void Count(List<InstrumentDay> days, int first, BenchVisit visit, Written<string>? own)
    {
        if ((own ?? visit.Instrument) is not { } instrument)
        {
            return;
        }

        for (var at = first; at < days.Count; at++)
        {
            if (days[at].Instrument == instrument.Value)
            {
                days[at] = days[at] with { Readings = days[at].Readings + 1 };
                return;
            }
        }

        days.Add(new(instrument.Value, visit.Date.Value, 1));
    }
}
