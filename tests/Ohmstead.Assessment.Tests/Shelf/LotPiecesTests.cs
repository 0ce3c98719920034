using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Tests.Shelf;

/// <summary>A lot is pieces: one bad piece condemns itself alone, and many doubt the lot.</summary>
public sealed class LotPiecesTests
{
    // 470 µF ±20 % is 376 to 564 µF.
    private const string Good = "capacitance: 474 µF";
    private const string Bad = "capacitance: 329 µF";

    [Fact]
    public void A_failed_piece_among_the_others_keeps_them_all_back_until_it_is_scrapped()
    {
        var before = NoneScrapped(Reading(Bad), Reading(Good));
        Assert.NotNull(before.FailedOn);
        var after = Pieces(scrapped: "count: 1, because: reads 70 % of its mark", Reading(Bad), Reading(Good));
        Assert.Null(after.FailedOn);
        Assert.False(after.IsDoubted);
        Assert.Equal("1 of 2 looked at was bad", after.ShareInWords);
        Assert.Equal("474 µF", Assert.Single(after.StillThere).Verdicts[0].Reading.Text);
    }

    [Fact]
    public void The_piece_that_is_named_is_the_one_that_went()
    {
        var pieces = Pieces(
            scrapped: "piece: 2, count: 1, because: reads 70 % of its mark",
            Reading(Bad + ", piece: 3"),
            Reading(Bad + ", piece: 2"),
            Reading(Good + ", piece: 1")
        );
        Assert.Equal(2, pieces.Bad);
        Assert.NotNull(pieces.FailedOn);
        Assert.Equal(["3", "1"], pieces.StillThere.Select(reading => reading.Reading.Piece!.Value));
    }

    [Fact]
    public void Readings_of_one_visit_are_of_one_piece_until_a_quantity_comes_again()
    {
        var pieces = NoneScrapped(Reading(Good), Reading("leakage: 14 µA, after: 2 min, at_voltage: 35 V"), Reading(Good));
        Assert.Equal([2, 1], pieces.Pieces.Select(piece => piece.Readings.Length));
        Assert.Equal((2, 0), (pieces.Looked, pieces.Bad));
        Assert.Null(pieces.ShareInWords);
    }

    [Fact]
    public void A_named_piece_that_was_read_again_and_is_inside_has_not_failed() =>
        Assert.Null(NoneScrapped(Reading(Bad + ", piece: 1"), Reading(Good + ", piece: 1")).FailedOn);

    // One in five, two at least: common practice. Wilson's interval for 2 of 10 at 95 % is 5.7 % to 51.0 %: (p + z²/2n ± z sqrt(p (1 - p)/n
    // + z²/4n²)) / (1 + z²/n) with p = 0.2, n = 10, z = 1.96, worked by hand: (0.39208 ± 0.31351) / 1.38416.
    [Theory]
    [InlineData(2, 8, true)]
    [InlineData(2, 9, false)]
    [InlineData(1, 1, false)]
    [InlineData(1, 0, false)]
    [InlineData(3, 12, true)]
    [InlineData(3, 13, false)]
    public void From_two_bad_pieces_and_one_in_five_on_the_lot_is_doubted_as_a_whole(int bad, int good, bool isDoubted) =>
        Assert.Equal(
            isDoubted,
            Pieces(scrapped: $"count: {bad}, because: leads torn off", [.. Enumerable.Repeat(Reading(Good), good)]).IsDoubted
        );

