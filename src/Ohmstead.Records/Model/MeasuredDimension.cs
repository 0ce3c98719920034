using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Records.Model;

/// <summary>In which dimension a thing is measured.</summary>
public static class MeasuredDimension
{
    /// <summary>The dimension.</summary>
    public static Dimension From(Measured measured) =>
        measured switch
        {
            Measured.Capacitance => Dimension.Capacitance,
            Measured.Esr or Measured.Resistance or Measured.Insulation => Dimension.Resistance,
            Measured.LossFactor or Measured.VoltageLoss => Dimension.Ratio,
            Measured.Leakage or Measured.Current => Dimension.Current,
            Measured.Inductance => Dimension.Inductance,
            Measured.Frequency => Dimension.Frequency,
            Measured.Temperature => Dimension.Temperature,
            Measured.Voltage or Measured.Ripple or Measured.ForwardVoltage => Dimension.Voltage,
            Measured.Gain or Measured.Hours => Dimension.Number,
        };
}
