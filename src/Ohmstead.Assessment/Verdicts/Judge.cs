using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>Holds a reading against its limits.</summary>
public static class Judge
{
    /// <summary>The verdict on one value.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="reading">The value.</param>
    /// <param name="limits">The limits that apply, the one that governs first.</param>
    /// <param name="inCircuit">True when the part was in the circuit.</param>
    /// <param name="uncertainty">The uncertainty of the reading, when known.</param>
    /// <param name="isGuarded">True when a reading whose uncertainty straddles the limit is undecided.</param>
    public static Verdict Decide(
        Measured measured, Written<Quantity> reading, IReadOnlyList<Limit> limits, bool inCircuit, ReadingUncertainty? uncertainty, bool isGuarded)
    {
        if (limits.Count == 0)
        {
            return new Verdict(VerdictOutcome.NoLimit, measured, reading, new(() => $"{VerdictWords.Of(measured)} {reading.Text}: no limit is known for it")) { Uncertainty = uncertainty?.Expanded };
        }

        var limit = limits[0];
        var value = reading.Value;
        var inside = limit.Interval.Contains(value);
        var (outcome, reason) = (inside ? VerdictOutcome.Inside : VerdictOutcome.Outside, (LazyText?)null);
        double? probability = null;
        if (uncertainty is not null
            && ConformityStatement.Of(
                value.Value, uncertainty.Expanded.Value, limit.Interval.Lower?.Value, limit.Interval.Upper?.Value, isGuarded ? DecisionRule.Guarded : DecisionRule.Simple)
            .Is(out var statement, out _))
        {
            probability = statement.Probability;
            if (isGuarded && !statement.Decides)
            {
                (outcome, reason) = (VerdictOutcome.Undecided, new(() => $"the uncertainty of {QuantityText.Format(uncertainty.Expanded, 3)} straddles the limit"));
            }
        }

        if (CannotProve(measured, limit, value, inside, inCircuit) is { } cannot)
        {
            (outcome, reason) = (VerdictOutcome.ProvesNothing, cannot);
        }

        LazyText range = new(() => VerdictWords.Range(limit.Interval));
        return new Verdict(outcome, measured, reading, new(() => Sentence(measured, reading, limit, range, outcome, reason)))
        {
            Limit = limit,
            LimitInWords = range,
            Others = limits.Count == 1 ? [] : [.. limits.Skip(1).Select(other => (other, other.Interval.Contains(value)))],
            Deviation = limit.Nominal is { Value: not 0m } nominal ? (value.Value - nominal.Value) / nominal.Value : null,
            Margin = MarginTo(limit.Interval, value.Value),
            Uncertainty = uncertainty?.Expanded,
            Probability = probability,
            Remarks = uncertainty is null ? [.. limit.Remarks] : [uncertainty.Arithmetic, .. limit.Remarks],
        };
    }

    // For a passive network probed below 0.3 V a parallel path can only lower R and ESR and only raise C: one side of the limit is proved, the other
    // is not. Common practice, from circuit theory.
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

        if (!inCircuit)
        {
            return null;
        }

        var tooHigh = limit.Interval.Upper is { } upper && value.Value > upper.Value;
        var cannot = measured switch
        {
            Measured.Leakage => "leakage cannot be read in circuit",
            Measured.Resistance or Measured.Inductance when !tooHigh => "in circuit a parallel path can only lower the reading: too high would prove a fault, this proves nothing; lift one leg",
            Measured.Esr or Measured.LossFactor when !tooHigh => "in circuit a parallel path can only lower the reading: too high would prove a fault, this proves nothing",
            Measured.Capacitance when !tooHigh && !inside => "in circuit a low capacitance makes the part suspect but proves nothing: measure it out of circuit",
            Measured.Capacitance => "in circuit other capacitances add to the reading: it proves nothing about this part",
            _ => null,
        };
        return cannot is null ? null : (LazyText)cannot;
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

    private static string Sentence(Measured measured, Written<Quantity> reading, Limit limit, LazyText range, VerdictOutcome outcome, LazyText? reason) =>
        $"{VerdictWords.Of(measured)} {reading.Text} against {range} ({VerdictWords.Of(limit.Kind)}, {limit.Origin}): {VerdictWords.Of(outcome)}"
        + (reason is null ? string.Empty : $", {reason}");
}
