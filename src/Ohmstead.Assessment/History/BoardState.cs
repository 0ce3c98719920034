using System.Globalization;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.History;

/// <summary>The state of a board, computed from evidence and dates, never typed. The worst that applies counts.</summary>
public enum BoardState
{
    /// <summary>Every required point is proved after the last work, nothing stands open.</summary>
    FitToRun,

    /// <summary>Nothing is known to be wrong, but proof is missing or older than the last work.</summary>
    ProofDue,

    /// <summary>Taken in; nothing was looked at yet.</summary>
    NotLookedAt,

    /// <summary>Work waits for something.</summary>
    Waiting,

    /// <summary>A failed reading, a failed proof or a major finding stands unanswered.</summary>
    FaultStands,

    /// <summary>A safety item is open.</summary>
    MakeSafe,
}

/// <summary>States as a person reads them.</summary>
public static class BoardStates
{
    /// <summary>All states, the best first.</summary>
    public static IReadOnlyList<BoardState> All { get; } =
    [BoardState.FitToRun, BoardState.ProofDue, BoardState.NotLookedAt, BoardState.Waiting, BoardState.FaultStands, BoardState.MakeSafe];

    /// <summary>The state in words.</summary>
    public static string Words(BoardState state) =>
        state switch
        {
            BoardState.FitToRun => "fit to run",
            BoardState.ProofDue => "proof due",
            BoardState.NotLookedAt => "not looked at yet",
            BoardState.Waiting => "work waits",
            BoardState.FaultStands => "a fault stands",
            _ => "make safe first",
        };

    /// <summary>The state with what is said beside it, the one place that puts the two together: what was proved once is not known to hold
    /// when nobody looked since.</summary>
    /// <param name="state">The state.</param>
    /// <param name="overdueSince">The day on which it was to be looked at again, where that is past; or null.</param>
    public static string Told(BoardState state, DateOnly? overdueSince) =>
        Beside(overdueSince) is { } beside ? $"{Words(state)}; {beside}" : Words(state);

    /// <summary>What is said beside a state: since when the look is overdue; null when it is not.</summary>
    public static string? Beside(DateOnly? overdueSince) =>
        overdueSince is { } day ? $"its look is overdue since {IsoDate.Text(day)}" : null;

    /// <summary>What is said beside a number of boards that are fit to run: of how many the look is overdue; null when it is of
    /// none.</summary>
    public static string? Beside(int overdue) =>
        overdue == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{overdue} of them with the look overdue");
}

/// <summary>One reason for the state of a board.</summary>
/// <param name="State">The state that it alone would give.</param>
/// <param name="At">The place on the board, or null when the whole board is meant.</param>
/// <param name="Text">One line that says why.</param>
/// <param name="NextStep">What to do about it.</param>
/// <param name="Kind">The kind of obligation that is open.</param>
public sealed record Reason(BoardState State, string? At, string Text, string NextStep, string Kind)
{
    /// <summary>Why, with the place where there is one.</summary>
    public string Told => At is null ? Text : $"{At}: {Text}";
}
