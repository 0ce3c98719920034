using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>An electrolytic that had lain longer than its shelf life was formed again before it was fitted, or in its place and read
/// since.</summary>
public sealed class FittedPartFormed : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "fitted-part-formed";

    /// <inheritdoc/>
    public string Asks => "an electrolytic older than its shelf life was formed again";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var piece in board.Board.Fitted)
        {
            var lot = piece.Place.FittedLot;
            if (piece.ShelfLife is not { } shelf)
            {
                continue;
            }

            var (at, what) = (piece.Place.Part.Ref.Value, lot is null ? "the new part" : $"lot {lot.Id.Value}");
            if (!shelf.IsOverOn(piece.Visit.Date.Value))
            {
                yield return Obligation.Met(
                    Kind,
                    at,
                    $"when it was fitted, within its shelf life of {shelf.LifeWords}",
                    board.By(piece.Work, piece.Visit, piece.Work.Did.Text)
                );
            }
            else if (ReformedSince(board, piece) is { } formed)
            {
                yield return Obligation.Met(Kind, at, "formed again in its place and read since", board.By(formed));
            }
            else
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"{what} had lain since {IsoDate.Text(shelf.Since)} ({shelf.SinceWords}), longer than its shelf life of "
                        + $"{shelf.LifeWords}, when it was fitted",
                    $"form it again {(lot is null ? "slowly" : $"as ohmstead why {lot.Id.Value} shows")}, let it rest, measure its "
                        + "leakage, and record both"
                );
            }
        }
    }

    private static AssessedReading? ReformedSince(BoardUnderObligation board, FittedPiece piece)
    {
        for (var order = board.Board.Visits.Length - 1; order >= piece.At.Visit; order--)
        {
            foreach (var work in board.Board.Visits[order].Work)
            {
                if (
                    work.Did.Value == WorkKind.Reformed
                    && work.Part?.Value == piece.Place.Part.Ref.Value
                    && Moment.At(order, work.Spot) is var at
                    && at > piece.At
                )
                {
                    return piece.Place.Counting.LastOrDefault(reading =>
                        reading.At > at && reading.Overall == Verdicts.VerdictOutcome.Inside
                    );
                }
            }
        }

        return null;
    }
}
