using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>
/// A piece that was read serves one fitting: the earliest by day, and none where nobody can know which of one day had it.
/// </summary>
public sealed class PieceSharesTests
{
    private const int March = 3;

    [Fact]
    public void The_earliest_fitting_has_the_only_piece_whatever_order_the_files_have() =>
        Assert.Equal(["a: counts for b", "b: read 1"], Shared(1, Any("a", 15), Any("b", 14)));

    [Fact]
    public void Each_of_two_has_one_of_two_and_the_earliest_has_the_first() =>
        Assert.Equal(["a: read 2", "b: read 1", "c: counts for b"], Shared(2, Any("a", 15), Any("b", 14), Any("c", 16)));

    [Fact]
    public void Of_two_boards_of_one_day_none_has_the_only_piece() =>
        Assert.Equal(["a: tied with b", "b: tied with a"], Shared(1, Any("a", 14), Any("b", 14)));

    [Fact]
    public void What_nobody_knows_of_one_day_is_used_up_for_the_next() =>
        Assert.Equal(["a: tied with b", "b: tied with a", "c: counts for a"], Shared(1, Any("a", 14), Any("b", 14), Any("c", 15)));

    [Fact]
    public void Two_boards_of_one_day_have_two_pieces() => Assert.Equal(["a: read 1", "b: read 2"], Shared(2, Any("a", 14), Any("b", 14)));

    // The record of one board keeps the order in which things were done.
    [Fact]
    public void Of_two_places_of_one_board_and_day_the_first_has_it() =>
        Assert.Equal(["a: read 1", "a: counts for a"], Shared(1, Any("a", 14), Any("a", 14) with { Spot = new(9, 9) }));

    [Fact]
    public void What_was_read_a_day_later_was_another_piece() => Assert.Equal(["a: nothing"], Shared(1, Any("a", 12)));

    [Fact]
    public void What_was_read_on_the_day_may_be_the_piece() => Assert.Equal(["a: read 1"], Shared(1, Any("a", 13)));

    [Fact]
    public void A_place_that_was_emptied_again_had_the_piece_all_the_same() =>
        Assert.Equal(["a: counts for b", "b: read 1"], Shared(1, Any("a", 20), Any("b", 14) with { Gone = Day(16) }));

    [Fact]
    public void A_piece_with_a_name_is_where_its_name_was_read() =>
        Assert.Equal(
            ["a: counts for b", "b: its own", "c: its own"],
            Shared(0, Any("a", 15) with { Piece = "7" }, Any("b", 14) with { Piece = "7" }, Any("c", 14) with { Piece = "8" })
        );

    [Fact]
    public void Of_two_that_name_one_piece_on_one_day_none_has_it() =>
        Assert.Equal(["a: tied with b", "b: tied with a"], Shared(0, Any("a", 14) with { Piece = "7" }, Any("b", 14) with { Piece = "7" }));

    [Theory]
    [InlineData(15, "a: its own")]
    [InlineData(16, "a: counts for b")]
    public void A_piece_with_a_name_goes_on_to_the_next_place_once_it_left_the_first(int gone, string expected) =>
        Assert.Equal(
            [expected, "b: its own"],
            Shared(0, Any("a", 15) with { Piece = "7" }, Any("b", 14) with { Piece = "7", Gone = Day(gone) })
        );

    [Fact]
    public void A_piece_of_the_drawer_that_another_fitting_names_is_nobody_elses() =>
        Assert.Equal(["a: read 2", "b: its own"], Shared(2, Any("a", 14), Any("b", 20) with { Piece = "piece 1" }));

    [Fact]
    public void Lots_are_shared_out_one_by_one() =>
        Assert.Equal(["a: read 1", "b: read 1"], Shared(1, Any("a", 15), Any("b", 14) with { Lot = "L-032" }));

    private static IEnumerable<string> Shared(int pieces, params PieceClaim[] claims)
    {
        // A lot of which pieces were read on the 13th, the first of them named.
        PassedPiece[] passed = [.. Enumerable.Range(1, pieces).Select(number => new PassedPiece($"piece {number}", Read(number)))];
        var shares = PieceShares.ShareOut(claims, _ => passed);
        return claims.Select(claim => $"{claim.Board}: {Words(claim, shares.For(claim))}");
    }

    private static string Words(PieceClaim claim, PieceShare? share) =>
        share switch
        {
            null => "not asked",
            { By: { } by } => $"read {by.Reading.Spot.Line}",
            { IsTied: true, Instead: { } other } => $"tied with {other.Board}",
            { Instead: { } other } => $"counts for {other.Board}",
            _ => claim.Piece is null ? "nothing" : "its own",
        };

    private static PieceClaim Any(string board, int day) =>
        new("L-031", null, board, $"boards/{board}.md", "C12", Day(day), null, new(7, 7));

    private static AssessedReading Read(int number)
    {
        var spot = new Spot(number, 1);
        return new(new BenchVisit(new(Day(13), "2026-03-13", spot), spot), -1, new Reading([], spot), null, null, []);
    }

    private static DateOnly Day(int day) => new(2026, March, day);
}
