using System.Collections.Immutable;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Everything computed about one board.</summary>
/// <param name="Board">The board as written.</param>
/// <param name="Design">Its design, or null when it has none or the design is not known.</param>
/// <param name="Visits">Visits to the bench in order of time.</param>
/// <param name="Places">Its places in order of the parts list.</param>
/// <param name="Readings">All readings in order of time.</param>
/// <param name="Points">Its test points.</param>
/// <param name="Proofs">All proof entries in order of time.</param>
/// <param name="Findings">All findings, oldest first, each with what answers it.</param>
/// <param name="Hazards">All hazards, each with whether it was made safe for good.</param>
/// <param name="OpenWaits">Waits that have not ended.</param>
public sealed record BoardAssessment(
    BoardFile Board,
    DesignFile? Design,
    ImmutableArray<BenchVisit> Visits,
    ImmutableArray<PlaceHistory> Places,
    ImmutableArray<AssessedReading> Readings,
    ImmutableArray<TestPoint> Points,
    ImmutableArray<AssessedProof> Proofs,
    ImmutableArray<AnsweredFinding> Findings,
    ImmutableArray<AssessedHazard> Hazards,
    ImmutableArray<Wait> OpenWaits
)
{
    private ILookup<string, AssessedProof>? proofsByPoint;
    private int[]? underPower;
    private (ValveRectifier? Valve, bool IsKnown) rectifier;

    private readonly Dictionary<string, PlaceHistory> byReference = Places.ToDictionary(
        place => place.Part.Ref.Value,
        StringComparer.Ordinal
    );

    /// <summary>Everything that must be shown before it may be switched on, met or not, in order of the kinds; empty before it was
    /// judged.</summary>
    public ImmutableArray<Obligation> Obligations
    {
        get;
        init
        {
            field = value;
            Reasons =
            [
                .. value
                    .Where(one => one.Standing == ObligationStanding.Open)
                    .Select(one => new Reason(one.State, one.At, one.Text, one.NextStep))
                    .OrderByDescending(reason => reason.State),
            ];
        }
    } = [];

    /// <summary>Why the state is what it is, the weightiest first: each obligation that is open. Empty when fit to run.</summary>
    public ImmutableArray<Reason> Reasons { get; private init; } = [];

    /// <summary>The state: the worst of the open obligations, fit to run when all are met. What was never judged is fit for
    /// nothing.</summary>
    public BoardState State =>
        Obligations.Length == 0 ? BoardState.NotLookedAt
        : Reasons.Length == 0 ? BoardState.FitToRun
        : Reasons[0].State;

    /// <summary>True when the day of the next look is past. It is said beside the state: what was proved then is not known to hold
    /// now.</summary>
    public bool IsLookOverdue { get; init; }

    /// <summary>Since when it is; null when it is not.</summary>
    public DateOnly? OverdueSince => IsLookOverdue ? LookAgain : null;

    /// <summary>What the readings at its points say.</summary>
    internal ImmutableArray<PointStanding> PointsRead { get; init; } = [];

    /// <summary>The new pieces that sit on it, in order of the parts list, each with the reading that measured it.</summary>
    public ImmutableArray<FittedPiece> Fitted { get; init; } = [];

    /// <summary>What its fittings ask of the lots that they came from, in order of time.</summary>
    public ImmutableArray<PieceClaim> Claims { get; init; } = [];

    /// <summary>When work was done last; before the first visit when nothing was.</summary>
    internal Moment LastWorkAt { get; init; } = Moment.AsItCame;

    /// <summary>The last day on which something was done, or null.</summary>
    public DateOnly? LastWork { get; init; }

    /// <summary>The last day of any entry, or null.</summary>
    public DateOnly? LastSeen => Visits.Length == 0 ? null : Visits[^1].Date.Value;

    /// <summary>The day on which the board should be looked at again, or null when the collection does not say how often.</summary>
    public DateOnly? LookAgain { get; init; }

    /// <summary>Parts outside their limits that a person keeps, each with the reason; both are shown.</summary>
    public ImmutableArray<PlaceHistory> Overruled => [.. Places.Where(place => place.HasFailed && place.IsKeptByDecision)];

    /// <summary>Parts and points whose last word is a reading too close to call, without being a reason against running.</summary>
    public ImmutableArray<MeasureAgain> MeasureAgain => History.MeasureAgain.Of(Places, PointsRead);

    /// <summary>Estimates of the life of every wet electrolytic that sits on the board, in order of the parts list.</summary>
    public ImmutableArray<PartLife> Lives { get; init; } = [];

    /// <summary>Parts that must be found, in order of the parts list.</summary>
    public ImmutableArray<PartNeed> Needs => PartNeed.Of(this);

    /// <summary>Parts of known lots that were put into known places, each with whether it fits, in order of time.</summary>
    public ImmutableArray<Replacement> Replacements { get; init; } = [];

    /// <summary>The drifts of the parts that sit on it now, in order of the parts list and of the quantities.</summary>
    public ImmutableArray<Drift> Drifts { get; init; } = [];

    /// <summary>The places, among the visits, of those at which power was applied or something was proved, in order of time.</summary>
    internal IReadOnlyList<int> UnderPower =>
        underPower ??= [
            .. Enumerable.Range(0, Visits.Length).Where(order => Visits[order].Powered is not null || Visits[order].Proofs.Length > 0),
        ];

    /// <summary>The first rectifier valve in the order of the parts list; null when none is named by its type.</summary>
    internal ValveRectifier? Rectifier
    {
        get
        {
            if (!rectifier.IsKnown)
            {
                rectifier = (Places.Select(RectifierIn).OfType<ValveRectifier>().FirstOrDefault(), true);
            }

            return rectifier.Valve;
        }
    }

    /// <summary>The proofs at a point, oldest first.</summary>
    public IEnumerable<AssessedProof> ProofsAt(string point) =>
        (proofsByPoint ??= Proofs.ToLookup(static proof => proof.Proof.Point.Value, StringComparer.Ordinal))[point];

    /// <summary>The place of a reference, or null.</summary>
    public PlaceHistory? Place(string reference) => byReference.GetValueOrDefault(reference);

    private static ValveRectifier? RectifierIn(PlaceHistory place) =>
        place.Values.Type?.Value is { } type
            ? ValveRectifier.All.FirstOrDefault(valve => string.Equals(valve.Type, type, StringComparison.OrdinalIgnoreCase))
            : null;
}
