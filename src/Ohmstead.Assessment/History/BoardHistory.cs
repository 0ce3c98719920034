using System.Collections.Immutable;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>What a record says of a board, put in order of time and held against its limits: what sat where, what was read and proved, what
/// stands of it. It judges nothing.</summary>
/// <param name="Board">The board as written.</param>
/// <param name="Design">Its design, or null when it has none or the design is not known.</param>
/// <param name="Visits">Visits to the bench in order of time.</param>
/// <param name="Places">Its places in order of the parts list.</param>
/// <param name="Readings">All readings in order of time.</param>
/// <param name="Points">Its test points.</param>
/// <param name="Proofs">All proof entries in order of time.</param>
/// <param name="Findings">All findings, oldest first, each with what answers it.</param>
/// <param name="Hazards">All hazards, each with whether it was made safe for good.</param>
/// <param name="LastWorkAt">When work was done last; before the first visit when nothing was.</param>
public record BoardHistory(
    BoardFile Board,
    DesignFile? Design,
    ImmutableArray<BenchVisit> Visits,
    ImmutableArray<PlaceHistory> Places,
    ImmutableArray<AssessedReading> Readings,
    ImmutableArray<TestPoint> Points,
    ImmutableArray<AssessedProof> Proofs,
    ImmutableArray<AnsweredFinding> Findings,
    ImmutableArray<AssessedHazard> Hazards,
    Moment LastWorkAt
)
{
    private readonly Dictionary<string, PlaceHistory> byReference = Places.ToDictionary(
        place => place.Part.Ref.Value,
        StringComparer.Ordinal
    );

    private ILookup<string, AssessedProof>? proofsByPoint;
    private int[]? underPower;
    private (ValveRectifier? Valve, bool IsKnown) rectifier;

    /// <summary>What the readings at its points say.</summary>
    internal ImmutableArray<PointStanding> PointsRead { get; } = PointStanding.For(Readings, Proofs);

    /// <summary>Where it is and whose it is.</summary>
    public Whereabouts Whereabouts { get; } = Whereabouts.From(Board.Whereabouts);

    /// <summary>Corrections that correct nothing, each with the reason.</summary>
    public ImmutableArray<DoubtfulCorrection> Doubtful { get; init; } = [];

    /// <summary>The last day on which something was done, or null.</summary>
    public DateOnly? LastWork => LastWorkAt.Visit < 0 ? null : Visits[LastWorkAt.Visit].Date.Value;

    /// <summary>The last day of any entry, or null.</summary>
    public DateOnly? LastSeen => Visits.Length == 0 ? null : Visits[^1].Date.Value;

    /// <summary>Parts outside their limits that a person keeps, each with the reason; both are shown.</summary>
    public ImmutableArray<PlaceHistory> Overruled => [.. Places.Where(place => place.HasFailed && place.IsKeptByDecision)];

    /// <summary>Parts and points whose last word is a reading too close to call, without being a reason against running.</summary>
    public ImmutableArray<MeasureAgain> MeasureAgain => History.MeasureAgain.Collect(Places, PointsRead);

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
