using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Holds what was read against the limits that govern it.</summary>
/// <remarks>It keeps what is the same for many readings in mind, so an instance is used by one thread at a time; each worker has its
/// own.</remarks>
/// <param name="workshop">What readings refer to.</param>
/// <param name="memo">What is known already.</param>
public sealed class ReadingJudge(Workshop workshop, JudgeMemo memo)
{
    // Most readings of a visit are taken in one and the same way.
    private ReadingConditions? lastHow;

    // And with one instrument, whose calibration is looked up once for all of them.
    private (Instrument? Instrument, DateOnly Day, DateOnly? Since) lastLapse;

    // A lot is measured once when it comes, and its parts go to many boards.
    private readonly Dictionary<Reading, AssessedReading> incoming = new(ReferenceEqualityComparer.Instance);

    private readonly FittedValues fitted = new();

    /// <summary>Judges readings of a workshop that refer to it.</summary>
    /// <param name="workshop">What readings refer to.</param>
    public ReadingJudge(Workshop workshop)
        : this(workshop, new()) { }

    /// <summary>What a part is that sits in a place: its own marks, and what the circuit needs there.</summary>
    internal PartValues InPlace(PartValues part, PartValues? place) => fitted.Combine(part, place);

    /// <summary>The verdicts on a reading of a lot that lies in the drawer.</summary>
    public AssessedReading AssessIncoming(BenchVisit visit, Reading reading)
    {
        if (!incoming.TryGetValue(reading, out var assessed))
        {
            incoming[reading] = assessed = Incoming(visit, reading);
        }

        return assessed;
    }

    private AssessedReading Incoming(BenchVisit visit, Reading reading)
    {
        var lot = reading.Lot is { } name ? workshop.Lots.GetValueOrDefault(name.Value) : null;
        return new(visit, -1, reading, null, lot, lot is null ? [] : Verdicts(visit, reading, lot.Values, null, isNew: true));
    }

    /// <summary>The verdicts on a reading of a part.</summary>
    /// <param name="visit">The visit to the bench.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="values">What the part is.</param>
    /// <param name="place">Where a circuit limit comes from, or null for a part that sits in no place.</param>
    /// <param name="isNew">True for a part that has not been fitted yet.</param>
    internal ImmutableArray<Verdict> Verdicts(BenchVisit visit, Reading reading, PartValues values, string? place, bool isNew)
    {
        var how = lastHow = ReadingConditions.From(
            isNew,
            reading,
            reading.Temperature ?? visit.RoomTemperature,
            IsJunction(values) ? reading.Values.FirstOrDefault(value => value.Measured == Measured.Current)?.Exact : null,
            lastHow
        );
        var instrument = InstrumentOf(visit, reading.Instrument);

        // What has not been fitted yet lies on the bench where nothing else is written.
        var circuit = reading.Circuit?.Value ?? (isNew ? Circuit.Out : null);
        var lapsed = instrument is null ? null : LapsedOn(instrument, visit.Date.Value);
        return Known(new(reading, how, circuit, instrument, lapsed, values, place, RuleFor(values)));
    }

    private ImmutableArray<Verdict> Known(in ReadingAsked asked)
    {
        if (memo.Verdicts is not { } before)
        {
            return Decided(asked);
        }

        if (!before.TryFind(asked, out var verdicts))
        {
            before.Add(asked, verdicts = Decided(asked));
        }

        return verdicts;
    }

    private ImmutableArray<Verdict> Decided(in ReadingAsked asked)
    {
        var (reading, values) = (asked.Reading, asked.Values);
        var read = ValuesOf(reading, values);
        var verdicts = ImmutableArray.CreateBuilder<Verdict>(read.Length);
        for (var at = 0; at < read.Length; at++)
        {
            var value = read[at];
            var meter = MeterReach.For(
                asked.Instrument,
                value.Measured,
                value.Value.Value,
                asked.Lapsed,
                RangeOf(reading.Values, value, reading.Range)
            );
            var limits = memo.Limits.For(values, asked.Place, value.Measured, asked.How);
            var verdict = Judge.Decide(value, limits, asked.Circuit, meter, asked.Rule, values);
            verdicts.Add(
                verdict.Outcome == VerdictOutcome.NoLimit && UsualWords.For(values) is { } usual
                    ? verdict with
                    {
                        Remarks = [.. verdict.Remarks, usual],
                    }
                    : verdict
            );
        }

        return verdicts.MoveToImmutable();
    }

    // A part that people rely on not to be hurt is not kept on a doubt, however rare it is.
    private DecisionRule RuleFor(PartValues values) =>
        workshop.Rule.GuardShare < 0m && PartKind.IsSafetyRelevant(values) ? DecisionRule.Guarded : workshop.Rule;

    // The frequency of a crystal is what was measured; of any other part it is how it was measured.
    private static ImmutableArray<ReadValue> ValuesOf(Reading reading, PartValues values) =>
        reading.Frequency is { } frequency && values.Kind.Value.Family == PartFamily.Crystal
            ? [.. reading.Values, ReadValue.From(Measured.Frequency, frequency)]
        : reading.Values.Length > 1 && IsJunction(values) ? [.. reading.Values.Where(value => value.Measured != Measured.Current)]
        : reading.Values;

    // The current through a junction is how its voltage was measured.
    private static bool IsJunction(PartValues values) => values.Kind.Value.Junction is Junction.Rectifying or Junction.Breakdown;

    // The range is that of what was read first.
    private static Quantity? RangeOf(ImmutableArray<ReadValue> values, ReadValue value, Written<Quantity>? range) =>
        range is not null && values.Length > 0 && values[0].Measured == value.Measured ? range.Value : null;

    private MeterReach MeterOf(Instrument? instrument, ReadValue value, BenchVisit visit, Quantity? range) =>
        instrument is null
            ? default
            : MeterReach.For(instrument, value.Measured, value.Value.Value, LapsedOn(instrument, visit.Date.Value), range);

    private DateOnly? LapsedOn(Instrument instrument, DateOnly day)
    {
        if (!ReferenceEquals(lastLapse.Instrument, instrument) || lastLapse.Day != day)
        {
            lastLapse = (instrument, day, MeterDoubt.LongLapsed(instrument, day));
        }

        return lastLapse.Since;
    }

    /// <summary>The verdicts on values that were read or proved at a test point.</summary>
    /// <param name="visit">The visit to the bench.</param>
    /// <param name="values">The values.</param>
    /// <param name="point">The point, or null when it is not known.</param>
    /// <param name="own">The instrument that the entry names, or null.</param>
    /// <param name="range">The range that the meter was on, for the first of the values.</param>
    internal ImmutableArray<Verdict> AtPoint(
        BenchVisit visit,
        ImmutableArray<ReadValue> values,
        TestPoint? point,
        Written<string>? own,
        Written<Quantity>? range
    )
    {
        var instrument = InstrumentOf(visit, own);
        return PointJudge.Decide(values, point, value => MeterOf(instrument, value, visit, RangeOf(values, value, range)), workshop.Rule);
    }

    private Instrument? InstrumentOf(BenchVisit visit, Written<string>? own) =>
        (own ?? visit.Instrument) is { } name ? workshop.Instruments.GetValueOrDefault(name.Value) : null;
}
