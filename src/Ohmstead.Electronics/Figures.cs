using System.Globalization;

namespace Ohmstead.Electronics;

/// <summary>Numbers as text: invariant, without exponent in the usual range, rounded to so many significant figures, no trailing noughts.</summary>
internal static class Figures
{
    private const int Usual = 6;

    /// <summary>100 -> "100", 1479.8274 -> "1479.83", 0.212206 -> "0.212206".</summary>
    internal static string Text(decimal value, int significant = Usual)
    {
        if (value == 0)
        {
            return "0";
        }

        int whole = (int)Math.Floor(Math.Log10((double)Math.Abs(value))) + 1;
        int decimals = Math.Clamp(significant - whole, 0, 28);
        return decimal.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0.############################", CultureInfo.InvariantCulture);
    }

    /// <inheritdoc cref="Text(decimal, int)"/>
    internal static string Text(double value, int significant = Usual) =>
        Math.Abs(value) is > 1e-12 and < 1e15 || value == 0
            ? Text((decimal)value, significant)
            : value.ToString("G" + significant.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    internal static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A capacitance in the unit it is usually written in: "100 µF", "22 nF", "330 pF".</summary>
    internal static string Farads(decimal farads) => Math.Abs(farads) switch
    {
        >= 0.0000001m => Text(farads * 1_000_000m) + " µF",
        >= 0.000000001m => Text(farads * 1_000_000_000m) + " nF",
        _ => Text(farads * 1_000_000_000_000m) + " pF",
    };

    /// <summary>A resistance as it is usually written: "47 kohm", "0.25 ohm", "2.2 Mohm".</summary>
    internal static string Ohms(decimal ohms) => Math.Abs(ohms) switch
    {
        >= 1_000_000m => Text(ohms / 1_000_000m) + " Mohm",
        >= 1_000m => Text(ohms / 1_000m) + " kohm",
        _ => Text(ohms) + " ohm",
    };

    /// <summary>A share as per cent: 0.125 -> "12.5 %".</summary>
    internal static string Percent(decimal fraction) => Text(fraction * 100m) + " %";
}
