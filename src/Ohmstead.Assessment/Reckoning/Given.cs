using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning;

/// <summary>Inputs that several rules share.</summary>
internal static class Given
{
    internal static ReckonInput Capacitance { get; } = ReckonInput.Of("capacitance", Dimension.Capacitance, "C, the capacitance");

    internal static ReckonInput Resistance { get; } = ReckonInput.Of("resistance", Dimension.Resistance, "R, the resistance");

    internal static ReckonInput Inductance { get; } = ReckonInput.Of("inductance", Dimension.Inductance, "L, the inductance");

    internal static ReckonInput Frequency { get; } = ReckonInput.Of("frequency", Dimension.Frequency, "f, the frequency");

    internal static ReckonInput Esr { get; } = ReckonInput.Of("esr", Dimension.Resistance, "ESR, the equivalent series resistance");

    internal static ReckonInput TanDelta { get; } = ReckonInput.Of("tan-delta", Dimension.Ratio, "D, the dissipation factor");

    internal static ReckonInput RatedVoltage { get; } = ReckonInput.Of("rated-voltage", Dimension.Voltage, "Ur, the rated voltage");

    internal static ReckonInput Mains { get; } = ReckonInput.Of("mains", Dimension.Frequency, "f, the mains frequency").Usually("50Hz");

    internal static ReckonInput Current { get; } = ReckonInput.Of("current", Dimension.Current, "I, the current");

    internal static ReckonInput Confidence { get; } = ReckonInput.Of("confidence", Dimension.Ratio, "the confidence wanted").Usually("95%");

    internal static ReckonInput RatedLife { get; } = ReckonInput.Of("rated-life", Dimension.Duration, "L0, the data sheet's life");

    internal static ReckonInput RatedTemperature { get; } = ReckonInput.Of("rated-temperature", Dimension.Temperature, "T0, the temperature that life holds at");

    internal static ReckonInput Rectifier { get; } = ReckonInput.Word("rectifier", "the kind of rectifier", "half-wave", "centre-tap", "bridge").Usually("bridge");

    internal static double Hours(this GivenInputs given, ReckonInput duration) => (double)(given[duration] / 3600m);

    internal static Electronics.Supplies.Rectifier Kind(this GivenInputs given, ReckonInput rectifier) => given.Text(rectifier) switch
    {
        "half-wave" => Electronics.Supplies.Rectifier.HalfWave,
        "centre-tap" => Electronics.Supplies.Rectifier.CentreTap,
        _ => Electronics.Supplies.Rectifier.Bridge,
    };
}
