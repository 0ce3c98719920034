using Ohmstead.Collections;
using Ohmstead.Records.Text;

namespace Ohmstead.Starting;

/// <summary>The number of a board that is there, and its file.</summary>
/// <param name="Number">The number.</param>
/// <param name="Path">The path from the root of the collection.</param>
internal sealed record KnownBoard(string Number, string Path);

/// <summary>The numbers that are taken, found without judging anything: only the first lines of each record are looked at.</summary>
internal static class KnownBoards
{
    private const int MostLines = 40;

    /// <summary>The boards of a collection. A record whose number is not among its first lines counts by the name of its file.</summary>
    /// <remarks>A folder that is a link stands among the records under its own name, to be told, and is none.</remarks>
    public static IReadOnlyList<KnownBoard> In(CollectionFolder files) =>
        [
            .. files
                .Boards.Where(path => path.EndsWith(".md", StringComparison.Ordinal))
                .Select(path => new KnownBoard(NumberIn(files.Full(path)) ?? Path.GetFileNameWithoutExtension(path), path)),
        ];

    /// <summary>Who has a number already, or one that can be taken for it: told as one line; null when it is free.</summary>
    public static string? Taken(string number, IReadOnlyList<KnownBoard> boards)
    {
        // The file of a board is named after it, so a name of a file is taken, too.
        var names = boards
            .SelectMany(board => new[] { board, board with { Number = Path.GetFileNameWithoutExtension(board.Path) } })
            .ToArray();
        return names.FirstOrDefault(board => board.Number == number) is { } same ? $"{number} is taken: {same.Path}"
            : names.FirstOrDefault(board => Folded(board.Number) == Folded(number)) is { } folded
                ? $"{number} is taken but for its capitals: {folded.Path}"
            : names.FirstOrDefault(board => Appearance.Skeleton(board.Number) == Appearance.Skeleton(number)) is { } alike
                ? $"{number} looks like {alike.Number}, {alike.Path}: it has {Appearance.Difference(number, alike.Number)}"
            : null;
    }

    /// <summary>The same, with the next number that is free.</summary>
    /// <param name="number">The number.</param>
    /// <param name="boards">The boards.</param>
    /// <param name="former">Numbers that boards had before, as far as they are known: none is given twice.</param>
    public static string? TakenAndFree(string number, IReadOnlyList<KnownBoard> boards, IReadOnlyList<string> former) =>
        Taken(number, boards) is not { } taken ? null
        : taken.StartsWith($"{number} is taken: ", StringComparison.Ordinal)
        && NextName.Behind(number, boards.Select(board => board.Number).Concat(former)) is { } free
            ? $"{taken}; free is {free}"
        : taken;

    private static string Folded(string number) => number.ToUpperInvariant().Normalize();

    private static string? NumberIn(string full)
    {
        if (new FileInfo(full) is not { Exists: true, LinkTarget: null, Length: > 0 })
        {
            return null;
        }

        foreach (var line in File.ReadLines(full).Take(MostLines).Where(line => line.StartsWith("board:", StringComparison.Ordinal)))
        {
            var value = line["board:".Length..].Trim();
            var remark = value.IndexOf(" #", StringComparison.Ordinal);
            return (remark < 0 ? value : value[..remark]).Trim().Trim('"', '\'');
        }

        return null;
    }
}
