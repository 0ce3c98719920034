using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>Where a capacitor resonates with its inductance.</summary>
internal static class ResonanceRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "resonance",
            "the self-resonant frequency of a capacitance with an inductance",
            [SharedInputs.Capacitance, SharedInputs.Inductance],
            "capacitance=100nF inductance=10nH",
            given =>
                Answers.All(
                    Answers.Line(
                        "self-resonant frequency",
                        LossFactor.ResonanceHertz(given.Double(SharedInputs.Inductance), given.Double(SharedInputs.Capacitance)),
                        Dimension.Frequency,
                        $"1 / (2 pi sqrt({given.Text(SharedInputs.Inductance)} x {given.Text(SharedInputs.Capacitance)}))",
                        Answers.Practice("resonance of L and C in series")
                    )
                )
        )
        {
            Formula = "f = 1 / (2 pi sqrt(L C))",
        };
}
