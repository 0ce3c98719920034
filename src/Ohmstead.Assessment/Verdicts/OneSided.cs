using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>
/// Holds a reading that is no figure against its limits: a bound, or a word of the meter. It says inside or outside only where every value
/// that it allows says so; else it is undecided, and says what would decide.
/// </summary>
/// <remarks>The uncertainty of the meter holds at its bound: above 20 MΩ as read may be a little below it in truth, by the guard band of
/// the rule.</remarks>
internal static class OneSided
{
    private static readonly LazyText NoRange =
        "it lies above the meter's range, which is not written: write the end of the range, as in \"> 20 MΩ\", or up_to with the "
        + "instrument";
    private static readonly LazyText NotDecided = "that side of the figure holds values inside and outside";
    private static readonly LazyText InCircuitShort =
        "in circuit another path beside it may be the short; so it proves nothing, lift one leg";
    private static readonly LazyText UnsaidCircuit =
        "whether it was in the circuit is not written, and there another path beside it may be the short: lift one leg, and write "
        + "circuit: out";

    private const decimal Sliver = 0.000001m;

    /// <summary>The verdict.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="reading">What the meter showed; no figure.</param>
    /// <param name="limits">The limits that apply, the one that governs first.</param>
    /// <param name="circuit">Whether the part was in the circuit; null where the record does not say.</param>
    /// <param name="meter">What is known of the meter.</param>
    /// <param name="rule">How a reading near its limit is judged.</param>
    /// <param name="part">What was measured, or null at a test point.</param>
    internal static Verdict Decide(
        Measured measured,
        Written<Indication> reading,
        ImmutableArray<Limit> limits,
        Circuit? circuit,
        MeterReach meter,
        DecisionRule rule,
        IMarkedPart? part
    )
    {
        var claim = ClaimOf(measured, reading.Value, meter, part);
        if (claim.Certain is not { } certain)
        {
            return limits.Length == 0
                ? Judge.WithoutLimit(measured, reading)
                : Decide(measured, reading, limits, circuit, meter, rule, claim);
        }

        // Nothing passes, though other paths lie beside it: open is open. A short may be any of them.
        return (circuit, reading.Value.Kind, certain) switch
        {
            (Circuit.In, IndicationKind.Short, VerdictOutcome.Outside) => Said(
                measured,
                reading,
                limits,
                VerdictOutcome.ProvesNothing,
                InCircuitShort
            ),
            (null, IndicationKind.Short, VerdictOutcome.Outside) when part is not null => Said(
                measured,
                reading,
                limits,
                VerdictOutcome.Undecided,
                UnsaidCircuit
            ),
            _ => Said(measured, reading, limits, certain, claim.Why),
        };
    }

    private static Verdict Decide(
        Measured measured,
        Written<Indication> reading,
        ImmutableArray<Limit> limits,
        Circuit? circuit,
        MeterReach meter,
        DecisionRule rule,
        Claim claim
    )
    {
        // Above a figure lie all values further up: what holds for the highest of them holds.
        var limit = claim.IsHigh && limits[0].Higher is { } higher ? higher.Limit : limits[0];
        var expanded = claim.IsAtMeter ? meter.Uncertainty?.Expanded.Value ?? 0m : 0m;
        var (side, proof) = Look(claim, limit.ProvedInside, limit.MayBeInside, expanded, rule, measured);
        var (outcome, reason) = side switch
        {
            Side.Inside => (VerdictOutcome.Inside, (LazyText?)null),
            Side.Above or Side.Below => limit.DoubtsOutside is { } doubt
                ? (VerdictOutcome.Undecided, doubt)
                : (VerdictOutcome.Outside, null),
            _ => (VerdictOutcome.Undecided, claim.Why ?? NotDecided),
        };
        if (
            claim is { IsAtMeter: true, Figure: { } figure }
            && meter.Doubt is { } unsure
            && rule.GuardShare > 0m
            && side != Side.Open
            && (side == Side.Inside || !unsure.LetsStand(figure, limit.MayBeInside, meter.Uncertainty))
        )
        {
            (outcome, reason) = (VerdictOutcome.Undecided, unsure.Why);
        }

        if (side != Side.Open && new Quantity(proof, reading.Value.Dimension) is var value)
        {
            if (Judge.CannotProve(limit, value) is { } cannot)
            {
                (outcome, reason) = (VerdictOutcome.ProvesNothing, cannot);
            }
            else if (InCircuitReading.Takes(measured, limit, value, circuit) is { } taken)
            {
                (outcome, reason) = taken;
            }
        }

        var isGuarded = expanded > 0m;
        return Said(measured, reading, limits, outcome, reason) with
        {
            Others = Others(limits, claim, expanded, rule, measured),
            Uncertainty = isGuarded ? meter.Uncertainty!.Expanded : null,
            Rule = isGuarded ? rule : null,
            Remarks = isGuarded ? [meter.Uncertainty!.Arithmetic, .. limit.Remarks] : limit.Remarks,
        };
    }

