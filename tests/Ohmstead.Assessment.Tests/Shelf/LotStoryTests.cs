using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Shelf;

/// <summary>Lots in the drawer: how old they can be, when they are due, how they are formed again.</summary>
public sealed class LotStoryTests
{
    private const string Kind = "kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 100 V";

    // IEC 60062, 20-year cycle, from memory: T5 is May 1985, 2005 or 2025.
    [Fact]
    public void A_code_that_comes_round_every_twenty_years_gives_all_its_dates()
    {
        var story = Story(Kind + ", date_code: T5, received: 2026-01-28");
        Assert.True(story.Dates.IsAmbiguous);
        Assert.Equal("1985-05, 2005-05 or 2025-05, the code alone does not say which", story.Dates.Words);
        Assert.Equal(new DateOnly(2028, 5, 31), story.Shelf!.Due);
        Assert.Equal("made 2025-05, date code T5, the latest it can mean", story.Shelf.SinceWords);
        Assert.Equal(3, story.Ages.Count);
    }

    [Fact]
    public void Parts_cannot_have_been_made_after_they_came()
    {
        var story = Story(Kind + ", date_code: T5, received: 2019-06-30");
        Assert.Equal("1985-05 or 2005-05, the code alone does not say which", story.Dates.Words);
        Assert.True(story.Shelf!.IsOverOn(SmallCollection.Today));
    }

    [Fact]
    public void A_code_that_is_no_date_is_told_and_the_day_it_came_counts()
    {
        var story = Story(Kind + ", date_code: XYZZY, received: 2025-06-30");
        Assert.NotNull(story.Dates.Fault);
        Assert.Null(story.Dates.Words);
        Assert.Equal(new DateOnly(2028, 6, 30), story.Shelf!.Due);
    }

    [Fact]
    public void Forming_again_starts_the_shelf_life_anew() =>
        Assert.Equal(
            new DateOnly(2028, 5, 9),
            Story(Kind + ", date_code: \"9821\", received: 1998-06-30, formed: 2026-05-09, shelf_life: 2 years").Shelf!.Due
        );

    [Theory]
    [InlineData("kind: tantalum, capacitance: 10 µF, received: 1998")]
    [InlineData("kind: polyester film, capacitance: 10 µF, received: 1998")]
    [InlineData("kind: aluminium electrolytic, capacitance: 10 µF")]
    public void What_does_not_age_on_the_shelf_or_has_no_date_has_no_shelf_life(string values) => Assert.Null(Story(values).Shelf);

    // (100 V)² / 100 kΩ = 0.1 W; 0.01 x 220 µF x 100 V = 220 µA is the leakage limit to end under.
    [Fact]
    public void A_plan_to_form_again_says_its_resistor_its_heat_and_when_to_give_up()
    {
        var plan = LotReforming.Plan(Story(Kind).Lot).Value;
        Assert.Equal(100_000m, plan.SeriesOhms);
        Assert.Equal(0.1m, plan.WorstWatts);
        Assert.Contains("the last leakage is above 220 µA", plan.StopWhen);
    }

    [Theory]
    [InlineData(
        "kind: tantalum, rated_voltage: 35 V",
        "there is no plan for a part of kind 'tantalum', only for aluminium electrolytics with a right way round"
    )]
    [InlineData(
        "kind: aluminium electrolytic, polarity: bipolar, rated_voltage: 35 V",
        "there is no plan for a part of kind 'aluminium electrolytic', only for aluminium electrolytics with a right way round"
    )]
    [InlineData("kind: aluminium electrolytic", "its rated voltage is not written, as in rated_voltage: 25 V")]
    public void A_plan_is_refused_with_the_reason(string values, string expected) =>
        Assert.Equal(expected, LotReforming.Plan(Story(values).Lot).Refusal);

    [Fact]
    public void Where_its_parts_went_is_told_and_how_many_are_left()
    {
        var collection = new SmallCollection([
            new("yaml", "stock.yaml", 0, $"lots:\n  - {{ lot: L-031, {Kind}, quantity: 5 }}\n"),
            new(
                "markdown",
                "boards/SP-0001.md",
                0,
                """
                ---
                board: SP-0001
                title: Tide-gauge logger
                parts:
                  - { ref: C1, kind: aluminium electrolytic }
                  - { ref: C2, kind: aluminium electrolytic }
                bench:
                  - date: 2026-03-14
                    work:
                      - { part: C2, did: replaced, lot: L-031 }
                      - { part: C1, did: replaced, lot: L-031 }
                  - date: 2026-03-21
                    work:
                      - { part: C1, did: replaced, lot: L-031 }
                ---

                """
            ),
        ]);
        var story = LotStory.Gather(
            collection.Workshop,
            collection.Workshop.Lots["L-031"],
            collection.Boards.SelectMany(board => LotFitting.FromLot(board, "L-031")),
            SmallCollection.Today
        );
        Assert.Equal(
            [
                new("SP-0001", "C1", new(2026, 3, 14), false),
                new("SP-0001", "C2", new(2026, 3, 14), true),
                new("SP-0001", "C1", new(2026, 3, 21), true),
            ],
            story.Fittings
        );
        Assert.Equal(2, story.Left);
    }

    private static LotStory Story(string values)
    {
        var collection = new SmallCollection([new("yaml", "stock.yaml", 0, $"lots:\n  - {{ lot: L-031, {values} }}\n")]);
        Assert.Empty(collection.ReadingFindings.Select(finding => finding.Message));
        return LotStory.Gather(collection.Workshop, collection.Workshop.Lots["L-031"], [], SmallCollection.Today);
    }
}
