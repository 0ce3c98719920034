using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Changes;
using Ohmstead.Output.Changes;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>What is told of two states, taken apart so that it can be held against two judgements.</summary>
internal static class ToldChanges
{
    public static string Lines(CollectionChanges changes)
    {
        using var text = new StringWriter { NewLine = "\n" };
        ChangesText.Write(text, changes);
        return text.ToString();
    }

    public static ImmutableSortedDictionary<string, string> States(CollectionChanges changes, Func<string, string>? nameOf = null) =>
        changes
            .Boards.Select(board => (board.Number, State: board.Changes.FirstOrDefault(change => change.Kind == ChangeKind.State)))
            .Where(pair => pair.State is not null)
            .ToImmutableSortedDictionary(
                pair => Name(pair.Number, nameOf),
                pair => $"{pair.State!.Was} -> {pair.State.Now}",
                StringComparer.Ordinal
            );

    public static string[] Boards(CollectionChanges changes, ChangeKind kind, Func<string, string>? nameOf = null) =>
        [
            .. changes
                .Boards.SelectMany(board =>
                    board
                        .Changes.Where(change => change.Kind == kind)
                        .Select(change => $"{Name(board.Number, nameOf)} {change.Of}: {change.Was} -> {change.Now}")
                )
                .Order(StringComparer.Ordinal),
        ];

    public static string[] Findings(CollectionChanges changes) =>
        [
            .. changes
                .Boards.SelectMany(board => board.Changes.Select(change => (board.Now, Change: change)))
                .Concat(changes.Shared.Select(change => ((string?)null, Change: change)))
                .Where(pair => pair.Change.Kind == ChangeKind.Finding)
                .Select(pair => $"{(pair.Change.Now is null ? "gone" : "new")} {pair.Change.Now ?? pair.Change.Was}")
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>How many must be bought otherwise.</summary>
    public static string[] ToBuy(CollectionChanges changes) =>
        [
            .. changes
                .Shared.Where(change => change.Kind == ChangeKind.Buying)
                .Select(change => (change.Of, Was: Count(change.Was), Now: Count(change.Now)))
                .Where(line => line.Was != line.Now)
                .Select(line => $"{line.Of}: {line.Was} -> {line.Now}")
                .Order(StringComparer.Ordinal),
        ];

    // "2 to buy of 3 needed, 1 in the drawer"
    private static int Count(string? told) => told is null ? 0 : int.Parse(told.Split(' ')[0], CultureInfo.InvariantCulture);

    /// <summary>All that differs.</summary>
    public static string[] Mirrored(CollectionChanges changes, Func<string, string>? nameOf = null) => Sorted(All(changes, nameOf));

    /// <summary>The same of the way back, with was and now in each other's place.</summary>
    public static string[] Turned(CollectionChanges changes, Func<string, string>? nameOf = null) =>
        Sorted(All(changes, nameOf).Select(one => (one.Board, one.Kind, one.Now, one.Was)));

    private static string[] Sorted(IEnumerable<(string? Board, ChangeKind Kind, string? Was, string? Now)> changes) =>
        [.. changes.Select(one => $"{one}").Order(StringComparer.Ordinal)];

    private static IEnumerable<(string? Board, ChangeKind Kind, string? Was, string? Now)> All(
        CollectionChanges changes,
        Func<string, string>? nameOf
    ) =>
        changes
            .Boards.SelectMany(board =>
                board.Changes.Select(change => ((string?)Name(board.Number, nameOf), change.Kind, change.Was, change.Now))
            )
            .Concat(changes.Shared.Select(change => ((string?)null, change.Kind, change.Was, change.Now)));

    private static string Name(string number, Func<string, string>? nameOf) => nameOf?.Invoke(number) ?? number;
}
