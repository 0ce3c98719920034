using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Whatever has a right way round and was put in or put back went in the right way round, and not by the print on the board
/// alone.</summary>
public sealed class FittedWayRound : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "way-round";

    /// <inheritdoc/>
    public string Asks => "the right way round of what was fitted was established, and not by the print alone";

    /// <inheritdoc/>
    public string AsMet => "way round established";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (place is not { Change: { IsEmpty: false } change })
            {
                continue;
            }

            var at = place.Part.Ref.Value;
            if (!PartKind.IsPolarised(place.Values))
            {
                yield return Obligation.DoesNotApply(Kind, at, $"{place.Values.Kind.Text}: either way round is right");
            }
            else if (change.Work.EstablishesPolarity)
            {
                yield return Obligation.Met(
                    Kind,
                    at,
                    AsMet,
                    board.By(
                        change.Work,
                        change.Visit,
                        LazyText.For(change.Work, static work =>
                            $"by {string.Join(" and ", work.Polarity.Select(evidence => evidence.Text))}"
                        )
                    )
                );
            }
            else
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    change.Work.Polarity.Length == 0
                        ? $"{change.Work.Did.Text} on {BoardUnderObligation.Day(change.Visit)} and the record does not say how the "
                            + "right way round was established"
                        : "its way round rests on the print alone, which can be worn or wrong",
                    "establish it by schematic, continuity to ground plane, measured in circuit, photograph before removal or other "
                        + "unit, and add it under polarity"
                );
            }
        }
    }
}
