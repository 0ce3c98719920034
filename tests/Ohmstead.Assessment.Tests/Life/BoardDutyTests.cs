using Ohmstead.Assessment.Life;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.Life;

public sealed class BoardDutyTests
{
    // COSEL, technical notes: a 1000 h 105 °C part, 8 hours a day each at 45, 55 and 65 °C, lasts 27 428.6 h.
    [Fact]
    public void A_mixed_duty_can_be_told_by_its_phases()
    {
        var duty = new BoardDuty(8760, [new(8, 45), new(8, 55), new(8, 65)], "the board's duty");
        Assert.Equal(27428.6, TenKelvinRule.MixedDuty(1000, 105, duty.Phases).Value.ComputedHours, 0.05);
    }

    [Fact]
    public void A_board_without_a_duty_takes_that_of_the_collection() =>
        Assert.Equal("the usual duty of the collection", BoardDuty.For(Board(null), Usual)!.Origin);

    [Fact]
    public void A_collection_that_says_nothing_leaves_the_duty_unknown() =>
        Assert.Null(BoardDuty.For(Board(null), CollectionFile.Nameless));

    // 900 h a year, of which 200 at 52 °C: the rest, 700 h, at 38 °C.
    [Fact]
    public void Hours_at_another_temperature_are_part_of_the_hours_a_year()
    {
        var duty = Support.Worked.Board(
            "duty: { hours_per_year: 900, temperature: 38 °C, at_times: [ { hours_per_year: 200, temperature: 52 °C } ] }"
        );
        Assert.Equal([new DutyPhase(700, 38), new DutyPhase(200, 52)], BoardDuty.For(duty.Board, CollectionFile.Nameless)!.Phases);
    }

    [Fact]
    public void More_hours_at_other_temperatures_than_there_are_give_no_life()
    {
        var duty = Support.Worked.Board(
            "duty: { hours_per_year: 100, temperature: 38 °C, at_times: [ { hours_per_year: 200, temperature: 52 °C } ] }"
        );
        Assert.Equal(
            "the duty names 200 h a year at other temperatures, more than its 100 h a year",
            BoardDuty.For(duty.Board, CollectionFile.Nameless)!.Fault
        );
    }

    private static CollectionFile Usual { get; } =
        CollectionFile.Nameless with
        {
            Duty = new(new(1200, "1200", default), new(new(35m, Electronics.Quantities.Dimension.Temperature), "35 °C", default)),
        };

    private static BoardFile Board(Duty? duty) =>
        new("boards/SP-0001.md", new("SP-0001", "SP-0001", default), new("Tide-gauge logger", "Tide-gauge logger", default))
        {
            Duty = duty,
        };
}
