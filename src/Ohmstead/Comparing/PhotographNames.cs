using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Collections;

namespace Ohmstead.Comparing;

/// <summary>Names the contents of photographs, so that two runs can tell whether they looked at the same.</summary>
/// <param name="root">The root of the collection.</param>
internal sealed class PhotographNames(string root)
{
    private readonly FolderPictures pictures = new(root);
    private readonly ConcurrentDictionary<string, string> known = new(StringComparer.Ordinal);

    /// <summary>The name of the content of a photograph; for one that is not there, what is there instead, and beside which
    /// files.</summary>
    /// <param name="path">Its path below the root, as a record writes it.</param>
    public string For(string path) => known.GetOrAdd(path, Name);

    private string Name(string path)
    {
        var state = pictures.At(path);
        if (state != PictureState.Present)
        {
            // A check proposes the nearest name of those that lie there.
            var beside = string.Join('/', pictures.NamesInFolder(path));
            return $"{state}: {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(beside)))}";
        }

        try
        {
            using var file = new FileStream(pictures.Handle(path), FileAccess.Read);
            return Convert.ToHexStringLower(SHA256.HashData(file));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return "unread";
        }
    }
}
