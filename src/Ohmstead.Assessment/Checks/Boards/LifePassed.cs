using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>The life of a fitted electrolytic is used up by its latest estimate, and it was not measured since.</summary>
public sealed class LifePassed : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "life-passed",
            Severity.Warning,
            "the life of a fitted electrolytic is used up by its latest estimate, and it was not measured since",
            CheckEffect.Told,
            "an estimate; the look that it asks for is told beside the state"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        // On a board that is gone or kept for show nobody measures it; on one that is taken as told, once somebody looks at it.
        var isMeasured =
            board.Assessment.Whereabouts.IsKeptUp && ToldBefore.Day(board.Board, board.Workshop.Collection, board.Today) is null;
        foreach (var life in isMeasured ? board.Assessment.Lives : [])
        {
            if (!life.Estimate.Is(out var estimate, out _) || estimate.Latest >= board.Today || !life.Dates!.IsPastOn(board.Today))
            {
                continue;
            }

            var spot = life.Place.FittedBy?.Spot ?? (life.Place.Part.FromDesign is null ? life.Place.Part.Spot : board.Board.Id.Spot);
            yield return board.Finding(
                Description,
                spot,
                $"{life.Reference} ({life.Start!.Words}) was not measured since its life may have been used up, {estimate.Text}",
                $"measure it out of circuit and add the reading: {{ part: {life.Reference}, state: again, circuit: out, frequency: 120 "
                    + "Hz, ... }"
            );
        }
    }
}
