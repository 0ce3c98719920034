using System.Globalization;
using Ohmstead.Electronics.Decimals;

namespace Ohmstead.Electronics;

/// <summary>Numbers as text: invariant, without exponent in the usual range, rounded to so many significant figures, no trailing
/// zeros.</summary>
internal static class Figures
{
    private const int Usual = 6;
    private const double LargestDecimal = 1e15;

    /// <summary>100 -> "100", 1479.8274 -> "1479.83", 0.212206 -> "0.212206".</summary>
    internal static string Text(decimal value, int significant = Usual)
    {
        if (value == 0)
        {
            return "0";
        }

        int decimals = Math.Clamp(significant - (DecimalMath.Exponent(value) + 1), 0, 28);
        return DecimalText.Format(decimal.Round(value, decimals, MidpointRounding.AwayFromZero));
    }

    /// <inheritdoc cref="Text(decimal, int)"/>
    internal static string Text(double value, int significant = Usual) =>
        Math.Abs(value) is > 1e-12 and < LargestDecimal || value == 0
            ? Text((decimal)value, significant)
            : value.ToString("G" + significant.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    internal static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A share as per cent: 0.125 -> "12.5 %".</summary>
    internal static string Percent(decimal fraction) => Text(fraction * 100m) + " %";
}
