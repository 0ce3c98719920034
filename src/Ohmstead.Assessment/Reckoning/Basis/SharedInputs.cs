using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>Inputs that several rules share.</summary>
internal static class SharedInputs
{
    /// <summary>Seconds in an hour.</summary>
    internal const decimal Hour = 3600m;

    internal static ReckonInput Capacitance { get; } =
        ReckonInput.Create("capacitance", Dimension.Capacitance, "C, the capacitance").Within(1e-14m, 1m);

    internal static ReckonInput Resistance { get; } =
        ReckonInput.Create("resistance", Dimension.Resistance, "R, the resistance").Within(1e-6m, 1e15m);

    internal static ReckonInput Inductance { get; } =
        ReckonInput.Create("inductance", Dimension.Inductance, "L, the inductance").Within(0m, 1000m);

    internal static ReckonInput Frequency { get; } =
        ReckonInput.Create("frequency", Dimension.Frequency, "f, the frequency").Within(0.01m, 1e10m);

    internal static ReckonInput Esr { get; } =
        ReckonInput.Create("esr", Dimension.Resistance, "ESR, the equivalent series resistance").Within(0m, 1_000_000m);

    internal static ReckonInput TanDelta { get; } =
        ReckonInput.Create("tan-delta", Dimension.Ratio, "D, the dissipation factor").Within(0m, 100m);

    internal static ReckonInput RatedVoltage { get; } =
        ReckonInput.Create("rated-voltage", Dimension.Voltage, "Ur, the rated voltage").Within(1m, 100_000m);

    internal static ReckonInput Mains { get; } =
        ReckonInput
            .Create("mains", Dimension.Frequency, "f, the mains frequency, or that of the converter")
            .Within(10m, 100_000m)
            .Usually("50Hz");

    internal static ReckonInput Current { get; } = ReckonInput.Create("current", Dimension.Current, "I, the current").Within(0m, 1000m);

    internal static ReckonInput Confidence { get; } =
        ReckonInput.Create("confidence", Dimension.Ratio, "the confidence wanted").Within(0.5m, 0.9999m).Usually("95%");

    internal static ReckonInput RatedLife { get; } =
        ReckonInput.Create("rated-life", Dimension.Duration, "L0, the data sheet's life").Within(Hour * 100m, Hour * 100_000m);

    internal static ReckonInput RatedTemperature { get; } =
        ReckonInput.Create("rated-temperature", Dimension.Temperature, "T0, the temperature that life holds at").Within(40m, 150m);

    internal static ReckonInput Rectifier { get; } =
        ReckonInput.Word("rectifier", "the kind of rectifier", "half-wave", "centre-tap", "bridge").Usually("bridge");

    internal static double Hours(this GivenInputs given, ReckonInput duration) => (double)(given[duration] / 3600m);

    internal static Electronics.Supplies.Rectifier Kind(this GivenInputs given, ReckonInput rectifier) =>
        given.Text(rectifier) switch
        {
            "half-wave" => Electronics.Supplies.Rectifier.HalfWave,
            "centre-tap" => Electronics.Supplies.Rectifier.CentreTap,
            _ => Electronics.Supplies.Rectifier.Bridge,
        };
}
