using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>The loss that a resistance beside a capacitor makes by itself.</summary>
internal static class ParallelLossRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "parallel-loss",
            "the dissipation factor that a resistance in parallel causes by itself, as leakage or in circuit",
            [SharedInputs.Capacitance, SharedInputs.Resistance, SharedInputs.Frequency],
            "capacitance=100nF resistance=100k frequency=1kHz",
            given =>
                Answers.All(
                    Answers
                        .Line(
                            "dissipation factor from the resistance",
                            LossFactor.FromParallelResistance(
                                given[SharedInputs.Resistance],
                                given[SharedInputs.Frequency],
                                given[SharedInputs.Capacitance]
                            ),
                            ShownAs.Plain,
                            $"1 / (2 pi x {given.Text(SharedInputs.Frequency)} x {given.Text(SharedInputs.Resistance)} x "
                                + $"{given.Text(SharedInputs.Capacitance)})",
                            Answers.Practice("definition of the dissipation factor")
                        )
                        .Remarking(
                            "a meter set to the parallel picture shows the capacitance unharmed, one set to the series picture shows 1 "
                                + "+ D² times it"
                        )
                )
        )
        {
            Formula = "D = 1 / (2 pi f R C)",
        };
}
