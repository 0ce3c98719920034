using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Reckoning.Uncertainty;

/// <summary>From an accuracy specification to an uncertainty.</summary>
internal static class UncertaintyRule
{
    private static readonly ReckonInput Reading = ReckonInput.Create(
        "reading",
        Dimension.Number,
        "what the meter shows, as a plain number"
    );
    private static readonly ReckonInput Accuracy = ReckonInput.Create(
        "accuracy",
        Dimension.Ratio,
        "the specification's share of the reading"
    );
    private static readonly ReckonInput Digits = ReckonInput
        .Create("digits", Dimension.Number, "the specification's counts of the last place")
        .Usually("0");
    private static readonly ReckonInput Resolution = ReckonInput
        .Create("resolution", Dimension.Number, "what one count is worth")
        .Usually("0");
    private static readonly ReckonInput Fixed = ReckonInput
        .Create("fixed", Dimension.Number, "a part that does not depend on the reading")
        .Usually("0");

    internal static ReckonRule Rule { get; } =
        new(
            "uncertainty",
            "the limits of error, the standard and the expanded uncertainty of a reading, from the meter's specification",
            [Reading, Accuracy, Digits, Resolution, Fixed],
            "reading=412.0 accuracy=0.5% digits=5 resolution=0.1",
            Work
        )
        {
            Formula = "a = reading x accuracy + digits x resolution + fixed; u = a / sqrt 3; U = 2 u",
            Validity =
                "all in the unit of the reading; within the specification every error is taken as equally likely; the digits already "
                + "hold the resolution",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var specification = new AccuracySpecification(given[Accuracy] * 100m, given[Digits], given[Resolution], given[Fixed]);
        var reading = given[Reading];
        return specification.HalfWidth(reading).Is(out var halfWidth, out var reason)
            ? Answers.All(
                Answers.Line("limits of error, plus or minus", specification.HalfWidth(reading), ShownAs.Plain),
                Answers.Line(
                    "standard uncertainty",
                    specification.StandardUncertaintyOf(reading),
                    ShownAs.Plain,
                    $"{ShownAs.Plain.Text(halfWidth.Value)} / sqrt(3)",
                    StandardUncertainty.RectangularSource
                ),
                Answers.Line("expanded uncertainty, k = 2", specification.ExpandedUncertaintyOf(reading), ShownAs.Plain)
            )
            : Outcome<Reckoned>.Refused(reason);
    }
}
