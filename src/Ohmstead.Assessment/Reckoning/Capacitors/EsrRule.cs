using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>From dissipation factor to ESR.</summary>
internal static class EsrRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "esr",
            "the equivalent series resistance that a dissipation factor stands for",
            [SharedInputs.Capacitance, SharedInputs.TanDelta, SharedInputs.Frequency],
            "capacitance=391uF tan-delta=0.2 frequency=100Hz",
            given =>
                Answers.All(
                    Answers.Line(
                        "ESR",
                        LossFactor.EsrLimit(given[SharedInputs.TanDelta], given[SharedInputs.Frequency], given[SharedInputs.Capacitance]),
                        Dimension.Resistance
                    )
                )
        )
        {
            Formula = "ESR = D / (2 pi f C)",
            Validity =
                "well below self-resonance, all figures at one frequency; an ESR at 100 kHz is not to be had from a factor at 120 Hz",
        };
}
