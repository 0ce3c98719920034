using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Where two readings contradict each other and nothing was done between them, somebody found out which of the two
/// holds.</summary>
public sealed class ReadingsAgree : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "readings-agree";

    /// <inheritdoc/>
    public string Asks =>
        "where one reading fails and the next passes with nothing done between, a third, a note or a decision says which of them holds";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var pair in board.Under.Contradicting)
        {
            if (pair.Answer is { } answer)
            {
                yield return Obligation.Met(Kind, pair.At, pair.Words, new(answer.Words, answer.Day, answer.Spot, board.Board.Board.Path));
            }
            else
            {
                yield return Obligation.Open(Kind, BoardState.ProofDue, pair.At, pair.Words, ContradictingReadings.NextStep);
            }
        }
    }
}
