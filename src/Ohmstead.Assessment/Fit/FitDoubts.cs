using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Fit;

/// <summary>What of the reasons against a part that was fitted nobody has answered: by a note that says how it was made to fit, or by a decision that keeps it.</summary>
internal static class FitDoubts
{
    /// <summary>
    /// The weightiest reason that stands, or null when none does. A rating, a safety class and a fuse of another current are not answered by words; a doubt is by a
    /// note on the work, and what is another value, kind or form by a decision that knew of it.
    /// </summary>
    internal static Reason? Weightiest(Replacement replacement)
    {
        foreach (var reason in replacement.Fit.Reasons)
        {
            if (Stands(replacement, reason))
            {
                return reason;
            }
        }

        return null;
    }

    /// <summary>What to do about a reason that stands.</summary>
    internal static string NextStep(string board, Replacement replacement, Reason reason) =>
        IsRating(reason) && reason.Weight == ReasonWeight.Against ? $"take another part: ohmstead fit {board} {replacement.Place.Part.Ref.Value}; defer to local codes and licensed practice"
        : reason.Weight == ReasonWeight.Against ? $"take another part: ohmstead fit {board} {replacement.Place.Part.Ref.Value}, or write a decision to keep it, with the reason"
        : "look at it, and write a note on that work saying how it was made to fit, or take another part";

    // A datum that is not written is no doubt about the part; the standing notice about safety is none either.
    private static bool Stands(Replacement replacement, Reason reason) => reason.Weight switch
    {
        ReasonWeight.For => false,
        ReasonWeight.Doubt => !reason.IsMissing && reason.Aspect != FitAspects.Safety && replacement.Work.Note is null && !replacement.Place.IsKeptByDecision,
        ReasonWeight.Against => IsRating(reason) || !replacement.Place.IsKeptByDecision,
    };

    private static bool IsRating(Reason reason) => reason.Aspect is FitAspects.Voltage or FitAspects.WorkingVoltage or FitAspects.Temperature or FitAspects.Safety;
}
