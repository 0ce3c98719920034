using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.History;

/// <summary>Keeps in mind what the readings of one board say while it is judged several times, as it was and as it is: most of them were
/// entered once and never touched again.</summary>
/// <remarks>
/// Used by one thread at a time. It is told when another board begins, and answers only where everything is the same that a verdict
/// depends on, the line of the reading too.
/// </remarks>
public sealed class VerdictMemo
{
    private readonly AccuracyComparer instruments = new();

    // By where it is written: a record may have a hundred thousand readings, and each is looked up once.
    private readonly Dictionary<Spot, (ReadingAsked Asked, ImmutableArray<Verdict> Verdicts)> known = [];

    /// <summary>How often two readings were held against each other: once for each that is asked again, however many there are.</summary>
    internal int Compared { get; private set; }

    /// <summary>Forgets the board before.</summary>
    public void Begin() => known.Clear();

    /// <summary>The verdicts on a reading, if the same was asked before.</summary>
    internal bool TryFind(in ReadingAsked asked, out ImmutableArray<Verdict> verdicts)
    {
        var isKnown = known.TryGetValue(asked.Reading.Spot, out var before) && IsSame(asked, before.Asked);
        verdicts = isKnown ? before.Verdicts : default;
        return isKnown;
    }

    /// <summary>Keeps the verdicts on a reading, in the place of what was kept of the same line before.</summary>
    internal void Add(in ReadingAsked asked, ImmutableArray<Verdict> verdicts) => known[asked.Reading.Spot] = (asked, verdicts);

    // What tells most readings apart comes first.
    private bool IsSame(in ReadingAsked one, in ReadingAsked other)
    {
        Compared++;
        return ReadsTheSame(one.Reading, other.Reading)
            && one.How.IsSameAs(other.How)
            && one.Circuit == other.Circuit
            && one.Place == other.Place
            && one.Lapsed == other.Lapsed
            && one.Rule == other.Rule
            && instruments.AreEqual(one.Instrument, other.Instrument)
            && MarkingComparer.Instance.Equals(one.Values, other.Values);
    }

    private static bool ReadsTheSame(Reading one, Reading other)
    {
        if (ReferenceEquals(one, other))
        {
            return true;
        }

        if (one.Values.Length != other.Values.Length || one.Range != other.Range || one.Frequency != other.Frequency)
        {
            return false;
        }

        for (var at = 0; at < one.Values.Length; at++)
        {
            if (one.Values[at] != other.Values[at])
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>All that the verdicts on a reading of a part depend on.</summary>
/// <param name="Reading">The reading: what the meter showed, the range, and where it is written.</param>
/// <param name="How">How it was taken.</param>
/// <param name="Circuit">Whether the part was in the circuit; null where that is not known.</param>
/// <param name="Instrument">The instrument; null where that is not known.</param>
/// <param name="Lapsed">The end of its calibration, where that was long gone; else null.</param>
/// <param name="Values">What the part is.</param>
/// <param name="Place">Where a circuit limit comes from; null for a part that sits in no place.</param>
/// <param name="Rule">How a reading near its limit is judged.</param>
internal readonly record struct ReadingAsked(
    Reading Reading,
    ReadingConditions How,
    Circuit? Circuit,
    Instrument? Instrument,
    DateOnly? Lapsed,
    PartValues Values,
    string? Place,
    DecisionRule Rule
);
