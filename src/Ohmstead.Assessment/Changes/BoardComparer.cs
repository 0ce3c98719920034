using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Changes;

/// <summary>Tells what of the judgement of a board differs between two states of its collection.</summary>
public static class BoardComparer
{
    /// <summary>What differs, in the order of the kinds. Readings that are new or gone are no change of a verdict: they are
    /// entries.</summary>
    /// <param name="was">The board as it was judged.</param>
    /// <param name="now">The board as it is judged.</param>
    /// <param name="earlier">Where an entry of the later record stood in the earlier one; null for a new one.</param>
    public static ImmutableArray<Change> Compare(JudgedBoard was, JudgedBoard now, Func<Spot, Spot?> earlier)
    {
        var changes = ImmutableArray.CreateBuilder<Change>();
        Add(changes, new(ChangeKind.State, string.Empty, Told(was), Told(now)));
        AddListed(changes, ChangeKind.Reason, was.Reasons, now.Reasons, reason => (reason.At, WithoutPlace(reason.Told)));
        VerdictComparer.AddTo(changes, was, now, earlier);
        Add(changes, new(ChangeKind.LookAgain, string.Empty, Day(was.LookAgain), Day(now.LookAgain)));
        if (!Dates(was).SequenceEqual(Dates(now)))
        {
            AddByPlace(changes, ChangeKind.Life, Lives(was), Lives(now));
        }

        AddByPlace(changes, ChangeKind.Need, Needs(was), Needs(now));
        Add(changes, new(ChangeKind.Whereabouts, string.Empty, was.Whereabouts.Told, now.Whereabouts.Told));
        AddListed(changes, ChangeKind.Finding, was.Reported, now.Reported, finding => (null, Told(finding)));
        return changes.DrainToImmutable();
    }

    // A reason that is a finding names its check and its place: the place moves with every entry above it.
    private static string WithoutPlace(string told)
    {
        var (open, end) = (told.LastIndexOf('['), told.LastIndexOf(']'));
        var comma = open < 0 ? -1 : told.IndexOf(", ", open, StringComparison.Ordinal);
        return comma < 0 || end < comma || !told.AsSpan(comma, end - comma).Contains(" line ", StringComparison.Ordinal)
            ? told
            : told.Remove(comma, end - comma);
    }

    /// <summary>A finding as it is told where lines do not count.</summary>
    internal static string Told(Finding finding) => $"{finding.Message} [{finding.Check}]";

    /// <summary>Adds what stands in one of two lists and not in the other, each as often as it does.</summary>
    internal static void AddListed<T>(
        ImmutableArray<Change>.Builder changes,
        ChangeKind kind,
        IReadOnlyList<T> was,
        IReadOnlyList<T> now,
        Func<T, (string? Place, string Told)> tell
    )
    {
        var (told, tells) = (was.Select(tell).ToArray(), now.Select(tell).ToArray());
        if (told.AsSpan().SequenceEqual(tells))
        {
            return;
        }

        var before = told.CountBy(one => one).ToDictionary();
        var after = tells.CountBy(one => one).ToDictionary();
        foreach (var (one, count) in before.Where(pair => pair.Value > after.GetValueOrDefault(pair.Key)))
        {
            changes.AddRange(Enumerable.Repeat(Listed(one, isNew: false), count - after.GetValueOrDefault(one)));
        }

        foreach (var (one, count) in after.Where(pair => pair.Value > before.GetValueOrDefault(pair.Key)))
        {
            changes.AddRange(Enumerable.Repeat(Listed(one, isNew: true), count - before.GetValueOrDefault(one)));
        }

        Change Listed((string? Place, string Told) one, bool isNew) =>
            new(kind, string.Empty, isNew ? null : one.Told, isNew ? one.Told : null) { Place = one.Place };
    }

    /// <summary>Adds a change where there is one.</summary>
    internal static void Add(ImmutableArray<Change>.Builder changes, Change change)
    {
        if (change.Was != change.Now)
        {
            changes.Add(change);
        }
    }

    private static void AddByPlace(
        ImmutableArray<Change>.Builder changes,
        ChangeKind kind,
        Dictionary<string, string> was,
        Dictionary<string, string> now
    )
    {
        foreach (var place in was.Keys.Union(now.Keys, StringComparer.Ordinal))
        {
            Add(changes, new(kind, place, was.GetValueOrDefault(place), now.GetValueOrDefault(place)) { Place = place });
        }
    }

    private static string Told(JudgedBoard board) => BoardStates.Told(board.State, board.OverdueSince);

    private static string? Day(DateOnly? day) => day is { } known ? IsoDate.Text(known) : null;

    private static IEnumerable<LifeDates> DatesOf(JudgedBoard board) =>
        board.IsWorkedOn ? board.Lives.Select(life => life.Dates).OfType<LifeDates>() : [];

    private static IEnumerable<(string Of, DateOnly Earliest, DateOnly Latest)> Dates(JudgedBoard board) =>
        DatesOf(board).Select(life => (life.Reference, life.Earliest, life.Latest));

    private static Dictionary<string, string> Lives(JudgedBoard board) =>
        DatesOf(board)
            .DistinctBy(life => life.Reference, StringComparer.Ordinal)
            .ToDictionary(
                life => life.Reference,
                life => $"{IsoDate.Text(life.Earliest)} … {IsoDate.Text(life.Latest)}",
                StringComparer.Ordinal
            );

    private static Dictionary<string, string> Needs(JudgedBoard board) =>
        board
            .Needs.DistinctBy(need => need.Reference, StringComparer.Ordinal)
            .ToDictionary(need => need.Reference, need => need.What, StringComparer.Ordinal);
}
