using System.Collections.Frozen;
using Ohmstead.Collections;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Comparing;

/// <summary>The record of one board in two states.</summary>
/// <param name="Was">The path of the earlier record; null for a new board.</param>
/// <param name="Now">The path of the later record; null for a board that is gone.</param>
/// <param name="IsSame">True where both hold the same bytes.</param>
internal sealed record BoardPair(string? Was, string? Now, bool IsSame);

/// <summary>Pairs the records of boards: by their path where that is the same, then by their bytes, then by the number that they
/// say. A file that was renamed is the same board.</summary>
internal static class BoardPairs
{
    /// <summary>The pairs, in order of the later path and those that are gone behind.</summary>
    /// <param name="was">The names of the earlier contents, by path.</param>
    /// <param name="now">The names of the later ones.</param>
    /// <param name="numbers">The number that a record says, and those that it had before; asked only where paths do not tell.</param>
    public static IReadOnlyList<BoardPair> Find(
        (IReadOnlyList<string> Paths, IReadOnlyDictionary<string, string> Names) was,
        (IReadOnlyList<string> Paths, IReadOnlyDictionary<string, string> Names) now,
        Func<string, bool, IReadOnlyList<string>> numbers
    )
    {
        var (before, after) = (was.Paths.ToFrozenSet(StringComparer.Ordinal), now.Paths.ToFrozenSet(StringComparer.Ordinal));
        var gone = was.Paths.Where(path => !after.Contains(path)).ToList();
        var added = now.Paths.Where(path => !before.Contains(path)).ToList();
        var renamed = new Dictionary<string, string>(StringComparer.Ordinal);
        Match(gone, added, renamed, path => One(was.Names.GetValueOrDefault(path)), path => One(now.Names.GetValueOrDefault(path)));
        Match(gone, added, renamed, path => numbers(path, true), path => numbers(path, false));

        var pairs = new List<BoardPair>(now.Paths.Count + gone.Count);
        foreach (var path in now.Paths)
        {
            var earlier = before.Contains(path) ? path : renamed.GetValueOrDefault(path);
            pairs.Add(
                new(earlier, path, earlier is not null && IsSame(was.Names.GetValueOrDefault(earlier), now.Names.GetValueOrDefault(path)))
            );
        }

        pairs.AddRange(gone.Select(path => new BoardPair(path, null, false)));
        return pairs;
    }

    /// <summary>The number that a record says and those that it had before; none where it cannot be read.</summary>
    public static IReadOnlyList<string> NumbersIn(FileReader reader, string path) =>
        FileBinding.Board(path, reader.Read(path, FileForm.Markdown)).File is { } board
            ? [board.Id.Value, .. board.Formerly.Select(former => former.Number.Value)]
            : [];

    private static bool IsSame(string? one, string? other) => one is not null && one == other;

    private static string[] One(string? name) => name is null ? [] : [name];

    private static void Match(
        List<string> gone,
        List<string> added,
        Dictionary<string, string> renamed,
        Func<string, IReadOnlyList<string>> before,
        Func<string, IReadOnlyList<string>> after
    )
    {
        if (gone.Count == 0 || added.Count == 0)
        {
            return;
        }

        var open = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in gone)
        {
            foreach (var name in before(path))
            {
                open.TryAdd(name, path);
            }
        }

        foreach (var path in added.ToArray())
        {
            var match = after(path)
                .Select(name => open.GetValueOrDefault(name))
                .FirstOrDefault(found => found is not null && gone.Contains(found));
            if (match is not null)
            {
                renamed[path] = match;
                gone.Remove(match);
                added.Remove(path);
            }
        }
    }
}
