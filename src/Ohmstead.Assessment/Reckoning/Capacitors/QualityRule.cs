using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>Quality and power factor.</summary>
internal static class QualityRule
{
    internal static ReckonRule Rule { get; } =
        new(
            "q",
            "the quality factor and the power factor that a dissipation factor stands for",
            [SharedInputs.TanDelta],
            "tan-delta=0.2",
            given =>
                Answers.All(
                    Answers.Line(
                        "quality factor Q",
                        LossFactor.Quality(given[SharedInputs.TanDelta]),
                        ShownAs.Plain,
                        $"1 / {given.Text(SharedInputs.TanDelta)}",
                        Answers.Practice("definitions of quality and power factor")
                    ),
                    Answers.Line(
                        "power factor",
                        LossFactor.PowerFactor(given.Double(SharedInputs.TanDelta)),
                        ShownAs.Plain,
                        $"{given.Text(SharedInputs.TanDelta)} / sqrt(1 + {given.Text(SharedInputs.TanDelta)}²)",
                        Answers.Practice("definitions of quality and power factor")
                    )
                )
        )
        {
            Formula = "Q = 1 / D; power factor = D / sqrt(1 + D²)",
        };
}
