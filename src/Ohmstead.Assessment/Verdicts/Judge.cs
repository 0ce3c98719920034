using System.Collections.Immutable;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>Holds a reading against its limits.</summary>
public static class Judge
{
    private static readonly LazyText InsulationInCircuit = "in circuit other paths lie beside it and lower the reading; so it proves nothing, measure it out of circuit";

    /// <summary>The verdict on one value.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="reading">The value.</param>
    /// <param name="limits">The limits that apply, the one that governs first.</param>
    /// <param name="inCircuit">True when the part was in the circuit.</param>
    /// <param name="uncertainty">The uncertainty of the reading, when known.</param>
    /// <param name="rule">How a reading near its limit is judged.</param>
    public static Verdict Decide(
        Measured measured, Written<Quantity> reading, ImmutableArray<Limit> limits, bool inCircuit, ReadingUncertainty? uncertainty, DecisionRule rule)
    {
        if (limits.Length == 0)
        {
            return new Verdict(VerdictOutcome.NoLimit, measured, reading, new NoLimit(measured, reading)) { Uncertainty = uncertainty?.Expanded };
        }

        var limit = limits[0];
        var value = reading.Value;
        var inside = limit.Interval.Contains(value);
        var (outcome, reason) = (inside ? VerdictOutcome.Inside : VerdictOutcome.Outside, (LazyText?)null);
        double? probability = null;
        if (uncertainty is not null
            && ConformityDecision.Of(
                value.Value, uncertainty.Expanded.Value, limit.Interval.Lower?.Value, limit.Interval.Upper?.Value, rule)
            .Is(out var decision, out _))
        {
            probability = decision.Probability;
            if (Doubt(decision, rule, uncertainty.Expanded) is { } doubt)
            {
                (outcome, reason) = (VerdictOutcome.Undecided, doubt);
            }
        }

        if (outcome == VerdictOutcome.Outside && limit.Explained is { } explained && value.Value <= explained.UpTo.Value)
        {
            (outcome, reason) = (VerdictOutcome.Undecided, explained.Why);
        }

        if (CannotProve(measured, limit, value, inside, inCircuit) is { } cannot)
        {
            (outcome, reason) = (VerdictOutcome.ProvesNothing, cannot);
        }

        return new Verdict(outcome, measured, reading, new Sentence(measured, reading, limit, outcome, reason))
        {
            Reason = reason,
            Limit = limit,
            LimitInWords = limit.InWords,
            Others = limits.Length == 1 ? [] : Others(limits, value),
            Deviation = limit.Nominal is { Value: not 0m } nominal ? (value.Value - nominal.Value) / nominal.Value : null,
            Margin = MarginTo(limit.Interval, value.Value),
            Uncertainty = uncertainty?.Expanded,
            Probability = probability,
            Rule = probability is null ? null : rule,
            Remarks = uncertainty is null ? limit.Remarks : Remarks(uncertainty, RatioWarning(limit.Interval, uncertainty.Expanded), limit.Remarks),
        };
    }

    private static ImmutableArray<(Limit Limit, bool Inside)> Others(ImmutableArray<Limit> limits, Quantity value)
    {
        var others = ImmutableArray.CreateBuilder<(Limit, bool)>(limits.Length - 1);
        for (var at = 1; at < limits.Length; at++)
        {
            others.Add((limits[at], limits[at].Interval.Contains(value)));
        }

        return others.MoveToImmutable();
    }

    private static ImmutableArray<LazyText> Remarks(ReadingUncertainty uncertainty, LazyText? poor, ImmutableArray<LazyText> ofLimit) => (poor, ofLimit.Length) switch
    {
        (null, 0) => [uncertainty.Arithmetic],
        ({ }, 0) => [uncertainty.Arithmetic, poor],
        (null, _) => [uncertainty.Arithmetic, .. ofLimit],
        _ => [uncertainty.Arithmetic, poor, .. ofLimit],
    };

    // What a rule with a guard band does not accept for certain is undecided; one that rejects only what is proved outside doubts that side alone.
    private static LazyText? Doubt(ConformityDecision decision, DecisionRule rule, Quantity expanded) => (rule.GuardShare, decision.Conformity) switch
    {
        (> 0m, Conformity.ProbablyInside or Conformity.ProbablyOutside) => rule.GuardShare == 1m ? Straddles(expanded) : IsInGuardBand(rule, expanded, decision.GuardBand),
        (< 0m, Conformity.ProbablyOutside) => IsOutsideByLess(expanded),
        _ => null,
    };

    private static LazyText Straddles(Quantity expanded) => new(() => $"the uncertainty of {QuantityText.Format(expanded, 3)} straddles the limit");

