using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>Holds a reading against its limits.</summary>
public static class Judge
{
    private static readonly LazyText LessThanNothing = "there is no less of it than nothing: look at the sign, and measure again";
    private static readonly LazyText EsrOfZero = "an ESR of zero is what a shorted part shows too, and no sound one: check it with d.c.";

    /// <summary>The verdict on one value.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="reading">The value.</param>
    /// <param name="limits">The limits that apply, the one that governs first.</param>
    /// <param name="circuit">Whether the part was in the circuit; null where the record does not say.</param>
    /// <param name="uncertainty">The uncertainty of the reading, when known.</param>
    /// <param name="rule">How a reading near its limit is judged.</param>
    /// <param name="meter">Why the instrument does not vouch for the reading, or null.</param>
    public static Verdict Decide(
        Measured measured,
        Written<Quantity> reading,
        ImmutableArray<Limit> limits,
        Circuit? circuit,
        ReadingUncertainty? uncertainty,
        DecisionRule rule,
        MeterDoubt? meter = null
    ) => Decide(ReadValue.From(measured, reading), limits, circuit, new(uncertainty, null, meter), rule, null);

    /// <summary>The verdict on what a meter showed: a figure, a bound or a word.</summary>
    /// <param name="read">What was measured, and what the meter showed.</param>
    /// <param name="limits">The limits that apply, the one that governs first.</param>
    /// <param name="circuit">Whether the part was in the circuit; null where the record does not say.</param>
    /// <param name="meter">What is known of the meter.</param>
    /// <param name="rule">How a reading near its limit is judged.</param>
    /// <param name="part">The part, or null at a test point.</param>
    public static Verdict Decide(
        ReadValue read,
        ImmutableArray<Limit> limits,
        Circuit? circuit,
        MeterReach meter,
        DecisionRule rule,
        IMarkedPart? part
    ) =>
        read.Exact is { } value
            ? Decide(read.Measured, read.Value, value, limits, circuit, meter.Uncertainty, rule, meter.Doubt)
            : OneSided.Decide(read.Measured, read.Value, limits, circuit, meter, rule, part);

    /// <summary>The verdict where nothing is known to hold a reading against.</summary>
    internal static Verdict WithoutLimit(Measured measured, Written<Indication> reading) =>
        new(VerdictOutcome.NoLimit, measured, reading, new NoLimit(measured, reading));

    private static Verdict Decide(
        Measured measured,
        Written<Indication> reading,
        Quantity value,
        ImmutableArray<Limit> limits,
        Circuit? circuit,
        ReadingUncertainty? uncertainty,
        DecisionRule rule,
        MeterDoubt? meter
    )
    {
        if (limits.Length == 0)
        {
            return WithoutLimit(measured, reading) with { Uncertainty = uncertainty?.Expanded };
        }

        var limit = limits[0].Higher is { } higher && value.Value >= higher.From.Value ? higher.Limit : limits[0];
        var (outcome, reason, decided) = Look(limit, value, uncertainty, rule);
        (outcome, reason) = Doubted(measured, limit, value, outcome, reason, uncertainty, rule, meter);
        if (CannotProve(limit, value) is { } cannot)
        {
            (outcome, reason) = (VerdictOutcome.ProvesNothing, cannot);
        }
        else if (InCircuitReading.Takes(measured, limit, value, circuit) is { } taken)
        {
            (outcome, reason) = taken;
        }

        return new Verdict(outcome, measured, reading, new Sentence(measured, reading, limit, outcome, reason))
        {
            Reason = reason,
            Limit = limit,
            Others = limits.Length == 1 ? [] : Others(limits, value),
            Uncertainty = uncertainty?.Expanded,
            Rule = decided is null ? null : rule,
            Remarks = Remarks(limit, uncertainty, rule.GuardShare > 0m ? null : meter),
        };
    }

    // What the value says by itself and with its uncertainty: inside and outside are held against what proves each, which is the limit
    // where nothing is taken from it.
    private static (VerdictOutcome Outcome, LazyText? Reason, ConformityDecision? Decided) Look(
        Limit limit,
        Quantity value,
        ReadingUncertainty? uncertainty,
        DecisionRule rule
    )
    {
        var (held, isInside) = limit.HeldAgainst(value);
        if (!isInside && held.Contains(value))
        {
            return (VerdictOutcome.Undecided, limit.WhyBetween(value.Value), null);
        }

        var outcome = isInside ? VerdictOutcome.Inside : VerdictOutcome.Outside;
        if (
            uncertainty is null
            || !ConformityDecision
                .Decide(value.Value, uncertainty.Expanded.Value, held.Lower?.Value, held.Upper?.Value, rule)
                .Is(out var decision, out _)
        )
        {
            return (outcome, null, null);
        }

        return Doubt(decision, rule, uncertainty.Expanded) is { } doubt
            ? (VerdictOutcome.Undecided, doubt, decision)
            : (outcome, null, decision);
    }

    // What takes the certainty from a verdict without making it worthless.
    private static (VerdictOutcome Outcome, LazyText? Reason) Doubted(
        Measured measured,
        Limit limit,
        Quantity value,
        VerdictOutcome outcome,
        LazyText? reason,
        ReadingUncertainty? uncertainty,
        DecisionRule rule,
        MeterDoubt? meter
    ) =>
        outcome switch
        {
            VerdictOutcome.Inside when value.Value < 0m && OneSided.IsNeverNegative(measured) => (
                VerdictOutcome.Undecided,
                LessThanNothing
            ),
            VerdictOutcome.Outside when limit.DoubtsOutside is { } doubt => (VerdictOutcome.Undecided, doubt),
            VerdictOutcome.Outside
                when meter is not null && rule.GuardShare > 0m && !meter.LetsStand(value.Value, limit.MayBeInside, uncertainty) => (
                VerdictOutcome.Undecided,
                meter.Why
            ),
            VerdictOutcome.Inside when meter is not null && rule.GuardShare > 0m => (VerdictOutcome.Undecided, meter.Why),
            VerdictOutcome.Inside when measured == Measured.Esr && value.Value <= 0m => (VerdictOutcome.Undecided, EsrOfZero),
            _ => (outcome, reason),
        };

