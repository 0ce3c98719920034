using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>What the bands of a resistor say.</summary>
/// <param name="Nominal">The resistance.</param>
/// <param name="Tolerance">The tolerance; 20 % where there is no band for it.</param>
/// <param name="TemperatureCoefficient">The greatest change per kelvin as a fraction, or null without such a band.</param>
/// <param name="FailureRate">The failure level as a fraction per 1000 h, or null without such a band.</param>
/// <param name="IsReversed">True when the bands were read from the other end than given.</param>
/// <param name="IsPreferred">True when the value is in a preferred series of its number of digits. A hint for choosing, no more: old
/// values follow no series.</param>
public sealed record BandedResistor(
    Quantity Nominal,
    Tolerance Tolerance,
    decimal? TemperatureCoefficient,
    decimal? FailureRate,
    bool IsReversed,
    bool IsPreferred
)
{
    /// <summary>The delivery limits.</summary>
    public Interval Limits => Tolerance.Apply(Nominal);
}
