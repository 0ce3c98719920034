using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Addresses;

/// <summary>
/// The lasting addresses of the readings of a page. One is made of what was read, on which day, which quantity, and in which state and way;
/// a number is added only among readings that are alike in all of that. So an address does not change when other readings are entered
/// before or after it. A page has some hundred of them, so that each is a few letters: <c>r-C12-260314-esr-ao</c>, read of C12 on that day
/// again, out of circuit.
/// </summary>
internal sealed class ReadingAnchors
{
    private readonly Dictionary<Verdict, ElementId> byVerdict;
    private readonly Dictionary<Reading, ElementId> byReading = new(ReferenceEqualityComparer.Instance);

    /// <summary>Gives every value of the readings its address.</summary>
    public ReadingAnchors(ImmutableArray<AssessedReading> readings)
    {
        byVerdict = new(readings.Length, ReferenceEqualityComparer.Instance);

        // By the name of each address that was given: the number at which to look for the next of its twins.
        var taken = new Dictionary<string, int>(readings.Length, StringComparer.Ordinal);
        BenchVisit? visit = null;
        var day = string.Empty;
        foreach (var assessed in readings)
        {
            if (!ReferenceEquals(assessed.Visit, visit))
            {
                visit = assessed.Visit;
                day = visit.Date.Value.ToString("yyMMdd", CultureInfo.InvariantCulture);
            }

            var (start, end) = (Start(assessed.Reading, day), End(assessed.Reading));
            foreach (var verdict in assessed.Verdicts)
            {
                byVerdict.TryAdd(verdict, Unused(taken, start + Letters(verdict.Measured) + end));
            }

            if (assessed.Verdicts.Length == 0)
            {
                byReading.TryAdd(
                    assessed.Reading,
                    Unused(
                        taken,
                        start + (assessed.Reading.Values.Length > 0 ? Letters(assessed.Reading.Values[0].Measured) : "test") + end
                    )
                );
            }
        }
    }

    /// <summary>The address of a value, or null when it is none of these readings.</summary>
    public ElementId? Find(Verdict verdict) => byVerdict.GetValueOrDefault(verdict);

    /// <summary>The address of a reading that has no verdict, or null.</summary>
    public ElementId? Find(Reading reading) => byReading.GetValueOrDefault(reading);

    private static ElementId Unused(Dictionary<string, int> taken, string name)
    {
        var unused = name;
        var twin = taken.GetValueOrDefault(name, 2);
        while (!taken.TryAdd(unused, 2))
        {
            unused = string.Create(CultureInfo.InvariantCulture, $"{name}-{twin}");
            twin++;
        }

        if (!ReferenceEquals(unused, name))
        {
            taken[name] = twin;
        }

        return ElementId.For(IdPrefix.Reading, unused);
    }

    private static string Start(Reading reading, string day)
    {
        var of = (reading.Part ?? reading.Point ?? reading.Lot)?.Value ?? "board";
        return reading is { Part: not null, Lot.Value: { } from } ? $"{of}-{from}-{day}-" : $"{of}-{day}-";
    }

    private static string End(Reading reading)
    {
        var state = reading.State is { Value: var when } ? Letter(when) : string.Empty;
        var way = reading.Circuit is { Value: var circuit } ? Letter(circuit) : string.Empty;
        return state.Length + way.Length == 0 ? string.Empty : $"-{state}{way}";
    }

    private static string Letters(Measured measured) =>
        measured switch
        {
            Measured.Capacitance => "c",
            Measured.Esr => "esr",
            Measured.LossFactor => "tan",
            Measured.Leakage => "il",
            Measured.Insulation => "ir",
            Measured.VoltageLoss => "vl",
            Measured.Resistance => "r",
            Measured.Inductance => "l",
            Measured.Voltage => "v",
            Measured.Ripple => "vr",
            Measured.Current => "i",
            Measured.ForwardVoltage => "vf",
            Measured.Gain => "hfe",
            Measured.Frequency => "f",
            Measured.Temperature => "t",
            Measured.Hours => "h",
        };

    private static string Letter(Circuit circuit) =>
        circuit switch
        {
            Circuit.In => "i",
            Circuit.Out => "o",
        };

    private static string Letter(ReadingState state) =>
        state switch
        {
            ReadingState.AsFound => string.Empty,
            ReadingState.AsLeft => "l",
            ReadingState.New => "n",
            ReadingState.Again => "a",
        };
}
