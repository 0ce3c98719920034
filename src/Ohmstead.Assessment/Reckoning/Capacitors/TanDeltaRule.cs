using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>From ESR to dissipation factor.</summary>
internal static class TanDeltaRule
{
    private const decimal MostFactor = 100m;

    internal static ReckonRule Rule { get; } =
        new(
            "tan-delta",
            "the dissipation factor that an ESR stands for",
            [SharedInputs.Capacitance, SharedInputs.Esr, SharedInputs.Frequency],
            "capacitance=470uF esr=0.35ohm frequency=120Hz",
            given =>
                Answers.All(
                    Answers.Line(
                        "dissipation factor",
                        LossFactor
                            .FromEsr(given[SharedInputs.Esr], given[SharedInputs.Frequency], given[SharedInputs.Capacitance])
                            .Unless(NoCapacitor),
                        ShownAs.Plain,
                        $"2 pi x {given.Text(SharedInputs.Frequency)} x {given.Text(SharedInputs.Capacitance)} "
                            + $"x {given.Text(SharedInputs.Esr)}",
                        Answers.Practice("definition of the dissipation factor")
                    )
                )
        )
        {
            Formula = "D = 2 pi f C ESR",
            Validity = "well below self-resonance, all figures at one frequency",
        };

    private static string? NoCapacitor(decimal factor) =>
        factor <= MostFactor
            ? null
            : $"that is a dissipation factor of {Answers.Text(factor, ShownAs.Plain)}: a resistance and no capacitor, read its d.c. "
                + "resistance";
}
