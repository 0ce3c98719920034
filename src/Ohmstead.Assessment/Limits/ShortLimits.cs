using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>What an ohmmeter must show of an electrolytic: it is charged by the meter, so a sound one climbs, and only what no charging
/// explains is a short.</summary>
/// <remarks>
/// A meter that sends a constant current shows R = t / C after t seconds, plainly from U = I t / C. One that sat on a sound part for a
/// second shows at least 1 s / C; what stands below that is not charging. Above it, leakage at the meter's volt says little of leakage at
/// the rated voltage, and the wrong way round it leaks anyhow.
/// </remarks>
public static class ShortLimits
{
    private static readonly LazyText MayCharge =
        "an ohmmeter charges it, and the wrong way round it leaks: wait until it stands still, turn the leads, or read its leakage at "
        + "its voltage";

    private static readonly LazyText MayProve =
        "an ohmmeter reads at a volt or so: that it is no short is all this says, its leakage is proved at its voltage";

    /// <summary>The limit, or null when the capacitance is not known.</summary>
    public static Limit? Electrolytic(IMarkedPart part, ReadingConditions how)
    {
        if (
            part.Capacitance is not { Value: { Value: > 0m } marked }
            || LeakageLimits.For(part, how with { AtVoltage = part.RatedVoltage?.Value }) is not { Interval.Upper: { Value: > 0m } leakage }
            || part.RatedVoltage is not { Value: { Value: > 0m } rated }
        )
        {
            return null;
        }

        var (least, charging) = (
            new Quantity(rated.Value / leakage.Value, Dimension.Resistance),
            new Quantity(1m / marked.Value, Dimension.Resistance)
        );
        return new Limit(
            LimitKind.EndOfLife,
            new Interval(least, null),
            "what its leakage limit comes to at its rated voltage",
            new(() =>
                $"{QuantityText.Format(rated)} / {QuantityText.Format(leakage, 4)} = {QuantityText.Format(least, 4)}; charging explains "
                + $"down to 1 s / {QuantityText.Format(marked)} = {QuantityText.Format(charging, 4)}"
            ),
            "Ohm's law; common practice"
        )
        {
            ProvesOnlyOutside = MayProve,
            ExplainedBelow = (charging.Value < least.Value ? charging : least, MayCharge),
        };
    }
}
