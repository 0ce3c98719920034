using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>How to form a stored electrolytic again.</summary>
internal static class ReformRule
{
    private const decimal MicroPerUnit = 1_000_000m;

    private static readonly ReckonInput Procedure = ReckonInput
        .Word("procedure", "the published procedure, with spaces in quotes", [.. ReformingProcedure.All.Select(known => known.Name)])
        .Usually(ReformingProcedure.LongStored.Name);
    private static readonly ReckonInput Leakage = ReckonInput
        .Create("leakage", Dimension.Current, "the leakage to end under")
        .Within(1e-8m, 0.1m)
        .Optional();
    private static readonly ReckonInput Rated = SharedInputs.RatedVoltage.Within(1m, SurgeVoltage.HighestRatedVolts);

    internal static ReckonRule Rule { get; } =
        new(
            "reform",
            "how to form a stored aluminium electrolytic again: resistor, its power, steps, when to give up",
            [Rated, Procedure, Leakage],
            "rated-voltage=450V leakage=500uA",
            given =>
                ReformingPlan
                    .For(
                        given[Rated],
                        ReformingProcedure.All.First(known => known.Name == given.Text(Procedure)),
                        given.Has(Leakage) ? given[Leakage] * MicroPerUnit : null
                    )
                    .Then(Answer)
        )
        {
            Formula = "P = Ur² / R should the part be shorted",
            Validity = ReformingProcedure.ForParts + "; parts that measure as capacitors, out of the set",
        };

    private static Reckoned Answer(ReformingPlan plan) =>
        new([
            new ReckonedLine("for", plan.ForParts, string.Empty, plan.Source),
            Answers.Figure("series resistor", plan.SeriesOhms, Dimension.Resistance, "by the procedure", plan.Source),
            Answers.Figure("power should the part be shorted", plan.WorstWatts, Dimension.Power, plan.Arithmetic, plan.Source),
            .. plan.Steps.Select(
                (step, at) => new ReckonedLine($"step {Answers.Text(at + 1, ShownAs.Plain)}", step.Do, string.Empty, step.Source)
            ),
            new ReckonedLine(
                "give up when",
                string.Join("; ", plan.StopWhen),
                string.Empty,
                Answers.Practice("forming electrolytics again")
            ),
        ])
        {
            Cautions = [.. HazardCatalogue.All.First(known => known.Name == "stored-energy").Cautions],
        };
}
