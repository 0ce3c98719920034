using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>One place on a board through time: what belongs there, what sits there now, and what its readings say.</summary>
/// <param name="Part">What belongs there.</param>
/// <param name="FittedLot">The lot that sits there now, or null for the original part, or one that came from no lot.</param>
/// <param name="FittedBy">The work that put it there, or null for the original part.</param>
/// <param name="FittedOn">The visit of the last change of the place, or null when there was none.</param>
/// <param name="Readings">All readings of the place, oldest first; those of a lot before it was fitted here included.</param>
/// <param name="Standing">For each quantity the verdict that stands on what sits there now.</param>
/// <param name="Decision">The latest decision of a person about what sits there now, or null.</param>
public sealed record PlaceHistory(
    Part Part,
    Lot? FittedLot,
    WorkEntry? FittedBy,
    BenchVisit? FittedOn,
    ImmutableArray<AssessedReading> Readings,
    ImmutableArray<Verdict> Standing,
    Decision? Decision
)
{
    /// <summary>What belongs there, in words.</summary>
    public LazyText What { get; } = LazyText.For(Part.Values, PartWords.Describe);

    /// <summary>The standing verdicts, each with the reading that gave it.</summary>
    internal ImmutableArray<StandingVerdict> StoodBy { get; init; } = [];

    /// <summary>
    /// What was read of the very part that sits there: of a new part for this place before it was fitted, and of the place since. What was
    /// read of another piece of its lot, or of the part before it, is not among it.
    /// </summary>
    public IEnumerable<AssessedReading> OfThisPart => Counting.Where(static reading => reading.Place is not null);

    /// <summary>The verdict that stands on one quantity of the very part that sits there, or null when it was not read.</summary>
    public Verdict? LastOfThisPart(Measured measured)
    {
        Verdict? last = null;
        foreach (var reading in OfThisPart)
        {
            foreach (var verdict in reading.Verdicts)
            {
                if (verdict.Measured == measured && (last is null || Outcomes.Outweighs(verdict.Outcome, last.Outcome)))
                {
                    last = verdict;
                }
            }
        }

        return last;
    }

    /// <summary>True when the place is empty: what was there was removed and nothing fitted since.</summary>
    public bool IsEmpty { get; init; }

    /// <summary>The last change of the place, or null when the original sits there and never left it.</summary>
    internal PlaceChange? Change { get; init; }

    /// <summary>The place, among the visits in order of time, of the one at which it was changed last; null when it never was.</summary>
    public int? ChangedAt => Change?.At.Visit;

    /// <summary>When what sits there was put in; before the first visit for an original that never left.</summary>
    internal Moment Since => Change?.At ?? Moment.AsItCame;

    /// <summary>The last functional test of what sits there now: null when none was made.</summary>
    public AssessedReading? Tested { get; init; }

    /// <summary>Functional test of what sits there now: null when none was made.</summary>
    public bool? PassedTest => Tested is null ? null : Tested.Reading.Result!.Value == TestResult.Pass;

    /// <summary>Readings that count for what sits there now, oldest first: of the piece before it went in, and of the place
    /// since.</summary>
    internal ImmutableArray<AssessedReading> Counting { get; init; } = [];

    /// <summary>When the decision was made.</summary>
    internal Moment DecidedAt { get; init; }

    /// <summary>True when a reading of what sits there now is outside its limit, or its test failed.</summary>
    public bool HasFailed => !IsEmpty && (PassedTest == false || IsAmong(VerdictOutcome.Outside));

    /// <summary>True when a reading of what sits there now is too close to call.</summary>
    public bool IsUndecided => !IsEmpty && IsAmong(VerdictOutcome.Undecided);

    /// <summary>
    /// True when a person decided, with a reason and knowing every reading that speaks against it, that what sits there stays. What was
    /// read later was not known to the decision; and a part that people rely on not to be hurt is not kept by one.
    /// </summary>
    public bool IsKeptByDecision =>
        Decision is { } decision && decision.What.Value.LetsStay() && decision.GivesAReason && !IsSafetyRelevant && AgainstDecision is null;

    /// <summary>The first reading or test of what sits there that was made after the decision and speaks against it: the decision does not
    /// answer it. Null when there is none.</summary>
    public AssessedReading? AgainstDecision => Decision is null ? null : FirstAgainstSince(DecidedAt);

    /// <summary>True when a person decided that what sits there goes, and it has not gone yet. Work of a visit carries out the decisions of
    /// the same visit.</summary>
    public bool IsToBeReplaced { get; init; }

    /// <summary>True when people rely on the part that belongs or sits there not to be hurt.</summary>
    public bool IsSafetyRelevant => PartKind.IsSafetyRelevant(Part.Values) || PartKind.IsSafetyRelevant(Values);

    /// <summary>What sits there, as values: the lot's where one was fitted, those written with the work where the part came from
    /// none.</summary>
    public PartValues Values => FittedLot?.Values ?? FittedBy?.NewPart ?? Part.Values;

    /// <summary>The first verdict of an outcome that stands, or null.</summary>
    internal StandingVerdict? FirstOf(VerdictOutcome outcome)
    {
        for (var at = 0; at < StoodBy.Length; at++)
        {
            if (StoodBy[at].Verdict.Outcome == outcome)
            {
                return StoodBy[at];
            }
        }

        return null;
    }

    private bool IsAmong(VerdictOutcome outcome) => FirstOf(outcome) is not null;

    private AssessedReading? FirstAgainstSince(Moment moment)
    {
        var first = Tested is { } tested && PassedTest == false && tested.KnownSince > moment ? tested : null;
        for (var at = 0; at < StoodBy.Length; at++)
        {
            if (
                StoodBy[at] is { Verdict.Outcome: VerdictOutcome.Outside or VerdictOutcome.Undecided, By: var by }
                && by.KnownSince > moment
                && (first is null || first.At > by.At)
            )
            {
                first = by;
            }
        }

        return first;
    }
}

/// <summary>A verdict that stands on what sits in a place, and the reading that gave it.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="By">The reading.</param>
public readonly record struct StandingVerdict(Verdict Verdict, AssessedReading By);
