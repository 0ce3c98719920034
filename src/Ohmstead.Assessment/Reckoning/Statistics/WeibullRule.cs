using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>A Weibull life fitted to ages.</summary>
internal static class WeibullRule
{
    private static readonly ReckonInput Items = ReckonInput.List("ages", $"in one unit: {Ages.LookedForm}");
    private static readonly ReckonInput Share = ReckonInput
        .Create("share", Dimension.Ratio, "a share failed, to be told its age")
        .Usually("10%");
    private static readonly ReckonInput Good = ReckonInput
        .Create("good-at", Dimension.Number, "an age at which an item is good")
        .Optional();
    private static readonly ReckonInput Later = ReckonInput.Create("later", Dimension.Number, "a later age").Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "weibull",
            "a Weibull life fitted to ages at failure, the age by which a share has failed, and what comes next",
            [Items, Share, Good, Later, SharedInputs.Confidence],
            "ages=54,187,216,240,244,335,361,373,375,386,500+,500+,500+,500+,500+,500+,500+,500+,500+,500+ share=10% good-at=300 later=500",
            given =>
                Ages.Looked(given.List(Items)).Is(out var items, out var reason)
                    ? WeibullFit.Compute(items).Is(out var fit, out reason)
                        ? Work(fit, given)
                        : Outcome<Reckoned>.Refused(reason)
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "S(t) = exp(-(t / eta)^beta), by maximum likelihood",
            Validity = "three failures or more; a shape under 1 is early failure, 1 chance, above 1 wear; an estimate, not a promise",
        };

    private static Outcome<Reckoned> Work(WeibullFit fit, GivenInputs given)
    {
        var confidence = given.Double(SharedInputs.Confidence);
        var how = $"{Text(fit.Failures)} failures among {Text(fit.Items)}; log likelihood {Text(fit.LogLikelihood)}";
        return Answers.All([
            Outcome<ReckonedLine>.From(Answers.Figure("shape beta", (decimal)fit.Life.Shape, ShownAs.Plain, how, WeibullFit.Source)),
            fit.ShapeInterval(confidence)
                .Then(found => Intervals.Line("shape between", found, ShownAs.Plain, "exp(ln beta ± z se)", WeibullFit.Source)),
            Outcome<ReckonedLine>.From(
                Answers.Figure("scale eta", (decimal)fit.Life.Scale, ShownAs.Plain, "63.2 % have failed by it", WeibullFit.Source)
            ),
            fit.ScaleInterval(confidence)
                .Then(found => Intervals.Line("scale between", found, ShownAs.Plain, "exp(ln eta ± z se)", WeibullFit.Source)),
            Outcome<ReckonedLine>.From(
                Answers.Figure("mean life", (decimal)fit.Life.Mean, ShownAs.Plain, "eta gamma(1 + 1/beta)", WeibullFit.Source)
            ),
            Answers.Line(
                $"age by which {given.Text(Share)} have failed",
                fit.Life.AgeAt(given.Double(Share)),
                ShownAs.Plain,
                "eta (-ln(1 - share))^(1/beta)",
                WeibullFit.Source
            ),
            .. given.Has(Good) && given.Has(Later)
                ?
                [
                    Answers.Line(
                        $"good at {given.Text(Good)}, fails by {given.Text(Later)}",
                        fit.Life.FailsBetween(given.Double(Good), given.Double(Later)),
                        ShownAs.Percent,
                        "1 - S(later) / S(good)",
                        WeibullFit.Source
                    ),
                ]
                : Array.Empty<Outcome<ReckonedLine>>(),
        ]);
    }

    private static string Text(double value) => ShownAs.Plain.Text((decimal)value);
}
