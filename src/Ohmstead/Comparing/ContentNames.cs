using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text;
using Ohmstead.Collections;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;

namespace Ohmstead.Comparing;

/// <summary>Names contents as Git does, so that equal bytes have equal names whether they lie in a folder or in a revision.</summary>
internal static class ContentNames
{
    /// <summary>The names of both states by path, of one kind; a file that cannot be read has none.</summary>
    /// <param name="was">The earlier state.</param>
    /// <param name="now">The later one.</param>
    /// <param name="workers">How many workers there may be.</param>
    public static (FrozenDictionary<string, string> Was, FrozenDictionary<string, string> Now) Of(
        ComparedSide was,
        ComparedSide now,
        int workers
    )
    {
        if (was.Known is null && now.Known is null)
        {
            return OfFolders(was, now, workers);
        }

        // As the repository names them that either comes from.
        var isSha256 = new[] { was, now }.Any(side => side is { Known: not null, IsSha256: true });
        return (For(was, isSha256, workers), For(now, isSha256, workers));
    }

    // Where no repository names them, any name will do that is the same for equal bytes: what lies at one path in both is compared byte by
    // byte, and only what lies in one alone is named by its contents, since it may be a file that was moved.
    private static (FrozenDictionary<string, string> Was, FrozenDictionary<string, string> Now) OfFolders(
        ComparedSide was,
        ComparedSide now,
        int workers
    )
    {
        string[] paths = [.. PathsOf(was).Union(PathsOf(now), StringComparer.Ordinal)];
        var (before, after) = (PathsOf(was).ToFrozenSet(StringComparer.Ordinal), PathsOf(now).ToFrozenSet(StringComparer.Ordinal));
        var names = new (string? Was, string? Now)[paths.Length];
        SideBySide.Run(paths.Length, workers, _ =>
        {
            var (earlier, later) = (was.Folder.Files.ForWorker(ReadingLimits.Usual), now.Folder.Files.ForWorker(ReadingLimits.Usual));
            return at =>
            {
                var path = paths[at];
                var (isBefore, isAfter) = (before.Contains(path), after.Contains(path));
                var (old, cannotOld) = isBefore ? earlier.Open(path) : default;
                var (bytes, cannot) = isAfter ? later.Open(path) : default;
                names[at] = (
                    !isBefore || cannotOld is not null ? null
                    : isAfter ? $"={path}"
                    : Name(old.Span, isSha256: false),
                    !isAfter || cannot is not null ? null
                    : !isBefore ? Name(bytes.Span, isSha256: false)
                    : old.Span.SequenceEqual(bytes.Span) ? $"={path}"
                    : $"!{path}"
                );
            };
        });
        return (Frozen(paths, [.. names.Select(name => name.Was)]), Frozen(paths, [.. names.Select(name => name.Now)]));
    }

    /// <summary>The names of one state by path; a file that cannot be read has none.</summary>
    /// <param name="side">The state.</param>
    /// <param name="isSha256">True to name by SHA-256.</param>
    /// <param name="workers">How many workers there may be.</param>
    public static FrozenDictionary<string, string> For(ComparedSide side, bool isSha256, int workers)
    {
        var paths = PathsOf(side);
        if (side.Known is { } known && side.IsSha256 == isSha256)
        {
            return paths
                .Where(known.ContainsKey)
                .Distinct(StringComparer.Ordinal)
                .ToFrozenDictionary(path => path, path => known[path], StringComparer.Ordinal);
        }

        var names = new string?[paths.Length];
        SideBySide.Run(paths.Length, workers, _ =>
        {
            var files = side.Folder.Files.ForWorker(ReadingLimits.Usual);
            return at => names[at] = files.Open(paths[at]) is (var bytes, null) ? Name(bytes.Span, isSha256) : null;
        });
        return Frozen(paths, names);
    }

    private static string[] PathsOf(ComparedSide side) =>
        [.. side.Folder.Boards, .. side.Folder.Designs, .. CollectionRun.SharedFiles.Where(name => side.Folder.Named(name) is not null)];

    private static FrozenDictionary<string, string> Frozen(string[] paths, string?[] names) =>
        Enumerable
            .Range(0, paths.Length)
            .Where(at => names[at] is not null)
            .DistinctBy(at => paths[at], StringComparer.Ordinal)
            .ToFrozenDictionary(at => paths[at], at => names[at]!, StringComparer.Ordinal);

#pragma warning disable CA5350, CA1308 // Git names contents so; nothing here is kept safe by it, and it writes small letters.
    private static string Name(ReadOnlySpan<byte> bytes, bool isSha256)
    {
        using var hash = IncrementalHash.CreateHash(isSha256 ? HashAlgorithmName.SHA256 : HashAlgorithmName.SHA1);
        hash.AppendData(
            Encoding.ASCII.GetBytes(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"blob {bytes.Length}\0"))
        );
        hash.AppendData(bytes);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
#pragma warning restore CA5350, CA1308
}
