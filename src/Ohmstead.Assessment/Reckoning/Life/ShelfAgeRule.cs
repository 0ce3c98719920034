using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Assessment.Reckoning.Life;

/// <summary>What sources say of an unused electrolytic of an age.</summary>
internal static class ShelfAgeRule
{
    private const int FirstYear = 1920;

    private static readonly ReckonInput Made = ReckonInput.Day("made", "the day it was made");
    private static readonly ReckonInput On = ReckonInput.Day("on", "the day asked for");

    internal static ReckonRule Rule { get; } =
        new(
            "shelf-age",
            "what makers say of an electrolytic that has lain unused so long",
            [Made, On],
            "made=2015-06-01 on=2026-06-01",
            given =>
                given.Day(Made).Year < FirstYear
                    ? Outcome<Reckoned>.Refused(
                        $"made: no aluminium electrolytic that can be used is from before {Answers.Text(FirstYear, ShownAs.Plain)}"
                    )
                    : ShelfAge
                        .Compute(given.Day(Made), given.Day(On))
                        .Then(age => new Reckoned([.. age.Advice.Select(advice => Line(age, advice))]))
        )
        {
            Validity = ShelfAge.Meaning,
        };

    private static ReckonedLine Line(ShelfAge age, ShelfAdvice advice) =>
        new("advice", advice.Says, $"{Answers.Text((decimal)age.Years, "years")} old", advice.Source) { Remarks = [ShelfAge.Meaning] };
}
