using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The pre-war colouring of resistors: the body is the first digit, one end the second, a dot the multiplier, the other end the
/// tolerance.</summary>
/// <remarks>A dot that cannot be seen has the colour of the body. Source: RMA body-end-dot, from memory.</remarks>
public static class BodyEndDot
{
    private static readonly Source Source = Source.FromMemory("RMA body-end-dot code");

    /// <summary>Reads the three colours, and the second end where it is gold (5 %) or silver (10 %); without it the tolerance is 20
    /// %.</summary>
    public static Parsed<Marking<MarkedValue>> Read(BandColour body, BandColour end, BandColour dot, BandColour? otherEnd = null)
    {
        decimal? percent = otherEnd switch
        {
            null => 20m,
            BandColour.Gold => 5m,
            BandColour.Silver => 10m,
            _ => null,
        };
        var named = $"body {BandColours.Name(body)}, end {BandColours.Name(end)}, dot {BandColours.Name(dot)}";
        if (percent is not { } known || BandColours.Value([body, end], dot) is not { } ohms)
            return Marking<MarkedValue>.Failed(
                named,
                $"'{named}' is no resistor, expected two digits, a multiplier and gold or silver for the tolerance"
            );
        return Marking<MarkedValue>.Read(
            new MarkingReading<MarkedValue>(
                new MarkedValue(new Quantity(ohms, Dimension.Resistance), Tolerance.Relative(known / 100m)),
                named,
                Source
            )
        );
    }
}
