using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>
/// One kind of obligation: which of them a record creates, and what in it meets each. A rule holds no state and reads its argument alone.
/// Where the record is silent, an obligation is open.
/// </summary>
public interface IObligationRule
{
    /// <summary>The name of the kind, in small letters with hyphens.</summary>
    string Kind { get; }

    /// <summary>One line: what must be shown.</summary>
    string Asks { get; }

    /// <summary>What a met one says that has nothing of its own to say; null where each has.</summary>
    string? AsMet => null;

    /// <summary>The obligations of a board, in order of its lists.</summary>
    IEnumerable<Obligation> Ask(BoardUnderObligation board);

    /// <summary>Whether something open counts on a board that is taken as told, too: what can hurt whoever takes it from the shelf, what
    /// goes on doing harm while nobody looks, and that it is not there.</summary>
    /// <param name="board">The board.</param>
    /// <param name="open">What this rule found open.</param>
    bool CountsAsTold(BoardUnderObligation board, Obligation open) =>
        open.State is BoardState.AsTold or BoardState.MakeSafe
        || (open.State != BoardState.FitToRun && !BoardStates.IsWorkedOn(open.State));
}
