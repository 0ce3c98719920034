using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The digit-and-letter code of rated voltage on film and electrolytic capacitors: the digit is a power of ten, the letter a
/// factor.</summary>
/// <remarks>
/// 0J is 6.3 V, 1H is 50 V, 2A is 100 V. 0L, 2Q, 2Z and 2P stand in trade lists with the one digit only. Source: the JIS and EIA voltage
/// code, from memory.
/// </remarks>
public static class VoltageCode
{
    internal static readonly Source Source = Source.FromMemory("JIS and EIA voltage code");

    /// <summary>Reads a code of one digit, 0 to 3, and one capital letter.</summary>
    public static Parsed<Quantity> Parse(ReadOnlySpan<char> text) =>
        text.Length == 2 && text[0] is >= '0' and <= '3' && Factor(text[0], text[1]) is { } factor
            ? Parsed<Quantity>.From(new Quantity(factor * DecimalMath.PowerOfTen(text[0] - '0'), Dimension.Voltage))
            : Parsed<Quantity>.Failed(
                new ParseFault(
                    text.IsEmpty ? ParseFaultKind.Empty : ParseFaultKind.NotUnderstood,
                    0,
                    text.Length,
                    $"'{Excerpt.From(text)}' is no voltage code, expected a digit 0 to 3 and a letter such as 1H",
                    null
                )
            );

    private static decimal? Factor(char digit, char letter) =>
        (digit, letter) switch
        {
            ('0', 'L') => 5.5m,
            ('2', 'Q') => 1.1m,
            ('2', 'Z') => 1.8m,
            ('2', 'P') => 2.2m,
            _ => Factor(letter),
        };

    private static decimal? Factor(char letter) =>
        letter switch
        {
            'A' => 1.0m,
            'B' => 1.25m,
            'C' => 1.6m,
            'D' => 2.0m,
            'E' => 2.5m,
            'F' => 3.15m,
            'V' => 3.5m,
            'G' => 4.0m,
            'W' => 4.5m,
            'H' => 5.0m,
            'J' => 6.3m,
            'K' => 8.0m,
            _ => null,
        };
}
