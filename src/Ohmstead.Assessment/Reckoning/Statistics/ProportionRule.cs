using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>How far a share of bad parts may be off.</summary>
internal static class ProportionRule
{
    private static readonly ReckonInput Bad = ReckonInput.Count("bad", "how many were bad");
    private static readonly ReckonInput Looked = ReckonInput.Count("looked", "how many were looked at");

    internal static ReckonRule Rule { get; } =
        new(
            "proportion",
            "how far a share of bad parts may be off when few were looked at",
            [Bad, Looked, SharedInputs.Confidence],
            "bad=1 looked=29",
            Work
        )
        {
            Formula =
                "Wilson's score interval, with continuity correction, exact by Clopper and Pearson; none bad: 1 - (1 - confidence)^(1/n)",
            Validity = "independent parts: twenty parts of one board are not twenty independent parts",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (bad, looked, confidence) = (given.Count(Bad), given.Count(Looked), given.Double(SharedInputs.Confidence));
        return Answers.All([
            Line("Wilson", ProportionInterval.Wilson(bad, looked, confidence), given),
            Line("Wilson with continuity correction", ProportionInterval.WilsonCorrected(bad, looked, confidence), given),
            Line("exact, Clopper and Pearson", ProportionInterval.ClopperPearson(bad, looked, confidence), given),
            .. bad == 0
                ? [Answers.Line("none bad: the share is under", RuleOfThree.UpperLimit(looked, confidence), ShownAs.Percent)]
                : Array.Empty<Outcome<ReckonedLine>>(),
        ]);
    }

    private static Outcome<ReckonedLine> Line(string what, Outcome<ConfidenceInterval> interval, GivenInputs given) =>
        interval.Then(found =>
            Intervals.Line(what, found, ShownAs.Percent, $"{given.Text(Bad)} of {given.Text(Looked)}", ProportionInterval.Source)
        );
}
