using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>What of the reasons against a part that was fitted nobody has answered: by a note that says how it was made to fit, or by a
/// decision that keeps it.</summary>
internal static class FitDoubts
{
    /// <summary>
    /// The weightiest reason that stands, or null when none does. A rating, a safety class and another fuse are not answered by words; a
    /// doubt is by a note on the work, and what is another value, kind or form by a decision that knew of it.
    /// </summary>
    internal static FitReason? Weightiest(Replacement replacement)
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
    internal static string NextStep(string board, Replacement replacement, FitReason reason) =>
        IsForWantOfMains(replacement, reason) ? "write the a.c. voltage of the mains there as rated_voltage of the place"
        : !MayBeKept(replacement, reason) && reason.Weight == ReasonWeight.Against
            ? $"take another part: ohmstead fit {board} {replacement.Place.Part.Ref.Value}; defer to local codes and licensed practice"
        : reason.Weight == ReasonWeight.Against
            ? $"take another part: ohmstead fit {board} {replacement.Place.Part.Ref.Value}, or write a decision to keep it, with the reason"
        : "look at it, and write a note on that work saying how it was made to fit, or take another part";

    /// <summary>What to do about a piece that reads other than its place asks.</summary>
    internal static string NextStepFor(string board, History.PlaceHistory place) =>
        place.IsSafetyRelevant
            ? $"take another piece: ohmstead fit {board} {place.Part.Ref.Value}; defer to local codes and licensed practice"
            : $"take another piece: ohmstead fit {board} {place.Part.Ref.Value}, or write a decision to keep it, with the reason";

    // A rating that the place asks for and the part does not tell is a doubt, and so is whatever is not written of what people rely on not
    // to be hurt; another datum that is not written is none, nor is the standing notice about safety.
    private static bool Stands(Replacement replacement, FitReason reason) =>
        reason.Weight switch
        {
            ReasonWeight.For => false,
            ReasonWeight.Doubt when reason.IsMissing => IsAskedFor(replacement, reason)
                && (replacement.Place.IsSafetyRelevant || (replacement.Work.Explanation is null && !replacement.Place.IsKeptByDecision)),
            ReasonWeight.Doubt => !FitVerdict.IsNotice(reason)
                && replacement.Work.Explanation is null
                && !replacement.Place.IsKeptByDecision,
            ReasonWeight.Against => !MayBeKept(replacement, reason) || !replacement.Place.IsKeptByDecision,
        };

    private static bool IsAskedFor(Replacement replacement, FitReason reason) =>
        reason.Aspect switch
        {
            _ when PartKind.IsSafetyRelevant(replacement.Place.Part.Values) => !FitAspects.IsMechanical(reason.Aspect)
                && !IsSilentFuse(replacement.Place.Part.Values, reason.Aspect),
            FitAspects.Voltage => replacement.Place.Part.Values.RatedVoltage is not null && replacement.Values.RatedVoltage is null,
            FitAspects.Power => replacement.Place.Part.Values.Power is not null && replacement.Values.Power is null,
            FitAspects.Current => replacement.Place.Part.Values.Current is not null && replacement.Values.Current is null,
            FitAspects.WorkingVoltage => replacement.Place.Part.Values.WorkingVoltage is not null
                && replacement.Values.RatedVoltage is null,
            FitAspects.Value when replacement.Place.Part.Values.Kind.Value.Voltage == VoltageMeaning.Given => reason.IsUnwritten
                && replacement.Place.Part.Values.RatedVoltage is not null,
            FitAspects.Value => ChosenBy.Value(replacement.Place.Part.Values) is not null && ChosenBy.Value(replacement.Values) is null,
            _ => false,
        };

    // What neither the list nor the lot says of a fuse is told where it is offered; the list has to ask before an answer can be missing.
    private static bool IsSilentFuse(PartValues place, string aspect) =>
        place.Kind.Value == PartKinds.Fuse
        && aspect switch
        {
            FitAspects.Speed => place.Speed is null,
            FitAspects.Breaking => place.Breaking is null,
            FitAspects.Standard => place.Standard is null,
            FitAspects.Voltage => place.RatedVoltage is null,
            _ => false,
        };

    // Nobody decides that what people rely on not to be hurt may be another part.
    private static bool MayBeKept(Replacement replacement, FitReason reason) =>
        !IsRating(reason) && !PartKind.IsSafetyRelevant(replacement.Place.Part.Values);

    private static bool IsForWantOfMains(Replacement replacement, FitReason reason) =>
        reason.Weight == ReasonWeight.Against
        && reason.Aspect == FitAspects.Voltage
        && replacement.Place.Part.Values is { RatedVoltage: null, SafetyClass: not null };

    private static bool IsRating(FitReason reason) =>
        reason.Aspect is FitAspects.Voltage or FitAspects.WorkingVoltage or FitAspects.Temperature or FitAspects.Safety;
}
