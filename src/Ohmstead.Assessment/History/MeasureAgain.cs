using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.History;

/// <summary>A part or point whose last word is a reading too close to call. It is no reason against running, but it wants a better
/// instrument.</summary>
/// <param name="At">The part or point.</param>
/// <param name="Text">What the reading says.</param>
public sealed record MeasureAgain(string At, LazyText Text)
{
    /// <summary>What to do about all of them.</summary>
    public const string NextStep = "measure it out of circuit with an instrument that is good enough to decide, or decide with a reason";

    /// <summary>Parts in order of the list, then points. What is a reason for the state of the board already, and what a person decided to
    /// keep, is not among them.</summary>
    internal static ImmutableArray<MeasureAgain> Collect(ImmutableArray<PlaceHistory> places, ImmutableArray<PointStanding> points) =>
        [
            .. places
                .Where(place =>
                    place
                        is { IsUndecided: true, HasFailed: false, IsSafetyRelevant: false, IsKeptByDecision: false, IsToBeReplaced: false }
                )
                .SelectMany(place =>
                    place
                        .Standing.Where(verdict => verdict.Outcome == VerdictOutcome.Undecided)
                        .Select(verdict => new MeasureAgain(place.Part.Ref.Value, DecisionWords.WithDecision(place, verdict)))
                ),
            .. points
                .Where(point => point.Fault is null)
                .SelectMany(point =>
                    point
                        .Read.Where(verdict => verdict.Outcome == VerdictOutcome.Undecided)
                        .Select(verdict => new MeasureAgain(point.Name, verdict.Why))
                ),
        ];
}
