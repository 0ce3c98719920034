using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>A board of which no point is required was proved by something after the last work.</summary>
public sealed class BoardProved : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "board-proved";

    /// <inheritdoc/>
    public string Asks => "a board of which no point is required was proved by something after the last work";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        // What nobody has looked at is told as that.
        if (board.Board.Visits.Length == 0)
        {
            yield break;
        }

        if (board.Board.Points.Any(point => point.IsRequired))
        {
            yield break;
        }

        var proofs = board.Board.Proofs;
        yield return proofs.LastOrDefault(proof => proof.Outcome == VerdictOutcome.Inside && proof.At > board.Board.LastWorkAt) is { } proof
            ? Obligation.Met(Kind, null, "proved after the last work", board.By(proof))
            : Obligation.Open(
                Kind,
                BoardState.ProofDue,
                null,
                proofs.Length == 0 ? "nothing proves it"
                    : proofs[^1].At < board.Board.LastWorkAt
                        ? $"its proof is older than the last work of {(board.Board.LastWork is { } day ? IsoDate.Text(day) : "unknown")}"
                    : "no proof passed",
                "prove it: supply voltages, ripple, a test of its function, hours of soak"
            );
    }
}
