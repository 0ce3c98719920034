using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>One place on a board through time: what belongs there, what sits there now, and what its readings say.</summary>
/// <param name="Part">What belongs there.</param>
/// <param name="Sitting">The lot that sits there now, or null for the original part.</param>
/// <param name="FittedBy">The work that put it there, or null for the original part.</param>
/// <param name="FittedOn">The visit of that work.</param>
/// <param name="Readings">All readings of the place, oldest first; those of a lot before it was fitted here included.</param>
/// <param name="Standing">For each quantity the latest verdict on what sits there now.</param>
/// <param name="Decision">The latest decision of a person about what sits there now, or null.</param>
/// <param name="DecisionOrder">The place in time of the visit of that decision, -1 when there is none.</param>
public sealed record PlaceHistory(
    Part Part,
    Lot? Sitting,
    WorkEntry? FittedBy,
    BenchVisit? FittedOn,
    ImmutableArray<AssessedReading> Readings,
    ImmutableArray<Verdict> Standing,
    Decision? Decision,
    int DecisionOrder)
{
    /// <summary>What belongs there, in words.</summary>
    public LazyText What { get; } = LazyText.Of(Part.Values, PartWords.Describe);

    /// <summary>True when the place is empty: what was there was removed and nothing fitted since.</summary>
    public bool IsEmpty { get; init; }

    /// <summary>Functional test of what sits there now: null when none was made.</summary>
    public bool? PassedTest { get; init; }

    /// <summary>True when a reading of what sits there now is outside its limit, or its test failed.</summary>
    public bool HasFailed => !IsEmpty && (PassedTest == false || Outcomes.IsAmong(Standing, VerdictOutcome.Outside));

    /// <summary>True when a reading of what sits there now is too close to call.</summary>
    public bool IsUndecided => !IsEmpty && Outcomes.IsAmong(Standing, VerdictOutcome.Undecided);

    /// <summary>True when a person decided, with a reason, that a part outside its limit stays.</summary>
    public bool IsKeptByDecision => Decision?.What.Value is DecisionKind.Keep or DecisionKind.Watch or DecisionKind.LeaveAlone;

    /// <summary>True when a person decided that what sits there goes, and it has not gone yet. Work of a visit carries out the decisions of the same visit.</summary>
    public bool IsToBeReplaced { get; init; }

    /// <summary>True when people rely on the part that belongs or sits there not to be hurt.</summary>
    public bool IsSafetyRelevant => PartKind.IsSafetyRelevant(Part.Values) || PartKind.IsSafetyRelevant(Values);

    /// <summary>What sits there, as values: the lot's where one was fitted.</summary>
    public PartValues Values => Sitting?.Values ?? Part.Values;
}
