using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>
/// Parts that are known by their type before all else: semiconductors, valves, relays, lamps, cells, connectors. Common practice.
/// </summary>
internal static class TypeRules
{
    internal static IEnumerable<FitReason> Reasons(IFitPart place, IFitPart offer)
    {
        yield return Kind(place.Kind.Value, offer.Kind.Value);
        if (place.Kind.Value == PartKinds.Cell)
        {
            foreach (var reason in CellRules.Reasons(place, offer))
            {
                yield return reason;
            }

            yield break;
        }

        var isSameType = IsSame(place, offer);
        yield return Type(place.Type?.Value, offer.Type?.Value);
        if (place.Kind.Value == PartKinds.Diode && place.Material is { } was && offer.Material is { } now && was.Value != now.Value)
        {
            yield return FitReason.Doubt(FitAspects.Kind, () => $"{now.Text} for {was.Text}: it drops another voltage");
        }

        foreach (var reason in Ratings(place, offer, isSameType))
        {
            yield return reason;
        }
    }

    /// <summary>Whether two parts are of one kind and one type, which says that their ratings are the same.</summary>
    internal static bool IsSame(IFitPart place, IFitPart offer) =>
        place.Kind.Value == offer.Kind.Value && place.Type is { } type && offer.Type?.Value == type.Value;

    private static FitReason Kind(PartKind was, PartKind now) =>
        (was, now) switch
        {
            _ when was == PartKinds.SeleniumRectifier && now.Junction == Junction.Rectifying && now != was => FitReason.Doubt(
                FitAspects.Kind,
                "silicon for selenium drops less: the voltage behind it rises, a series resistor takes it up"
            ),
            _ when was == PartKinds.GermaniumTransistor && now == PartKinds.Transistor => FitReason.Doubt(
                FitAspects.Kind,
                "silicon for germanium wants another bias"
            ),
            _ when was != now => FitReason.Against(FitAspects.Kind, $"{now} for {was}: another sort of part"),
            _ => FitReason.For(FitAspects.Kind, $"{was}: the same kind"),
        };

    private static FitReason Type(string? was, string? now) =>
        (was, now) switch
        {
            (null, _) => FitReason.Missing(FitAspects.Type, "the type of the original is not written"),
            ({ }, null) => FitReason.Missing(FitAspects.Type, () => $"its type is not written, {was} is asked for"),
            var (one, other) when one == other => FitReason.For(FitAspects.Type, () => $"{now}: the same type"),
            _ => FitReason.Doubt(FitAspects.Type, () => $"{now} for {was}: compare the data of both"),
        };

    private static IEnumerable<FitReason> Ratings(IFitPart place, IFitPart offer, bool isSameType)
    {
        var isSafety = PlainRules.IsSafety(place);
        var given = place.Kind.Value.Voltage == VoltageMeaning.Given;
        if (given && GivenVoltage.Reason(place, offer, isSameType) is { } voltage)
        {
            yield return voltage;
        }

        // What a lamp draws, and what a coil does, belongs to its circuit; it is not borne.
        if (place.Kind.Value == PartKinds.Lamp && place.Current is { } draws && offer.Current is { } drawn && drawn.Value != draws.Value)
        {
            yield return FitReason.Doubt(FitAspects.Current, () =>
                $"it draws {QuantityText.Format(drawn.Value)}, the original {QuantityText.Format(draws.Value)}: look what feeds it"
            );
        }

        if (
            place.Kind.Value.Family == PartFamily.Coil
            && place.Resistance is { } coil
            && offer.Resistance is { } winding
            && !(place.Tolerance is { } wide ? wide.Value.Apply(coil.Value).Contains(winding.Value) : winding.Value == coil.Value)
        )
        {
            yield return FitReason.Doubt(FitAspects.Value, () =>
                $"a winding of {QuantityText.Format(winding.Value)} for {QuantityText.Format(coil.Value)}: look what drives it"
            );
        }

        var bears = place.Kind.Value.Junction == Junction.Rectifying;
        foreach (
            var reason in place.Kind.Value == PartKinds.Lamp
                ? []
                : PlainRules.Rated(FitAspects.Current, place.Current, offer.Current, bears && !isSameType, isSameType, isSafety)
        )
        {
            yield return reason;
        }

        foreach (
            var reason in given
                ? []
                : PlainRules.Rated(FitAspects.Voltage, place.RatedVoltage, offer.RatedVoltage, bears && !isSameType, isSameType, isSafety)
        )
        {
            yield return reason;
        }

        foreach (var reason in PlainRules.Rated(FitAspects.Power, place.Power, offer.Power, isAsked: false, isSameType, isSafety))
        {
            yield return reason;
        }
    }
}
