using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.Electronics.Parts;

/// <summary>What a note on a reading says of a moving-coil meter: its ohm per volt and the range it stood on.</summary>
/// <param name="OhmsPerVolt">Ohm per volt.</param>
/// <param name="RangeVolts">The range, in volt.</param>
public sealed partial record MeterWords(decimal OhmsPerVolt, decimal RangeVolts)
{
    /// <summary>Reads words such as "20 kΩ/V meter on its 50 V range"; null when they name no ohm per volt or no range.</summary>
    public static MeterWords? Parse(string text)
    {
        Match sensitivity = Sensitivity().Match(text);
        Match range = Range().Match(text);
        return sensitivity.Success && range.Success && Number(sensitivity) is { } ohms && Number(range) is { } volts
            ? new MeterWords(ohms * (sensitivity.Groups["kilo"].Length > 0 ? 1000m : 1m), volts)
            : null;
    }

    private static decimal? Number(Match match) =>
        decimal.TryParse(match.Groups["number"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number)
        && number > 0m
            ? number
            : null;

    [GeneratedRegex(
        @"(?<number>[0-9]{1,6}(?:\.[0-9]{1,3})?) ?(?<kilo>k?)(?:[\u03A9\u2126]|ohm)(?:/V| per volt)",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Sensitivity();

    [GeneratedRegex(@"(?<number>[0-9]{1,6}(?:\.[0-9]{1,3})?) ?V range", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Range();
}
