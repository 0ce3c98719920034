using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// The least insulation resistance of a capacitor: what its own leakage limit comes to at the voltage it was read at, else what is usual of film, paper, mica
/// or class 1 ceramic. A worn part may have half of what is usual of a new one.
/// </summary>
/// <remarks>
/// Insulation rises for a minute after the voltage is put on: one read earlier can only keep its limit. Old paper breaks down at its working voltage: one
/// read at less can only break it.
/// </remarks>
public static class InsulationLimits
{
    private const decimal Worn = 0.5m;
    private const decimal SecondsToSettle = 60m;

    private static readonly LazyText WornSource = "half of it for a worn part: IEC 60384-2, endurance, from memory";
    private static readonly LazyText NoVoltage = "the record does not say at which voltage it was read";

    /// <summary>The limit that applies, or null when none is known.</summary>
    public static Limit? For(IMarkedPart part, ReadingConditions how)
    {
        if (part.LeakageLimit is { Value.Value: > 0m } own && how.AtVoltage is { Value: > 0m } volts)
        {
            var ohms = new Quantity(volts.Value / own.Value.Value, Dimension.Resistance);
            return With(
                new Limit(
                    LimitKind.Delivery, new Interval(ohms, null), "the part's own leakage limit",
                    new(() => $"{QuantityText.Format(volts)} / {own.Text} = {QuantityText.Format(ohms, 4)}"), "the record; Ohm's law"),
                part, how);
        }

        if (part.Capacitance is not { } capacitance || part.Kind.Value.Dielectric is not { } figures || !figures.LeastInsulationOhms(capacitance.Value.Value).Is(out var least, out _))
        {
            return null;
        }

        var lower = new Quantity(how.IsNew ? least.Value : least.Value * Worn, Dimension.Resistance);
        var usual = new Limit(
            how.IsNew ? LimitKind.Delivery : LimitKind.EndOfLife,
            new Interval(lower, null),
            new(() => $"the type's usual limit ({figures.Dielectric})"),
            how.IsNew ? least.Arithmetic : new(() => $"{least.Arithmetic}; worn part: half of it = {QuantityText.Format(lower, 4)}"),
            new(() => how.IsNew ? least.Source.Text : $"{least.Source.Text}; {WornSource}"))
        {
            Remarks = [new LazyText(() => figures.Note)],
        };
        return With(usual, part, how);
    }

    // What the way of measuring takes from a limit.
    private static Limit With(Limit limit, IMarkedPart part, ReadingConditions how) => limit with
    {
        NothingBelow = how.After is { } after && after.Value < SecondsToSettle
            ? new LazyText(() => $"it was read after {QuantityText.Format(after)}, the limit holds after a minute, and insulation still rises")
            : null,
        ProvesOnlyOutside = how.AtVoltage is { } at && part.VoltageOfPaper is { } volts && at.Value < volts.Value.Value
            ? new LazyText(() => $"it was read at {QuantityText.Format(at)}, and old paper is tested at its voltage of {volts.Text}")
            : null,
        Remarks =
        [
            .. limit.Remarks,
            .. how.AtVoltage is null ? [NoVoltage] : Array.Empty<LazyText>(),
            .. how.AwayFrom20 is { } read
                ? [new LazyText(() => $"read at {QuantityText.Format(read)}; the limit holds at 20 °C, and insulation falls with warmth")]
                : Array.Empty<LazyText>(),
        ],
    };
}
