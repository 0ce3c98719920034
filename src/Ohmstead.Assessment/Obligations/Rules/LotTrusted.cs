using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>No piece sits on the board that came from a lot which is doubted as a whole, unless a note on the work says why this one may be
/// trusted.</summary>
public sealed class LotTrusted : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "lot-trusted";

    /// <inheritdoc/>
    public string Asks => "what was fitted came from a lot that is not doubted as a whole, or a note says why this piece may be trusted";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var piece in board.Board.Fitted)
        {
            if (piece is not { LotDoubt: { } doubt, Work.Lot: { } lot })
            {
                continue;
            }

            var at = piece.Place.Part.Ref.Value;
            yield return piece.Work.Explanation is { } note && !piece.Place.IsSafetyRelevant
                ? Obligation.Met(
                    Kind,
                    at,
                    $"lot {lot.Value}: {doubt}",
                    new(note.Value, piece.Visit.Date.Value, piece.Work.Spot, board.Board.Board.Path)
                )
                : Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"lot {lot.Value}: {doubt}",
                    piece.Place.IsSafetyRelevant
                        ? "fit a piece of another lot; defer to local codes and licensed practice"
                        : "fit a piece of another lot, or say in a note on that work why this one may be trusted"
                );
        }
    }
}
