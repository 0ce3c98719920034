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
        // As the repository names them that either comes from; where neither does, any name will do.
        var isSha256 = new[] { was, now }.Any(side => side is { Known: not null, IsSha256: true });
        return (For(was, isSha256, workers), For(now, isSha256, workers));
    }

    /// <summary>The names of one state by path; a file that cannot be read has none.</summary>
    /// <param name="side">The state.</param>
    /// <param name="isSha256">True to name by SHA-256.</param>
    /// <param name="workers">How many workers there may be.</param>
    public static FrozenDictionary<string, string> For(ComparedSide side, bool isSha256, int workers)
    {
        string[] paths =
        [
            .. side.Folder.Boards,
            .. side.Folder.Designs,
            .. CollectionRun.SharedFiles.Where(name => side.Folder.Named(name) is not null),
        ];
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
        return Enumerable
            .Range(0, paths.Length)
            .Where(at => names[at] is not null)
            .DistinctBy(at => paths[at], StringComparer.Ordinal)
            .ToFrozenDictionary(at => paths[at], at => names[at]!, StringComparer.Ordinal);
    }

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