    [Fact]
    public void The_share_is_told_with_its_interval_and_the_rule_with_its_source()
    {
        var pieces = Pieces(scrapped: "count: 2, because: leads torn off", [.. Enumerable.Repeat(Reading(Good), 8)]);
        Assert.Equal("2 of 10 looked at were bad (20 %, with 95 % between 5.7 % and 51 %)", pieces.ShareInWords);
        Assert.EndsWith(
            "from 2 pieces and 20 % on a lot is doubted as a whole (common practice)",
            pieces.DoubtInWords,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Counts_go_down_by_what_was_scrapped_and_a_doubted_lot_is_not_sure()
    {
        var collection = Collection("count: 2, because: leads torn off", [Reading(Good)]);
        var line = Assert.Single(DrawerList.List(collection.Workshop, new LotUse([]), SmallCollection.Today));
        Assert.Equal((10, 0, 2, 8), (line.Came, line.Fitted, line.Scrapped, line.Left));
        Assert.Contains("doubt all of it, so many were bad: measure each piece, or send it back", line.ToDo);
        Assert.Equal("2 of 3 looked at were bad", line.BadInWords);
        var lot = Assert.Single(Drawer.Count(collection.Workshop, new LotUse([]), SmallCollection.Today).Lots);
        Assert.Equal(8, lot.Left);
        Assert.Equal(ReasonWeight.Doubt, Assert.Single(lot.Doubts).Weight);
        var story = LotStory.Gather(collection.Workshop, collection.Workshop.Lots["L-031"], [], SmallCollection.Today);
        Assert.Equal((8, 1), (story.Left!.Value, story.Scraps.Count));
    }

    [Fact]
    public void A_lot_whose_only_piece_read_was_scrapped_has_not_been_measured() =>
        Assert.Contains(
            "measure one before any is fitted",
            Assert
                .Single(
                    DrawerList.List(
                        Collection("count: 1, because: reads low", [Reading(Bad)]).Workshop,
                        new LotUse([]),
                        SmallCollection.Today
                    )
                )
                .ToDo
        );

    [Fact]
    public void A_lot_whose_bad_piece_was_scrapped_is_offered_again()
    {
        var lot = Assert.Single(
            Drawer
                .Count(
                    Collection("count: 1, because: reads low", [Reading(Bad), Reading(Good)]).Workshop,
                    new LotUse([]),
                    SmallCollection.Today
                )
                .Lots
        );
        Assert.Equal(9, lot.Left);
        Assert.Empty(lot.Doubts);
    }

    // The piece in the bin is not the one in the board: its reading is none of the part's, whenever it was thrown away.
    [Fact]
    public void What_a_scrapped_piece_read_is_not_held_against_the_one_that_was_fitted()
    {
        const string board =
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 % }\nbench:\n  - date: "
            + "2026-03-14\n    work:\n      - { part: C1, did: replaced, lot: L-031, polarity: schematic }";
        Assert.True(Worked.Board(board, Stock(null, [Reading(Bad)])).Places[0].HasFailed);
        var place = Worked.Board(board, Stock("count: 1, because: reads low", [Reading(Bad)])).Places[0];
        Assert.False(place.HasFailed);
        Assert.Empty(place.Standing);
    }

    private static LotPieces NoneScrapped(params string[] readings) => Pieces(null, readings);

    private static LotPieces Pieces(string? scrapped, params string[] readings)
    {
        var workshop = Collection(scrapped, readings).Workshop;
        return LotPieces.Gather(workshop, new ReadingJudge(workshop), "L-031");
    }

    private static SmallCollection Collection(string? scrapped, string[] readings)
    {
        var collection = new SmallCollection([new("yaml", "stock.yaml", 0, Stock(scrapped, readings))]);
        Assert.Empty(collection.ReadingFindings);
        return collection;
    }

    private static string Reading(string values) => $"      - {{ lot: L-031, state: new, frequency: 120 Hz, {values} }}\n";

    private static string Stock(string? scrapped, string[] readings) =>
        "lots:\n  - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, received: "
        + "2026-02-20, quantity: 10 }\n"
        + "bench:\n  - date: 2026-02-21\n    readings:\n"
        + string.Concat(readings)
        + (scrapped is null ? string.Empty : $"    scrapped:\n      - {{ lot: L-031, {scrapped} }}\n");
}
