using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>What several boards together amount to, in words.</summary>
internal static class CollectionWords
{
    private const int MostReasons = 3;

    /// <summary>The sentence that answers first: how many are fit to run, and what the others want.</summary>
    /// <param name="boards">The boards.</param>
    /// <param name="noun">What one of them is called.</param>
    public static string Lead(IReadOnlyList<BoardSummary> boards, string noun)
    {
        if (boards.Count == 0)
        {
            return "No board here is of this design.";
        }

        BoardSummary[] worked = [.. boards.Where(board => BoardStates.IsWorkedOn(board.State))];
        string[] besides =
        [
            .. BoardStates
                .WorstFirst.Where(state => !BoardStates.IsWorkedOn(state))
                .Select(state => (State: state, Count: boards.Count(board => board.State == state)))
                .Where(pair => pair.Count > 0)
                .Select(pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Count} {Besides(pair.State)}")),
        ];
        return besides.Length == 0 ? OfWorked(worked, noun)
            : worked.Length == 0 ? $"Nothing here is to run: {string.Join(", ", besides)}."
            : $"{OfWorked(worked, noun)} Besides, {string.Join(", ", besides)}.";
    }

    private static string Besides(BoardState state) =>
        state == BoardState.AsTold ? $"{BoardStates.Words(state)}, which asks for nothing and proves nothing" : BoardStates.Words(state);

    private static string OfWorked(BoardSummary[] boards, string one)
    {
        var noun = boards.Length == 1 ? one : one + "s";
        var counts = boards.CountBy(board => board.State).ToDictionary();
        var fit = counts.GetValueOrDefault(BoardState.FitToRun);

        var overdue = boards.Count(board => board.IsFitButOverdue);
        var beside = BoardStates.OverdueWords(overdue) is { } words ? $", {words}" : string.Empty;
        if (fit == boards.Length)
        {
            return fit == 1
                ? $"The only {noun} is {BoardStates.Told(BoardState.FitToRun, boards[0].OverdueSince)}."
                : string.Create(CultureInfo.InvariantCulture, $"All {fit} {noun} are fit to run{beside}.");
        }

        var others = BoardStates
            .WorstFirst.Where(state => state != BoardState.FitToRun && counts.ContainsKey(state))
            .Select(state => Wants(state, counts[state]));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{fit} of {boards.Length} {noun} {(fit == 1 ? "is" : "are")} fit to run{beside}; {string.Join(", ", others)}."
        );
    }

    /// <summary>When a board is in a state.</summary>
    public static string When(BoardState state) =>
        state switch
        {
            BoardState.MakeSafe => "a hazard that must go is still there, or a safety finding is open",
            BoardState.FaultStands =>
                "a failed reading or proof, a major finding, an empty place, a part that does not fit or bears too much, or a decision "
                    + "to replace is unanswered",
            BoardState.Waiting => "work waits for something and has not gone on",
            BoardState.NotLookedAt => "nobody has had it at the bench",
            BoardState.AsTold =>
                "its keeper takes what was done before a day as it was told, and nobody has had it at the bench since: nothing is asked of "
                    + "it and nothing is known of it; look at it before power is applied",
            BoardState.Retired => "it is kept as it is, for show: nothing falls due on it, and it is not to be switched on",
            BoardState.Gone => "it was sold, given away or lost: its record stays, and nothing falls due on it",
            BoardState.BrokenUp => "it was taken apart for what sat on it: its record stays",
            BoardState.ProofDue =>
                "nothing is known to be wrong, but something is not shown: a required point is not proved after the last work, a fitted "
                    + "piece was not measured, a record contradicts itself",
            _ => "none of these: everything that must be shown is shown by an entry of the record, which the page of the board names; "
                + "whether the inspection is overdue is said beside it",
        };

    /// <summary>Why a board is not fit to run, the weightiest first and the rest counted.</summary>
    public static void Why(HtmlWriter html, BoardSummary board)
    {
        foreach (var reason in board.Reasons.Take(MostReasons))
        {
            html.Open(Tag.P).Text(reason.Told);
        }

        if (board.Reasons.Length > MostReasons)
        {
            html.Open(Tag.P).Text(string.Create(CultureInfo.InvariantCulture, $"and {board.Reasons.Length - MostReasons} more"));
        }
    }

    private static string Wants(BoardState state, int count) =>
        state switch
        {
            BoardState.MakeSafe => string.Create(CultureInfo.InvariantCulture, $"{count} must be made safe first"),
            BoardState.FaultStands => string.Create(CultureInfo.InvariantCulture, $"a fault stands on {count}"),
            BoardState.Waiting => string.Create(CultureInfo.InvariantCulture, $"work waits on {count}"),
            BoardState.NotLookedAt => string.Create(
                CultureInfo.InvariantCulture,
                $"{count} {(count == 1 ? "was" : "were")} not looked at yet"
            ),
            _ => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "has" : "have")} still to be proved"),
        };
}
