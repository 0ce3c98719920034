using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A new part was fitted without having been measured.</summary>
public sealed class NewPartUnmeasured : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "new-part-unmeasured",
            Severity.Warning,
            "a new part was fitted without having been measured",
            CheckEffect.SaidElsewhere,
            "the obligation to have measured the very piece"
        );

    // What was read of it and does not pass is told as what it is.
    private static bool IsReadOtherwise(FittedPiece piece) =>
        piece.Place.Counting.Any(reading =>
            (reading.Place is not null && reading.Verdicts.Length > 0) || reading.Overall == VerdictOutcome.Outside
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var piece in board.Assessment.Fitted)
        {
            if (!piece.IsMeasured || piece.MeasuredBy is not null || piece.Values is null || IsReadOtherwise(piece))
            {
                continue;
            }

            var reference = piece.Place.Part.Ref.Value;
            var (from, lot) = piece.Work.Lot is { } name
                ? ($"from lot {name.Value}, of which no reading of this piece was taken", $"lot: {name.Value}, ")
                : ("with a new part of which no reading was taken", string.Empty);
            yield return piece.Share?.Told(board.Board.Path) is { } elsewhere
                ? board.Finding(
                    Description,
                    piece.Work.Spot,
                    $"{reference} was fitted {from}: {elsewhere}",
                    $"measure it and add a reading: {{ part: {reference}, state: as left, circuit: out, ... }}"
                )
                : board.Finding(
                    Description,
                    piece.Work.Spot,
                    $"{reference} was fitted {from}",
                    $"add a reading: {{ part: {reference}, {lot}state: new, ... }}"
                );
        }
    }
}
