using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>What a resistor of a technology may usually have drifted to. Where no tolerance is written, the widest that the technology was sold with is taken.</summary>
/// <remarks>Common practice: carbon composition ±20 %, carbon film its mark and 2 %, metal film its mark and 1 %, a potentiometer ±20 % end to end.</remarks>
public static class ResistorLimits
{
    /// <summary>The usual limit of a worn resistor, or null for one that is new, unmarked, or of a technology without a usual figure.</summary>
    public static Limit? Usual(PartValues part, ReadingConditions how)
    {
        if (how.IsNew || part.Resistance is not { Value: var nominal } || AcceptLimit.Find(part.Kind.Value) is not { } known)
        {
            return null;
        }

        if (part.Tolerance is { } written)
        {
            // A mark that is not a symmetric share of the value has no usual figure of ageing; one without ageing says no more than the mark.
            return !written.Value.IsRelative || written.Value.Upper != -written.Value.Lower ? null
                : known.LooseFraction is { } loose && loose > written.Value.Upper ? Share(known, nominal, loose, $"marked {written.Text}; borne where it is uncritical: ")
                : known.ExtraFraction is > 0m and var extra ? Share(known, nominal, written.Value.Upper + extra, $"marked {written.Text} and {QuantityText.FormatPercent(extra)} of ageing: ")
                : null;
        }

        var (share, said) = known.UsualTolerance is { } usual
            ? (usual + (known.ExtraFraction ?? 0m), $"±{QuantityText.FormatPercent(usual)} at the widest" + (known.ExtraFraction is > 0m and var ageing ? $" and {QuantityText.FormatPercent(ageing)} of ageing: " : ": "))
            : (known.LooseFraction, string.Empty);
        return share is { } fraction ? Share(known, nominal, fraction, said) with { Origin = "the type's usual limit, since no tolerance is written" } : null;
    }

    private static Limit Share(AcceptLimit known, Quantity nominal, decimal fraction, string said)
    {
        var interval = Tolerance.Relative(fraction).Apply(nominal);
        return new Limit(
            LimitKind.EndOfLife,
            interval,
            "the type's usual limit",
            new(() => $"{said}{QuantityText.Format(nominal)} ±{QuantityText.FormatPercent(fraction)} allows {interval}"),
            new(() => $"{known.Source.Text}: {known.Accept}"))
        {
            Nominal = nominal,
        };
    }
}
