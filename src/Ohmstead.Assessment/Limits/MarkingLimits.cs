using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Limits of a part's main value: capacitance, resistance, inductance, frequency, voltage or gain against the marking, and against
/// what the circuit needs.</summary>
/// <remarks>A marked tolerance is a delivery limit (IEC 60384-1, IEC 60115-1, from memory). Check value, common practice: 2200 µF ±20 %
/// allows 1760 to 2640 µF.</remarks>
public static class MarkingLimits
{
    private const decimal WidestTolerance = 0.2m;

    private static readonly LazyText NoToleranceOnTheMains =
        "its tolerance is not written, and a capacitor on the mains does not pass by the widest that is sold: write tolerance";
    private static readonly LazyText OfPractice = "common practice";
    private static readonly LazyText Marking = "the marking";
    private static readonly LazyText MarkingSource = "IEC 60062 marking of values and tolerances";
    private static readonly LazyText CircuitSource = "the record of this board or design";

    /// <summary>The circuit limit that the design or the board gives for the part's main value, or null.</summary>
    public static Limit? Circuit(IMarkedPart part, Quantity? nominal, string origin) =>
        part.Low is null && part.High is null
            ? null
            : new Limit(
                LimitKind.Circuit,
                new Interval(part.Low?.Value, part.High?.Value),
                origin,
                LazyText.For(part, static part =>
                    $"{part.Low?.Text ?? "no lower limit"} … {part.High?.Text ?? "no upper limit"}, as written"
                ),
                CircuitSource
            )
            {
                Nominal = nominal,
            };

    /// <summary>The marked tolerance applied to the marked value, or null when either is not known.</summary>
    public static Limit? Delivery(IMarkedPart part, Quantity? nominal)
    {
        if (nominal is not { } mark || part.Tolerance is not { } tolerance)
        {
            return null;
        }

        return new Limit(LimitKind.Delivery, tolerance.Value.Apply(mark), Marking, new Allowed(mark, tolerance), MarkingSource)
        {
            Nominal = mark,
        };
    }

    /// <summary>The usual limit for a worn electrolytic whose tolerance is not written, -20 to +50 % of the mark: common
    /// practice.</summary>
    public static Limit? WornElectrolytic(IMarkedPart part, Quantity? nominal)
    {
        if (nominal is not { } mark || !part.Kind.Value.IsElectrolytic)
        {
            return null;
        }

        var isWet = part.Kind.Value == PartKinds.WetTantalum && part.RatedVoltage is not null;
        var drop = isWet ? WetTantalum.LargestDrop(part.RatedVoltage!.Value.Value) : 0.2m;
        var interval = Tolerance.Relative(-drop, 0.5m).Apply(mark);
        return new Limit(
            LimitKind.EndOfLife,
            interval,
            "the type's usual limit, since no tolerance is written",
            new(() => $"{QuantityText.Format(mark)} -{QuantityText.FormatPercent(drop)}/+50 % allows {interval}"),
            isWet ? new(static () => WetTantalum.Source.Text + "; upwards common practice") : OfPractice
        )
        {
            Nominal = mark,
        };
    }

    /// <summary>
    /// The usual limit of a capacitor on the mains whose tolerance is not written: the widest that is sold, ±20 %, and what its life may
    /// take. It can only fail a part: one that people rely on not to be hurt does not pass by a limit that nobody wrote.
    /// </summary>
    public static Limit? Suppressor(IMarkedPart part, Quantity? nominal)
    {
        if (nominal is not { } mark || SuppressorFigures.For(part) is not { } figures)
        {
            return null;
        }

        var (low, high) = (
            WidestTolerance + figures.CapacitanceChange - (WidestTolerance * figures.CapacitanceChange),
            WidestTolerance + figures.CapacitanceChange + (WidestTolerance * figures.CapacitanceChange)
        );
        var interval = Tolerance.Relative(-low, high).Apply(mark);
        return new Limit(
            LimitKind.EndOfLife,
            interval,
            new(() => $"the usual limit of a capacitor on the mains ({figures.Dielectric}), since no tolerance is written"),
            new(() =>
                $"{QuantityText.Format(mark)} ±20 % and {QuantityText.FormatPercent(figures.CapacitanceChange)} of change allows {interval}"
            ),
            new(() => $"{figures.Source.Text}; ±20 % as the widest that is sold: common practice")
        )
        {
            Nominal = mark,
            ProvesOnlyOutside = NoToleranceOnTheMains,
        };
    }

    /// <summary>The marked main value of a part, in the dimension of its kind; null when it is not written.</summary>
    public static Quantity? Nominal(IMarkedPart part) =>
        (
            part.Kind.Value.Family switch
            {
                PartFamily.Capacitor => part.Capacitance,
                PartFamily.Resistor or PartFamily.Coil => part.Resistance,
                PartFamily.Inductor => part.Inductance,
                PartFamily.Crystal => part.Frequency,
                PartFamily.Fuse => part.Current,
                PartFamily.Other when part.Kind.Value.TypeTellsVoltage => part.RatedVoltage,
                PartFamily.Transistor or PartFamily.Other => null,
            }
        )?.Value;

    private sealed class Allowed(Quantity mark, Written<Tolerance> tolerance) : LazyText
    {
        protected override string Write() => $"{QuantityText.Format(mark)} {tolerance.Text} allows {tolerance.Value.Apply(mark)}";
    }
}
