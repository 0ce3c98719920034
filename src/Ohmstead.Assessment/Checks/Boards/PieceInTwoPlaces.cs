using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>One piece of a lot was read for two places that it cannot both sit in.</summary>
public sealed class PieceInTwoPlaces : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "piece-in-two-places",
            Severity.Warning,
            "one piece of a lot was read for two places that it cannot both sit in",
            CheckEffect.SaidElsewhere,
            "the obligation to have measured the very piece"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var piece in board.Assessment.Fitted)
        {
            if (piece is { ReadAt: { } other, Claim: { Piece: { } name, Lot: var lot } })
            {
                var (here, there) = (piece.Place.Part.Ref.Value, other.ToldOn(board.Board.Path));
                yield return board.Finding(
                    Description,
                    piece.Named?.Spot ?? piece.Work.Spot,
                    $"piece {name} of lot {lot} sits at {here}, and was read for {there} too",
                    "measure this piece, and give each its own name under piece"
                ) with
                {
                    Related = [new RelatedPlace(other.Spot.In(other.Path), "the work that fitted it there")],
                };
            }
        }
    }
}
