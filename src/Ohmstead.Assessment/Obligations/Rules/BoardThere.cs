using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>The board is there to be switched on: neither gone nor broken up, and not kept for show alone.</summary>
public sealed class BoardThere : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "board-there";

    /// <inheritdoc/>
    public string Asks => "the board is there to be switched on: neither gone nor broken up, and not kept for show alone";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        var where = board.Board.Whereabouts;
        if (where.Away is { } away)
        {
            yield return Obligation.Open(
                Kind,
                where.Presence == BoardPresence.BrokenUp ? BoardState.BrokenUp : BoardState.Gone,
                null,
                WhereaboutsWords.Describe(away),
                where.Presence == BoardPresence.BrokenUp
                    ? "nothing: what was taken from it is judged where it sits now"
                    : "nothing while it is away; should it return, enter that it came back"
            );
        }
        else if (where.Shown is { } shown)
        {
            yield return Obligation.Open(
                Kind,
                BoardState.Retired,
                null,
                $"kept for show since {shown.Date.Text}",
                "nothing while it is kept as it is; should it run again, enter that it is used again"
            );
        }
    }
}
