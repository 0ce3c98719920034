using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part was fitted although its own readings before fitting are outside their limits.</summary>
public sealed class FittedPartFails : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "fitted-part-fails",
            Severity.Error,
            "a part was fitted although its own readings before fitting are outside their limits",
            CheckEffect.HoldsBack,
            "what sits there was known to be bad when it was fitted"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var piece in board.Assessment.Fitted)
        {
            // The last reading before it went in, of itself or else of its lot; a later one of the piece as it sits is told as what it is.
            if (
                piece.Place.Counting.LastOrDefault(reading => reading.IsNew || reading.Place is null) is
                { Overall: VerdictOutcome.Outside } failed
            )
            {
                var why = failed.Verdicts.FirstOrDefault(verdict => verdict.Outcome == VerdictOutcome.Outside)?.Why ?? "its test failed";
                var from = piece.Work.Lot is { } lot
                    ? $"from lot {lot.Value}, whose reading failed"
                    : "with a new part whose reading failed";
                var path = failed.VisitOrder < 0 ? board.Workshop.StockFile!.Path : board.Board.Path;
                yield return board.Finding(
                    Description,
                    piece.Work.Spot,
                    $"{piece.Place.Part.Ref.Value} was fitted {from}: {why}",
                    "fit another part, or record a later reading of this one"
                ) with
                {
                    Related = [new RelatedPlace(failed.Reading.Spot.In(path), "the reading that failed")],
                };
            }
        }
    }
}
