using System.Globalization;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The three-character code of small resistors of the E96 series, ±1 %: two digits for the place in the series, a letter for the
/// multiplier.</summary>
/// <remarks>01C is 10 kΩ, 68X is 49.9 Ω. Copied tables have misprints: place 68 is 499, and A is 1. Source: IEC 60062:2016, from memory;
/// the letters from lists in use.</remarks>
public static class ThreeCharacterCode
{
    private const int Longest = 3;
    private const decimal Hundred = 100m;
    private static readonly Source Standard = Source.FromMemory("IEC 60062:2016", "three-character code of the E96 series (EIA-96)");

    /// <summary>Reads a code: two digits from 01 to 96 and a letter.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text)
    {
        if (
            text.Length != Longest
            || !char.IsAsciiDigit(text[0])
            || !char.IsAsciiDigit(text[1])
            || int.Parse(text[..2], NumberStyles.None, CultureInfo.InvariantCulture) is not (>= 1 and <= 96 and var place)
            || Factor(text[2]) is not { } factor
        )
            return Marking<MarkedValue>.Failed(
                text,
                $"'{Excerpt.From(text)}' is no three-character code of a resistor, expected 01 to 96 and a letter such as 01C"
            );
        var figures = ESeries.E96.Decade[place - 1] * Hundred;
        var ohms = new Quantity(figures * factor, Dimension.Resistance);
        return Marking<MarkedValue>.Read(
            new MarkingReading<MarkedValue>(
                new MarkedValue(ohms, Tolerance.Relative(0.01m)),
                $"place {text[..2]} of E96 is {Figures.Text(figures)}; {text[2]} is × {Figures.Text(factor)} Ω",
                Standard
            )
        );
    }

    private static decimal? Factor(char letter) =>
        letter switch
        {
            'Z' => 0.001m,
            'Y' or 'R' => 0.01m,
            'X' or 'S' => 0.1m,
            'A' => 1m,
            'B' or 'H' => 10m,
            'C' => 100m,
            'D' => 1_000m,
            'E' => 10_000m,
            'F' => 100_000m,
            _ => null,
        };
}
