using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>A hazard of a board.</summary>
/// <param name="Hazard">The hazard as written.</param>
/// <param name="MadeSafe">The visit at which it was removed or made safe for good, or null while it is there.</param>
public sealed record AssessedHazard(Hazard Hazard, BenchVisit? MadeSafe)
{
    /// <summary>What belongs and what sits at the place of the hazard, where it names one that the parts list knows.</summary>
    public ImmutableArray<PartValues> Parts { get; init; } = [];

    /// <summary>The work that made it safe, or null.</summary>
    public WorkEntry? By { get; init; }

    /// <summary>Kinds that must be gone before a board may run; the others stay and are cautioned against.</summary>
    public bool MustGo => ClosingWork.MustGo(Hazard.Kind.Value);

    /// <summary>The hazards that hold for every unit of a design.</summary>
    public static ImmutableArray<AssessedHazard> OfDesign(DesignFile design) =>
    [
        .. design.Hazards.Select(hazard => new AssessedHazard(hazard, null)
        {
            Parts = hazard.At is { } at && design.Parts.FirstOrDefault(part => part.Ref.Value == at.Value) is { } part ? [part.Values] : [],
        }),
    ];

    /// <summary>The same with what belongs and what was fitted at its place: whichever holds more counts.</summary>
    internal AssessedHazard With(ImmutableArray<PlaceHistory> places) => Hazard.At is { } at && places.FirstOrDefault(place => place.Part.Ref.Value == at.Value) is { } place
        ? this with { Parts = ReferenceEquals(place.Values, place.Part.Values) ? [place.Values] : [place.Part.Values, place.Values] }
        : this;
}

/// <summary>The hazards of a board: its own and its design's, and which of them work has removed.</summary>
internal static class BoardHazards
{
    /// <summary>All hazards, each with the visit that made it safe for good.</summary>
    internal static ImmutableArray<AssessedHazard> Of(BoardFile board, DesignFile? design, ImmutableArray<BenchVisit> visits, Timeline timeline, ImmutableArray<PlaceHistory> places)
    {
        ImmutableArray<Hazard> all = [.. design?.Hazards ?? [], .. board.Hazards];
        return [.. all.Select(hazard => Assess(hazard, all, visits, timeline).With(places))];
    }

    private static AssessedHazard Assess(Hazard hazard, ImmutableArray<Hazard> all, ImmutableArray<BenchVisit> visits, Timeline timeline)
    {
        var isOnlyOne = all.Count(other => other.Kind.Value == hazard.Kind.Value) == 1;
        foreach (var visit in visits)
        {
            foreach (var work in visit.Work)
            {
                if (MakesSafe(work, hazard, isOnlyOne) && !timeline.IsUndone(work))
                {
                    return new(hazard, visit) { By = work };
                }
            }
        }

        return new(hazard, null);
    }

    private static bool MakesSafe(WorkEntry work, Hazard hazard, bool isOnlyOne)
    {
        if (!ClosingWork.MakesSafe(work.Did.Value, hazard.Kind.Value))
        {
            return false;
        }

        var isSomewhere = work.At is not null || work.Part is not null;
        if (work.Hazard is { } named)
        {
            // Work that names no place can be meant for one hazard of its kind only.
            return named.Value == hazard.Kind.Value && (hazard.At is not { } place ? isOnlyOne || !isSomewhere : isSomewhere ? IsAt(work, place.Value) : isOnlyOne);
        }

        // A wash of the whole board reaches every place of it.
        return hazard.Kind.Value == HazardKind.LeakedElectrolyte ? hazard.At is not { } spill || IsAt(work, spill.Value) || (!isSomewhere && work.Did.Value == WorkKind.Washed)
            : hazard.At is { } at && IsAt(work, at.Value) && ClosingWork.GoesWithThePart(hazard.Kind.Value);
    }

    private static bool IsAt(WorkEntry work, string at) => work.Part?.Value == at || work.At?.Value == at;
}
