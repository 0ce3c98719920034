using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Collections;
using Ohmstead.Disk;

namespace Ohmstead.Writing;

/// <summary>A file or folder of the collection that gets another path.</summary>
/// <param name="From">Its path from the root.</param>
/// <param name="To">The path it gets.</param>
internal sealed record PathMove(string From, string To);

/// <summary>Files and folders that carry the number of a board in their names, and how they are moved.</summary>
internal static class PhotographMoves
{
    private const string Usual = "photos";

    /// <summary>What moves when a board gets another number: the folders named after it, and the pictures whose names begin with its
    /// number. What was moved already, by a run that was stopped, is not moved again.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="number">The number as it is.</param>
    /// <param name="becomes">The number as it shall be.</param>
    /// <param name="pictures">The pictures that records name.</param>
    /// <param name="others">The numbers of the other boards: what begins with one of them is theirs.</param>
    public static IReadOnlyList<PathMove> Find(
        string root,
        string number,
        string becomes,
        IEnumerable<string> pictures,
        IReadOnlyCollection<string> others
    )
    {
        var moves = new SortedDictionary<string, string>(StringComparer.Ordinal) { [$"{Usual}/{number}/"] = $"{Usual}/{becomes}/" };
        var there = new FolderPictures(root);
        // What a record names may lie anywhere: only below the collection, and behind no link, is anything ours to move.
        foreach (
            var names in pictures
                .Where(picture => there.At(picture) is PictureState.Present or PictureState.Missing)
                .Select(picture => picture.Split('/'))
        )
        {
            if (Array.IndexOf(names, number, 0, names.Length - 1) is >= 0 and var at)
            {
                var above = string.Concat(names.Take(at).Select(name => name + "/"));
                moves[$"{above}{number}/"] = $"{above}{becomes}/";
            }
            else if (
                IsNamedAfter(names[^1], number) && !others.Any(other => other.Length > number.Length && IsNamedAfter(names[^1], other))
            )
            {
                var above = string.Concat(names.SkipLast(1).Select(name => name + "/"));
                moves[above + names[^1]] = above + becomes + names[^1][number.Length..];
            }
        }

        return
        [
            .. moves.Select(move => new PathMove(move.Key, move.Value)).Where(move => Exists(root, move.From) || Exists(root, move.To)),
        ];
    }

    /// <summary>Where each picture lies now, by a path at which it does not.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="moves">The moves.</param>
    /// <param name="pictures">The pictures by the paths that records name.</param>
    /// <param name="isBefore">True for pictures that a run that was stopped has moved, while records still name the former path; false for
    /// those that are still to be moved, by the path they get.</param>
    public static IReadOnlyDictionary<string, string?> Aliases(
        string root,
        IEnumerable<PathMove> moves,
        IEnumerable<string> pictures,
        bool isBefore
    )
    {
        PathMove[] known = [.. moves.Where(move => Exists(root, isBefore ? move.To : move.From))];
        return pictures
            .Select(picture => (Picture: picture, Move: known.FirstOrDefault(move => IsOf(picture, move.From))))
            .Where(pair => pair.Move is not null)
            .Select(pair => (pair.Picture, Then: pair.Move!.To + pair.Picture[pair.Move.From.Length..]))
            .ToDictionary(
                pair => isBefore ? pair.Picture : pair.Then,
                pair => (string?)(isBefore ? pair.Then : pair.Picture),
                StringComparer.Ordinal
            );
    }

    /// <summary>Whether a run that was stopped has made a move already.</summary>
    public static bool IsMade(string root, PathMove move) => !Exists(root, move.From) && Exists(root, move.To);

    /// <summary>Why a move cannot be made; null when it can.</summary>
    public static string? Fault(string root, PathMove move) =>
        !Exists(root, move.From) ? null
        : Exists(root, move.To) ? $"'{move.To.TrimEnd('/')}' is there already, beside '{move.From.TrimEnd('/')}'"
        : new FileInfo(Path.Combine(root, move.From.TrimEnd('/'))).LinkTarget is not null
            ? $"'{move.From.TrimEnd('/')}' is a link, which is not followed"
        : null;

    /// <summary>Moves one, where it is not where it shall be.</summary>
    /// <returns>Whether it was moved.</returns>
    /// <exception cref="IOException">It could not be.</exception>
    public static bool Move(string root, PathMove move)
    {
        if (!Exists(root, move.From))
        {
            return false;
        }

        var (from, to) = (move.From.TrimEnd('/'), move.To.TrimEnd('/'));
        using var folder = FolderPath.Below(root, Path.GetDirectoryName(from) ?? string.Empty, makes: false);
        if (!folder.RenameToNew(Path.GetFileName(from), folder, Path.GetFileName(to)))
        {
            throw new IOException($"there is '{to}' already");
        }

        folder.Sync();
        return true;
    }

    private static bool IsOf(string picture, string from) =>
        from.EndsWith('/') ? picture.StartsWith(from, StringComparison.Ordinal) : picture == from;

    private static bool IsNamedAfter(string name, string number) =>
        name.StartsWith(number, StringComparison.Ordinal) && (name.Length == number.Length || !char.IsLetterOrDigit(name[number.Length]));

    private static bool Exists(string root, string path) => (int)new FileInfo(Path.Combine(root, path.TrimEnd('/'))).Attributes != -1;
}
