using Ohmstead.Assessment.Ahead;

namespace Ohmstead.Assessment.Tests.Ahead;

/// <summary>Hundreds of things that are overdue, in a few lines.</summary>
public sealed class DueGroupTests
{
    [Fact]
    public void Boards_of_one_design_stand_together_and_an_instrument_alone()
    {
        DueItem[] items =
        [
            Look("A-1", 3),
            new(Day(4), Day(4), DueKind.Calibration, "meter-1", null, "have it calibrated", "calibrated a year ago"),
            new(Day(4), Day(4), DueKind.Calibration, "meter-2", null, "have it calibrated", "calibrated a year ago"),
            Look("A-2", 5),
            Look("B-1", 6),
            Look("C-1", 7),
        ];
        var groups = DueGroup.Group(items, board => board switch
            {
                "A-1" or "A-2" => "tide-logger",
                "B-1" => "chart-drive",
                _ => null,
            });
        Assert.Equal(
            ["A-1 A-2", "meter-1", "meter-2", "B-1", "C-1"],
            groups.Select(group => string.Join(' ', group.Items.Select(item => item.Whom)))
        );
    }

    private static DueItem Look(string board, int day) =>
        new(Day(day), Day(day), DueKind.LookAgain, board, null, "look at it again", "last seen long ago");

    private static DateOnly Day(int day) => new(2026, 3, day);
}
