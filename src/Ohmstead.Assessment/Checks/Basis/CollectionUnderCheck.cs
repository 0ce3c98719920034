using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>What a check of the whole collection sees: the workshop, and of each board only what must be compared, so that memory stays
/// flat.</summary>
/// <param name="Workshop">Designs, instruments, stock.</param>
/// <param name="Boards">The number of each board and where it is written, in order of path.</param>
/// <param name="Use">What boards took of the lots.</param>
/// <param name="Today">The day of this run.</param>
public sealed record CollectionUnderCheck(Workshop Workshop, IReadOnlyList<BoardNumber> Boards, LotUse Use, DateOnly Today)
{
    /// <summary>What each board took from others and what left its places; of boards that have neither there is none.</summary>
    public IReadOnlyList<(BoardNumber Board, PartTransfers Parts)> Transfers { get; init; } = [];

    /// <summary>What becomes of stories.</summary>
    public IStories Stories { get; init; } = NoStories.Instance;

    /// <summary>What the checks see of boards of which that was kept.</summary>
    /// <param name="workshop">Designs, instruments, stock.</param>
    /// <param name="boards">The boards, in order of path.</param>
    /// <param name="today">The day of this run.</param>
    public static CollectionUnderCheck From(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today) =>
        new(workshop, [.. boards.Select(NumberOf)], BoardSummary.UseOfLots(boards), today)
        {
            Transfers =
            [
                .. boards.Where(board => board.Transfers != PartTransfers.None).Select(board => (NumberOf(board), board.Transfers)),
            ],
        };

    private static BoardNumber NumberOf(BoardSummary board) => new(board.Path, board.Id) { Formerly = board.Formerly };
}

/// <summary>The number of a board and where it is written.</summary>
/// <param name="Path">The file.</param>
/// <param name="Id">The number.</param>
public sealed record BoardNumber(string Path, Written<string> Id)
{
    /// <summary>The numbers that it had before.</summary>
    public IReadOnlyList<Written<string>> Formerly { get; init; } = [];
}
