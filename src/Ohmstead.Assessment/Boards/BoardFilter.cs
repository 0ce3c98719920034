using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Searching;

namespace Ohmstead.Assessment.Boards;

/// <summary>Which boards of a collection somebody asks for. What is not said asks for nothing.</summary>
/// <param name="Words">Words that must stand somewhere in what is told of the board, read as the search of the pages reads
/// them.</param>
/// <param name="States">The states that it may be in; of any when none is named.</param>
/// <param name="Needs">The kinds of obligation of which one must be open; of any when none is named.</param>
/// <param name="Where">Words of the place, the owner or whoever has it; null for anywhere.</param>
public sealed record BoardFilter(IReadOnlyList<string> Words, IReadOnlyList<BoardState> States, IReadOnlyList<string> Needs, string? Where)
{
    private readonly SearchQuery query = SearchQuery.Of(string.Join(' ', Words));

    /// <summary>Whether it takes a board.</summary>
    public bool Takes(BoardSummary board) =>
        (States.Count == 0 || States.Contains(board.State))
        && (Needs.Count == 0 || board.Reasons.Any(IsAskedFor))
        && (Where is null || Holds(board.Whereabouts.Told, Where))
        && query.IsMetBy(Told(board));

    /// <summary>Why a board is not fit to run, as far as it is asked for, the weightiest first.</summary>
    public IEnumerable<StateReason> ReasonsOf(BoardSummary board) => Needs.Count == 0 ? board.Reasons : board.Reasons.Where(IsAskedFor);

    private bool IsAskedFor(StateReason reason) => Needs.Contains(reason.Kind, StringComparer.Ordinal);

    private static bool Holds(string? text, string word) => text?.Contains(word, StringComparison.OrdinalIgnoreCase) == true;

    private static IEnumerable<string?> Told(BoardSummary board) =>
        [
            board.Id.Value,
            board.Title,
            board.Design,
            board.Maker,
            board.Serial,
            board.Revision,
            board.Whereabouts.Told,
            BoardStates.Told(board.State, board.OverdueSince),
            .. board.Reasons.SelectMany(reason => new[] { reason.Told, reason.NextStep }),
        ];
}
