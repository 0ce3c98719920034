using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>The very piece that was fitted was measured and passed; where a bench does not measure its kind, the board was proved with
/// it.</summary>
public sealed class FittedPartMeasured : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "fitted-part-measured";

    /// <inheritdoc/>
    public string Asks =>
        "the very piece that was fitted was measured inside its limits; a kind that a bench does not measure was proved by the board "
        + "that works with it";

    /// <inheritdoc/>
    public string AsMet => "this piece was measured";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        AssessedProof? proved = null;
        foreach (var piece in board.Board.Fitted)
        {
            var (at, path) = (piece.Place.Part.Ref.Value, board.Board.Board.Path);
            if (piece.MeasuredBy is { } reading)
            {
                yield return Obligation.Met(Kind, at, AsMet, board.By(reading));
            }
            else if (piece.ReadAt is { } other)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"the piece that was read for it was read for {other.ToldOn(path)} too, and can sit in one place only",
                    "measure this piece, and give each its own name under piece"
                );
            }
            else if (
                piece.Place.IsSafetyRelevant
                && piece.Place.Counting.Any(reading => reading.Place is not null || reading.Overall != VerdictOutcome.Inside)
            )
            {
                // Where people rely on the part, what was read of it and does not pass is told by that.
                continue;
            }
            else if (piece.IsMeasured)
            {
                yield return Obligation.Open(Kind, BoardState.ProofDue, at, Missing(piece, path), NextStep(piece));
            }
            else if ((proved ??= LastPassed(board.Board)) is { } proof && proof.At > piece.At)
            {
                yield return Obligation.Met(Kind, at, "the board was proved with it", board.By(proof));
            }
            else
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"fitted on {BoardUnderObligation.Day(piece.Visit)}, and nothing was proved with it since",
                    "prove the board, or test the part"
                );
            }
        }
    }

    // Proofs are in order of time.
    private static AssessedProof? LastPassed(BoardAssessment board) =>
        board.Proofs.LastOrDefault(static proof => proof.Outcome == VerdictOutcome.Inside);

    // A reading that does not pass is told as such: it was taken, and it is not enough.
    private static string Missing(FittedPiece piece, string path)
    {
        var from = piece.Work.Lot is { } lot ? $"the piece from lot {lot.Value}" : "the new part";
        var elsewhere = piece.Share?.Told(path) is { } told ? $": {told}" : string.Empty;
        return piece.Place.Counting.LastOrDefault(reading => reading.Place is not null && reading.Verdicts.Length > 0) is { } read
            ? $"{from} was read, but not as a part of its kind is passed: {read.Verdicts[0].Why}"
            : $"{from} that was fitted on {BoardUnderObligation.Day(piece.Visit)} was not measured itself{elsewhere}";
    }

    // It sits there by now, and the drawer says no more of it.
    private static string NextStep(FittedPiece piece) =>
        piece.Work.Lot is { } lot && piece.Share?.Instead is null
            ? $"measure it and add the reading: {{ part: {piece.Place.Part.Ref.Value}, lot: {lot.Value}, state: new, … }}"
            : $"measure it and add the reading: {{ part: {piece.Place.Part.Ref.Value}, state: as left, circuit: out, … }}";
}
