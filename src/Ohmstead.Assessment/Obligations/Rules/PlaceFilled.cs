using Ohmstead.Assessment.Boards;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>No place from which a part was taken out is empty.</summary>
public sealed class PlaceFilled : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "place-filled";

    /// <inheritdoc/>
    public string Asks => "where a part was taken out, a part sits again";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Of(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (place.IsEmpty)
            {
                yield return Obligation.Open(Kind, BoardState.FaultStands, place.Part.Ref.Value, "the place is empty", "fit a part that was measured");
            }
            else if (place.Change is { } change)
            {
                yield return Obligation.Met(Kind, place.Part.Ref.Value, "a part sits there", board.By(change.Work, change.Visit, change.Work.Did.Text));
            }
        }
    }
}
