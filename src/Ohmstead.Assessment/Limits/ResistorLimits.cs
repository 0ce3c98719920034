using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>What a resistor of a technology may usually have drifted to. Where no tolerance is written, the widest that the technology was
/// sold with is taken.</summary>
/// <remarks>Common practice: carbon composition ±20 %, carbon film its mark and 2 %, metal film its mark and 1 %, a potentiometer ±20 % end
/// to end.</remarks>
public static class ResistorLimits
{
    private static readonly LazyText OfTheType = "the type's usual limit";
    private static readonly LazyText OfTheTypeUnmarked = "the type's usual limit, since no tolerance is written";

    /// <summary>The usual limit of a worn resistor, or null for one that is new, unmarked, or of a technology without a usual
    /// figure.</summary>
    public static Limit? Usual(IMarkedPart part, ReadingConditions how)
    {
        if (how.IsNew || part.Resistance is not { Value: var nominal } || part.Kind.Value.StraysLike is not { } known)
        {
            return null;
        }

        if (part.Tolerance is { } written)
        {
            // A mark that is not a symmetric share of the value has no usual figure of ageing; one without ageing says no more than the
            // mark.
            return !written.Value.IsRelative || written.Value.Upper != -written.Value.Lower ? null
                : known.LooseFraction is { } loose && loose > written.Value.Upper
                    ? Share(known, OfTheType, nominal, loose, new Loose(written, nominal, loose))
                : known.ExtraFraction is > 0m and var extra
                    ? Share(known, OfTheType, nominal, written.Value.Upper + extra, new Aged(written, extra, nominal))
                : null;
        }

        var (share, said) = known.UsualTolerance is { } usual
            ? (
                usual + (known.ExtraFraction ?? 0m),
                $"±{QuantityText.FormatPercent(usual)} at the widest"
                    + (known.ExtraFraction is > 0m and var ageing ? $" and {QuantityText.FormatPercent(ageing)} of ageing: " : ": ")
            )
            : (known.LooseFraction, string.Empty);
        return share is { } fraction ? Share(known, OfTheTypeUnmarked, nominal, fraction, Unmarked(said, nominal, fraction)) : null;
    }

    private static Limit Share(AcceptLimit known, LazyText origin, Quantity nominal, decimal fraction, LazyText arithmetic) =>
        new(
            LimitKind.EndOfLife,
            Tolerance.Relative(fraction).Apply(nominal),
            origin,
            arithmetic,
            LazyText.For(known, static known => $"{known.Source.Text}: {known.Accept}")
        )
        {
            Nominal = nominal,
        };

    private static LazyText Unmarked(string said, Quantity nominal, decimal fraction) => new(() => said + Allowed(nominal, fraction));

    private static string Allowed(Quantity nominal, decimal fraction) =>
        $"{QuantityText.Format(nominal)} ±{QuantityText.FormatPercent(fraction)} allows {Tolerance.Relative(fraction).Apply(nominal)}";

    private sealed class Loose(Written<Tolerance> written, Quantity nominal, decimal fraction) : LazyText
    {
        protected override string Write() => $"marked {written.Text}; borne where it is uncritical: {Allowed(nominal, fraction)}";
    }

    private sealed class Aged(Written<Tolerance> written, decimal ageing, Quantity nominal) : LazyText
    {
        protected override string Write() =>
            $"marked {written.Text} and {QuantityText.FormatPercent(ageing)} of ageing: {Allowed(nominal, written.Value.Upper + ageing)}";
    }
}
