using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>Somebody has had the board at the bench since the day before which everything is taken as told. The run is on
/// 2026-11-25.</summary>
public sealed class NotMerelyToldTests
{
    private const string Old = """
        parts:
          - { ref: C1, kind: polyester film, capacitance: 100 nF, tolerance: ±10 % }
        bench:
          - date: 2019-03-14
            readings:
              - { part: C1, circuit: out, capacitance: 60 nF }
        """;

    [Theory]
    [InlineData("2019-03-15", true)]
    [InlineData("2019-03-14", false)]
    [InlineData("2026-11-25", true)]
    [InlineData("2026-11-26", false)]
    public void The_day_itself_is_judged_and_a_day_to_come_excuses_nothing(string day, bool isTold) =>
        Assert.Equal(isTold, new ObligedBoard("not-merely-told", $"told_before: {day}\n{Old}").IsOpen(null));

    [Fact]
    public void What_it_means_is_said_with_the_next_step() =>
        new ObligedBoard("not-merely-told", $"told_before: 2026-06-01\n{Old}").Open(
            null,
            BoardState.AsTold,
            "what was done before 2026-06-01 is taken as it was told, and nobody has looked since; a fault told then still stands at C1",
            "look at it before power is applied; from its first visit on it is judged in full"
        );

    [Fact]
    public void Where_nothing_was_wrong_nothing_more_is_said() =>
        new ObligedBoard("not-merely-told", $"told_before: 2026-06-01\n{Old.Replace("60 nF", "99 nF", StringComparison.Ordinal)}").Open(
            null,
            BoardState.AsTold,
            "what was done before 2026-06-01 is taken as it was told, and nobody has looked since",
            "look at it before power is applied; from its first visit on it is judged in full"
        );

    [Fact]
    public void Five_places_are_named_and_the_rest_are_counted()
    {
        var found = string.Join(
            '\n',
            Enumerable.Range(1, 7).Select(at => $"      - {{ at: Q{at}, what: collector pad lifted, severity: major }}")
        );
        new ObligedBoard("not-merely-told", $"told_before: 2026-06-01\nbench:\n  - date: 2019-03-14\n    found:\n{found}").Open(
            null,
            BoardState.AsTold,
            "what was done before 2026-06-01 is taken as it was told, and nobody has looked since; a fault told then still stands "
                + "at Q1, Q2, Q3, Q4, Q5 and 2 more",
            "look at it before power is applied; from its first visit on it is judged in full"
        );
    }

    [Fact]
    public void What_was_wrong_then_is_still_told_and_asked_for_no_more()
    {
        var board = new ObligedBoard("reading-answered", $"told_before: 2026-06-01\n{Old}").Board;
        Assert.Equal(BoardState.AsTold, Assert.Single(board.Reasons).State);
        Assert.Contains(board.Obligations, one =>
            one is { Kind: "reading-answered", At: "C1", Standing: ObligationStanding.DoesNotApply }
            && one.Text.Text.EndsWith("outside; told before 2026-06-01, asked for at its next visit", StringComparison.Ordinal)
        );
        // It buys nothing, and what was read stays history.
        Assert.Empty(board.Needs);
        Assert.Single(board.Readings);
    }

    [Fact]
    public void A_board_of_which_nobody_takes_anything_as_told_is_asked_nothing() =>
        new ObligedBoard("not-merely-told", Old).AsksNothing(null);
}
