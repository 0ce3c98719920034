using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Work was done after the board was last proved, so the proof no longer holds.</summary>
public sealed class WorkAfterProof : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "work-after-proof",
            Severity.Warning,
            "work was done after the board was last proved, so the proof no longer holds",
            CheckEffect.SaidElsewhere,
            "the obligation to prove each point after the last work"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Assessment.Proofs.Length == 0 || !board.IsInOrder)
        {
            yield break;
        }

        var last = board.Assessment.Proofs[^1];
        var later = board
            .Assessment.Visits.Skip(last.VisitOrder)
            .SelectMany((visit, at) => visit.Work.Select(work => (Work: work, At: Moment.At(last.VisitOrder + at, work.Spot))))
            .FirstOrDefault(pair => pair.Work.Did.Value != WorkKind.LeftAlone && pair.At > last.At)
            .Work;
        if (later is not null)
        {
            yield return board.Finding(
                Description,
                later.Spot,
                $"this work is later than the last proof of {last.Visit.Date.Text}",
                "prove the board again and record it under proof"
            ) with
            {
                Related = [new RelatedPlace(last.Proof.Spot.In(board.Board.Path), "the last proof")],
            };
        }
    }
}
