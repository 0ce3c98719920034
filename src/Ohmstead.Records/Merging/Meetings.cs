using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Merging;

/// <summary>
/// Where entries that two people added say more together than either said: which of them came first, or two facts where there can be one.
/// Nobody told it, so it is not told by putting them in some order.
/// </summary>
internal sealed class Meetings
{
    private readonly Dictionary<Piece, (string Reason, bool IsOther)> entries = [];
    private readonly Dictionary<string, string> days = new(StringComparer.Ordinal);

    /// <summary>None.</summary>
    internal static Meetings None { get; } = new();

    /// <summary>Whether there is an entry that is left to a person.</summary>
    internal bool HasEntries => entries.Count > 0;

    /// <summary>Why an entry is left to a person, and whether it is of the second side; null where it is not.</summary>
    internal (string Reason, bool IsOther)? Of(Piece entry) => entries.TryGetValue(entry, out var found) ? found : null;

    /// <summary>Why the order of the new visits of a day is left to a person, or null.</summary>
    internal string? OfDay(string? day) => day is null ? null : days.GetValueOrDefault(day);

    /// <summary>Finds them.</summary>
    /// <param name="before">The visits as they were.</param>
    /// <param name="one">Those of the first.</param>
    /// <param name="other">Those of the second.</param>
    internal static Meetings Of(ImmutableArray<Piece> before, ImmutableArray<Piece> one, ImmutableArray<Piece> other)
    {
        var (first, second) = (AddedEntry.All(before, one).ToList(), AddedEntry.All(before, other).ToList());
        if (first.Count == 0 || second.Count == 0)
        {
            return None;
        }

        // What both wrote alike is one entry.
        var (ofFirst, ofSecond) = (first.Select(NameOf).ToHashSet(), second.Select(NameOf).ToHashSet());
        first.RemoveAll(entry => ofSecond.Contains(NameOf(entry)));
        second.RemoveAll(entry => ofFirst.Contains(NameOf(entry)));
        var found = new Meetings();
        var ofDay = second.ToLookup(entry => entry.Day, StringComparer.Ordinal);
        var ofPlace = second
            .SelectMany(entry => entry.Places.Select(place => (place, entry)))
            .ToLookup(pair => pair.place, pair => pair.entry, StringComparer.Ordinal);
        foreach (var entry in first)
        {
            foreach (var another in ofDay[entry.Day])
            {
                if (OrderMatters(entry, another) || OrderMatters(another, entry))
                {
                    found.AddDay(entry, another);
                }
            }

            foreach (var another in entry.Places.SelectMany(place => ofPlace[place]).Distinct())
            {
                if (Why(entry, another) is { } reason)
                {
                    found.Add(entry, another, reason);
                }
            }
        }

        return found;
    }

    private void AddDay(AddedEntry entry, AddedEntry another)
    {
        var reason =
            $"{entry.Day}: nothing tells whether the {entry.Words} ({entry.By}) or the {another.Words} ({another.By}) came first; "
            + "put them in the order in which it was";
        if (entry.IsOfOwnVisit && another.IsOfOwnVisit)
        {
            days.TryAdd(entry.Day, reason);
            return;
        }

        Add(entry, another, reason);
    }

    private void Add(AddedEntry entry, AddedEntry another, string reason)
    {
        entries.TryAdd(entry.Entry, (reason, false));
        entries.TryAdd(another.Entry, (reason, true));
    }

    private static (string, string, string, string) NameOf(AddedEntry entry) => (entry.List, entry.Day, entry.By, entry.Entry.Meaning);

    // Two readings of one day stand beside each other, and a check says where they contradict; so do two findings.
    private static bool OrderMatters(AddedEntry entry, AddedEntry another) =>
        (entry.List == "work" && another.List == "proof")
        || (
            entry.List is "work" or "decided"
            && another.List is "found" or "readings" or "work" or "decided"
            && entry.Places.Overlaps(another.Places)
        );

    private static string? Why(AddedEntry entry, AddedEntry another)
    {
        var (one, two) = ($"{entry.Day} ({entry.By})", $"{another.Day} ({another.By})");
        if (entry.List == "work" && another.List == "work" && entry.Day != another.Day && MovesAPiece(entry) && MovesAPiece(another))
        {
            return $"{entry.Places.First()}: '{entry.Entry.TextAt("did")}' on {one} and '{another.Entry.TextAt("did")}' on {two}, and "
                + "neither knew of the other; look at what sits there, and keep what was done";
        }

        if (entry.List != another.List || entry.List is not ("readings" or "proof"))
        {
            return null;
        }

        var place = entry.Places.First();
        if (entry.Entry.TextAt("corrects") is { } day && another.Entry.TextAt("corrects") == day)
        {
            return $"{place} of {day}: corrected on {one} and on {two} to something else; look at the notebook, and keep one";
        }

        // One person has one notebook: two figures for one reading are a slip in one of two copies.
        string[] same = ["part", "lot", "point", "piece", "state", "circuit", "frequency", "?"];
        return
            entry.Day == another.Day
            && entry.By.Length > 0
            && entry.By == another.By
            && entry.Entry.NameBy(same) == another.Entry.NameBy(same)
            ? $"{place} of {entry.Day}: {entry.By} has two figures for one reading; look at the notebook"
            : null;
    }

    private static bool MovesAPiece(AddedEntry entry) =>
        entry.Entry.TextAt("did") is { } word
        && Vocabulary.Works.Means(word, out var did)
        && did is WorkKind.Replaced or WorkKind.Removed or WorkKind.Fitted or WorkKind.PutBack;
}
