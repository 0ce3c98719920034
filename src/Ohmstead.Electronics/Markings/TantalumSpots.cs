using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The colours of tantalum beads: two digits from the top, a spot for the multiplier (in µF), a foot for the rated
/// voltage.</summary>
/// <remarks>
/// Spot grey 0.01, white 0.1, black 1, brown 10, red 100. Foot white 3, yellow 6.3, black 10, green 16, blue 20, grey 25, pink 35 V. With
/// the spot facing the reader the positive lead is on the right. Source: makers' code, from memory. A polarity taken from a marking alone
/// is to be confirmed before power.
/// </remarks>
public static class TantalumSpots
{
    private static readonly Source Source = Source.FromMemory("tantalum bead colour code");

    /// <summary>Reads the colours; the foot may be missing.</summary>
    public static Parsed<Marking<MarkedValue>> Read(BandColour first, BandColour second, BandColour spot, BandColour? foot = null)
    {
        var named = $"{BandColours.Name(first)} {BandColours.Name(second)}, spot {BandColours.Name(spot)}";
        if (Microfarads(spot) is not { } factor || BandColours.Value([first, second], BandColour.Black) is not { } digits)
            return Marking<MarkedValue>.Failed(
                named,
                $"'{named}' is no tantalum bead, expected digit, digit and a spot of grey, white, black, brown or red"
            );
        if (foot is { } colour && Volts(colour) is null)
            return Marking<MarkedValue>.Failed(
                named,
                $"a foot in {BandColours.Name(colour)} has no rated voltage, expected white, yellow, black, green, blue, grey or pink"
            );
        Quantity? rated = foot is { } known && Volts(known) is { } volts ? new Quantity(volts, Dimension.Voltage) : null;
        return Marking<MarkedValue>.Read(
            new MarkingReading<MarkedValue>(
                new MarkedValue(new Quantity(digits * factor * 0.000001m, Dimension.Capacitance), null, rated),
                named,
                Source
            )
        );
    }

    private static decimal? Microfarads(BandColour spot) =>
        spot switch
        {
            BandColour.Grey => 0.01m,
            BandColour.White => 0.1m,
            BandColour.Black => 1m,
            BandColour.Brown => 10m,
            BandColour.Red => 100m,
            _ => null,
        };

    private static decimal? Volts(BandColour foot) =>
        foot switch
        {
            BandColour.White => 3m,
            BandColour.Yellow => 6.3m,
            BandColour.Black => 10m,
            BandColour.Green => 16m,
            BandColour.Blue => 20m,
            BandColour.Grey => 25m,
            BandColour.Pink => 35m,
            _ => null,
        };
}
