using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>All limits of one measured quantity of a part, the one that governs first.</summary>
public static class PartLimits
{
    /// <summary>The limits that apply.</summary>
    /// <param name="part">What the part is.</param>
    /// <param name="place">Where a circuit limit comes from, or null for a part that lies in the drawer.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="how">How it was measured.</param>
    public static ImmutableArray<Limit> For(IMarkedPart part, string? place, Measured measured, ReadingConditions how)
    {
        var limits = new List<Limit>(3);
        if (measured == part.Kind.Value.MainQuantity)
        {
            var nominal = MarkingLimits.Nominal(part);
            Add(limits, place is null || how.IsNew ? null : MarkingLimits.Circuit(part, nominal, place));
            Add(limits, MarkingLimits.Delivery(part, nominal));
            Add(
                limits,
                limits.Count == 0 ? MarkingLimits.WornElectrolytic(part, nominal) ?? MarkingLimits.Suppressor(part, nominal) : null
            );
        }

        Add(limits, OfTheType(part, place, measured, how));
        return ConditionLimits.Adjust(BiasLimits.Adjust(limits, part, measured, how), part, measured, how);
    }

    // What is usual for the type: it governs where nothing is written, and stands beside what is.
    private static Limit? OfTheType(IMarkedPart part, string? place, Measured measured, ReadingConditions how) =>
        (part.Kind.Value.Family, measured) switch
        {
            (_, Measured.Esr) => EsrLimits.Esr(part, place, how),
            (_, Measured.LossFactor) => EsrLimits.Loss(part, how),
            (_, Measured.Leakage) when part.Kind.Value == PartKinds.GermaniumTransistor => JunctionLimits.Leakage(part, how),
            (_, Measured.Leakage) => LeakageLimits.For(part, how),
            (PartFamily.Capacitor, Measured.Insulation) => InsulationLimits.For(part, how),
            (PartFamily.Capacitor, Measured.Resistance) => part.Kind.Value.IsElectrolytic
                ? ShortLimits.Electrolytic(part, how)
                : InsulationLimits.For(part, how, measured),
            (PartFamily.Fuse, Measured.Resistance) => FuseLimits.Resistance(part),
            (PartFamily.Inductor, Measured.Insulation) => WindingLimits.Insulation(part, how),
            (PartFamily.Capacitor, Measured.VoltageLoss) => VoltageLoss(part),
            (PartFamily.Resistor, Measured.Resistance) => ResistorLimits.Usual(part, how),
            (PartFamily.Inductor, Measured.Inductance) => WindingLimits.Inductance(part, how),
            (PartFamily.Inductor or PartFamily.Coil, Measured.Resistance) => WindingLimits.Resistance(part),
            (PartFamily.Crystal, Measured.Frequency) => CrystalLimits.Usual(part),
            (PartFamily.Other or PartFamily.Transistor, Measured.ForwardVoltage) => JunctionLimits.Drop(part, how),
            (PartFamily.Other, Measured.Voltage) => Voltage(part, how),
            _ => null,
        };

    private static Limit? Voltage(IMarkedPart part, ReadingConditions how) =>
        part.Kind.Value == PartKinds.ZenerDiode ? JunctionLimits.Zener(part, how)
        : part.Kind.Value == PartKinds.Regulator ? RegulatorLimits.Output(part)
        : part.Kind.Value == PartKinds.Cell ? CellLimits.Voltage(part)
        : null;

    // Loss of voltage after a charging pulse has no standard; workshops take these figures.
    private static Limit VoltageLoss(IMarkedPart part)
    {
        var most = part.Kind.Value.IsElectrolytic ? 0.05m : 0.01m;
        var upper = new Quantity(most, Dimension.Ratio);
        return new Limit(
            LimitKind.EndOfLife,
            new Interval(null, upper),
            "the type's usual limit",
            $"at most {QuantityText.FormatPercent(most)}",
            "common practice, from memory"
        );
    }

    private static void Add(List<Limit> limits, Limit? limit)
    {
        if (limit is not null)
        {
            limits.Add(limit);
        }
    }
}
