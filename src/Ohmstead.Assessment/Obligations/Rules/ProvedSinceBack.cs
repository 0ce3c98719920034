using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>A board that was away or kept for show was proved since it is back: what was done to it there is in no record.</summary>
public sealed class ProvedSinceBack : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "proved-since-back";

    /// <inheritdoc/>
    public string Asks => "a board that was away or kept for show was proved since it is back";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        if (board.Board.Whereabouts.Back is not var (back, from))
        {
            yield break;
        }

        // Of a day on which it went and came back nobody knows which was first, the proof or the way out.
        var since = back.Date.Value == from.Date.Value ? back.Date.Value.AddDays(1) : back.Date.Value;
        var before = new Moment(board.Board.Visits.Count(visit => visit.Date.Value < since) - 1, int.MaxValue, int.MaxValue);
        var away = board.Board with { LastWorkAt = before > board.Board.LastWorkAt ? before : board.Board.LastWorkAt };
        var required = board.Board.Points.Where(point => point.IsRequired).Select(point => ProofOfPoint.For(away, point)).ToArray();
        string[] missing = [.. required.Where(point => point.Since.Length == 0 || point.Missing is not null).Select(point => point.Name)];
        var last = board.Board.Proofs.LastOrDefault(proof => proof.At > away.LastWorkAt && proof.Outcome == VerdictOutcome.Inside);
        yield return last is not null && missing.Length == 0
            ? Obligation.Met(Kind, null, $"{back.Did.Text} on {back.Date.Text}", board.By(last))
            : Obligation.Open(
                Kind,
                BoardState.ProofDue,
                null,
                missing.Length == 0
                    ? $"{back.Did.Text} on {back.Date.Text}, and nothing proves it since"
                    : $"{back.Did.Text} on {back.Date.Text}, and {string.Join(", ", missing)} {(missing.Length == 1 ? "was" : "were")} not "
                        + "proved since",
                "look at it as at one that comes new, then prove it and record it under proof"
            );
    }
}
