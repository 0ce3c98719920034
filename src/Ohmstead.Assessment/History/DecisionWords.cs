using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>A decision as it is told beside what is so now: with why it does not hold, where it does not. Whoever made it should hear
/// that.</summary>
public static class DecisionWords
{
    /// <summary>The decision about what sits in a place, its reason, and why it does not hold where it does not; null when none was
    /// made.</summary>
    public static string? Told(PlaceHistory place) =>
        place.Decision is not { } decision
            ? null
            : $"{decision.What.Text}, because {decision.Because.Value}{(Doubt(place) is { } doubt ? $"; {doubt}" : string.Empty)}";

    /// <summary>Why a verdict is what it is, and why the decision about the part does not answer it, where one was made that does
    /// not.</summary>
    internal static LazyText WithDecision(PlaceHistory place, Verdict verdict) =>
        Doubt(place) is { } doubt ? $"{verdict.Why}; '{place.Decision!.What.Text}': {doubt}" : verdict.Why;

    /// <summary>Why a decision that lets a part stay does not hold: it cannot keep such a part, or it was made before a reading that speaks
    /// against it; null when it holds.</summary>
    public static string? Doubt(PlaceHistory place)
    {
        if (
            place is not { Decision: { } decision, IsEmpty: false }
            || !decision.What.Value.LetsStay()
            || !(place.HasFailed || place.IsUndecided)
        )
        {
            return null;
        }

        return place.IsSafetyRelevant ? "a decision cannot keep a part that people rely on not to be hurt"
            : !decision.GivesAReason ? "it gives no reason in words"
            : place.AgainstDecision is { } reading
                ? $"decided before the {(reading.Reading.Values.Length == 0 ? "test" : "reading")} of "
                    + $"{IsoDate.Text(reading.Visit.Date.Value)}, which it does not answer"
            : null;
    }
}
