using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>The key under which a record holds what was measured.</summary>
internal static class MeasuredKey
{
    /// <summary>The key.</summary>
    public static Key For(Measured measured) =>
        measured switch
        {
            Measured.Capacitance => BenchShape.Capacitance,
            Measured.Esr => BenchShape.Esr,
            Measured.LossFactor => BenchShape.LossFactor,
            Measured.Leakage => BenchShape.Leakage,
            Measured.Insulation => BenchShape.Insulation,
            Measured.VoltageLoss => BenchShape.VoltageLoss,
            Measured.Resistance => BenchShape.Resistance,
            Measured.Inductance => BenchShape.Inductance,
            Measured.Voltage => BenchShape.Voltage,
            Measured.Ripple => BenchShape.Ripple,
            Measured.Current => BenchShape.Current,
            Measured.ForwardVoltage => BenchShape.ForwardVoltage,
            Measured.Gain => BenchShape.Gain,
            Measured.Frequency => BenchShape.Frequency,
            Measured.Temperature => BenchShape.Temperature,
            Measured.Hours => BenchShape.Hours,
        };
}
