using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>A board with everything that is known of it: what follows from its record, what the checks found, what it must show before it
/// may be switched on, and the state that comes of it.</summary>
public sealed record JudgedBoard : BoardAssessment
{
    private readonly DateOnly today;

    /// <summary>Judges an assessment.</summary>
    /// <param name="assessment">What follows from the record.</param>
    /// <param name="reported">What reading the record and checking it found.</param>
    /// <param name="obligations">Everything that must be shown, met or not, in order of the kinds.</param>
    /// <param name="openWaits">Waits that have not ended.</param>
    /// <param name="today">The day of this run.</param>
    [SetsRequiredMembers]
    internal JudgedBoard(
        BoardAssessment assessment,
        ImmutableArray<Finding> reported,
        ImmutableArray<Obligation> obligations,
        ImmutableArray<Wait> openWaits,
        DateOnly today
    )
        : base(assessment)
    {
        Reported = reported;
        Obligations = obligations;
        OpenWaits = openWaits;
        this.today = today;
        Reasons =
        [
            .. obligations
                .Where(one => one.Standing == ObligationStanding.Open)
                .Select(one => new StateReason(one.State, one.At, one.Text, one.NextStep, one.Kind) { Act = one.Act })
                .OrderByDescending(reason => reason.State),
        ];
    }

    /// <summary>The day before which it is taken as told; null when it is judged in full.</summary>
    public DateOnly? ToldBefore { get; internal init; }

    /// <summary>Whether something falls due on it and is bought for it: it is looked after, and not merely told.</summary>
    public bool IsWorkedOn => Whereabouts.IsKeptUp && ToldBefore is null;

    /// <summary>What reading the record and checking it found.</summary>
    public ImmutableArray<Finding> Reported { get; }

    /// <summary>Everything that must be shown before it may be switched on, met or not, in order of the kinds.</summary>
    public ImmutableArray<Obligation> Obligations { get; }

    /// <summary>Waits that have not ended.</summary>
    public ImmutableArray<Wait> OpenWaits { get; }

    /// <summary>Why the state is what it is, the weightiest first: each obligation that is open. Empty when fit to run.</summary>
    public ImmutableArray<StateReason> Reasons { get; }

    /// <summary>The state: the worst of the open obligations, fit to run when all are met. A board that nothing was asked of is fit for
    /// nothing.</summary>
    public BoardState State =>
        Obligations.Length == 0 ? BoardState.NotLookedAt
        : Reasons.Length == 0 ? BoardState.FitToRun
        : Reasons[0].State;

    /// <summary>True when the day of the next look is past. It is said beside the state: what was proved then is not known to hold
    /// now.</summary>
    public bool IsLookOverdue => LookAgain is { } look && look < today;

    /// <summary>Since when it is; null when it is not.</summary>
    public DateOnly? OverdueSince => IsLookOverdue ? LookAgain : null;

    /// <summary>Parts that must be found, in order of the parts list.</summary>
    public ImmutableArray<PartNeed> Needs => IsWorkedOn ? PartNeed.Collect(this) : [];
}
