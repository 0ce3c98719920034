using System.Globalization;
using System.Text.RegularExpressions;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Schemas;

/// <summary>What an editor makes of a scalar: the core schema of YAML 1.2 (section 10.3.2) turns some plain texts into numbers, booleans
/// and null.</summary>
/// <remarks>Infinities and not-a-number stay text, since JSON has neither.</remarks>
internal static partial class CoreSchema
{
    // Twenty-one digits of three bits fill the 63 bits of a positive long.
    private const int LongestOctal = 21;

    /// <summary>The value: null, a <see cref="bool"/>, a <see cref="long"/>, a <see cref="double"/> or a <see cref="string"/>.</summary>
    internal static object? Resolve(ScalarNode scalar)
    {
        if (scalar.Style != ScalarWriting.Plain)
        {
            return scalar.Text;
        }

        return scalar.IsNothing
            ? null
            : scalar.Text switch
            {
                "true" or "True" or "TRUE" => true,
                "false" or "False" or "FALSE" => false,
                var text when Whole().IsMatch(text) => WholeNumber(text),
                var text when Fraction().IsMatch(text) => Real(text),
                var text => text,
            };
    }

    private static object WholeNumber(string text)
    {
        if (text.StartsWith("0o", StringComparison.Ordinal))
        {
            var digits = text.AsSpan(2).TrimStart('0');
            return digits.Length > LongestOctal ? (object)double.MaxValue
                : digits.IsEmpty ? 0L
                : Convert.ToInt64(digits.ToString(), 8);
        }

        var isHexadecimal = text.StartsWith("0x", StringComparison.Ordinal);
        var style = isHexadecimal ? NumberStyles.AllowHexSpecifier : NumberStyles.AllowLeadingSign;
        if (long.TryParse(text.AsSpan(isHexadecimal ? 2 : 0), style, CultureInfo.InvariantCulture, out var whole))
        {
            return whole;
        }

        return isHexadecimal ? double.MaxValue : Real(text);
    }

    // Only that it is a number matters to a schema; JSON has no infinity to put in its place.
    private static double Real(string text) =>
        Math.Clamp(double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture), double.MinValue, double.MaxValue);

    [GeneratedRegex(@"^(?:[-+]?[0-9]+|0o[0-7]+|0x[0-9a-fA-F]+)\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Whole();

    [GeneratedRegex(
        @"^[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Fraction();
}
