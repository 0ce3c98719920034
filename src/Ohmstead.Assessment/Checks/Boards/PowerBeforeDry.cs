using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Power was applied before the drying time after a wash was over.</summary>
public sealed class PowerBeforeDry : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "power-before-dry",
            Severity.Error,
            "power was applied before the drying time after a wash was over",
            CheckEffect.SaidElsewhere,
            "the obligation to prove the board once it is dry"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var wash in board.IsInOrder ? Drying.All(board.Assessment) : [])
        {
            // A board that was proved again once it was dry has answered it.
            if (wash.PoweredWet(board.Assessment) is { } early && wash.ProvedDry(board.Assessment) is null)
            {
                yield return board.Finding(
                    Description,
                    early.Powered?.Spot ?? early.Date.Spot,
                    $"power was applied on {early.Date.Text}, but the wash of {wash.Visit.Date.Text} must dry for {wash.For}",
                    "wait until it is dry, or mend the dates"
                ) with
                {
                    Related = [new RelatedPlace(wash.Work.Spot.In(board.Board.Path), "the wash")],
                };
            }
        }
    }
}
