using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Acts;

/// <summary>What to do about a board, by name: the act that comes before all others, and why. What the record does not say is not said
/// here either.</summary>
/// <param name="Board">The board.</param>
/// <param name="Do">The act, a sentence without its full stop.</param>
/// <param name="Why">Why, in one line.</param>
/// <param name="Others">What else stands open, the weightiest first.</param>
public sealed record BoardAct(BoardSummary Board, string Do, string Why, ImmutableArray<StateReason> Others)
{
    private const int MostTogether = 3;
    private const int MostReasons = 2;

    /// <summary>The act that a board asks for; null when nothing is to be done about it.</summary>
    /// <param name="board">The board.</param>
    /// <param name="sources">Where parts come from.</param>
    public static BoardAct? For(BoardSummary board, PartSources sources)
    {
        if (board.Reasons.Length == 0 || !BoardStates.IsWorkedOn(board.State))
        {
            return null;
        }

        // What can hurt is told whole before anything else is; of anything else the first.
        StateReason[] pressing =
        [
            .. board
                .Reasons.TakeWhile((reason, place) => place == 0 || reason.State == BoardState.MakeSafe)
                .DistinctBy(reason => reason.At ?? reason.Act, StringComparer.Ordinal),
        ];
        var told = pressing.Take(MostTogether).ToArray();
        var clauses = told.Select(reason => reason.Act).Concat(Parts(board, told, sources)).ToList();
        if (pressing.Length > told.Length)
        {
            clauses.Add(string.Create(CultureInfo.InvariantCulture, $"{pressing.Length - told.Length} more to make safe"));
        }

        var first = told[0];
        StateReason[] why = [.. board.Reasons.Where(reason => reason.State == first.State && reason.At == first.At).Take(MostReasons)];
        return new(
            board,
            Sentence(string.Join("; ", clauses), first.At),
            (first.At is null ? string.Empty : first.At + ": ") + string.Join("; ", why.Select(reason => reason.Text)),
            [.. board.Reasons.Except<StateReason>(why, ReferenceEqualityComparer.Instance)]
        );
    }

    private static IEnumerable<string> Parts(BoardSummary board, StateReason[] told, PartSources sources) =>
        from reason in told
        from need in board.Needs
        where need.Reference == reason.At
        let source = sources.Words(board, need)
        let what = need.What == need.Values.Kind.Text ? $"{need.What}, of which nothing more is written" : need.What
        select source is null ? $"for {need.Reference}: {what}" : $"for {need.Reference}: {what}, {source}";

    // The name of a place is written as it is, also at the start.
    private static string Sentence(string words, string? at) =>
        at is not null && words.StartsWith(at, StringComparison.Ordinal) ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
