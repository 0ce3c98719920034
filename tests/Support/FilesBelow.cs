using System.Collections.Immutable;
using System.Security.Cryptography;

namespace Ohmstead.Tests.Support;

/// <summary>All that lies below a folder, to be compared before and after; what is below a link belongs to somebody else.</summary>
internal static class FilesBelow
{
    /// <summary>Each by its path: what is in a file and when it was written, where a link leads, or that it is a folder.</summary>
    /// <param name="root">The folder.</param>
    public static ImmutableSortedDictionary<string, string> Of(string root) =>
        Directory
            .EnumerateFileSystemEntries(
                root,
                "*",
                new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }
            )
            .Where(path => !IsBelowLink(root, path))
            .ToImmutableSortedDictionary(
                path => Path.GetRelativePath(root, path),
                path =>
                    new FileInfo(path).LinkTarget is { } target ? "-> " + target
                    : Directory.Exists(path) ? "a folder"
                    : $"{File.GetLastWriteTimeUtc(path):O} " + $"{Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path)))}",
                StringComparer.Ordinal
            );

    private static bool IsBelowLink(string root, string path)
    {
        for (var above = Path.GetDirectoryName(path)!; above.Length > root.Length; above = Path.GetDirectoryName(above)!)
        {
            if (new DirectoryInfo(above).LinkTarget is not null)
            {
                return true;
            }
        }

        return false;
    }
}
