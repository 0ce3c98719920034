using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>How a figure of an answer is written: as a quantity with a prefix that fits, as a percentage, or as a number with a unit of its
/// own.</summary>
internal readonly record struct ShownAs(Dimension Dimension, string? Own)
{
    private const int Digits = 5;
    private const string PerCent = "%";

    /// <summary>A share, as per cent.</summary>
    internal static ShownAs Percent { get; } = new(Dimension.Ratio, PerCent);

    /// <summary>A plain number.</summary>
    internal static ShownAs Plain { get; } = new(Dimension.Number, null);

    /// <summary>The base unit.</summary>
    internal string Unit =>
        Own
        ?? Dimension switch
        {
            Dimension.Capacitance => "F",
            Dimension.Resistance => "ohm",
            Dimension.Inductance => "H",
            Dimension.Voltage => "V",
            Dimension.Current => "A",
            Dimension.Power => "W",
            Dimension.Energy => "J",
            Dimension.Charge => "C",
            Dimension.Frequency => "Hz",
            Dimension.Duration => "s",
            Dimension.Temperature => "degC",
            Dimension.Length => "m",
            _ => string.Empty,
        };

    public static implicit operator ShownAs(Dimension dimension) => new(dimension, null);

    public static implicit operator ShownAs(string unit) => new(Dimension.Number, unit);

    /// <summary>The figure to five places that count.</summary>
    internal string Text(decimal value)
    {
        var rounded = value == 0m ? value : DecimalMath.RoundSignificant(value, Digits);
        return Own switch
        {
            PerCent => QuantityText.FormatPercent(rounded),
            { } unit => $"{QuantityText.Format(new Quantity(rounded, Dimension.Number))} {unit}",
            // Seconds stay seconds where no larger unit leaves a whole number.
            null => QuantityText.Format(new Quantity(rounded, Dimension)),
        };
    }
}