    private static Verdict Said(
        Measured measured,
        Written<Indication> reading,
        ImmutableArray<Limit> limits,
        VerdictOutcome outcome,
        LazyText? reason
    )
    {
        var limit = limits.Length == 0 ? null : limits[0];
        return new(outcome, measured, reading, new Sentence(measured, reading, limit, outcome, reason)) { Reason = reason, Limit = limit };
    }

    // Others that the reading does not decide are left out: it says neither by them.
    private static ImmutableArray<(Limit Limit, bool Inside)> Others(
        ImmutableArray<Limit> limits,
        Claim claim,
        decimal expanded,
        DecisionRule rule,
        Measured measured
    ) =>
        [
            .. limits
                .Skip(1)
                .Select(other => (Limit: other, Look(claim, other.ProvedInside, other.MayBeInside, expanded, rule, measured).Side))
                .Where(pair => pair.Side != Side.Open)
                .Select(pair => (pair.Limit, pair.Side == Side.Inside)),
        ];

    // The side that is proved, and a value of that side for rules that look at values.
    private static (Side Side, decimal Proof) Look(
        Claim claim,
        Interval proves,
        Interval mayBe,
        decimal expanded,
        DecisionRule rule,
        Measured measured
    )
    {
        if (claim.Figure is not { } figure)
        {
            return (Side.Open, 0m);
        }

        // What no part can have less of has no lower limit at zero.
        decimal? Lower(Interval interval) =>
            interval.Lower is { } low && !(low.Value <= 0m && IsNeverNegative(measured)) ? low.Value : null;
        var (rejecting, accepting) = (Math.Abs(rule.GuardShare) * expanded, Math.Max(0m, rule.GuardShare) * expanded);
        if (claim.IsHigh)
        {
            return mayBe.Upper?.Value is { } most && (claim.IsStrict ? figure - rejecting >= most : figure - rejecting > most)
                    ? (Side.Above, Math.Max(figure, Beyond(most, 1)))
                : proves.Upper is null && Lower(proves) is { } least && figure - accepting >= least ? (Side.Inside, Math.Max(figure, least))
                : (Side.Open, 0m);
        }

        return Lower(mayBe) is { } bottom && (claim.IsStrict ? figure + rejecting <= bottom : figure + rejecting < bottom)
                ? (Side.Below, Math.Min(figure, Beyond(bottom, -1)))
            : Lower(proves) is null && proves.Upper?.Value is { } top && figure + accepting <= top ? (Side.Inside, Math.Min(figure, top))
            : (Side.Open, 0m);
    }

    // Hardly further than a limit: the value that speaks least against the part of all that the bound allows.
    private static decimal Beyond(decimal limit, int side) => limit + (side * (limit == 0m ? Sliver : Math.Abs(limit) * Sliver));

