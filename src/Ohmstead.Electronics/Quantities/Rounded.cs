using Ohmstead.Electronics.Decimals;

namespace Ohmstead.Electronics.Quantities;

/// <summary>A computed value with its unit, as everywhere: rounded to so many significant figures, with the prefix people use.</summary>
internal static class Rounded
{
    private const int Significant = 6;
    private const double LargestDecimal = 1e15;

    /// <summary>A capacitance: "100 µF", "22 nF", "330 pF".</summary>
    internal static string Farads(decimal farads) => Format(farads, Dimension.Capacitance);

    /// <inheritdoc cref="Farads(decimal)"/>
    internal static string Farads(double farads) =>
        Math.Abs(farads) < LargestDecimal ? Farads((decimal)farads) : Figures.Text(farads) + " F";

    /// <summary>A resistance: "47 kΩ", "250 mΩ", "2.2 MΩ".</summary>
    internal static string Ohms(decimal ohms) => Format(ohms, Dimension.Resistance);

    /// <inheritdoc cref="Ohms(decimal)"/>
    internal static string Ohms(double ohms) => Math.Abs(ohms) < LargestDecimal ? Ohms((decimal)ohms) : Figures.Text(ohms) + " Ω";

    private static string Format(decimal value, Dimension dimension) =>
        QuantityText.Format(new Quantity(value == 0 ? value : DecimalMath.RoundSignificant(value, Significant), dimension));
}
