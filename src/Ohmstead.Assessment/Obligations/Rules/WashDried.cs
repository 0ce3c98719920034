using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Whatever was washed was dry before power, or the board was proved again once it was. Days are all a record knows.</summary>
public sealed class WashDried : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "wash-dried";

    /// <inheritdoc/>
    public string Asks => "whatever was washed was dry before power was applied, or the board was proved again once it was dry";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var wash in Drying.All(board.Board))
        {
            var proof = wash.ProvedDry(board.Board);
            if (wash.PoweredWet(board.Board) is { } early && proof is null)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    wash.Place,
                    $"power was applied on {BoardUnderObligation.Day(early)}, but the wash of {IsoDate.Text(wash.Since)} must dry for "
                        + $"{wash.For}",
                    "let it dry, look for what the wet did, and prove it again"
                );
            }
            else if (proof is not null)
            {
                yield return Obligation.Met(
                    Kind,
                    wash.Place,
                    $"washed on {IsoDate.Text(wash.Since)}, to dry for {wash.For}",
                    board.By(proof)
                );
            }
            else if (board.Today < wash.Until)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    wash.Place,
                    $"the wash of {IsoDate.Text(wash.Since)} dries until {IsoDate.Text(wash.Until)}",
                    $"no power before {IsoDate.Text(wash.Until)}"
                );
            }
            else
            {
                yield return Obligation.DoesNotApply(Kind, wash.Place, $"washed on {IsoDate.Text(wash.Since)}, and dry before any power");
            }
        }
    }
}