    private static Claim ClaimOf(Measured measured, Indication reading, MeterReach meter, IMarkedPart? part)
    {
        switch (reading.Kind)
        {
            case IndicationKind.Above or IndicationKind.AtLeast:
                return new(IsHigh: true, reading.Kind == IndicationKind.Above, reading.Bound!.Value.Value, null) { IsAtMeter = true };
            case IndicationKind.Below or IndicationKind.AtMost:
                return new(IsHigh: false, reading.Kind == IndicationKind.Below, reading.Bound!.Value.Value, null) { IsAtMeter = true };
            case IndicationKind.OverRange:
                return new(IsHigh: true, IsStrict: true, meter.Reach?.Value, meter.Reach is null ? NoRange : null) { IsAtMeter = true };
        }

        var word = OpenOrShort.Explain(reading.Kind, measured, part);
        return word.Meaning switch
        {
            WordMeaning.Failed => new(false, false, null, word.Why) { Certain = VerdictOutcome.Outside },
            WordMeaning.Doubtful => new(false, false, null, word.Why) { Certain = VerdictOutcome.Undecided },
            WordMeaning.Silent => new(false, false, null, word.Why) { Certain = VerdictOutcome.ProvesNothing },
            WordMeaning.High => new(IsHigh: true, IsStrict: false, meter.Reach?.Value ?? word.Figure, word.Why)
            {
                IsAtMeter = meter.Reach is not null,
            },
            _ => new(IsHigh: false, IsStrict: false, word.Figure, word.Why),
        };
    }

    /// <summary>Whether there is no less of it than nothing: a reading below that is a slip of the sign.</summary>
    internal static bool IsNeverNegative(Measured measured) =>
        measured is not (Measured.Voltage or Measured.ForwardVoltage or Measured.Current or Measured.Temperature or Measured.VoltageLoss);

    private enum Side
    {
        Open,
        Inside,
        Above,
        Below,
    }

    /// <summary>What a reading says of the value: that it lies above or below a figure, or what is certain whatever the limits.</summary>
    private readonly record struct Claim(bool IsHigh, bool IsStrict, decimal? Figure, LazyText? Why)
    {
        public VerdictOutcome? Certain { get; init; }

        // Whether the figure is one that the meter showed, or the end of its range: then the meter's uncertainty is that of the figure.
        public bool IsAtMeter { get; init; }
    }

    private sealed class Sentence(Measured measured, Written<Indication> reading, Limit? limit, VerdictOutcome outcome, LazyText? reason)
        : LazyText
    {
        protected override string Write() =>
            $"{VerdictWords.Describe(measured)} {reading.Text}"
            + (limit is null ? string.Empty : $" against {limit.InWords} ({VerdictWords.Describe(limit.Kind)}, {limit.Origin})")
            + $": {VerdictWords.Describe(outcome)}"
            + (reason is null ? string.Empty : $", {reason}");
    }
}

/// <summary>What is known of a meter beside what it showed.</summary>
/// <param name="Uncertainty">The uncertainty at the figure that it showed, or at the end of its range; null when the instrument is not
/// known or says nothing about the quantity.</param>
/// <param name="Reach">The end of its range for the quantity, or null when that is not written.</param>
/// <param name="Doubt">Why the instrument does not vouch for what it showed, or null.</param>
public readonly record struct MeterReach(ReadingUncertainty? Uncertainty, Quantity? Reach, MeterDoubt? Doubt)
{
    /// <summary>What an instrument says about an indication.</summary>
    /// <param name="instrument">The instrument, or null when it is not known.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="shown">What it showed.</param>
    /// <param name="lapsed">The end of its calibration, where that is long gone; else null.</param>
    /// <param name="range">The range that it was on, or null where that is not known.</param>
    public static MeterReach For(Instrument? instrument, Measured measured, Indication shown, DateOnly? lapsed, Quantity? range = null)
    {
        if (instrument is null)
        {
            return default;
        }

        if ((shown.Exact ?? shown.Bound) is { } figure)
        {
            return new(
                ReadingUncertainty.Compute(instrument, measured, figure, range),
                null,
                MeterDoubt.Find(instrument, measured, figure, lapsed)
            );
        }

        return ReadingUncertainty.EndOfRange(instrument, measured) is { } end
            ? new(ReadingUncertainty.Compute(instrument, measured, end), end, MeterDoubt.Find(instrument, measured, end, lapsed))
            : default;
    }
}
