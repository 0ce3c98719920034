using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A polarised part was fitted and the record does not say how the right way round was established.</summary>
public sealed class PolarityNotEstablished : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("polarity-not-established", Severity.Error, "a polarised part was fitted and the record does not say how the right way round was established");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var (_, work, place, lot) in board.Fittings())
        {
            if (PartKind.IsPolarised(lot.Values) && work.Polarity.Length == 0)
            {
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"{place.Part.Ref.Value} was fitted with the polarised lot {lot.Id.Value} and no polarity was established",
                    "add polarity: schematic, or continuity to ground plane, measured in circuit, photograph before removal, other unit");
            }
        }
    }
}
