using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Usual limits of windings: inductance and copper resistance of chokes and transformers, coils of relays, motors.</summary>
public static class WindingLimits
{
    private static readonly LazyText OnlyInService =
        "it keeps what is asked of equipment in service (1 MΩ with a protective earth, 2 MΩ with double insulation) and not the 7 MΩ of "
        + "reinforced insulation: say which it has to keep";

    private static readonly LazyText NoVoltage =
        "the record does not say at which voltage it was read, and mains insulation is proved at 500 V d.c.";
    private static readonly LazyText TestedLow = "it was read under 500 V d.c., at which mains insulation is proved";
    private static readonly LazyText LocalCodes =
        "defer to local codes and licensed practice; a filter behind the winding is taken off first";

    private static readonly LazyText NoShortedTurn = "the resistance does not find a shorted turn: ring it, or measure its inductance";

    /// <summary>The inductance where no tolerance is written, or null.</summary>
    public static Limit? Inductance(IMarkedPart part, ReadingConditions how) =>
        part is { Tolerance: null, Inductance: { } marked }
            ? Wide(part, marked.Value, null) is { } limit
                ? limit with
                {
                    ReadAt = how.Frequency,
                    LeastBesidePath = marked.Value,
                }
                : null
            : null;

    /// <summary>The resistance of the copper, or null when it is not marked, or marked with a tolerance of its own.</summary>
    public static Limit? Resistance(IMarkedPart part)
    {
        // The tolerance of a choke is that of its inductance, the tolerance of a relay that of its coil.
        var isWritten = part.Tolerance is not null && part.Kind.Value.Family == PartFamily.Coil;
        return part.Resistance is { } marked && !isWritten ? Wide(part, marked.Value, NoShortedTurn) : null;
    }

    /// <summary>
    /// The insulation of a transformer's winding from its core or from another winding. What it must have hangs on what it parts: a reading
    /// that keeps the strictest figure is inside, one that breaks the least is outside, between them the verdict says which it keeps.
    /// </summary>
    public static Limit? Insulation(IMarkedPart part, ReadingConditions how)
    {
        if (part.Kind.Value != PartKinds.Transformer)
        {
            return null;
        }

        var (least, most) = (MainsInsulation.ClassOne, MainsInsulation.Reinforced);
        return new Limit(
            LimitKind.EndOfLife,
            new Interval(Ohms(least), null),
            "the usual limit of mains insulation",
            new(() =>
                string.Join(", ", MainsInsulation.All.Select(known => $"{known.Equipment} {QuantityText.Format(Ohms(known))}"))
                + " at 500 V d.c."
            ),
            new(() => $"{least.Source.Text}; {most.Source.Text}")
        )
        {
            ProvedFrom = (Ohms(most), OnlyInService),
            ProvesOnlyOutside =
                how.AtVoltage is not { } at ? NoVoltage
                : at.Value < MainsInsulation.TestVolts ? TestedLow
                : null,
            Remarks = [LocalCodes],
        };
    }

    private static Quantity Ohms(MainsInsulation known) => new(known.Ohms, Dimension.Resistance);

    private static Limit? Wide(IMarkedPart part, Quantity nominal, LazyText? remark)
    {
        if (part.Kind.Value.StraysLike is not { LooseFraction: { } share } known)
        {
            return null;
        }

        var interval = Tolerance.Relative(share).Apply(nominal);
        return new Limit(
            LimitKind.EndOfLife,
            interval,
            "the type's usual limit, since no tolerance is written",
            new(() => $"{QuantityText.Format(nominal)} ±{QuantityText.FormatPercent(share)} allows {interval}"),
            new(() => $"{known.Source.Text}: {known.Accept}")
        )
        {
            Nominal = nominal,
            Remarks = remark is null ? [] : [remark],
        };
    }
}
