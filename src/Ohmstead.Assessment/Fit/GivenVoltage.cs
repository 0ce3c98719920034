using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>A voltage that a part gives, or wants, and does not bear: that of another part must be the same, neither less nor
/// more.</summary>
internal static class GivenVoltage
{
    /// <summary>The reason, or null where neither says a voltage and something else tells it.</summary>
    /// <param name="place">The place.</param>
    /// <param name="offer">What may go into it.</param>
    /// <param name="isToldOtherwise">True when the same type, or as many cells of one chemistry, tell the same voltage.</param>
    internal static FitReason? Reason(IFitPart place, IFitPart offer, bool isToldOtherwise) =>
        (Volts(place), Volts(offer)) switch
        {
            ({ } was, { } now) when was == now => Electronics.Substitution.FitReason.For(FitAspects.Value, () =>
                $"{Text(now)}: the same voltage"
            ),
            ({ } was, { } now) => Electronics.Substitution.FitReason.Against(FitAspects.Value, () =>
                $"{Text(now)} for {Text(was)}, expected the same: it is what the part {Verb(place)}, and not what it bears"
            ),
            _ when isToldOtherwise => null,
            ({ } was, null) => Electronics.Substitution.FitReason.Unwritten(FitAspects.Value, () =>
                $"its voltage is not written, {Text(was)} are asked for"
            ),
            (null, null) => Electronics.Substitution.FitReason.Unwritten(FitAspects.Value, "neither voltage is written"),
            _ => Electronics.Substitution.FitReason.Missing(FitAspects.Value, "the voltage that the place asks for is not written"),
        };

    // The type number of a Zener diode can tell its voltage.
    private static decimal? Volts(IFitPart part) =>
        part.RatedVoltage?.Value.Value
        ?? (part.Kind.Value.TypeTellsVoltage && part.Type is { } type ? ZenerType.Parse(type.Value)?.NominalVolts : null);

    private static string Verb(IFitPart part) =>
        part.Kind.Value == PartKinds.Lamp || part.Kind.Value.Family == PartFamily.Coil ? "wants" : "gives";

    private static string Text(decimal volts) => QuantityText.Format(new Quantity(volts, Dimension.Voltage));
}
