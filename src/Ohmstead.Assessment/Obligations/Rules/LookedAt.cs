using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Somebody has looked at the board since it came.</summary>
public sealed class LookedAt : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "looked-at";

    /// <inheritdoc/>
    public string Asks => "somebody has looked at the board since it came";

    /// <inheritdoc/>
    public string AsMet => "it was looked at";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        var visits = board.Board.Visits;
        yield return visits.Length == 0
            ? Obligation.Open(
                Kind,
                BoardState.NotLookedAt,
                null,
                "nothing was looked at since it came",
                "inspect it, make it safe, measure as found"
            )
            : Obligation.Met(Kind, null, AsMet, new Evidence("on the bench", visits[0].Date.Value, visits[0].Spot, board.Board.Board.Path));
    }
}