    private static ImmutableArray<(Limit Limit, bool Inside)> Others(ImmutableArray<Limit> limits, Quantity value)
    {
        var others = ImmutableArray.CreateBuilder<(Limit, bool)>(limits.Length - 1);
        for (var at = 1; at < limits.Length; at++)
        {
            others.Add((limits[at], limits[at].Interval.Contains(value)));
        }

        return others.MoveToImmutable();
    }

    private static ImmutableArray<LazyText> Remarks(Limit limit, ReadingUncertainty? uncertainty, MeterDoubt? meter)
    {
        if (uncertainty is null)
        {
            return meter is null ? limit.Remarks : [meter.Why, .. limit.Remarks];
        }

        return Remarks(
            uncertainty,
            RatioWarning(limit.Interval, uncertainty.Expanded),
            meter is null ? limit.Remarks : [meter.Why, .. limit.Remarks]
        );
    }

    private static ImmutableArray<LazyText> Remarks(ReadingUncertainty uncertainty, LazyText? poor, ImmutableArray<LazyText> ofLimit) =>
        (poor, ofLimit.Length) switch
        {
            (null, 0) => [uncertainty.Arithmetic],
            ({ }, 0) => [uncertainty.Arithmetic, poor],
            (null, _) => [uncertainty.Arithmetic, .. ofLimit],
            _ => [uncertainty.Arithmetic, poor, .. ofLimit],
        };

    // What a rule with a guard band does not accept for certain is undecided; one that rejects only what is proved outside doubts that side
    // alone.
    private static LazyText? Doubt(ConformityDecision decision, DecisionRule rule, Quantity expanded) =>
        (decision.Conformity, rule.GuardShare) switch
        {
            (Conformity.ProbablyInside or Conformity.ProbablyOutside, > 0m) => rule.GuardShare == 1m
                ? Straddles(expanded)
                : IsInGuardBand(rule, expanded, decision.GuardBand),
            (Conformity.ProbablyOutside, < 0m) => IsOutsideByLess(expanded),
            _ => null,
        };

    private static LazyText Straddles(Quantity expanded) =>
        new(() => $"the uncertainty of {QuantityText.Format(expanded, 3)} straddles the limit");

    private static LazyText IsInGuardBand(DecisionRule rule, Quantity expanded, decimal guardBand) =>
        new(() =>
            $"it is nearer to the limit than the guard band of {QuantityText.Format(new Quantity(rule.GuardShare, Dimension.Number))} U "
            + $"= {QuantityText.Format(expanded with { Value = guardBand }, 3)}"
        );

    private static LazyText IsOutsideByLess(Quantity expanded) =>
        new(() =>
            $"it is outside by less than its uncertainty of {QuantityText.Format(expanded, 3)}, and only what is proved outside is rejected"
        );

    // Half the range over the uncertainty: a meter that is not four times as good as the tolerance says so. A one-sided limit has no range.
    private static LazyText? RatioWarning(Interval interval, Quantity expanded) =>
        interval is { Lower: { } lower, Upper: { } upper }
        && (upper.Value - lower.Value) / 2m is var half and > 0m
        && half < TestUncertaintyRatio.Wanted * expanded.Value
            ? PoorRatio(half, expanded.Value)
            : null;

    private static LazyText PoorRatio(decimal half, decimal expanded) =>
        new(() =>
            TestUncertaintyRatio.Compute(half, expanded).Is(out var ratio, out _)
                ? $"warning: {ratio.Warning} ({ratio.Arithmetic}; {TestUncertaintyRatio.Source.Text})"
                : "the test uncertainty ratio cannot be computed"
        );

    internal static LazyText? CannotProve(Limit limit, Quantity value)
    {
        var inside = limit.Interval.Contains(value);
        if (inside && limit.ProvesOnlyOutside is { } early && !(value.Value <= limit.InsideHoweverTo?.Value))
        {
            return early;
        }

        if (!inside && limit.ProvesOnlyInside is { } late)
        {
            return late;
        }

        if (limit.NothingBelow is { } low && value.Value < limit.Interval.Lower?.Value && !(value.Value < limit.NothingBelowTo?.Value))
        {
            return low;
        }

        return limit.NothingAbove is { } high && value.Value > limit.Interval.Upper?.Value && !(value.Value > limit.NothingAboveTo?.Value)
            ? high
            : null;
    }

    private sealed class Sentence(Measured measured, Written<Indication> reading, Limit limit, VerdictOutcome outcome, LazyText? reason)
        : LazyText
    {
        protected override string Write() =>
            $"{VerdictWords.Describe(measured)} {reading.Text} against {limit.InWords} "
            + $"({VerdictWords.Describe(limit.Kind)}, {limit.Origin}): "
            + $"{VerdictWords.Describe(outcome)}"
            + (reason is null ? string.Empty : $", {reason}");
    }

    private sealed class NoLimit(Measured measured, Written<Indication> reading) : LazyText
    {
        protected override string Write() => $"{VerdictWords.Describe(measured)} {reading.Text}: no limit is known for it";
    }
}
