using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Fit;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A replacement does not have the safety class that the place needs.</summary>
public sealed class ReplacementSafetyClassLower : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "replacement-safety-class-lower",
            Severity.Error,
            "a replacement does not have the safety class that the place needs",
            CheckEffect.SaidElsewhere,
            "the obligation that what was fitted fits its place"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var replacement in board.Replacements)
        {
            if (replacement.Place.Part.Values.SafetyClass is { } was && replacement.Against(FitAspects.Safety) is { } reason)
            {
                yield return board.Finding(
                    Description,
                    replacement.Work.Spot,
                    $"{replacement.Place.Part.Ref.Value} needs safety class {was.Text}, {replacement.Named} has "
                        + $"{replacement.Values.SafetyClass?.Text ?? "none"}: {reason.Words}",
                    $"fit a part of class {was.Value} or better; defer to local codes and licensed practice"
                ) with
                {
                    Related = board.InStock(replacement.Lot),
                };
            }
        }
    }
}
