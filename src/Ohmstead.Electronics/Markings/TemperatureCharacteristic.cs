namespace Ohmstead.Electronics.Markings;

/// <summary>How a ceramic capacitor changes over temperature, from its three-character code.</summary>
public abstract record TemperatureCharacteristic
{
    private TemperatureCharacteristic() { }

    /// <summary>Class 1: a straight line.</summary>
    /// <param name="MillionthsPerKelvin">The slope in 10^-6 per kelvin; negative when capacitance falls as it gets warmer.</param>
    /// <param name="Spread">The tolerance of the slope in 10^-6 per kelvin, or null when the marking gives none (N750).</param>
    public sealed record Linear(decimal MillionthsPerKelvin, decimal? Spread) : TemperatureCharacteristic;

    /// <summary>Classes 2 and 3: bounds over a range of temperature.</summary>
    /// <param name="LowestCelsius">The lower end of the range in °C.</param>
    /// <param name="HighestCelsius">The upper end of the range in °C.</param>
    /// <param name="Below">The greatest fall of capacitance as a signed fraction.</param>
    /// <param name="Above">The greatest rise of capacitance as a fraction.</param>
    public sealed record Bounded(int LowestCelsius, int HighestCelsius, decimal Below, decimal Above) : TemperatureCharacteristic;
}
