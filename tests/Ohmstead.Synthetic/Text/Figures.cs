using System.Globalization;

namespace Ohmstead.Synthetic.Text;

/// <summary>Writes values as a person does: <c>391 µF</c>, <c>4.7 kΩ</c>.</summary>
public static class Figures
{
    private static readonly (string Prefix, decimal Factor)[] Small = [("µ", 1e-6m), ("n", 1e-9m), ("p", 1e-12m)];
    private static readonly (string Prefix, decimal Factor)[] Large = [("M", 1e6m), ("k", 1e3m), ("", 1m), ("m", 1e-3m)];
    private static readonly (string Prefix, decimal Factor)[] Middle = [("", 1m), ("m", 1e-3m), ("µ", 1e-6m)];

    /// <summary>A value with its unit and the prefix that suits it.</summary>
    /// <param name="value">The value in the unit itself.</param>
    /// <param name="unit">F, Ω, Hz, V, A or H.</param>
    /// <param name="digits">How many digits count.</param>
    public static string Of(decimal value, string unit, int digits = 3)
    {
        var prefixes = unit switch
        {
            "F" => Small,
            "Ω" or "Hz" => Large,
            _ => Middle,
        };
        var size = Math.Abs(value);
        var (prefix, factor) = prefixes.Where(item => size >= item.Factor).DefaultIfEmpty(prefixes[^1]).First();
        return $"{Number(value / factor, digits)} {prefix}{unit}";
    }

    /// <summary>A number with so many digits that count, and without trailing zeros.</summary>
    public static string Number(decimal value, int digits = 3)
    {
        var decimals = digits;
        for (var size = Math.Abs(value); size >= 1m && decimals > 0; size /= 10m)
        {
            decimals--;
        }

        for (var size = Math.Abs(value); size is > 0m and < 0.1m; size *= 10m)
        {
            decimals++;
        }

        return Math.Round(value, decimals, MidpointRounding.ToEven).ToString("0.############", CultureInfo.InvariantCulture);
    }

    /// <summary>A whole number with at least so many digits.</summary>
    public static string Padded(int value, int digits) => value.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');

    /// <summary>A day by ISO 8601.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
