using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The letter-and-digit code of IEC 60062: the letter stands where the decimal point would be and carries the
/// multiplier.</summary>
/// <remarks>
/// A tolerance letter may follow: 4K7J, 4n7K, 8p2D. On a resistor a single K or M with no later letter is the multiplier (47K is 47 kΩ);
/// on a capacitor only p, n, µ, m and F multiply, so that the K of 4n7K is a tolerance. Old Continental parts print E for R. Here, on the
/// part itself, a bare m is milli as the standard has it (10m is 10 000 µF). Source: IEC 60062:2016 clause 4, from memory.
/// </remarks>
public static class LetterCode
{
    private static readonly Source Standard = Source.FromMemory("IEC 60062:2016", "clause 4");
    private static readonly Source Continental = Source.Practice("old Continental print: E for R");

    /// <summary>Reads a code of a resistance or a capacitance. A tolerance letter with several meanings gives as many readings.</summary>
    public static Parsed<Marking<MarkedValue>> Parse(ReadOnlySpan<char> text, Dimension dimension)
    {
        if (dimension is not (Dimension.Resistance or Dimension.Capacitance))
            return Failed(text, $"no letter code for {DimensionFacts.One(dimension)}, expected a resistance or a capacitance");
        var at = 0;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        if (at == text.Length)
        {
            var example = dimension is Dimension.Resistance ? "4K7" : "4n7";
            return Failed(text, $"'{Excerpt.From(text)}' has no letter for its decimal point, expected a code such as {example}");
        }

        var continental = dimension is Dimension.Resistance && text[at] == 'E';
        var power = 0;
        if (!continental && !DimensionFacts.TryCodeLetter(dimension, text[at], out power))
            return Failed(text, $"'{Excerpt.From(text)}' is no letter code of {DimensionFacts.One(dimension)}");
        var end = at + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        var fraction = end - at - 1;
        if (end == 1 || end > 12 || !TryCompose(text[..at], text[(at + 1)..end], power - fraction, out var value))
            return Failed(text, $"'{Excerpt.From(text)}' has no digits or too many, expected 1 to 11");

        var nominal = new Quantity(value, dimension);
        var source = continental ? Continental : Standard;
        var rule = $"{text[at]} in place of the decimal point";
        return (text.Length - end) switch
        {
            0 => Marking<MarkedValue>.Read(new MarkingReading<MarkedValue>(new MarkedValue(nominal), rule, source)),
            1 => WithTolerance(text, text[end], nominal, rule, source),
            _ => Failed(text, $"'{Excerpt.From(text[end..])}' after the value is no tolerance letter", text[..end].ToString()),
        };
    }

    private static Parsed<Marking<MarkedValue>> WithTolerance(
        ReadOnlySpan<char> text,
        char letter,
        Quantity nominal,
        string rule,
        Source source
    )
    {
        var meanings = ToleranceLetters.Meanings(letter, nominal.Dimension, nominal);
        if (meanings.IsEmpty)
            return Failed(
                text,
                $"'{letter}' in '{Excerpt.From(text)}' is no tolerance letter of {DimensionFacts.One(nominal.Dimension)}",
                text[..^1].ToString()
            );
        return Parsed<Marking<MarkedValue>>.From(
            new Marking<MarkedValue>([
                .. meanings.Select(meaning => new MarkingReading<MarkedValue>(
                    new MarkedValue(nominal, meaning.Tolerance),
                    $"{rule}; {letter} is {meaning.Tolerance}",
                    meanings.Length == 1 ? source : meaning.Source
                )),
            ])
        );
    }

    private static bool TryCompose(ReadOnlySpan<char> whole, ReadOnlySpan<char> fraction, int power, out decimal value)
    {
        UInt128 digits = 0;
        foreach (var digit in whole)
            digits = (digits * 10) + (uint)(digit - '0');
        foreach (var digit in fraction)
            digits = (digits * 10) + (uint)(digit - '0');
        return DecimalMath.TryCompose(digits, power, out value);
    }

    private static Parsed<Marking<MarkedValue>> Failed(ReadOnlySpan<char> text, string message, string? next = null) =>
        Marking<MarkedValue>.Failed(text, message, next);
}
