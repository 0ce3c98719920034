using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>An electrolytic was fitted from a lot older than its shelf life that had not been formed again.</summary>
public sealed class LotTooOld : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "lot-too-old",
            Severity.Warning,
            "an electrolytic was fitted from a lot older than its shelf life that had not been formed again",
            CheckEffect.SaidElsewhere,
            "the obligation to have formed it again"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        ILookup<WorkEntry, FittedPiece>? fitted = null;
        foreach (var replacement in board.Replacements)
        {
            var (visit, work, place) = (replacement.Visit, replacement.Work, replacement.Place);
            if (
                replacement.Lot is { } lot
                && lot.Values.Kind.Value.IsElectrolytic
                && visit.Date.Value <= board.Today
                && (fitted ??= ByWork(board.Assessment))[work].FirstOrDefault() is { ShelfLife: { } shelf }
                && shelf.IsOverOn(visit.Date.Value)
            )
            {
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"{place.Part.Ref.Value} was fitted from lot {lot.Id.Value}, which had lain since {IsoDate.Text(shelf.Since)} "
                        + $"({shelf.SinceWords}), longer than its shelf life of {shelf.LifeWords}",
                    $"form the lot again as ohmstead why {lot.Id.Value} shows, measure it, and write formed: in stock.yaml"
                ) with
                {
                    Related = board.InStock(lot),
                };
            }
        }
    }

    private static ILookup<WorkEntry, FittedPiece> ByWork(BoardAssessment board) =>
        board.Fitted.ToLookup<FittedPiece, WorkEntry>(static piece => piece.Work, ReferenceEqualityComparer.Instance);
}
