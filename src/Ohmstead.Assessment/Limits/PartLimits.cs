using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>All limits of one measured quantity of a part, the one that governs first.</summary>
public static class PartLimits
{
    private static readonly Limit SiliconForward = new(
        LimitKind.EndOfLife,
        new Interval(new Quantity(0.55m, Dimension.Voltage), new Quantity(0.75m, Dimension.Voltage)),
        "the type's usual limit (silicon junction at about 1 mA)",
        "0.55 V … 0.75 V",
        "common practice");

    /// <summary>The limits that apply.</summary>
    /// <param name="part">What the part is.</param>
    /// <param name="place">Where a circuit limit comes from, or null for a part that lies in the drawer.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="how">How it was measured.</param>
    public static IReadOnlyList<Limit> For(PartValues part, string? place, Measured measured, ReadingConditions how)
    {
        var limits = new List<Limit>(3);
        if (measured == MarkingLimits.MainMeasured(part))
        {
            var nominal = MarkingLimits.Nominal(part);
            Add(limits, place is null || how.IsNew ? null : MarkingLimits.Circuit(part, nominal, place));
            Add(limits, MarkingLimits.Delivery(part, nominal));
            Add(limits, limits.Count == 0 ? MarkingLimits.WornElectrolytic(part, nominal) : null);
        }

        switch (measured)
        {
            case Measured.Esr:
                Add(limits, EsrLimits.Esr(part, place, how));
                break;
            case Measured.LossFactor:
                Add(limits, EsrLimits.Loss(part, how));
                break;
            case Measured.Leakage:
                Add(limits, LeakageLimits.For(part, how));
                break;
            case Measured.VoltageLoss when PartKind.Family(part.Kind.Value) == PartFamily.Capacitor:
                limits.Add(VoltageLoss(part));
                break;
            case Measured.ForwardVoltage when part.Kind.Value == "diode":
                limits.Add(SiliconForward);
                break;
        }

        return limits;
    }

    // Loss of voltage after a charging pulse has no standard; workshops take these figures.
    private static Limit VoltageLoss(PartValues part)
    {
        var most = PartKind.IsElectrolytic(part.Kind.Value) ? 0.05m : 0.01m;
        var upper = new Quantity(most, Dimension.Ratio);
        return new Limit(LimitKind.EndOfLife, new Interval(null, upper), "the type's usual limit", $"at most {QuantityText.FormatPercent(most)}", "common practice, from memory");
    }

    private static void Add(List<Limit> limits, Limit? limit)
    {
        if (limit is not null)
        {
            limits.Add(limit);
        }
    }
}
