using System.Collections.Immutable;

namespace Ohmstead.Electronics.Markings;

/// <summary>What a row of colours can say: the bands of a resistor from either end, and the codes of old capacitors and resistors with as
/// many colours.</summary>
internal static class ColourMeanings
{
    // No resistor with bands is made above it: colours that come to more are those of another part.
    private const decimal MostOhms = 1e9m;

    internal static IReadOnlyList<PrintMeaning> Read(ImmutableArray<BandColour> colours)
    {
        PrintMeaning[] others =
        [
            .. colours switch
            {
                [var first, var second, var third, var fourth, var fifth] => Marked(
                    "moulded polyester capacitor, from the top",
                    PrintedOn.Film,
                    PolyesterBands.Read(first, second, third, fourth, fifth)
                ),
                [var first, var second, var third, var fourth] =>
                [
                    .. Marked("tantalum bead: two rings, spot, foot", PrintedOn.Tantalum, TantalumSpots.Read(first, second, third, fourth)),
                    .. Marked("old resistor: body, end, dot, other end", PrintedOn.Resistor, BodyEndDot.Read(first, second, third, fourth)),
                ],
                [var first, var second, var third] =>
                [
                    .. Marked("tantalum bead: two rings, spot", PrintedOn.Tantalum, TantalumSpots.Read(first, second, third)),
                    .. Marked("old resistor: body, end, dot", PrintedOn.Resistor, BodyEndDot.Read(first, second, third)),
                ],
                _ => Enumerable.Empty<PrintMeaning>(),
            },
        ];
        return [.. Bands(colours, others.Length == 0 ? decimal.MaxValue : MostOhms), .. others];
    }

    private static IEnumerable<PrintMeaning> Bands(ImmutableArray<BandColour> colours, decimal most) =>
        ResistorBands.Read(colours).Is(out var bands, out _)
            ? bands
                .Readings.Where(reading => reading.Value.Nominal.Value <= most)
                .Select(reading => new PrintMeaning(
                    "resistor, colour bands",
                    PrintWords.Describe(reading.Value),
                    reading.Value.Nominal.Value == 0m ? null : reading.Value.Limits.ToString(),
                    reading.Rule + (reading.Value.IsPreferred ? string.Empty : "; no preferred value"),
                    reading.Source
                )
                {
                    On = PrintedOn.Resistor,
                })
            : [];

    private static IEnumerable<PrintMeaning> Marked(string what, PrintedOn on, Parsed<Marking<MarkedValue>> parsed) =>
        parsed.Is(out var read, out _)
            ? read.Readings.Select(reading => new PrintMeaning(
                what,
                PrintWords.Describe(reading.Value),
                reading.Value.Limits?.ToString(),
                reading.Rule,
                reading.Source
            )
            {
                On = on,
            })
            : [];
}
