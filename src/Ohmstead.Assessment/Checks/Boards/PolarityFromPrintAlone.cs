using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A polarised part was fitted the way the print on the board shows, and nothing else confirms it.</summary>
public sealed class PolarityFromPrintAlone : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "polarity-from-print-alone",
            Severity.Error,
            "a polarised part was fitted the way the print on the board shows, and nothing else confirms it",
            CheckEffect.SaidElsewhere,
            "the obligation to establish the way round"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var place in board.Assessment.Places)
        {
            if (
                place is { Change: { IsEmpty: false, Work: var work } }
                && PartKind.IsPolarised(place.Values)
                && work.Polarity.Length > 0
                && !work.EstablishesPolarity
            )
            {
                yield return board.Finding(
                    Description,
                    work.Polarity[0].Spot,
                    $"the polarity of {place.Part.Ref.Value} rests on the print alone, which can be worn or wrong",
                    "add polarity: schematic, or continuity to ground plane, measured in circuit, photograph before removal, other unit"
                );
            }
        }
    }
}
