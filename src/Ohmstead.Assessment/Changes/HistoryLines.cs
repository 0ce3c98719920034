using Ohmstead.Electronics;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Assessment.Changes;

/// <summary>What a repository tells of a board, in words.</summary>
public static class HistoryLines
{
    /// <summary>What differs after a commit, in one line: the state, how much else, what was entered, and because of what.</summary>
    /// <param name="changes">What differs.</param>
    /// <param name="place">The part, point or place that is asked about; null for the whole board.</param>
    /// <returns>The line; empty where nothing of that place differs.</returns>
    public static string Told(BoardChanges changes, string? place)
    {
        var told = place is null ? [.. changes.Changes] : changes.Changes.Where(change => IsOf(change, place)).ToArray();
        var entries = changes.Entries.Where(one => place is null || IsOf(one.Entry, place)).ToArray();
        if (place is not null)
        {
            return string.Join("; ", told.Select(ChangeLines.Line).Concat(entries.Select(ChangeLines.Entry)).Concat(Because(told)));
        }

        // A board that came has no earlier state from which anything could follow.
        string?[] parts = [Beginning(changes), Counts(told), .. Entries(entries), .. changes.Was is null ? [] : Because(told)];
        return string.Join("; ", parts.Where(part => !string.IsNullOrEmpty(part)));
    }

    /// <summary>An entry by what tells it from its neighbours: what was measured, or else the first thing that it says, stands behind its
    /// day.</summary>
    public static string Told(RecordEntry entry)
    {
        var says = entry.Facts.Where(fact => fact.Text != entry.Of).ToArray();
        return (Array.Find(says, fact => IsMeasured(fact.Key)) ?? says.FirstOrDefault()) is not { } fact
            ? entry.Told
            : $"{entry.Told}, {fact.Key} {fact.Text}";
    }

    private static bool IsMeasured(string key) =>
        BenchShape.Reading.PlaceOf(key) is >= 0 and var at && BenchShape.Reading.Keys[at].Kind == ValueKind.Indication;

    /// <summary>Who first wrote an entry, and who made it say what it says now where that was another commit.</summary>
    public static string Told(EntryOrigin origin) =>
        origin switch
        {
            { First: null } => "not committed yet",
            { First: { } first, Since: null } => $"{By(first)}; what it says now was not committed yet",
            { First: { } first, Since: { } since } when first.Id == since.Id => By(first),
            { First: { } first, Since: { } since } => $"{By(first)}; as it stands since {By(since)}",
        };

    private static string By(CommitNote commit) => $"{IsoDate.Text(commit.Day)} {commit.Who} ({commit.Short})";

    private static bool IsOf(Change change, string place) => change.Place == place;

    private static bool IsOf(EntryDifference entry, string place) => entry.Entry.Of.Split(' ').Contains(place, StringComparer.Ordinal);

    private static string? Beginning(BoardChanges changes) =>
        changes.Was is null ? $"came into the records: {changes.State ?? "cannot be read"}"
        : changes.Changes.FirstOrDefault(change => change.Kind == ChangeKind.State) is { } state ? $"was {state.Was}, now {state.Now}"
        : null;

    private static string Counts(IEnumerable<Change> changes) =>
        string.Join(
            ", ",
            changes
                .Where(change => change.Kind is not (ChangeKind.State or ChangeKind.Reason))
                .GroupBy(change => change.Kind)
                .OrderBy(kind => kind.Key)
                .Select(kind => ChangeLines.Count(kind.Key, kind.Count()))
        );

    // 3 readings new, 1 work new, 1 reading gone
    private static IEnumerable<string> Entries(IEnumerable<InputDifference> entries)
    {
        var told = entries
            .GroupBy(one => (one.Entry.Status, one.Entry.Entry.Kind))
            .OrderBy(group => group.Key)
            .Select(group => $"{group.Count()} {EntryKinds.Words(group.Key.Kind)} {Words(group.Key.Status)}");
        return string.Join(", ", told) is { Length: > 0 } line ? [line] : [];
    }

    private static string Words(EntryStatus status) =>
        status switch
        {
            EntryStatus.New => "new",
            EntryStatus.Changed => "changed",
            EntryStatus.Gone => "gone",
        };

    private static IEnumerable<string> Because(IEnumerable<Change> changes)
    {
        InputKind[] kinds = [.. changes.SelectMany(change => change.Cause.Kinds).Distinct().Order()];
        return kinds.Length == 0 ? [] : [$"because of the {string.Join(" and the ", kinds.Select(InputKinds.Words))}"];
    }
}
