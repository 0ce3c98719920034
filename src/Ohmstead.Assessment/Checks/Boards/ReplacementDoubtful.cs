using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Fit;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A replacement may not fit its place, and nobody has said how it was made to.</summary>
public sealed class ReplacementDoubtful : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "replacement-doubtful",
            Severity.Warning,
            "a replacement may not fit its place, and nobody has said how it was made to",
            CheckEffect.SaidElsewhere,
            "the obligation that what was fitted fits its place"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var replacement in board.Replacements)
        {
            if (!HasErrorOfItsOwn(replacement) && FitDoubts.Weightiest(replacement) is { } weightiest)
            {
                yield return board.Finding(
                    Description,
                    replacement.Work.Spot,
                    $"{replacement.Place.Part.Ref.Value} was fitted {replacement.From}: {weightiest.Aspect}: {weightiest.Words}",
                    FitDoubts.NextStep(board.Board.Id.Value, replacement, weightiest)
                ) with
                {
                    Related = board.InStock(replacement.Lot),
                };
            }
        }
    }

    // What is rated too low must go anyway; told once is enough.
    private static bool HasErrorOfItsOwn(Replacement replacement) =>
        (replacement.Against(FitAspects.Voltage) is not null && replacement.Place.Part.Values.RatedVoltage is not null)
        || replacement.Against(FitAspects.Temperature) is not null
        || (replacement.Against(FitAspects.Safety) is not null && replacement.Place.Part.Values.SafetyClass is not null);
}
