using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.FitToRun;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>Boards are judged again only where all boards together change what is said of them, so that the rest costs nothing.</summary>
public sealed class BoardsTogetherTests
{
    private const string Stock = """
        lots:
          - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, received: 2026-01-28,
              quantity: 2 }
        bench:
          - date: 2026-02-21
            readings:
              - { lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 478 µF }

        """;

    private const string SecondRead = "      - { lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 471 µF }\n";

    [Fact]
    public void A_board_that_is_the_only_one_to_have_a_lot_is_not_judged_again() =>
        Assert.Equal([false, false], Changes(Stock, "2026-03-14", null));

    [Fact]
    public void Of_two_that_live_on_one_reading_the_later_is_judged_again() =>
        Assert.Equal([true, false], Changes(Stock, "2026-04-14", "2026-03-14"));

    // Each by itself took the first of the two readings.
    [Fact]
    public void Where_a_board_has_another_reading_than_it_took_by_itself_it_is_judged_again() =>
        Assert.Equal([true, false], Changes(Stock + SecondRead, "2026-04-14", "2026-03-14"));

    [Fact]
    public void An_overdrawn_lot_is_of_all_boards_that_have_a_piece_of_it() =>
        Assert.Equal(
            [true, true],
            Changes(Stock.Replace("quantity: 2", "quantity: 1", StringComparison.Ordinal) + SecondRead, "2026-03-14", "2026-03-14")
        );

    [Fact]
    public void What_is_met_by_one_reading_is_met_at_one_place_alone()
    {
        var met = Of(Stock + SecondRead, "2026-04-14", "2026-03-14")
            .Boards.Select(board =>
                board.Obligations.Single(one => one is { Kind: "fitted-part-measured", Standing: ObligationStanding.Met }).MetBy!.Spot.Line
            );
        Assert.Equal([8, 7], met);
    }

    // Whatever is found about all boards together, one that need not be judged again stands as it stood by itself.
    [Fact]
    public void A_board_that_is_not_judged_again_stands_as_it_stood() => Assert.All(GalleryBoard.All, board =>
        {
            var collection = new SmallCollection(board.Blocks);
            foreach (var (alone, told) in collection.Alone.Zip(collection.Boards))
            {
                if (!collection.Together.Changes(BoardSummary.From(alone)))
                {
                    Assert.Equal(Words(alone), Words(told));
                }
            }
        });

    private static IEnumerable<string> Words(JudgedBoard board) =>
        board.Obligations.Select(one => $"{one.Kind} {one.At} {one.Standing} {one.Text} {one.NextStep} {one.MetBy?.Spot}");

    private static IEnumerable<bool> Changes(string stock, params string?[] days)
    {
        var collection = Of(stock, days);
        return collection.Alone.Select(board => collection.Together.Changes(BoardSummary.From(board)));
    }

    private static SmallCollection Of(string stock, params string?[] days) =>
        new([
            .. days.Select(
                (day, at) =>
                    new CaseBlock(
                        "markdown",
                        $"boards/SP-000{at}.md",
                        0,
                        $"---\nboard: SP-000{at}\ntitle: Tide-gauge logger\n"
                            + "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }\nbench:\n"
                            + (
                                day is null
                                    ? "  - date: 2026-03-14\n"
                                    : $"  - date: {day}\n    work:\n      - {{ part: C1, did: replaced, lot: L-031, polarity: schematic "
                                        + "}\n"
                            )
                            + "---\n"
                    )
            ),
            new("yaml", "stock.yaml", 0, stock),
        ]);
}
