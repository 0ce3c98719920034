using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Somebody has had the board at the bench since the day before which its keeper takes everything as told.</summary>
public sealed class NotMerelyTold : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "not-merely-told";

    /// <inheritdoc/>
    public string Asks => "somebody has had the board at the bench since the day before which everything is taken as told";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        if (board.ToldBefore is { } day)
        {
            yield return Obligation.Open(
                Kind,
                BoardState.AsTold,
                null,
                $"what was done before {IsoDate.Text(day)} is taken as it was told, and nobody has looked since",
                "look at it before power is applied; from its first visit on it is judged in full"
            );
        }
    }

    /// <summary>What is open on a board that is taken as told and does not count there: it is told, and asked for once somebody
    /// looks.</summary>
    public static Obligation Quieted(Obligation open, DateOnly day) =>
        Obligation.DoesNotApply(
            open.Kind,
            open.At,
            LazyText.For(open, one => $"{one.Text}; told before {IsoDate.Text(day)}, asked for at its next visit")
        );
}