    private static LazyText IsInGuardBand(DecisionRule rule, Quantity expanded, decimal guardBand) => new(() =>
        $"it is nearer to the limit than the guard band of {QuantityText.Format(new Quantity(rule.GuardShare, Dimension.Number))} U = {QuantityText.Format(expanded with { Value = guardBand }, 3)}");

    private static LazyText IsOutsideByLess(Quantity expanded) => new(() =>
        $"it is outside by less than its uncertainty of {QuantityText.Format(expanded, 3)}, and only what is proved outside is rejected");

    // Half the range over the uncertainty: a meter that is not four times as good as the tolerance says so. A one-sided limit has no range.
    private static LazyText? RatioWarning(Interval interval, Quantity expanded) =>
        interval is { Lower: { } lower, Upper: { } upper } && (upper.Value - lower.Value) / 2m is var half and > 0m && half < TestUncertaintyRatio.Wanted * expanded.Value
            ? PoorRatio(half, expanded.Value)
            : null;

    private static LazyText PoorRatio(decimal half, decimal expanded) => new(() =>
        TestUncertaintyRatio.Of(half, expanded).Is(out var ratio, out _) ? $"warning: {ratio.Warning} ({ratio.Arithmetic}; {TestUncertaintyRatio.Source.Text})" : "the test uncertainty ratio cannot be computed");

    private static LazyText? CannotProve(Measured measured, Limit limit, Quantity value, bool inside, bool inCircuit)
    {
        if (inside && limit.ProvesOnlyOutside is { } early)
        {
            return early;
        }

        if (!inside && limit.ProvesOnlyInside is { } late)
        {
            return late;
        }

        if (limit.NothingBelow is { } low && value.Value < limit.Interval.Lower?.Value)
        {
            return low;
        }

        if (limit.NothingAbove is { } high && value.Value > limit.Interval.Upper?.Value)
        {
            return high;
        }

        return inCircuit ? InCircuit(measured, limit, value) : null;
    }

    // For a passive network probed below 0.3 V a parallel path can only lower R and ESR and only raise C: one side of the limit is proved, the other
    // is not. Common practice, from circuit theory.
    private static LazyText? InCircuit(Measured measured, Limit limit, Quantity value)
    {
        if (measured == Measured.Insulation)
        {
            // Whatever lies beside it can only lower it: above its limit it is good, wherever it was read.
            return value.Value < limit.Interval.Lower?.Value ? InsulationInCircuit : null;
        }

        InCircuitQuantity? quantity = measured switch
        {
            Measured.Resistance => InCircuitQuantity.Resistance,
            Measured.Capacitance => InCircuitQuantity.Capacitance,
            Measured.Esr or Measured.LossFactor => InCircuitQuantity.Esr,
            Measured.Inductance => InCircuitQuantity.Inductance,
            Measured.ForwardVoltage => InCircuitQuantity.DiodeDrop,
            Measured.Leakage => InCircuitQuantity.Leakage,
            _ => null,
        };
        if (quantity is not { } known)
        {
            return null;
        }

        var rule = InCircuitRule.For(known);
        if (rule.Bias == InCircuitBias.Unreadable)
        {
            return rule.Proves;
        }

        var (finding, why) = rule.Look(value.Value, limit.Interval.Lower?.Value, limit.Interval.Upper?.Value);
        return finding switch
        {
            InCircuitFinding.ProvedBad or InCircuitFinding.Proved => null,
            InCircuitFinding.Suspect => LazyText.Of(why, static why => $"in circuit it reads {why}; that makes the part suspect but proves nothing, measure it out of circuit"),
            _ => LazyText.Of(why, static why => $"in circuit it reads {why}; so it proves nothing"),
        };
    }

    // The nearest limit, as a fraction of that limit; a limit of nought has no per cent.
    private static decimal? MarginTo(Interval interval, decimal value)
    {
        decimal? least = null;
        if (interval.Lower is { Value: not 0m and var lower })
        {
            least = (value - lower) / Math.Abs(lower);
        }

        if (interval.Upper is { Value: not 0m and var upper } && (upper - value) / Math.Abs(upper) is var room && (least is null || room < least))
        {
            least = room;
        }

        return least;
    }

    private sealed class Sentence(Measured measured, Written<Quantity> reading, Limit limit, VerdictOutcome outcome, LazyText? reason) : LazyText
    {
        protected override string Write() =>
            $"{VerdictWords.Of(measured)} {reading.Text} against {limit.InWords} ({VerdictWords.Of(limit.Kind)}, {limit.Origin}): {VerdictWords.Of(outcome)}"
            + (reason is null ? string.Empty : $", {reason}");
    }

    private sealed class NoLimit(Measured measured, Written<Quantity> reading) : LazyText
    {
        protected override string Write() => $"{VerdictWords.Of(measured)} {reading.Text}: no limit is known for it";
    }
}
