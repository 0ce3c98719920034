using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>A hazard of a board.</summary>
/// <param name="Hazard">The hazard as written.</param>
/// <param name="MadeSafe">The visit at which it was removed or made safe for good, or null while it is there.</param>
public sealed record AssessedHazard(RecordedHazard Hazard, BenchVisit? MadeSafe)
{
    /// <summary>What belongs and what sits at the place of the hazard, where it names one that the parts list knows.</summary>
    public ImmutableArray<PartValues> Parts { get; init; } = [];

    /// <summary>The work that made it safe, or null.</summary>
    public WorkEntry? By { get; init; }

    /// <summary>Kinds that must be gone before a board may run; the others stay and are cautioned against.</summary>
    public bool MustGo => ClosingWork.MustGo(Hazard.Kind.Value);

    /// <summary>The hazards that hold for every unit of a design.</summary>
    public static ImmutableArray<AssessedHazard> OfDesign(DesignFile design)
    {
        if (design.Hazards.Length == 0)
        {
            return [];
        }

        var parts = new FirstByName<Part>(design.Parts, static part => part.Ref.Value);
        return
        [
            .. design.Hazards.Select(hazard => new AssessedHazard(hazard, null)
            {
                Parts = hazard.At is { } at && parts.Find(at.Value) is { } part ? [part.Values] : [],
            }),
        ];
    }

    /// <summary>The same with what belongs and what was fitted at its place: whichever holds more counts.</summary>
    internal AssessedHazard With(ILookup<string, PlaceHistory> places) =>
        Hazard.At is { } at && places[at.Value].FirstOrDefault() is { } place
            ? this with
            {
                Parts = ReferenceEquals(place.Values, place.Part.Values) ? [place.Values] : [place.Part.Values, place.Values],
            }
            : this;
}

/// <summary>The hazards of a board: its own and its design's, and which of them work has removed.</summary>
internal static class BoardHazards
{
    /// <summary>All hazards, each with the visit that made it safe for good.</summary>
    internal static ImmutableArray<AssessedHazard> Collect(
        BoardFile board,
        DesignFile? design,
        ImmutableArray<BenchVisit> visits,
        Timeline timeline,
        ImmutableArray<PlaceHistory> places
    )
    {
        ImmutableArray<RecordedHazard> all = [.. design?.Hazards ?? [], .. board.Hazards];
        if (all.Length == 0)
        {
            return [];
        }

        var counts = all.CountBy(static hazard => hazard.Kind.Value).ToDictionary();
        var done = new ClosingEntries(visits, timeline);
        var parts = places.ToLookup(static place => place.Part.Ref.Value, StringComparer.Ordinal);
        return
        [
            .. all.Select(hazard =>
                done.First(hazard, counts[hazard.Kind.Value] == 1) is var (visit, work)
                    ? new AssessedHazard(hazard, visit) { By = work }.With(parts)
                    : new AssessedHazard(hazard, null).With(parts)
            ),
        ];
    }

    /// <summary>The work of a board by the place at which it was done: of many hazards and much work only what is at one place is
    /// compared.</summary>
    private sealed class ClosingEntries
    {
        private readonly ImmutableArray<(BenchVisit Visit, WorkEntry Work)> all;
        private readonly ILookup<string, int> byPlace;
        private readonly Dictionary<(HazardKind Kind, string? At), int> known = [];

        internal ClosingEntries(ImmutableArray<BenchVisit> visits, Timeline timeline)
        {
            all = [.. visits.SelectMany(visit => visit.Work.Where(work => !timeline.IsUndone(work)).Select(work => (visit, work)))];
            byPlace = Enumerable.Range(0, all.Length).ToLookup(at => PlaceOf(all[at].Work) ?? string.Empty, StringComparer.Ordinal);
        }

        /// <summary>The first work that made a hazard safe, or null.</summary>
        internal (BenchVisit Visit, WorkEntry Work)? First(RecordedHazard hazard, bool isOnlyOne)
        {
            var key = (hazard.Kind.Value, hazard.At?.Value);
            if (!known.TryGetValue(key, out var first))
            {
                known[key] = first = Find(hazard, isOnlyOne);
            }

            return first < all.Length ? all[first] : null;
        }

        // Work without a place says the same of all hazards of a kind that have one.
        private int Find(RecordedHazard hazard, bool isOnlyOne)
        {
            if (hazard.At is not { } at)
            {
                return FirstOf(Enumerable.Range(0, all.Length), hazard, isOnlyOne);
            }

            var ofNoPlace = (hazard.Kind.Value, string.Empty);
            if (!known.TryGetValue(ofNoPlace, out var anywhere))
            {
                known[ofNoPlace] = anywhere = FirstOf(byPlace[string.Empty], hazard, isOnlyOne);
            }

            return Math.Min(anywhere, FirstOf(byPlace[at.Value], hazard, isOnlyOne));
        }

        private int FirstOf(IEnumerable<int> entries, RecordedHazard hazard, bool isOnlyOne)
        {
            foreach (var at in entries)
            {
                if (MakesSafe(all[at].Work, hazard, isOnlyOne))
                {
                    return at;
                }
            }

            return all.Length;
        }
    }

    private static bool MakesSafe(WorkEntry work, RecordedHazard hazard, bool isOnlyOne)
    {
        if (!ClosingWork.MakesSafe(work.Did.Value, hazard.Kind.Value))
        {
            return false;
        }

        var isSomewhere = work.At is not null || work.Part is not null;
        if (work.Hazard is { } named)
        {
            // Work that names no place can be meant for one hazard of its kind only.
            return named.Value == hazard.Kind.Value
                && (
                    hazard.At is not { } place ? isOnlyOne || !isSomewhere
                    : isSomewhere ? IsAt(work, place.Value)
                    : isOnlyOne
                );
        }

        // A wash of the whole board reaches every place of it.
        return hazard.Kind.Value == HazardKind.LeakedElectrolyte
            ? hazard.At is not { } spill || IsAt(work, spill.Value) || (!isSomewhere && work.Did.Value == WorkKind.Washed)
            : hazard.At is { } at && IsAt(work, at.Value) && ClosingWork.GoesWithThePart(hazard.Kind.Value);
    }

    // Work on one part that names another as its place is work on the first.
    private static bool IsAt(WorkEntry work, string at) => PlaceOf(work) == at;

    private static string? PlaceOf(WorkEntry work) => (work.Part ?? work.At)?.Value;
}
