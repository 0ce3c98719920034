using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>Asks every code that is known what a print says. The most usual meaning of each comes first; nothing decides between them but
/// the part and a measurement.</summary>
public static class PrintReader
{
    // More figures than these no capacitor and no resistor is marked with.
    private const int MostFigures = 3;
    private const int MostResistorFigures = 4;

    /// <summary>All meanings of a print as a whole; empty when no code knows it.</summary>
    /// <param name="text">The print, or the names of its colours.</param>
    /// <param name="years">The years in which the part can have been made, for date codes.</param>
    /// <param name="on">The parts that it may stand on: what is printed on others only is left out.</param>
    public static IReadOnlyList<PrintMeaning> Read(string text, YearRange years, PrintedOn on = PrintedOn.Any)
    {
        var print = text.Trim();
        IReadOnlyList<PrintMeaning> all =
            print.Length == 0 ? []
            : BandColours.Parse(print).Is(out var colours, out _) ? ColourMeanings.Read(colours)
            : [.. MainsWords.Read(print), .. Values(print), .. LetterMeanings.Read(print), .. Ratings.Read(print), .. Dates(print, years)];
        return [.. all.Where(meaning => (meaning.On & on) != PrintedOn.None)];
    }

    private static IEnumerable<PrintMeaning> Values(string print)
    {
        PrintMeaning[] old = [.. Old(print)];
        PrintMeaning[] capacitors =
        [
            .. old.Length > 0 && Figured(print) > MostFigures
                ? []
                : Marked("capacitor, letter code", PrintedOn.Capacitor, LetterCode.Parse(print, Dimension.Capacitance)),
            .. Marked("capacitor, digit code", PrintedOn.Capacitor, DigitCode.Parse(print)),
            .. Marked(
                "film capacitor, value, tolerance and voltage",
                PrintedOn.Film | PrintedOn.Ceramic | PrintedOn.Suppression,
                FilmPrint.Parse(print)
            ),
            .. Marked("tantalum chip, voltage and value", PrintedOn.Tantalum, TantalumChipCode.Parse(print)),
            .. Marked("chip capacitor, two-character code", PrintedOn.Ceramic, ChipCapacitorCode.Parse(print)),
            .. old,
        ];
        IEnumerable<PrintMeaning> values =
        [
            .. capacitors.Length > 0 && Figured(print) > MostResistorFigures
                ? []
                : Marked("resistor, letter code", PrintedOn.Resistor, LetterCode.Parse(print, Dimension.Resistance)),
            .. Marked("resistor, three-character code", PrintedOn.Resistor, ThreeCharacterCode.Parse(print)),
            .. capacitors,
            .. Marked("resistor, digit code", PrintedOn.Resistor, ResistorDigitCode.Parse(print)),
        ];
        return values.DistinctBy(value => value.Meaning, StringComparer.Ordinal);
    }

    private static int Figured(string print) => print.Where(char.IsAsciiDigit).SkipWhile(digit => digit == '0').Count();

    private static IEnumerable<PrintMeaning> Old(string print) =>
        TradeNotation.Parse(print).Is(out var read, out _)
            ? read.Readings.Select(reading => new PrintMeaning(
                "capacitor, as printed",
                PrintWords.Describe(reading.Value),
                reading.Value is { Tolerance: { } tolerance, Sections: [var one] } ? tolerance.Apply(one).ToString() : null,
                reading.Rule,
                reading.Source
            )
            {
                On = PrintedOn.Capacitor,
            })
            : [];

    private static IEnumerable<PrintMeaning> Dates(string print, YearRange years)
    {
        if (DateCode.Parse(print, years).Is(out var dates, out _))
        {
            foreach (var date in dates.Readings)
            {
                yield return new("date code", date.Value.ToString(), null, date.Rule, date.Source);
            }
        }

        if (SourceDateCode.Parse(print, years).Is(out var coded, out _))
        {
            foreach (var date in coded.Readings)
            {
                yield return new("maker and date", $"maker {date.Value.MakerNumber}, {date.Value.Date}", null, date.Rule, date.Source);
            }
        }
    }

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
