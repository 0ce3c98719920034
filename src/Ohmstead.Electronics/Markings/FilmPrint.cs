using System.Globalization;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>Value, tolerance letter and rated d.c. voltage printed together on film capacitors: 100nJ63, 6n8J100, 104K400,
/// .47K250.</summary>
/// <remarks>Value and tolerance by IEC 60062, then the figure of the voltage. Source: common practice; no maker's page with this very form
/// was found.</remarks>
public static class FilmPrint
{
    private const int CodeDigits = 3;
    private const int LeastVoltDigits = 2;
    private const int MostVoltDigits = 5;
    private static readonly Source Practice = Source.Practice("film capacitors: value, tolerance letter, rated voltage");

    /// <summary>Reads the print. A tolerance letter with several meanings gives as many readings.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text)
    {
        var rest = text.TrimEnd('V');
        var start = rest.Length;
        while (start > 0 && char.IsAsciiDigit(rest[start - 1]))
            start--;
        if (
            rest.Length - start is < LeastVoltDigits or > MostVoltDigits
            || start < 2
            || rest[start] == '0'
            || !char.IsAsciiLetterUpper(rest[start - 1])
        )
            return Failed(text);
        var letter = rest[start - 1];
        var rated = new Quantity(int.Parse(rest[start..], NumberStyles.None, CultureInfo.InvariantCulture), Dimension.Voltage);
        var readings = new List<MarkingReading<MarkedValue>>();
        foreach (var (nominal, rule) in Values(rest[..(start - 1)]))
        {
            foreach (var meaning in ToleranceLetters.Meanings(letter, Dimension.Capacitance, nominal))
            {
                readings.Add(
                    new(
                        new MarkedValue(nominal, meaning.Tolerance, rated),
                        $"{rule}; {letter} is {meaning.Tolerance}; then the rated voltage",
                        Practice
                    )
                );
            }
        }

        return readings.Count == 0 ? Failed(text) : Parsed<Marking<MarkedValue>>.From(new Marking<MarkedValue>([.. readings]));
    }

    private static (Quantity Nominal, string Rule)[] Values(ReadOnlySpan<char> value)
    {
        if (LetterCode.Parse(value, Dimension.Capacitance).Is(out var letters, out _))
            return [.. letters.Readings.Select(read => (read.Value.Nominal, read.Rule))];
        if (value.Length == CodeDigits && DigitCode.Parse(value).Is(out var digits, out _))
            return [.. digits.Readings.Select(read => (read.Value.Nominal, read.Rule))];
        return value.Contains('.') && QuantityText.Parse(value, Dimension.Number).Is(out var bare, out _) && bare.Value is > 0m and < 10m
            ? [(new Quantity(bare.Value * 1e-6m, Dimension.Capacitance), "a figure with a point is in µF")]
            : [];
    }

    private static Parsed<Marking<MarkedValue>> Failed(ReadOnlySpan<char> text) =>
        Marking<MarkedValue>.Failed(
            text,
            $"'{Excerpt.From(text)}' is no print of a film capacitor, expected value, tolerance letter and voltage such as 100nJ63"
        );
}
