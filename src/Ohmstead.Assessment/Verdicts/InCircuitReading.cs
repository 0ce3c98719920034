using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Verdicts;

/// <summary>What the circuit around a part takes from a reading.</summary>
/// <remarks>
/// Known to be in circuit, a reading that something beside the part explains proves nothing. Where the record does not say, it may have
/// been in circuit: a reading inside then proves nothing where a bad part could read so there, and one outside does not decide where a good
/// part could. That is more than nothing, for it may be true, and the part is to be measured again. A part that has not been fitted yet is
/// out of circuit by nature.
/// </remarks>
internal static class InCircuitReading
{
    private const string NotWritten = "the record does not say whether it was in circuit; ";

    private static readonly LazyText Insulation =
        "in circuit other paths lie beside it and lower the reading; so it proves nothing, measure it out of circuit";
    private static readonly LazyText InsulationNotWritten =
        NotWritten + "there other paths beside it lower the reading: write circuit: out, or measure it out of circuit";
    private static readonly LazyText LeakageNotWritten =
        NotWritten + "there other paths beside it carry current too: write circuit: out, or measure it out of circuit";

    /// <summary>What is taken, and why; null where nothing is.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="limit">The limit that governs.</param>
    /// <param name="value">The reading.</param>
    /// <param name="circuit">Where the part was; null where the record does not say.</param>
    internal static (VerdictOutcome Outcome, LazyText Why)? Takes(Measured measured, Limit limit, Quantity value, Circuit? circuit)
    {
        if (circuit == Circuit.Out)
        {
            return null;
        }

        if (measured == Measured.Insulation)
        {
            // Whatever lies beside it can only lower it: above its limit it is good, wherever it was read.
            return value.Value >= limit.Interval.Lower?.Value ? null
                : circuit == Circuit.In ? (VerdictOutcome.ProvesNothing, Insulation)
                : (VerdictOutcome.Undecided, InsulationNotWritten);
        }

        if (measured == Measured.Leakage && circuit is null)
        {
            // Paths beside it only add to the current: what is inside with them is inside without.
            return value.Value <= limit.Interval.Upper?.Value ? null : (VerdictOutcome.Undecided, LeakageNotWritten);
        }

        if (QuantityOf(measured) is not { } quantity)
        {
            return null;
        }

        var rule = InCircuitRule.For(quantity);
        if (rule.Bias == InCircuitBias.Unreadable)
        {
            return (VerdictOutcome.ProvesNothing, rule.Proves);
        }

        var (finding, why) = rule.Look(value.Value, limit.Interval.Lower?.Value, limit.Interval.Upper?.Value);
        if (finding is InCircuitFinding.ProvedBad or InCircuitFinding.Proved)
        {
            return null;
        }

        var isHigh = value.Value > limit.Interval.Upper?.Value;
        if (isHigh && measured == Measured.Esr && LargestEsr(limit) is { } most && value.Value > most)
        {
            return null;
        }

        // Only an inductance beside a capacitor makes it read low, and that is rare: where nobody wrote that it was in circuit, a low
        // reading stands.
        if (finding == InCircuitFinding.Suspect && circuit is null)
        {
            return null;
        }

        var isInside = limit.Interval.Contains(value);
        var explains = isHigh ? Explains(measured, limit, value) : null;
        return circuit == Circuit.In
            ? (
                VerdictOutcome.ProvesNothing,
                Told(
                    "in circuit it reads ",
                    why,
                    explains,
                    finding == InCircuitFinding.Suspect
                        ? "; that makes the part suspect but proves nothing, measure it out of circuit"
                        : "; so it proves nothing"
                )
            )
            : (
                isInside ? VerdictOutcome.ProvesNothing : VerdictOutcome.Undecided,
                Told(NotWritten + "there it would read ", why, explains, ": write circuit: out, or measure it out of circuit")
            );
    }

    // The most that a resistance beside a good part makes of its ESR; null where the reactance is not known.
    private static decimal? LargestEsr(Limit limit) =>
        limit is { ReadAt: { } read, LeastBesidePath: { } farads, Interval.Upper: { } upper }
        && BesideACapacitor.LargestEsr(Governing(limit, upper), read.Value, farads.Value).Is(out var most, out _)
            ? most.Value
            : null;

    private static decimal Governing(Limit limit, Quantity upper) => limit.Explained?.UpTo.Value ?? upper.Value;

    // What beside a part just on its limit makes this reading, with the figures put in.
    private static LazyText? Explains(Measured measured, Limit limit, Quantity value)
    {
        if (limit is not { ReadAt: { } read, LeastBesidePath: { } beside, Interval.Upper: { } upper })
        {
            return null;
        }

        var known = measured switch
        {
            Measured.Esr => BesideACapacitor.ExplainsEsr(upper.Value, value.Value, read.Value, beside.Value),
            Measured.LossFactor => BesideACapacitor.ExplainsLossFactor(upper.Value, value.Value, read.Value, beside.Value),
            Measured.Inductance => BesideAnInductor.ExplainsFarads(upper.Value, value.Value, read.Value),
            _ => default,
        };
        var ofWhat = measured == Measured.Inductance ? Dimension.Capacitance : Dimension.Resistance;
        return known.Is(out var worked, out _)
            ? new(() =>
                $"{QuantityText.Format(new Quantity(worked.Value, ofWhat), 3)} beside it does that "
                + $"({worked.Arithmetic}; {worked.Source.Text})"
            )
            : null;
    }

    private static LazyText Told(string before, string why, LazyText? explains, string after) =>
        new(() => $"{before}{why}{(explains is null ? string.Empty : $", and {explains}")}{after}");

    private static InCircuitQuantity? QuantityOf(Measured measured) =>
        measured switch
        {
            Measured.Resistance => InCircuitQuantity.Resistance,
            Measured.Capacitance => InCircuitQuantity.Capacitance,
            Measured.Esr => InCircuitQuantity.Esr,
            Measured.LossFactor => InCircuitQuantity.LossFactor,
            Measured.VoltageLoss => InCircuitQuantity.VoltageLoss,
            Measured.Inductance => InCircuitQuantity.Inductance,
            Measured.ForwardVoltage => InCircuitQuantity.DiodeDrop,
            Measured.Leakage => InCircuitQuantity.Leakage,
            _ => null,
        };
}
