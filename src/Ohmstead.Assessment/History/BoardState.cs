using System.Globalization;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.History;

/// <summary>The state of a board, computed from evidence and dates, never typed. The worst that applies counts.</summary>
public enum BoardState
{
    /// <summary>Every required point is proved after the last work, nothing stands open.</summary>
    FitToRun,

    /// <summary>Nobody has looked since the day before which everything is taken as it was told: nothing is asked of it, and nothing
    /// claimed.</summary>
    AsTold,

    /// <summary>Nothing is known to be wrong, but proof is missing or older than the last work.</summary>
    ProofDue,

    /// <summary>Taken in; nothing was looked at yet.</summary>
    NotLookedAt,

    /// <summary>Work waits for something.</summary>
    Waiting,

    /// <summary>A failed reading, a failed proof or a major finding stands unanswered.</summary>
    FaultStands,

    /// <summary>It is kept as it is, for show, and not to be switched on.</summary>
    Retired,

    /// <summary>A safety item is open.</summary>
    MakeSafe,

    /// <summary>It is not here any more.</summary>
    Gone,

    /// <summary>It was taken apart for what sat on it.</summary>
    BrokenUp,
}

/// <summary>States as a person reads them.</summary>
public static class BoardStates
{
    /// <summary>All states, in the order in which they outweigh each other: the last that applies is the state.</summary>
    public static IReadOnlyList<BoardState> All { get; } =
    [
        BoardState.FitToRun,
        BoardState.AsTold,
        BoardState.ProofDue,
        BoardState.NotLookedAt,
        BoardState.Waiting,
        BoardState.FaultStands,
        BoardState.Retired,
        BoardState.MakeSafe,
        BoardState.Gone,
        BoardState.BrokenUp,
    ];

    /// <summary>All states, the one that presses most first, and those of boards on which nothing presses last.</summary>
    public static IReadOnlyList<BoardState> WorstFirst { get; } =
    [.. All.Where(IsWorkedOn).Reverse(), .. All.Where(state => !IsWorkedOn(state))];

    private static readonly int[] Places = [.. Enum.GetValues<BoardState>().Select(state => WorstFirst.ToList().IndexOf(state))];

    /// <summary>The place of a state among all, that which presses most first.</summary>
    public static int Place(BoardState state) => Places[(int)state];

    /// <summary>Whether a board in that state is worked on: something is to be done, or it may be switched on.</summary>
    public static bool IsWorkedOn(BoardState state) =>
        state is not (BoardState.AsTold or BoardState.Retired or BoardState.Gone or BoardState.BrokenUp);

    /// <summary>The state in words.</summary>
    public static string Words(BoardState state) =>
        state switch
        {
            BoardState.FitToRun => "fit to run",
            BoardState.AsTold => "taken as told",
            BoardState.ProofDue => "proof due",
            BoardState.NotLookedAt => "not looked at yet",
            BoardState.Waiting => "work waits",
            BoardState.FaultStands => "a fault stands",
            BoardState.Retired => "kept for show",
            BoardState.Gone => "gone",
            BoardState.BrokenUp => "broken up",
            _ => "make safe first",
        };

    /// <summary>The state with what is said beside it, the one place that puts the two together: what was proved once is not known to hold
    /// when nobody looked since.</summary>
    /// <param name="state">The state.</param>
    /// <param name="overdueSince">The day on which it was to be looked at again, where that is past; or null.</param>
    public static string Told(BoardState state, DateOnly? overdueSince) =>
        OverdueWords(overdueSince) is { } beside ? $"{Words(state)}; {beside}" : Words(state);

    /// <summary>What is said beside a state: since when the inspection is overdue; null when it is not.</summary>
    public static string? OverdueWords(DateOnly? overdueSince) =>
        overdueSince is { } day ? $"its inspection is overdue since {IsoDate.Text(day)}" : null;

    /// <summary>What is said beside a number of boards that are fit to run: of how many the inspection is overdue; null when it is of
    /// none.</summary>
    public static string? OverdueWords(int overdue) =>
        overdue == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{overdue} of them with the inspection overdue");
}

/// <summary>One reason for the state of a board.</summary>
/// <param name="State">The state that it alone would give.</param>
/// <param name="At">The place on the board, or null when the whole board is meant.</param>
/// <param name="Text">One line that says why.</param>
/// <param name="NextStep">What to do about it.</param>
/// <param name="Kind">The kind of obligation that is open.</param>
public sealed record StateReason(BoardState State, string? At, string Text, string NextStep, string Kind)
{
    /// <summary>What to do, with the thing by its name.</summary>
    public string Act { get; init; } = NextStep;

    /// <summary>Why, with the place where there is one.</summary>
    public string Told => At is null ? Text : $"{At}: {Text}";
}
