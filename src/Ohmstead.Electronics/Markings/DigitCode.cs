using System.Globalization;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The digit code of capacitors: two digits and a multiplier in picofarad, with a tolerance letter behind and a voltage code
/// before it.</summary>
/// <remarks>
/// 104 is 100 nF; a multiplier of 8 is a hundredth and of 9 a tenth (229 is 2.2 pF); 4R7 is 4.7 pF; 2A104J adds 100 V and ±5 %. Two digits
/// are picofarads as they stand (47K is 47 pF ±10 %, no kilo). Three digits that end in 0 have two meanings: 220 is 22 pF by the code and
/// 220 pF on old discs and micas. Source: EIA-198 for the code, from memory; common practice for the rest.
/// </remarks>
public static class DigitCode
{
    private const decimal Picofarad = 1e-12m;
    private static readonly Source Standard = Source.FromMemory("EIA-198");
    private static readonly Source Literal = Source.Practice("old discs and micas print picofarads as they are");

    /// <summary>Reads the code of a capacitor.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text)
    {
        var rest = text;
        Quantity? voltage = null;
        if (text.Length >= 4 && VoltageCode.Parse(text[..2]).Is(out var rated, out _))
        {
            voltage = rated;
            rest = text[2..];
        }

        var letter = rest.Length > 2 && char.IsAsciiLetterUpper(rest[^1]) ? rest[^1] : '\0';
        var digits = letter == '\0' ? rest : rest[..^1];
        var values = Values(digits);
        if (values.Length == 0)
            return Marking<MarkedValue>.Failed(
                text,
                $"'{Excerpt.From(text)}' is no digit code of a capacitor, expected one such as 104, 47K or 2A104J"
            );

        var readings = new List<MarkingReading<MarkedValue>>();
        foreach (var (farads, rule, source) in values)
        {
            var nominal = new Quantity(farads, Dimension.Capacitance);
            if (letter == '\0')
            {
                readings.Add(new MarkingReading<MarkedValue>(new MarkedValue(nominal, null, voltage), rule, source));
                continue;
            }

            var meanings = ToleranceLetters.Meanings(letter, Dimension.Capacitance, nominal);
            if (meanings.IsEmpty)
                return Marking<MarkedValue>.Failed(
                    text,
                    $"'{letter}' in '{Excerpt.From(text)}' is no tolerance letter of a capacitance",
                    text[..^1].ToString()
                );
            foreach (var meaning in meanings)
            {
                readings.Add(
                    new MarkingReading<MarkedValue>(
                        new MarkedValue(nominal, meaning.Tolerance, voltage),
                        $"{rule}; {letter} is {meaning.Tolerance}",
                        meanings.Length == 1 ? source : meaning.Source
                    )
                );
            }
        }

        return Parsed<Marking<MarkedValue>>.From(new Marking<MarkedValue>([.. readings]));
    }

    private static (decimal Farads, string Rule, Source Source)[] Values(ReadOnlySpan<char> code)
    {
        if (code is [>= '0' and <= '9', 'R', >= '0' and <= '9'])
            return [(((code[0] - '0') + ((code[2] - '0') / 10m)) * Picofarad, "R is the decimal point, in pF", Standard)];
        if (code.IsEmpty || code.ContainsAnyExceptInRange('0', '9') || code[0] == '0')
            return [];

        var number = code.Length <= 3 ? int.Parse(code, NumberStyles.None, CultureInfo.InvariantCulture) : 0;
        if (code.Length is 1 or 2)
            return [(number * Picofarad, "picofarads as they stand", Literal)];
        if (code.Length != 3)
            return [];

        var power = (number % 10) switch
        {
            8 => -2,
            9 => -1,
            var zeros => zeros,
        };
        var first = (number / 10 * DecimalMath.PowerOfTen(power) * Picofarad, Rule(number / 10, power), Standard);
        return number % 10 == 0 ? [first, (number * Picofarad, "picofarads as they stand", Literal)] : [first];
    }

    private static string Rule(int digits, int power) => string.Create(CultureInfo.InvariantCulture, $"{digits} × 10^{power} pF");
}
