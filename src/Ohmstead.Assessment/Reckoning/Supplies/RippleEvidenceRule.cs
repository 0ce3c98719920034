using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>What a ripple reading proves of its capacitor.</summary>
internal static class RippleEvidenceRule
{
    private static readonly ReckonInput Ripple = ReckonInput
        .Create("ripple", Dimension.Voltage, "the ripple measured, peak to peak")
        .Within(0.0001m, 1000m);
    private static readonly ReckonInput Limit = ReckonInput
        .Create("limit", Dimension.Capacitance, "the lower limit of the capacitance")
        .Within(1e-9m, 1m);

    internal static ReckonRule Rule { get; } =
        new(
            "ripple-evidence",
            "what a ripple measured in circuit with the power on proves of the reservoir capacitor",
            [Ripple, SharedInputs.Current, Limit, SharedInputs.Mains, SharedInputs.Rectifier],
            "ripple=4V current=1A limit=3760uF mains=50Hz",
            given =>
                ReservoirRipple
                    .Evidence(
                        given[Ripple],
                        given[SharedInputs.Current],
                        given[SharedInputs.Mains],
                        given.Kind(SharedInputs.Rectifier),
                        given[Limit]
                    )
                    .Then(evidence => new Reckoned([
                        Answers.Figure(
                            "the capacitance is at most",
                            evidence.Value.AtMostFarads,
                            Dimension.Capacitance,
                            evidence.Arithmetic,
                            evidence.Source
                        ),
                        new ReckonedLine(
                            "that proves",
                            evidence.Value.ProvedLow ? "the capacitor is low" : "nothing",
                            string.Empty,
                            evidence.Source
                        ),
                    ]))
                    .WithCautions("mains")
        )
        {
            Formula = "C at most I / (2 f dV)",
            Validity = "an upper bound: under the lower limit it proves the capacitor low, above it proves nothing",
        };
}
