using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>The ripple current behind a ripple voltage.</summary>
internal static class RippleFromVoltageRule
{
    private const double MostAmperes = 200;

    private static readonly ReckonInput Ripple = ReckonInput
        .Create("ripple", Dimension.Voltage, "the ripple voltage, peak to peak")
        .Within(0m, 1000m);
    private static readonly ReckonInput Frequency = SharedInputs.Frequency.Within(1m, 1_000_000m);

    internal static ReckonRule Rule { get; } =
        new(
            "ripple-from-voltage",
            "the ripple current that a measured ripple voltage drives through a capacitor",
            [Ripple, Frequency, SharedInputs.Capacitance],
            "ripple=2V frequency=100Hz capacitance=1000uF",
            given =>
                Answers.All(
                    Answers.Line(
                        "ripple current, r.m.s.",
                        RippleHeating
                            .FromVoltage(given.Double(Ripple), given.Double(Frequency), given.Double(SharedInputs.Capacitance))
                            .Unless(TooMuch),
                        Dimension.Current
                    )
                )
        )
        {
            Formula = "I = 2 pi f C Vpp / (2 sqrt 3)",
            Validity = "a triangle without its harmonics: short charging pulses can be half as much again",
        };

    private static string? TooMuch(Worked<double> amperes) =>
        amperes.Value <= MostAmperes
            ? null
            : $"{amperes.Arithmetic}: no capacitor bears that, look at the ripple and at the capacitance again";
}
