using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Hazards;

/// <summary>
/// The least resistance that a charged capacitor is let down through. Information only; see <see cref="SafetyNotice.Defer"/>.
/// </summary>
/// <remarks>
/// Two bounds. About 1 ohm for each volt keeps the first current to an ampere. Above a kilovolt, where a resistor of some kilohm is a
/// flash-over (25 kV into 2.2 kohm are 284 kW), many megohms are usual: 25 kV into 10 Mohm are 2.5 mA and 62.5 W at the first moment.
/// </remarks>
public static class LettingDown
{
    /// <summary>The voltage above which no resistor of kilohms is used, in volt: common practice.</summary>
    public const decimal HighVolts = 1_000m;

    /// <summary>The least resistance above <see cref="HighVolts"/>, in ohm.</summary>
    public const decimal LeastOhmsHigh = 1_000_000m;

    private static readonly Source PerVolt = Source.Published("EIA-815:1999", "discharge through about 1 Ω for each volt");
    private static readonly Source Television = Source.Practice("high voltage and picture tubes are let down through many megohms");

    /// <summary>The least resistance for a voltage, in ohm.</summary>
    public static Outcome<Worked<decimal>> LeastOhms(decimal volts) =>
        Domain
            .Require(Domain.Positive("voltage", volts))
            .Compute(() =>
                volts > HighVolts
                    ? new Worked<decimal>(
                        LeastOhmsHigh,
                        $"{Text(volts, Dimension.Voltage)} is above {Text(HighVolts, Dimension.Voltage)}: {Rounded.Ohms(LeastOhmsHigh)} "
                            + "or more, 10 MΩ for a picture tube",
                        Television
                    )
                    : new Worked<decimal>(volts, $"1 Ω/V x {Figures.Text(volts)} V = {Rounded.Ohms(volts)}", PerVolt)
            );

    /// <summary>Why a resistance is no way to let a voltage down, or null when it is one.</summary>
    public static string? Against(decimal volts, decimal ohms) =>
        LeastOhms(volts).Is(out Worked<decimal>? least, out _) && ohms < least.Value
            ? $"{Rounded.Ohms(ohms)} at {Text(volts, Dimension.Voltage)} is a flash-over, {Text(volts * volts / ohms, Dimension.Power)} "
                + $"at the first moment; expected {Rounded.Ohms(least.Value)} or more ({least.Source.Text})"
            : null;

    private static string Text(decimal value, Dimension dimension) =>
        QuantityText.Format(new Quantity(DecimalMath.RoundSignificant(value, 3), dimension));
}
