using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>The ripple current through what sits there is not above its rating, where a ripple reading, its frequency and the rating are
/// written.</summary>
public sealed class RippleBorne : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "ripple-borne";

    /// <inheritdoc/>
    public string Asks => "the ripple current through a part is not above its rating, where both are known";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (place.IsEmpty || place.Values.RippleCurrent is not { } rated || RippleShare.Compute(place) is not { } ripple)
            {
                continue;
            }

            var at = place.Part.Ref.Value;
            yield return ripple.Share > 1
                ? Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    ripple.Working,
                    "fit a part of a higher ripple current, or find out why the ripple is so high"
                )
                : Obligation.Met(Kind, at, $"ripple under the rated {rated.Text}", board.ByTheRecord(ripple.Working, place.Part.Spot));
        }
    }
}
