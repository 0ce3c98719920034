using Ohmstead.Assessment.Fit;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Findings;
using Reason = Ohmstead.Electronics.Substitution.Reason;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A replacement may not fit its place, and nobody has said how it was made to.</summary>
public sealed class ReplacementDoubtful : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("replacement-doubtful", Severity.Warning, "a replacement may not fit its place, and nobody has said how it was made to");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        // What was replaced again, or kept by a decision, asks for nothing any more.
        foreach (var replacement in board.Replacements.Where(replacement => ReferenceEquals(replacement.Place.FittedBy, replacement.Work) && !replacement.Place.IsKeptByDecision))
        {
            if (!HasErrorOfItsOwn(replacement) && replacement.Fit.Reasons.FirstOrDefault(reason => IsDoubt(replacement, reason)) is { } weightiest)
            {
                var place = replacement.Place.Part.Ref.Value;
                yield return board.Finding(
                    Description,
                    replacement.Work.Spot,
                    $"{place} was fitted from lot {replacement.Lot.Id.Value}: {weightiest.Aspect}: {weightiest.Words}",
                    weightiest.Weight == ReasonWeight.Against
                        ? $"take another part: ohmstead fit {board.Board.Id.Value} {place}, or write a decision to keep it, with the reason"
                        : "look at it, and write a note on that work saying how it was made to fit, or take another part")
                    with { Related = board.InStock(replacement.Lot) };
            }
        }
    }

    // What is rated too low must go anyway; told once is enough.
    private static bool HasErrorOfItsOwn(Replacement replacement) =>
        (replacement.Against(FitAspects.Voltage) is not null && replacement.Place.Part.Values.RatedVoltage is not null)
        || replacement.Against(FitAspects.Temperature) is not null
        || (replacement.Against(FitAspects.Safety) is not null && replacement.Place.Part.Values.SafetyClass is not null);

    // A datum that is not written is no doubt about the part; ratings and safety classes have checks of their own.
    private static bool IsDoubt(Replacement replacement, Reason reason) => reason.Weight switch
    {
        ReasonWeight.For => false,
        ReasonWeight.Doubt => !reason.IsMissing && reason.Aspect != FitAspects.Safety && replacement.Work.Note is null,
        _ => reason.Aspect switch
        {
            FitAspects.Voltage or FitAspects.Temperature => false,
            FitAspects.Safety => replacement.Place.Part.Values.SafetyClass is null,
            _ => true,
        },
    };
}
