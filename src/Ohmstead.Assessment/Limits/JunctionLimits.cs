using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// Usual limits of junctions: the forward drop by material, the voltage of a Zener diode by its suffix, the leakage of germanium.
/// </summary>
public static class JunctionLimits
{
    private const decimal WornLeakage = 10m;

    private static readonly LazyText MaterialUnknown =
        "taken for silicon, since the record names no material: germanium drops 0.15 to 0.4 V and Schottky 0.1 to 0.45 V; "
        + "write material: to decide";

    private static readonly LazyText CurrentUnknown =
        "the record does not say at what current it was read, and so near to the edge that decides: meters test with "
        + "0.5 to 2 mA; write current";

    private static readonly LazyText NoTestCurrent =
        "the record does not say at what current it was read: the voltage holds at the current of the data sheet";

    /// <summary>
    /// The forward drop of a diode, a bridge or the base of a transistor, or null for other parts. A bridge is also read across two
    /// junctions.
    /// </summary>
    public static Limit? Drop(IMarkedPart part, ReadingConditions how)
    {
        if (part.Kind.Value.Junction is not (Junction.Rectifying or Junction.Base))
        {
            return null;
        }

        var named = part.Kind.Value == PartKinds.GermaniumTransistor ? JunctionDrop.Germanium : part.Material?.Value.Junction;
        var junction = named ?? JunctionDrop.Silicon;
        var low = junction.LowFor(part.Kind.Value.Junction == Junction.Rectifying ? part.Current?.Value.Value : null);
        var one = Junctions(junction, low, 1, how) with { NothingBelow = named is null ? MaterialUnknown : null };
        if (part.Kind.Value != PartKinds.BridgeRectifier)
        {
            return one;
        }

        // Nearer to two junctions than to one.
        var between = (junction.HighVolts + (2m * low)) / 2m;
        return one with { Higher = (new Quantity(between, Dimension.Voltage), Junctions(junction, low, 2, how)) };
    }

    private static Limit Junctions(JunctionDrop junction, decimal low, int inSeries, ReadingConditions how)
    {
        var (least, most) = (
            new Quantity(low * inSeries, Dimension.Voltage),
            new Quantity(junction.HighVolts * inSeries, Dimension.Voltage)
        );
        var limit = new Limit(
            LimitKind.EndOfLife,
            new Interval(least, most),
            new(() =>
                $"the type's usual limit ({junction.Material}, "
                + $"{(inSeries == 1 ? "one junction" : "two junctions in series")}, at about 1 mA)"
            ),
            new(() =>
                inSeries == 1
                    ? $"{QuantityText.Format(least)} … {QuantityText.Format(most)}"
                    : $"twice {QuantityText.Format(new Quantity(low, Dimension.Voltage))} … "
                        + $"{QuantityText.Format(new Quantity(junction.HighVolts, Dimension.Voltage))}"
            ),
            LazyText.For(junction, static junction => junction.Source.Text)
        );
        if (how.TestCurrent is not null)
        {
            return limit;
        }

        var moves = JunctionDrop.VoltsOfUnknownCurrent * inSeries;
        return limit with
        {
            ProvedFrom = (least with { Value = least.Value + moves }, CurrentUnknown),
            ExplainedBelow = (least with { Value = least.Value - moves }, CurrentUnknown),
            ProvedTo = (most with { Value = most.Value - moves }, CurrentUnknown),
            Explained = (most with { Value = most.Value + moves }, CurrentUnknown),
        };
    }

    /// <summary>
    /// The voltage of a Zener diode by the suffix of its type, or null when the type tells none or a tolerance is written.
    /// </summary>
    public static Limit? Zener(IMarkedPart part, ReadingConditions how)
    {
        if (
            part.Tolerance is not null
            || part.TellingType is not { } type
            || ZenerType.Parse(type.Value) is not { } zener
            || (part.RatedVoltage?.Value.Value ?? zener.NominalVolts) is not { } volts
            || !ZenerTolerance.For(zener.Series, zener.Suffix).Is(out var share, out _)
        )
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
            new(() => share.Source.Text)
        )
        {
            Nominal = nominal,
            Remarks = how.TestCurrent is null ? [NoTestCurrent] : [],
        };
    }

    /// <summary>
    /// The leakage of a germanium transistor: ten times its type's when worn. Null when the record does not give the type's.
    /// </summary>
    public static Limit? Leakage(IMarkedPart part, ReadingConditions how)
    {
        if (part.LeakageLimit is not { } own)
        {
            return null;
        }

        var upper = own.Value with { Value = own.Value.Value * (how.IsNew ? 1m : WornLeakage) };
        return how.IsNew
            ? new Limit(
                LimitKind.Delivery,
                new Interval(null, upper),
                "the part's own limit",
                new(() => $"at most {own.Text}, as written"),
                "the record"
            )
            : new Limit(
                LimitKind.EndOfLife,
                new Interval(null, upper),
                "the type's usual limit",
                new(() => $"worn germanium: 10 x {own.Text} = {QuantityText.Format(upper)}"),
                new(() =>
                    AcceptLimit.Find("bipolar transistor")!.Source.Text + ": germanium with ten times the leakage of its type is replaced"
                )
            );
    }
}
