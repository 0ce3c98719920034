using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>Whether a resistor may stand for another: by value, tolerance, power, voltage and build. Common practice.</summary>
internal static class ResistorRules
{
    internal static IEnumerable<FitReason> Reasons(IFitPart place, IFitPart offer) =>
        [
            Kind(place, offer),
            .. PlainRules.WithinTolerance(place, offer, values => values.Resistance),
            .. Tolerance(place, offer),
            .. PlainRules.Rated(
                FitAspects.Power,
                place.Power,
                offer.Power,
                isAsked: place.Kind.Value.IsFixedResistor,
                isSameType: false,
                PlainRules.IsSafety(place)
            ),
            .. PlainRules.AtLeast(FitAspects.Voltage, place.RatedVoltage, offer.RatedVoltage, PlainRules.IsSafety(place)),
            .. Working(place, offer),
        ];

    private static FitReason Kind(IFitPart place, IFitPart offer)
    {
        var (was, now, role) = (place.Kind.Value, offer.Kind.Value, place.Role?.Value);
        return was == now ? FitReason.For(FitAspects.Kind, () => $"{now}: the same kind")
            : was.IsFixedResistor != now.IsFixedResistor || !was.IsFixedResistor
                ? FitReason.Against(FitAspects.Kind, () => $"{now} for {was}: another sort of part")
            : now == PartKinds.WireWoundResistor && role is { } minds && minds.MindsInductance()
                ? FitReason.Doubt(FitAspects.Kind, () => $"{now} for {was}: its winding is an inductance")
            : now == PartKinds.CarbonCompositionResistor
                ? FitReason.Doubt(FitAspects.Kind, () => $"{now} for {was}: it drifts more and is noisier")
            : was == PartKinds.CarbonCompositionResistor && role is PartRole.Snubber
                ? FitReason.Doubt(FitAspects.Kind, () => $"{now} for {was}: film bears pulses worse, look up its pulse rating")
            : FitReason.For(FitAspects.Kind, () => $"{now} for {was}: as good or better");
    }

    private static IEnumerable<FitReason> Tolerance(IFitPart place, IFitPart offer)
    {
        if (place.Tolerance is not { Value.IsRelative: true } was)
        {
            yield break;
        }

        yield return offer.Tolerance is not { Value.IsRelative: true } now
            ? FitReason.Unwritten(FitAspects.Tolerance, () => $"its tolerance is not written, {was.Value} is asked for")
        : now.Value.Lower < was.Value.Lower || now.Value.Upper > was.Value.Upper
            ? FitReason.Doubt(FitAspects.Tolerance, () => $"{now.Value} is wider than {was.Value}: measure and choose one")
        : FitReason.For(FitAspects.Tolerance, () => $"{now.Value} is not wider than {was.Value}");
    }

    private static IEnumerable<FitReason> Working(IFitPart place, IFitPart offer)
    {
        if (place.WorkingVoltage is not { } occurs)
        {
            yield break;
        }

        if (offer.RatedVoltage is not { } rated)
        {
            var words = new Electronics.LazyText(() => $"its voltage rating is not written, {Text(occurs)} occur in its place");
            yield return PlainRules.IsSafety(place)
                ? FitReason.Against(FitAspects.WorkingVoltage, words)
                : FitReason.Unwritten(FitAspects.WorkingVoltage, words);
            yield break;
        }

        yield return rated.Value.Value >= occurs.Value.Value
            ? FitReason.For(FitAspects.WorkingVoltage, () => $"{Text(rated)} for {Text(occurs)} in its place")
            : FitReason.Against(FitAspects.WorkingVoltage, () =>
                $"{Text(rated)} is under the {Text(occurs)} in its place: two in series share it"
            );
    }

    private static string Text(Written<Quantity> quantity) => QuantityText.Format(quantity.Value);
}
