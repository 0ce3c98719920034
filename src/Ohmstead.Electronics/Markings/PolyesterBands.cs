using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The five bands of moulded polyester capacitors of the 1960s and 1970s: two digits, multiplier (in pF), tolerance, rated
/// voltage.</summary>
/// <remarks>Tolerance black 20 %, white 10 %, green 5 %; voltage brown 100 V, red 250 V, yellow 400 V. Read from the top, away from the
/// leads. Source:
/// makers' code, from memory.</remarks>
public static class PolyesterBands
{
    private static readonly Source Source = Source.FromMemory("moulded polyester colour code");

    /// <summary>Reads the bands from the top down.</summary>
    public static Parsed<Marking<MarkedValue>> Read(
        BandColour first,
        BandColour second,
        BandColour multiplier,
        BandColour tolerance,
        BandColour voltage
    )
    {
        var named = string.Join(' ', new[] { first, second, multiplier, tolerance, voltage }.Select(BandColours.Name));
        decimal? percent = tolerance switch
        {
            BandColour.Black => 20m,
            BandColour.White => 10m,
            BandColour.Green => 5m,
            _ => null,
        };
        decimal? volts = voltage switch
        {
            BandColour.Brown => 100m,
            BandColour.Red => 250m,
            BandColour.Yellow => 400m,
            _ => null,
        };
        if (percent is not { } width || volts is not { } rated || BandColours.Value([first, second], multiplier) is not { } picofarads)
            return Marking<MarkedValue>.Failed(
                named,
                $"'{named}' is no moulded polyester part, expected digit, digit, multiplier, black, white or green, then brown, red or "
                    + "yellow"
            );
        return Marking<MarkedValue>.Read(
            new MarkingReading<MarkedValue>(
                new MarkedValue(
                    new Quantity(picofarads * 1e-12m, Dimension.Capacitance),
                    Tolerance.Relative(width / 100m),
                    new Quantity(rated, Dimension.Voltage)
                ),
                named,
                Source
            )
        );
    }
}
