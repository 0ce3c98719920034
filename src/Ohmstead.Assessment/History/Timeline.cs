using System.Collections.Immutable;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.History;

/// <summary>A change of what sits in a place.</summary>
/// <param name="At">When.</param>
/// <param name="Visit">The visit to the bench.</param>
/// <param name="Work">The work.</param>
/// <param name="Piece">The change that had put in what sits there from now on; null for the original part, and for an empty place.</param>
/// <param name="IsEmpty">True when nothing sits there from now on.</param>
internal sealed record PlaceChange(Moment At, BenchVisit Visit, WorkEntry Work, PlaceChange? Piece, bool IsEmpty)
{
    /// <summary>The change that put in what sits there from now on: itself where a new part went in.</summary>
    internal PlaceChange? PutIn => Work.PutsAPartIn ? this : Piece;

    /// <summary>True when something was put back although nothing had been taken out.</summary>
    internal bool IsOfNothing { get; init; }
}

/// <summary>A piece of a lot that was put into a place.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Reference">The place.</param>
/// <param name="Change">The change that put it in.</param>
/// <param name="After">When a part was put in there before it; before the first visit when none was.</param>
/// <param name="LeftOn">The visit at which it left the place again; null while it sits there.</param>
internal sealed record LotFitted(string Lot, string Reference, PlaceChange Change, Moment After, BenchVisit? LeftOn);

/// <summary>What sat in each place of a board at each visit. Readings of a visit come before its work unless they were taken as
/// left.</summary>
internal sealed class Timeline
{
    private readonly Dictionary<string, List<PlaceChange>> changes = new(StringComparer.Ordinal);

    private readonly Dictionary<string, (Moment At, Decision Decision)> decisions = new(StringComparer.Ordinal);

    private HashSet<WorkEntry>? undone;

    internal Timeline(ImmutableArray<BenchVisit> visits, IReadOnlyDictionary<string, Part> parts)
    {
        for (var order = 0; order < visits.Length; order++)
        {
            foreach (var decision in visits[order].Decided)
            {
                // One that names a part and a place is about the part, as work is.
                Decide(decision.Place, order, decision);
            }

            foreach (var work in visits[order].Work)
            {
                Add(order, visits[order], work, parts);
            }
        }
    }

    /// <summary>When work was done last; before the first visit when nothing was.</summary>
    internal Moment LastWork { get; private set; } = Moment.AsItCame;

    /// <summary>Whether work was undone later: what it took out was put back.</summary>
    internal bool IsUndone(WorkEntry work) => undone is not null && undone.Contains(work);

    /// <summary>The change that put in what sat in a place when a visit began, or ended; null for the original part.</summary>
    internal PlaceChange? PieceAt(string reference, int order, bool afterWork) => ChangeBefore(reference, order, afterWork)?.PutIn;

    /// <summary>The visit that emptied a place when it was empty as a visit began, or ended; null when something sat there.</summary>
    internal BenchVisit? EmptiedAt(string reference, int order, bool afterWork) =>
        ChangeBefore(reference, order, afterWork) is { IsEmpty: true } removal ? removal.Visit : null;

    /// <summary>The last change of a place, or null when the original sits there and never left it.</summary>
    internal PlaceChange? LastChange(string reference) => changes.TryGetValue(reference, out var list) ? list[^1] : null;

    /// <summary>The next change at or after a moment that put a new part into a place, or null.</summary>
    internal PlaceChange? NextFitting(string reference, Moment from) =>
        changes.TryGetValue(reference, out var list) ? list.FirstOrDefault(change => change.Work.PutsAPartIn && change.At >= from) : null;

    /// <summary>All fittings of pieces of lots.</summary>
    internal IEnumerable<LotFitted> FromLots()
    {
        foreach (var (reference, list) in changes)
        {
            foreach (var change in list)
            {
                if (change.Work is { PutsAPartIn: true, Lot: { } lot })
                {
                    yield return new(lot.Value, reference, change, ChangedBefore(reference, change), LeftOn(list, change));
                }
            }
        }
    }

