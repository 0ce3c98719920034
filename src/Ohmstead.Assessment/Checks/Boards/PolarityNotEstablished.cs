using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A polarised part was fitted and the record does not say how the right way round was established.</summary>
public sealed class PolarityNotEstablished : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "polarity-not-established",
            Severity.Error,
            "a polarised part was fitted and the record does not say how the right way round was established",
            CheckEffect.SaidElsewhere,
            "the obligation to establish the way round"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var place in board.Assessment.Places)
        {
            if (place is { Change: { IsEmpty: false, Work: var work } } && PartKind.IsPolarised(place.Values) && work.Polarity.Length == 0)
            {
                var with =
                    work.Lot is { } lot ? $"with the polarised lot {lot.Value}"
                    : work.Did.Value == WorkKind.PutBack ? "again, it is polarised,"
                    : "with a polarised part";
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"{place.Part.Ref.Value} was fitted {with} and no polarity was established",
                    "add polarity: schematic, or continuity to ground plane, measured in circuit, photograph before removal, other unit"
                );
            }
        }
    }
}
