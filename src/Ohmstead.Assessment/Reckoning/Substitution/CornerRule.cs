using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Reckoning.Substitution;

/// <summary>What a coupling capacitor passes.</summary>
internal static class CornerRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "corner",
            "the frequency at which a coupling capacitor into a resistance has lost 3 dB",
            [SharedInputs.Resistance, SharedInputs.Capacitance],
            "resistance=1M capacitance=0.1uF",
            given =>
                Answers.All(
                    Answers.Line(
                        "corner frequency",
                        Combinations.CornerHertz(given[SharedInputs.Resistance], given[SharedInputs.Capacitance]),
                        Dimension.Frequency
                    )
                )
        )
        {
            Formula = "f = 1 / (2 pi R C)",
        };
}
