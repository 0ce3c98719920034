using System.Globalization;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics;

/// <summary>Numbers as text: invariant, without exponent in the usual range, rounded to so many significant figures, no trailing
/// noughts.</summary>
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
        return DecimalText.Of(decimal.Round(value, decimals, MidpointRounding.AwayFromZero));
    }

    /// <inheritdoc cref="Text(decimal, int)"/>
    internal static string Text(double value, int significant = Usual) =>
        Math.Abs(value) is > 1e-12 and < LargestDecimal || value == 0
            ? Text((decimal)value, significant)
            : value.ToString("G" + significant.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    internal static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A capacitance as everywhere: "100 µF", "22 nF", "330 pF".</summary>
    internal static string Farads(decimal farads) => Of(farads, Dimension.Capacitance);

    /// <summary>A resistance as everywhere: "47 kΩ", "250 mΩ", "2.2 MΩ".</summary>
    internal static string Ohms(decimal ohms) => Of(ohms, Dimension.Resistance);

    /// <inheritdoc cref="Ohms(decimal)"/>
    internal static string Ohms(double ohms) => Math.Abs(ohms) < LargestDecimal ? Ohms((decimal)ohms) : Text(ohms) + " Ω";

    /// <inheritdoc cref="Farads(decimal)"/>
    internal static string Farads(double farads) => Math.Abs(farads) < LargestDecimal ? Farads((decimal)farads) : Text(farads) + " F";

    /// <summary>A share as per cent: 0.125 -> "12.5 %".</summary>
    internal static string Percent(decimal fraction) => Text(fraction * 100m) + " %";

    private static string Of(decimal value, Dimension dimension) =>
        QuantityText.Format(new Quantity(value == 0 ? value : DecimalMath.RoundSignificant(value, Usual), dimension));
}
