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
        Assert.Equal("the usual duty of the collection", BoardDuty.Of(Board(null), Usual)!.Origin);

    [Fact]
    public void A_collection_that_says_nothing_leaves_the_duty_unknown() => Assert.Null(BoardDuty.Of(Board(null), CollectionFile.Nameless));

    private static CollectionFile Usual { get; } = CollectionFile.Nameless with { Duty = new(new(1200, "1200", default), new(new(35m, Electronics.Quantities.Dimension.Temperature), "35 °C", default)) };

    private static BoardFile Board(Duty? duty) => new("boards/SP-0001.md", new("SP-0001", "SP-0001", default), new("Tide-gauge logger", "Tide-gauge logger", default)) { Duty = duty };
}