    /// <summary>When the last change of a place before another was; before the first visit when there was none.</summary>
    internal Moment ChangedBefore(string reference, PlaceChange than) =>
        changes.TryGetValue(reference, out var list)
        && list.LastOrDefault(change => change.At < than.At && change.Work.PutsAPartIn) is { } earlier
            ? earlier.At
            : Moment.AsItCame;

    /// <summary>When a reading was taken as left: where it is written, but not before the work of its visit.</summary>
    internal static Moment AfterWorkOf(BenchVisit visit, int order, Spot spot)
    {
        var at = Moment.At(order, spot);

        // The entries of a list stand in order of place, so the last one is the latest.
        return visit.Work.Length > 0 && Moment.At(order, visit.Work[^1].Spot) is var done && done > at
            ? done with
            {
                Column = done.Column + 1,
            }
            : at;
    }

    /// <summary>The latest decision about a place, or null.</summary>
    internal (Moment At, Decision Decision)? DecisionOn(string place) => decisions.TryGetValue(place, out var found) ? found : null;

    // It may have been taken out and put back meanwhile.
    private static BenchVisit? LeftOn(List<PlaceChange> list, PlaceChange fitting)
    {
        var last = list.FindLastIndex(change => ReferenceEquals(change.PutIn, fitting));
        return last + 1 < list.Count ? list[last + 1].Visit : null;
    }

    private void Decide(Written<string>? place, int order, Decision decision)
    {
        if (place is not null)
        {
            decisions[place.Value] = (Moment.At(order, decision.Spot), decision);
        }
    }

    private void Add(int order, BenchVisit visit, WorkEntry work, IReadOnlyDictionary<string, Part> parts)
    {
        var at = Moment.At(order, work.Spot);
        if (work.Did.Value != WorkKind.LeftAlone && at > LastWork)
        {
            LastWork = at;
        }

        if (!work.ChangesAPlace || PlaceOf(work, parts) is not { } reference)
        {
            return;
        }

        if (!changes.TryGetValue(reference, out var list))
        {
            changes[reference] = list = [];
        }

        list.Add(
            work.Did.Value switch
            {
                WorkKind.Removed => new(at, visit, work, null, IsEmpty: true),
                WorkKind.PutBack => new(at, visit, work, PutBack(list), IsEmpty: false) { IsOfNothing = list.Count == 0 },
                _ => new(at, visit, work, null, IsEmpty: false),
            }
        );
    }

    // A part that is named as a place is that part; what is in no list of parts can be taken out and put back as well.
    private static string? PlaceOf(WorkEntry work, IReadOnlyDictionary<string, Part> parts) =>
        work.Part is { } part && parts.ContainsKey(part.Value) ? part.Value
        : work.At is { } at && parts.ContainsKey(at.Value) ? at.Value
        : (work.Part ?? work.At)?.Value;

    // What was taken out last goes in again: as if it had never been taken out. A part that was fitted meanwhile came out for it.
    private PlaceChange? PutBack(List<PlaceChange> list)
    {
        for (var last = list.Count - 1; last >= 0; last--)
        {
            if (list[last].Work.Did.Value == WorkKind.PutBack || IsUndone(list[last].Work))
            {
                continue;
            }

            (undone ??= new(ReferenceEqualityComparer.Instance)).Add(list[last].Work);
            var before = last == 0 ? null : list[last - 1];
            if (before is not { IsEmpty: true })
            {
                return before?.PutIn;
            }
        }

        return null;
    }

    private PlaceChange? ChangeBefore(string reference, int order, bool afterWork)
    {
        if (changes.TryGetValue(reference, out var list))
        {
            for (var at = list.Count - 1; at >= 0; at--)
            {
                if (list[at].At.Visit < order || (afterWork && list[at].At.Visit == order))
                {
                    return list[at];
                }
            }
        }

        return null;
    }
}
