using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>Asks every code that is known what a print says. The most usual meaning of each comes first; nothing decides between them but a measurement.</summary>
public static class PrintReader
{
    /// <summary>All meanings of a print as a whole; empty when no code knows it.</summary>
    /// <param name="text">The print, or the names of its colours.</param>
    /// <param name="years">The years in which the part can have been made, for date codes.</param>
    public static IReadOnlyList<PrintMeaning> Read(string text, YearRange years)
    {
        var print = text.Trim();
        return print.Length == 0 ? []
            : BandColours.Parse(print).Is(out var colours, out _) ? ColourMeanings.Of(colours)
            : [.. Values(print), .. Letters(print), .. Dates(print, years)];
    }

    private static IEnumerable<PrintMeaning> Values(string print)
    {
        IEnumerable<PrintMeaning> values =
        [
            .. Marked("resistor, letter code", LetterCode.Parse(print, Dimension.Resistance)),
            .. Marked("capacitor, letter code", LetterCode.Parse(print, Dimension.Capacitance)),
            .. Marked("capacitor, digit code", DigitCode.Parse(print)),
            .. Old(print),
            .. Marked("resistor, digit code", ResistorDigitCode.Parse(print)),
        ];
        return values.DistinctBy(value => value.Meaning, StringComparer.Ordinal);
    }

    private static IEnumerable<PrintMeaning> Old(string print) => TradeNotation.Parse(print).Is(out var read, out _)
        ? read.Readings.Select(reading => new PrintMeaning(
            "capacitor, as printed",
            PrintWords.Of(reading.Value),
            reading.Value is { Tolerance: { } tolerance, Sections: [var one] } ? tolerance.Apply(one).ToString() : null,
            reading.Rule,
            reading.Source))
        : [];

    private static IEnumerable<PrintMeaning> Letters(string print)
    {
        if (print.Length == 1)
        {
            foreach (var (dimension, what) in new[] { (Dimension.Capacitance, "tolerance letter of a capacitor"), (Dimension.Resistance, "tolerance letter of a resistor") })
            {
                foreach (var meaning in ToleranceLetters.Meanings(print[0], dimension))
                {
                    yield return new(what, meaning.Tolerance.ToString(), null, $"letter {print}", meaning.Source);
                }
            }
        }

        if (TemperatureCoefficientLetter.Parse(print).Is(out var coefficient, out _))
        {
            yield return new("temperature coefficient letter of a resistor", $"±{PrintWords.Millionths(coefficient.Value)}", null, $"letter {print}", Source.Published("IEC 60062"));
        }

        if (VoltageCode.Parse(print).Is(out var volts, out _))
        {
            yield return new("voltage code", QuantityText.Format(volts), null, "the digit is a power of ten, the letter a factor", VoltageCode.Source);
        }

        if (CeramicCode.Parse(print).Is(out var ceramic, out _))
        {
            yield return new("temperature code of a ceramic capacitor", PrintWords.Of(ceramic.Value), null, ceramic.Rule, ceramic.Source);
        }

        if (FilmDielectric.Parse(print).Is(out var film, out _))
        {
            yield return new("letters of a film or paper capacitor", $"{(film.IsMetallised ? "metallised " : string.Empty)}{film.Dielectric}{(film.IsMetallised ? string.Empty : " and foil")}", null, $"letters {film.Letters}", film.Source);
        }
    }

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

    private static IEnumerable<PrintMeaning> Marked(string what, Parsed<Marking<MarkedValue>> parsed) => parsed.Is(out var read, out _)
        ? read.Readings.Select(reading => new PrintMeaning(what, PrintWords.Of(reading.Value), reading.Value.Limits?.ToString(), reading.Rule, reading.Source))
        : [];
}
