using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>What codes say, in words.</summary>
internal static class PrintWords
{
    internal static string Describe(MarkedValue value) => Joined(Rounded(value.Nominal), value.Tolerance, value.RatedVoltage);

    internal static string Describe(CapacitorPrint print) =>
        Joined(string.Join(" + ", print.Sections.Select(Rounded)), print.Tolerance, print.RatedVoltage)
        + (print.IsBipolar ? ", bipolar" : string.Empty);

    internal static string Describe(BandedResistor resistor) =>
        Joined(QuantityText.Format(resistor.Nominal), resistor.Nominal.Value == 0m ? null : resistor.Tolerance, null)
        + (resistor.TemperatureCoefficient is { } slope ? $", ±{Millionths(slope)}" : string.Empty)
        + (resistor.FailureRate is { } rate ? $", {QuantityText.FormatPercent(rate)} fail in 1000 h" : string.Empty);

    internal static string Describe(TemperatureCharacteristic characteristic) =>
        characteristic switch
        {
            TemperatureCharacteristic.Linear line => $"{Figures.Text(line.MillionthsPerKelvin)} × 10^-6/K"
                + (line.Spread is { } spread ? $" ±{Figures.Text(spread)} × 10^-6/K" : string.Empty),
            TemperatureCharacteristic.Bounded bounded =>
                $"{Figures.Text(bounded.LowestCelsius)} to {Figures.Text(bounded.HighestCelsius)} °C within "
                    + $"{Tolerance.Relative(bounded.Below, bounded.Above)}",
            _ => string.Empty,
        };

    /// <summary>A change per kelvin: 0.0001 is 100 × 10^-6/K.</summary>
    internal static string Millionths(decimal fraction) => $"{Figures.Text(fraction * 1_000_000m)} × 10^-6/K";

    // A centimetre of capacitance has no round value.
    private static string Rounded(Quantity quantity) =>
        QuantityText.Format(quantity.Value == 0m ? quantity : quantity with { Value = DecimalMath.RoundSignificant(quantity.Value, 6) });

    private static string Joined(string value, Tolerance? tolerance, Quantity? volts) =>
        value
        + (tolerance is { } width ? $" {width}" : string.Empty)
        + (volts is { } rated ? $" {QuantityText.Format(rated)}" : string.Empty);
}
