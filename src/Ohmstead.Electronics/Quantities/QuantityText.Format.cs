using Ohmstead.Electronics.Decimals;

namespace Ohmstead.Electronics.Quantities;

/// <content>Writing.</content>
public static partial class QuantityText
{
    /// <summary>The canonical text: all digits, no zeros at the end, a prefix that fits, and the unit after one space (391 µF, 110 mΩ, 24
    /// h, 0.12).</summary>
    /// <remarks>
    /// Reading it gives the same quantity. Large capacitances stay in microfarad up to 1 F, as the trade prints them and because mF has
    /// two meanings. A ratio is written as a fraction. A duration takes the largest of year, month, h, min and s that leaves a whole
    /// number.
    /// </remarks>
    public static string Format(Quantity quantity) => Write(quantity, null);

    /// <summary>The text with a number of significant digits, rounded half away from zero, zeros at the end kept (1.40 Ω).</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="significantDigits">From 1 to 28. Whole digits before the point are all written: 1764 µF to three digits is 1760
    /// µF.</param>
    public static string Format(Quantity quantity, int significantDigits) =>
        Write(quantity with { Value = DecimalMath.RoundSignificant(quantity.Value, significantDigits) }, significantDigits);

    /// <summary>A fraction as a percentage: 0.2 is 20 %.</summary>
    public static string FormatPercent(decimal fraction) =>
        $"{Plain(DecimalMath.TryShift(fraction, 2, out var percent) ? percent : fraction * 100m)} %";

    private static string Write(Quantity quantity, int? significantDigits)
    {
        if (quantity.Dimension is Dimension.Duration)
            return Duration(quantity.Value, significantDigits);
        var (unit, power) = PrefixedUnit(quantity);
        if (!DecimalMath.TryShift(quantity.Value, -power, out var number))
            (number, unit) = (quantity.Value, BaseUnit(quantity.Dimension));
        return Write(number, unit, significantDigits);
    }

    private static string Duration(decimal seconds, int? significantDigits)
    {
        var (unit, power, divisor) = DurationUnit(seconds);
        var number = seconds / divisor;
        if (!DecimalMath.TryShift(number, -power, out number))
            (number, unit) = (seconds, BaseUnit(Dimension.Duration));
        return Write(number, unit, significantDigits);
    }

    private static string Write(decimal number, string unit, int? significantDigits) =>
        DecimalText.Format(number, significantDigits is { } digits ? Places(number, digits) : null, unit);

    private static string Plain(decimal value) => DecimalText.Format(value);

    private static int Places(decimal value, int digits) => Math.Clamp(digits - 1 - DecimalMath.Exponent(value), 0, DecimalMath.Digits);

    private static (string Unit, int Power) PrefixedUnit(Quantity quantity)
    {
        var prefixes = Prefixes(quantity.Dimension);
        if (quantity.Value == 0m || prefixes.Length == 0)
        {
            // Zero has no magnitude to choose by.
            return (BaseUnit(quantity.Dimension), 0);
        }

        var exponent = DecimalMath.Exponent(quantity.Value);
        foreach (var prefix in prefixes)
        {
            if (exponent >= prefix.Power)
                return prefix;
        }

        return prefixes[^1];
    }

    private static (string Unit, int Power, decimal Divisor) DurationUnit(decimal seconds)
    {
        if (seconds == 0m)
            return ("s", 0, 1m);
        if (seconds % 31557600m == 0m)
            return (seconds == 31557600m ? "year" : "years", 0, 31557600m);
        if (seconds % 2629800m == 0m)
            return (seconds == 2629800m ? "month" : "months", 0, 2629800m);
        if (seconds % 3600m == 0m)
            return ("h", 0, 3600m);
        if (seconds % 60m == 0m)
            return ("min", 0, 60m);
        return seconds >= 1m ? ("s", 0, 1m)
            : seconds >= 0.001m ? ("ms", -3, 1m)
            : ("µs", -6, 1m);
    }

    /// <summary>The unit in which quantities of a dimension are held: F, Ω, °C; nothing for a number and a ratio.</summary>
    public static string BaseUnit(Dimension dimension) =>
        dimension switch
        {
            Dimension.Capacitance => "F",
            Dimension.Resistance => "Ω",
            Dimension.Inductance => "H",
            Dimension.Voltage => "V",
            Dimension.Current => "A",
            Dimension.Power => "W",
            Dimension.Energy => "J",
            Dimension.Charge => "C",
            Dimension.Frequency => "Hz",
            Dimension.Duration => "s",
            Dimension.Temperature => "°C",
            Dimension.Length => "m",
            _ => "",
        };

    // The units to choose from, largest first; the first one that the magnitude reaches is taken, else the last.
    private static readonly (string Unit, int Power)[][] PrefixesOf = [.. Enum.GetValues<Dimension>().Select(Listed)];

    private static (string Unit, int Power)[] Prefixes(Dimension dimension) => PrefixesOf[(int)dimension];

    private static (string Unit, int Power)[] Listed(Dimension dimension) =>
        dimension switch
        {
            Dimension.Capacitance => [("F", 0), ("µF", -6), ("nF", -9), ("pF", -12)],
            Dimension.Resistance => [("TΩ", 12), ("GΩ", 9), ("MΩ", 6), ("kΩ", 3), ("Ω", 0), ("mΩ", -3), ("µΩ", -6)],
            Dimension.Inductance => [("H", 0), ("mH", -3), ("µH", -6), ("nH", -9)],
            Dimension.Voltage => [("kV", 3), ("V", 0), ("mV", -3), ("µV", -6)],
            Dimension.Current => [("kA", 3), ("A", 0), ("mA", -3), ("µA", -6), ("nA", -9), ("pA", -12)],
            Dimension.Power => [("kW", 3), ("W", 0), ("mW", -3), ("µW", -6)],
            Dimension.Energy => [("kJ", 3), ("J", 0), ("mJ", -3), ("µJ", -6)],
            Dimension.Charge => [("C", 0), ("mC", -3), ("µC", -6), ("nC", -9)],
            Dimension.Frequency => [("GHz", 9), ("MHz", 6), ("kHz", 3), ("Hz", 0), ("mHz", -3)],
            Dimension.Length => [("m", 0), ("mm", -3)],
            Dimension.Temperature => [("°C", 0)],
            _ => [],
        };
}
