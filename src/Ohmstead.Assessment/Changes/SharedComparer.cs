using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Changes;

/// <summary>A state of a collection with what is kept of its boards.</summary>
/// <param name="Side">The state.</param>
/// <param name="Boards">What is kept of the boards that may matter.</param>
public sealed record SideWithBoards(CollectionSide Side, IReadOnlyList<BoardSummary> Boards);

/// <summary>Tells what differs of what boards share: the drawer, the orders, what falls due of lots and instruments, and what was found
/// there and by comparing boards.</summary>
public static class SharedComparer
{
    /// <summary>What differs, in the order of the kinds.</summary>
    /// <param name="was">The earlier state.</param>
    /// <param name="now">The later state.</param>
    /// <param name="inputs">What differs in the files that boards share, and in the records of boards.</param>
    /// <param name="lots">The lots that all users of are known of; null for all.</param>
    public static ImmutableArray<Change> Compare(
        SideWithBoards was,
        SideWithBoards now,
        IReadOnlyList<InputDifference> inputs,
        IReadOnlySet<string>? lots
    )
    {
        var changes = ImmutableArray.CreateBuilder<Change>();
        AddByName(changes, ChangeKind.Drawer, Drawer(was, lots), Drawer(now, lots));
        AddByName(changes, ChangeKind.Order, Orders(was), Orders(now));
        AddByName(changes, ChangeKind.Due, Dues(was, lots), Dues(now, lots));
        BoardComparer.AddListed(changes, ChangeKind.Finding, Findings(was), Findings(now), finding => (null, Told(finding)));
        return [.. changes.Select(change => change with { Cause = CauseOf(change, inputs, was.Side.Today != now.Side.Today) })];
    }

    private static void AddByName(
        ImmutableArray<Change>.Builder changes,
        ChangeKind kind,
        Dictionary<string, string> was,
        Dictionary<string, string> now
    )
    {
        foreach (var name in was.Keys.Union(now.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var (before, after) = (was.GetValueOrDefault(name), now.GetValueOrDefault(name));
            if (before != after)
            {
                changes.Add(new(kind, name, before, after) { Place = name.Split(' ')[0] });
            }
        }
    }

    private static Dictionary<string, string> Drawer(SideWithBoards state, IReadOnlySet<string>? lots) =>
        DrawerList
            .List(state.Side.Workshop, BoardSummary.UseOfLots(state.Boards), state.Side.Today)
            .Where(line => lots is null || lots.Contains(line.Lot.Id.Value))
            .ToDictionary(line => line.Lot.Id.Value, Told, StringComparer.Ordinal);

    private static string Told(DrawerLine line)
    {
        var left =
            !line.IsHere ? "not here yet"
            : line.Left is { } count ? string.Create(CultureInfo.InvariantCulture, $"{count} left")
            : string.Create(CultureInfo.InvariantCulture, $"{line.Fitted} fitted");
        return string.Join("; ", line.ToDo.Prepend(left));
    }

    private static Dictionary<string, string> Orders(SideWithBoards state) =>
        state.Side.Workshop.Orders.ToDictionary(
            pair => pair.Key,
            pair => OrderStates.Words(OrderStates.For(pair.Value)),
            StringComparer.Ordinal
        );

    private static Dictionary<string, string> Dues(SideWithBoards state, IReadOnlySet<string>? lots) =>
        YearAhead
            .List(state.Side.Workshop, state.Boards, state.Side.Today, DateOnly.MaxValue)
            .Where(item => !DueKinds.IsOfBoard(item.Kind))
            .Where(item => item.Kind == DueKind.Calibration || lots is null || lots.Contains(item.Whom))
            .ToDictionary(item => $"{item.Whom} {DueKinds.Words(item.Kind)}", item => item.When, StringComparer.Ordinal);

    private static ImmutableArray<Finding> Findings(SideWithBoards state) =>
        state.Side.Together is { } together ? [.. state.Side.Found, .. together.Findings] : state.Side.Found;

    private static string Told(Finding finding) => $"{finding.Place.Path}: {BoardComparer.Told(finding)}";

    // What is about the thing itself; else what may matter to any of its kind; what is left was done on boards.
    private static Cause CauseOf(Change change, IReadOnlyList<InputDifference> inputs, bool isAnotherDay)
    {
        var near = change.Place is { } place ? inputs.Where(one => IsAbout(one, place)).ToArray() : [];
        if (change.Kind == ChangeKind.Finding)
        {
            var told = change.Now ?? change.Was!;
            near = [.. inputs.Where(one => told.StartsWith((one.Now ?? one.Was) + ":", StringComparison.Ordinal))];
        }

        return near.Length > 0 ? new([.. near.Select(one => one.Kind).Distinct().Order()], [.. near])
            : change.Kind == ChangeKind.Finding && inputs.Any(one => one.File == InputFile.Board)
                ? new([InputKind.Work], [.. inputs.Where(one => one is { File: InputFile.Board, Kind: InputKind.Work })])
            : isAnotherDay && change.Kind is not ChangeKind.Order ? new([InputKind.Day], [])
            : new([InputKind.Work], []);
    }

    // An entry about the thing itself, or work with pieces of it.
    private static bool IsAbout(InputDifference input, string place) =>
        input.Entry.Entry.Of.Split(' ').Contains(place, StringComparer.Ordinal)
            ? input.File != InputFile.Board
            : new[] { input.Entry.Was, input.Entry.Now }.Any(entry =>
                entry is { Kind: EntryKind.Work } && entry.Facts.Any(fact => fact.Key == "lot" && fact.Text == place)
            );
}
