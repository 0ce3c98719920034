using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Drawings;

namespace Ohmstead.Report.Tests.Drawings;

/// <summary>The life of a board on one line, 590 units from the first step to the last.</summary>
public sealed class YearsLineTests
{
    private static readonly DateOnly First = new(2026, 1, 1);

    // 590 days on 590 units: a day is a unit, and marks need thirty.
    [Fact]
    public void Visits_that_lie_on_each_other_are_one_mark_that_shows_the_weightiest()
    {
        BoardStep[] steps =
        [
            Step(0, BoardStepKind.Came),
            Step(100, BoardStepKind.Seen),
            Step(120, BoardStepKind.Replaced),
            Step(140, BoardStepKind.Proved),
            Step(590, BoardStepKind.LookAgain),
        ];
        var marks = YearsLine.Marks(steps, YearsLine.Scale(steps, First.AddDays(200)));
        Assert.Equal([100m, 200m, 240m, 690m], marks.Select(mark => mark.X));
        Assert.Equal(
            [BoardStepKind.Came, BoardStepKind.Replaced, BoardStepKind.Proved, BoardStepKind.LookAgain],
            marks.Select(mark => mark.Kind)
        );
    }

    [Fact]
    public void Today_is_on_the_line_also_where_it_is_later_than_the_next_look() =>
        Assert.Equal(
            (First, First.AddDays(900)),
            YearsLine.Scale([Step(0, BoardStepKind.Came), Step(590, BoardStepKind.LookAgain)], First.AddDays(900)) is var scale
                ? (scale.First, scale.Last)
                : default
        );

    private static BoardStep Step(int days, BoardStepKind kind) =>
        new(First.AddDays(days), kind, "words", kind is BoardStepKind.Came or BoardStepKind.LookAgain ? null : 0);
}
