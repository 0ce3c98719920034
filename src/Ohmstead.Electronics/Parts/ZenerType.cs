namespace Ohmstead.Electronics.Parts;

/// <summary>What the type number of a Zener diode says of its voltage: the series, the suffix, and where the number holds it, the
/// voltage.</summary>
/// <param name="Series">The series, which says what the suffix means.</param>
/// <param name="Suffix">The tolerance letter, or null for none.</param>
/// <param name="NominalVolts">The voltage that the number itself tells, in volt, or null.</param>
public sealed record ZenerType(ZenerSeries Series, char? Suffix, decimal? NominalVolts)
{
    private const int ShortestVoltage = 3;

    /// <summary>Reads a type number; null when it is of no series known here.</summary>
    /// <remarks>1N746 to 1N759, 1N4370 to 1N4372, 1N4728 to 1N4764 and 1N5221 to 1N5281, with a suffix or none; and any number that ends
    /// like -C9V1.</remarks>
    public static ZenerType? Parse(string type)
    {
        string text = type.Trim().ToUpperInvariant();
        return Registered(text) ?? Designated(text);
    }

    private static ZenerType? Registered(string text)
    {
        if (text.Length < 5 || !text.StartsWith("1N", StringComparison.Ordinal))
        {
            return null;
        }

        char? suffix = char.IsAsciiLetter(text[^1]) ? text[^1] : null;
        string digits = suffix is null ? text[2..] : text[2..^1];
        if (digits.Length is < 3 or > 4 || !digits.All(char.IsAsciiDigit))
        {
            return null;
        }

        ZenerSeries? series = int.Parse(digits, System.Globalization.CultureInfo.InvariantCulture) switch
        {
            >= 746 and <= 759 or >= 4370 and <= 4372 => ZenerSeries.Jedec746,
            >= 4728 and <= 4764 => ZenerSeries.Jedec4728,
            >= 5221 and <= 5281 => ZenerSeries.Jedec5221,
            _ => null,
        };
        return series is { } known ? new ZenerType(known, suffix, null) : null;
    }

    // A letter A to E, then the voltage with V for the point: C9V1, B12V, C15.
    private static ZenerType? Designated(string text)
    {
        string tail = text[(text.LastIndexOf('-') + 1)..];
        if (tail.Length == text.Length || tail.Length < ShortestVoltage || tail[0] is < 'A' or > 'E' || !char.IsAsciiDigit(tail[1]))
        {
            return null;
        }

        string number = tail[1..].TrimEnd('V').Replace('V', '.');
        return
            number.All(c => char.IsAsciiDigit(c) || c == '.')
            && number.Length <= 6
            && decimal.TryParse(
                number,
                System.Globalization.NumberStyles.AllowDecimalPoint,
                System.Globalization.CultureInfo.InvariantCulture,
                out decimal volts
            )
            && volts > 0m
            ? new ZenerType(ZenerSeries.ProElectron, tail[0], volts)
            : null;
    }
}
