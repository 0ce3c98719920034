using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The reactance of a capacitance.</summary>
internal static class ReactanceRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "reactance",
            "the reactance of a capacitance at a frequency",
            [SharedInputs.Capacitance, SharedInputs.Frequency],
            "capacitance=1uF frequency=50Hz",
            given =>
                Answers.All(
                    Answers.Line(
                        "reactance",
                        LossFactor.ReactanceOhms(given[SharedInputs.Frequency], given[SharedInputs.Capacitance]),
                        Dimension.Resistance,
                        $"1 / (2 pi x {given.Text(SharedInputs.Frequency)} x {given.Text(SharedInputs.Capacitance)})",
                        Answers.Practice("definition of reactance")
                    )
                )
        )
        {
            Formula = "Xc = 1 / (2 pi f C)",
            Validity = "below the part's self-resonance: above it the inductance of its leads is what counts",
        };
}
