using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Life;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>When the life of a part may be used up.</summary>
internal static class RemainingLifeRule
{
    private static readonly ReckonInput Used = ReckonInput
        .Create("used", Dimension.Duration, "the hours it has run")
        .Within(0m, SharedInputs.Hour * 1_000_000m)
        .Usually("0h");
    private static readonly ReckonInput UsedAt = ReckonInput
        .Create("used-at", Dimension.Temperature, "the temperature it ran at")
        .Within(0m, 150m)
        .Usually("65C");
    private static readonly ReckonInput Least = ReckonInput
        .Create("least-a-year", Dimension.Duration, "the least hours a year to come")
        .Within(SharedInputs.Hour * 0.1m, SharedInputs.Hour * 8784m);
    private static readonly ReckonInput Most = ReckonInput
        .Create("most-a-year", Dimension.Duration, "the most hours a year to come")
        .Within(SharedInputs.Hour * 0.1m, SharedInputs.Hour * 8784m);
    private static readonly ReckonInput Coolest = ReckonInput
        .Create("coolest", Dimension.Temperature, "the coolest it will usually be")
        .Within(0m, 150m);
    private static readonly ReckonInput Hottest = ReckonInput
        .Create("hottest", Dimension.Temperature, "the hottest it will usually be")
        .Within(0m, 150m);
    private static readonly ReckonInput On = ReckonInput.Day("on", "the day to count from");

    internal static ReckonRule Rule { get; } =
        new(
            "remaining-life",
            "between which days the life of an electrolytic may be used up, from the hours it ran and the use to come",
            [SharedInputs.RatedLife, SharedInputs.RatedTemperature, Used, UsedAt, Least, Most, Coolest, Hottest, On],
            "rated-life=2000h rated-temperature=105C used=10000h used-at=65C least-a-year=1000h most-a-year=4000h coolest=45C "
                + "hottest=65C on=2026-01-01",
            given =>
                RemainingLife
                    .Estimate(
                        given.Hours(SharedInputs.RatedLife),
                        given.Double(SharedInputs.RatedTemperature),
                        [new DutyPhase(given.Hours(Used), given.Double(UsedAt))],
                        new ExpectedUse(given.Hours(Least), given.Hours(Most), given.Double(Coolest), given.Double(Hottest)),
                        given.Day(On)
                    )
                    .Then(life => new Reckoned([
                        new ReckonedLine("used up", life.Text, life.Arithmetic, life.Source)
                        {
                            Remarks = [.. life.Remarks, RemainingLife.Meaning],
                        },
                    ]))
        )
        {
            Formula = "years = (min(L, 15 years) - hours used at that temperature) / hours a year, 15 at most",
            Validity = "an estimate, not a promise",
        };
}
