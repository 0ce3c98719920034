using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The letter of a resistor's temperature coefficient.</summary>
/// <remarks>K 1, M 5, P 15, Q 25, R 50, S 100, U 250, in 10^-6 per kelvin, either sign; Z is any other figure, given elsewhere. Source:
/// IEC 60062.</remarks>
public static class TemperatureCoefficientLetter
{
    /// <summary>The greatest change per kelvin as a fraction: 0.0001 for S (100 × 10^-6 per kelvin).</summary>
    public static Parsed<Quantity> Parse(ReadOnlySpan<char> text)
    {
        int? millionths = (text is [var letter] ? letter : default) switch
        {
            'K' => 1,
            'M' => 5,
            'P' => 15,
            'Q' => 25,
            'R' => 50,
            'S' => 100,
            'U' => 250,
            _ => null,
        };
        if (millionths is { } known)
            return Parsed<Quantity>.From(new Quantity(known * 0.000001m, Dimension.Ratio));
        var message = text is "Z"
            ? "'Z' is a temperature coefficient without a letter of its own, expected its figure from the data sheet"
            : $"'{Excerpt.From(text)}' is no letter of a temperature coefficient, expected K, M, P, Q, R, S, U or Z";
        return Parsed<Quantity>.Failed(
            new ParseFault(text.IsEmpty ? ParseFaultKind.Empty : ParseFaultKind.NotUnderstood, 0, text.Length, message, null)
        );
    }
}
