using System.Collections.Immutable;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Life;
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
/// <param name="OpenFindings">Findings that no later work answered.</param>
/// <param name="Hazards">All hazards, each with whether it was made safe for good.</param>
/// <param name="OpenWaits">Waits that have not ended.</param>
/// <param name="Reasons">Why the state is what it is, the weightiest first; empty when fit to run.</param>
public sealed record BoardAssessment(
    BoardFile Board,
    DesignFile? Design,
    ImmutableArray<BenchVisit> Visits,
    ImmutableArray<PlaceHistory> Places,
    ImmutableArray<AssessedReading> Readings,
    ImmutableArray<TestPoint> Points,
    ImmutableArray<AssessedProof> Proofs,
    ImmutableArray<Observation> OpenFindings,
    ImmutableArray<AssessedHazard> Hazards,
    ImmutableArray<Wait> OpenWaits,
    ImmutableArray<Reason> Reasons)
{
    private readonly Dictionary<string, PlaceHistory> byReference = Places.ToDictionary(place => place.Part.Ref.Value, StringComparer.Ordinal);

    /// <summary>The state: the worst of the reasons, fit to run when there is none.</summary>
    public BoardState State => Reasons.Length == 0 ? BoardState.FitToRun : Reasons.Max(reason => reason.State);

    /// <summary>The last day on which something was done, or null.</summary>
    public DateOnly? LastWork { get; init; }

    /// <summary>The last day of any entry, or null.</summary>
    public DateOnly? LastSeen => Visits.Length == 0 ? null : Visits[^1].Date.Value;

    /// <summary>The day on which the board should be looked at again, or null when the collection does not say how often.</summary>
    public DateOnly? LookAgain { get; init; }

    /// <summary>Parts outside their limits that a person keeps, each with the reason; both are shown.</summary>
    public ImmutableArray<PlaceHistory> Overruled { get; init; } = [];

    /// <summary>Parts and points whose last word is a reading too close to call, without being a reason against running.</summary>
    public ImmutableArray<MeasureAgain> MeasureAgain { get; init; } = [];

    /// <summary>Estimates of the life of every wet electrolytic that sits on the board, in order of the parts list.</summary>
    public ImmutableArray<PartLife> Lives { get; init; } = [];

    /// <summary>Parts that must be found, in order of the parts list.</summary>
    public ImmutableArray<PartNeed> Needs { get; init; } = [];

    /// <summary>Parts of known lots that were put into known places, each with whether it fits, in order of time.</summary>
    public ImmutableArray<Replacement> Replacements { get; init; } = [];

    /// <summary>The drifts of the parts that sit on it now, in order of the parts list and of the quantities.</summary>
    public ImmutableArray<Drift> Drifts { get; init; } = [];

    /// <summary>The place of a reference, or null.</summary>
    public PlaceHistory? Place(string reference) => byReference.GetValueOrDefault(reference);
}

/// <summary>A hazard of a board.</summary>
/// <param name="Hazard">The hazard as written.</param>
/// <param name="MadeSafe">The visit at which it was removed or made safe for good, or null while it is there.</param>
public sealed record AssessedHazard(Hazard Hazard, BenchVisit? MadeSafe)
{
    /// <summary>Kinds that must be gone before a board may run; the others stay and are cautioned against.</summary>
    public bool MustGo => Hazard.Kind.Value is HazardKind.LeakingCell or HazardKind.CrazedSuppressor;
}
