using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>What was fitted fits its place: by value, ratings, safety class, kind and size.</summary>
public sealed class FittedPartFits : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "fits-its-place";

    /// <inheritdoc/>
    public string Asks => "what was fitted fits its place, and how it was made to fit is written where that was in doubt";

    /// <inheritdoc/>
    public string AsMet => "it fits its place";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var replacement in board.Board.Replacements.Where(replacement => replacement.IsThere))
        {
            var at = replacement.Place.Part.Ref.Value;
            if (FitDoubts.Weightiest(replacement) is { } reason)
            {
                var isAgainst = reason.Weight == Electronics.Substitution.ReasonWeight.Against;
                yield return Obligation.Open(
                    Kind,
                    isAgainst ? BoardState.FaultStands : BoardState.ProofDue,
                    at,
                    $"{replacement.From}: {reason.Aspect}: {reason.Words}",
                    FitDoubts.NextStep(board.Board.Board.Id.Value, replacement, reason)
                ) with
                {
                    NeedsPart = isAgainst,
                };
            }
            else if (Off(board, replacement) is { } off)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    $"{replacement.From}: value: {off}",
                    FitDoubts.NextStepFor(board.Board.Board.Id.Value, replacement.Place)
                ) with
                {
                    NeedsPart = true,
                };
            }
            else
            {
                yield return Obligation.Met(Kind, at, AsMet, board.By(replacement.Work, replacement.Visit, replacement.Work.Did.Text));
            }
        }
    }

    // What it reads, not what is printed on it.
    private static string? Off(BoardUnderObligation board, Replacement replacement)
    {
        if (replacement.Place.IsKeptByDecision)
        {
            return null;
        }

        foreach (var piece in board.Board.Fitted)
        {
            if (ReferenceEquals(piece.Place, replacement.Place))
            {
                return piece.MeasuredBy is { } by ? PieceInPlace.Off(piece.Place, by) : null;
            }
        }

        return null;
    }
}
