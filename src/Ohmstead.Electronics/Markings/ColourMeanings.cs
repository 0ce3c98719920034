using System.Collections.Immutable;

namespace Ohmstead.Electronics.Markings;

/// <summary>What a row of colours can say: the bands of a resistor from either end, and the codes of old capacitors and resistors with as many colours.</summary>
internal static class ColourMeanings
{
    internal static IReadOnlyList<PrintMeaning> Of(ImmutableArray<BandColour> colours) =>
    [
        .. Bands(colours),
        .. colours switch
        {
            [var first, var second, var third, var fourth, var fifth] => Marked("moulded polyester capacitor, from the top", PolyesterBands.Read(first, second, third, fourth, fifth)),
            [var first, var second, var third, var fourth] =>
            [
                .. Marked("tantalum bead: two rings, spot, foot", TantalumSpots.Read(first, second, third, fourth)),
                .. Marked("old resistor: body, end, dot, other end", BodyEndDot.Read(first, second, third, fourth)),
            ],
            [var first, var second, var third] =>
            [
                .. Marked("tantalum bead: two rings, spot", TantalumSpots.Read(first, second, third)),
                .. Marked("old resistor: body, end, dot", BodyEndDot.Read(first, second, third)),
            ],
            _ => [],
        },
    ];

    private static IEnumerable<PrintMeaning> Bands(ImmutableArray<BandColour> colours) => ResistorBands.Read(colours).Is(out var bands, out _)
        ? bands.Readings.Select(reading => new PrintMeaning(
            "resistor, colour bands",
            PrintWords.Of(reading.Value),
            reading.Value.Nominal.Value == 0m ? null : reading.Value.Limits.ToString(),
            reading.Rule + (reading.Value.IsPreferred ? string.Empty : "; no preferred value"),
            reading.Source))
        : [];

    private static IEnumerable<PrintMeaning> Marked(string what, Parsed<Marking<MarkedValue>> parsed) => parsed.Is(out var read, out _)
        ? read.Readings.Select(reading => new PrintMeaning(what, PrintWords.Of(reading.Value), reading.Value.Limits?.ToString(), reading.Rule, reading.Source))
        : [];
}
