using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Buying;

namespace Ohmstead.Assessment.Changes;

/// <summary>Tells which lines of the buying list differ between two states of a collection, and because of what: that kind of input
/// which alone gives the later line; where none does, all without which it would be another.</summary>
public static class BuyingComparer
{
    /// <summary>What differs, in the order of the parts' words.</summary>
    /// <param name="was">The earlier state with what is kept of all its boards.</param>
    /// <param name="now">The later state, likewise.</param>
    /// <param name="boards">What differs of each board.</param>
    /// <param name="shared">What differs in the files that boards share.</param>
    public static IEnumerable<Change> Compare(
        SideWithBoards was,
        SideWithBoards now,
        IReadOnlyList<BoardChanges> boards,
        IReadOnlyList<InputDifference> shared
    )
    {
        var (before, after) = (List(was, was, was.Side.Today), List(now, now, now.Side.Today));
        string[] names =
        [
            .. before
                .Keys.Union(after.Keys, StringComparer.Ordinal)
                .Where(name => Told(before, name) != Told(after, name))
                .Order(StringComparer.Ordinal),
        ];
        if (names.Length == 0)
        {
            yield break;
        }

        var stock = shared.Where(one => one.File == InputFile.Stock).ToArray();
        Mix[] mixes =
        [
            new(InputKind.Work, List(was, now, was.Side.Today), List(now, was, now.Side.Today)),
            new(InputKind.Stock, List(now, was, was.Side.Today), List(was, now, now.Side.Today)),
            new(InputKind.Day, List(was, was, now.Side.Today), List(now, now, was.Side.Today)),
        ];
        foreach (var name in names)
        {
            var told = Told(after, name);
            InputKind[] kinds = [.. mixes.Where(mix => Told(mix.Alone, name) == told).Select(mix => mix.Kind).Take(1)];
            if (kinds.Length == 0)
            {
                // None gives it alone: those count without which it would be another.
                kinds = [.. mixes.Where(mix => Told(mix.Without, name) != told).Select(mix => mix.Kind)];
            }

            var causes = kinds.Select(kind =>
                kind switch
                {
                    InputKind.Work => OfBoards(name, before.GetValueOrDefault(name), after.GetValueOrDefault(name), boards),
                    InputKind.Stock => new Cause([kind], [.. stock]),
                    _ => new Cause([kind], []),
                }
            );
            yield return new(ChangeKind.Buying, name, Told(before, name), told) { Cause = Joined(causes) };
        }
    }

    private static Dictionary<string, BuyingLine> List(SideWithBoards drawer, SideWithBoards needs, DateOnly today) =>
        BuyingList.Compute(drawer.Side.Workshop, needs.Boards, today).ToDictionary(line => line.What, StringComparer.Ordinal);

    private static string? Told(Dictionary<string, BuyingLine> list, string name)
    {
        if (!list.TryGetValue(name, out var line))
        {
            return null;
        }

        string?[] parts =
        [
            line.InDrawer > 0 ? Text($"{line.InDrawer} in the drawer") : null,
            line.OnOrder > 0 ? Text($"{line.OnOrder} on order") : null,
        ];
        var beside = string.Join(", ", parts.OfType<string>());
        return Text($"{line.ToBuy} to buy{(beside.Length > 0 ? $" of {line.Needed} needed, {beside}" : string.Empty)}");
    }

    // What the boards need otherwise, with what that follows from; else what they took, or wait for.
    private static Cause OfBoards(string name, BuyingLine? was, BuyingLine? now, IReadOnlyList<BoardChanges> boards)
    {
        Cause[] needs =
        [
            .. boards
                .SelectMany(board => board.Changes)
                .Where(change => change.Kind == ChangeKind.Need && (change.Was == name || change.Now == name))
                .Select(change => change.Cause),
        ];
        if (needs.Length > 0)
        {
            return Joined(needs);
        }

        var places = new[] { was, now }.OfType<BuyingLine>().SelectMany(line => line.For).Select(need => need.Board);
        var numbers = places.ToHashSet(StringComparer.Ordinal);
        return new(
            [InputKind.Work],
            [
                .. boards
                    .OrderByDescending(board => numbers.Contains(board.Number))
                    .SelectMany(board => board.Entries)
                    .Where(entry => entry.Kind == InputKind.Work),
            ]
        );
    }

    private static Cause Joined(IEnumerable<Cause> causes)
    {
        Cause[] all = [.. causes];
        return new([.. all.SelectMany(cause => cause.Kinds).Distinct().Order()], [.. all.SelectMany(cause => cause.Inputs).Distinct()]);
    }

    // The list of the earlier state with one kind new, and that of the later one with it as it was.
    private sealed record Mix(InputKind Kind, Dictionary<string, BuyingLine> Alone, Dictionary<string, BuyingLine> Without);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
