using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Reckoning.Uncertainty;

/// <summary>Whether a meter is good enough.</summary>
internal static class UncertaintyRatioRule
{
    private static readonly ReckonInput Tolerance = ReckonInput.Create(
        "tolerance",
        Dimension.Number,
        "half the range that is allowed, as a plain number"
    );
    private static readonly ReckonInput Expanded = ReckonInput.Create(
        "uncertainty",
        Dimension.Number,
        "U, the expanded uncertainty at k = 2, in the same unit"
    );

    internal static ReckonRule Rule { get; } =
        new(
            "uncertainty-ratio",
            "whether a meter is good enough for a tolerance",
            [Tolerance, Expanded],
            "tolerance=47 uncertainty=29.44",
            given =>
                TestUncertaintyRatio
                    .Compute(given[Tolerance], given[Expanded])
                    .Then(ratio => new Reckoned([
                        Answers.Figure("ratio", ratio.Ratio, "to 1", ratio.Arithmetic, TestUncertaintyRatio.Source) with
                        {
                            Remarks =
                                ratio.IsComfortable ? ["four to one or better"]
                                : ratio.Warning is { } warning ? [warning]
                                : [],
                        },
                    ]))
        )
        {
            Formula = "half the tolerance range / U",
            Validity = "four to one is comfortable; a ratio of two accuracy specifications is another, more hopeful number",
        };
}
