using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>Usual limits of windings: inductance and copper resistance of chokes and transformers, coils of relays, motors.</summary>
public static class WindingLimits
{
    private static readonly LazyText NoShortedTurn = "the resistance does not find a shorted turn: ring it, or measure its inductance";

    /// <summary>The inductance where no tolerance is written, or null.</summary>
    public static Limit? Inductance(IMarkedPart part) => part is { Tolerance: null, Inductance: { } marked } ? Wide(part, marked.Value, null) : null;

    /// <summary>The resistance of the copper, or null when it is not marked, or marked with a tolerance of its own.</summary>
    public static Limit? Resistance(IMarkedPart part)
    {
        // The tolerance of a choke is that of its inductance, the tolerance of a relay that of its coil.
        var isWritten = part.Tolerance is not null && part.Kind.Value.Family == PartFamily.Coil;
        return part.Resistance is { } marked && !isWritten ? Wide(part, marked.Value, NoShortedTurn) : null;
    }

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
            new(() => $"{known.Source.Text}: {known.Accept}"))
        {
            Nominal = nominal,
            Remarks = remark is null ? [] : [remark],
        };
    }
}
