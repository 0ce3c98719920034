using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Usual limits of junctions: the forward drop by material, the voltage of a Zener diode by its suffix, the leakage of germanium.</summary>
public static class JunctionLimits
{
    private const decimal WornLeakage = 10m;

    private static readonly LazyText MaterialUnknown =
        "taken for silicon, since the record names no material: germanium and Schottky junctions drop 0.15 to 0.4 V; write material: to decide";

    private static readonly LazyText NoTestCurrent = "the record does not say at what current it was read: the voltage holds at the current of the data sheet";

    /// <summary>The forward drop of a diode, a bridge or the base of a transistor, or null for other parts.</summary>
    public static Limit? Drop(IMarkedPart part)
    {
        if (part.Kind.Value.Junction is not (Junction.Rectifying or Junction.Base))
        {
            return null;
        }

        var named = part.Kind.Value == PartKinds.GermaniumTransistor ? JunctionDrop.Germanium : part.Material is { } material ? JunctionDrop.Find(material.Value) : null;
        var junction = named ?? JunctionDrop.Silicon;
        return new Limit(
            LimitKind.EndOfLife,
            new Interval(new Quantity(junction.LowVolts, Dimension.Voltage), new Quantity(junction.HighVolts, Dimension.Voltage)),
            LazyText.Of(junction, static junction => $"the type's usual limit ({junction.Material} junction at about 1 mA)"),
            LazyText.Of(junction, static junction => $"{QuantityText.Format(new Quantity(junction.LowVolts, Dimension.Voltage))} … {QuantityText.Format(new Quantity(junction.HighVolts, Dimension.Voltage))}"),
            new(static () => JunctionDrop.Source.Text))
        {
            NothingBelow = named is null ? MaterialUnknown : null,
        };
    }

    /// <summary>The voltage of a Zener diode by the suffix of its type, or null when the type tells none or a tolerance is written.</summary>
    public static Limit? Zener(IMarkedPart part, ReadingConditions how)
    {
        if (part.Tolerance is not null || part.TellingType is not { } type || ZenerType.Of(type.Value) is not { } zener
            || (part.RatedVoltage?.Value.Value ?? zener.NominalVolts) is not { } volts || !ZenerTolerance.For(zener.Series, zener.Suffix).Is(out var share, out _))
        {
            return null;
        }

        var nominal = new Quantity(volts, Dimension.Voltage);
        var interval = Tolerance.Relative(share.Value).Apply(nominal);
        return new Limit(
            LimitKind.Delivery,
            interval,
            "the suffix of its type",
            new(() => $"{share.Arithmetic}; {QuantityText.Format(nominal)} allows {interval}"),
            new(() => share.Source.Text))
        {
            Nominal = nominal,
            Remarks = how.TestCurrent is null ? [NoTestCurrent] : [],
        };
    }

    /// <summary>The leakage of a germanium transistor: ten times its type's when worn. Null when the record does not give the type's.</summary>
    public static Limit? Leakage(IMarkedPart part, ReadingConditions how)
    {
        if (part.LeakageLimit is not { } own)
        {
            return null;
        }

        var upper = own.Value with { Value = own.Value.Value * (how.IsNew ? 1m : WornLeakage) };
        return how.IsNew
            ? new Limit(LimitKind.Delivery, new Interval(null, upper), "the part's own limit", new(() => $"at most {own.Text}, as written"), "the record")
            : new Limit(
                LimitKind.EndOfLife,
                new Interval(null, upper),
                "the type's usual limit",
                new(() => $"worn germanium: 10 x {own.Text} = {QuantityText.Format(upper)}"),
                new(() => AcceptLimit.Find("bipolar transistor")!.Source.Text + ": germanium with ten times the leakage of its type is replaced"));
    }
}
