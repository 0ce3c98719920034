namespace Ohmstead.Assessment.Boards;

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
    public static string Words(BoardState state) => state switch
    {
        BoardState.FitToRun => "fit to run",
        BoardState.ProofDue => "proof due",
        BoardState.NotLookedAt => "not looked at yet",
        BoardState.Waiting => "work waits",
        BoardState.FaultStands => "a fault stands",
        _ => "make safe first",
    };
}

/// <summary>One reason for the state of a board.</summary>
/// <param name="State">The state that it alone would give.</param>
/// <param name="At">The place on the board, or null when the whole board is meant.</param>
/// <param name="Text">One line that says why.</param>
/// <param name="NextStep">What to do about it.</param>
public sealed record Reason(BoardState State, string? At, string Text, string NextStep);
