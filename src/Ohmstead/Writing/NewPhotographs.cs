using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Electronics;
using Ohmstead.Pictures;

namespace Ohmstead.Writing;

/// <summary>A photograph that is to be taken into the collection.</summary>
/// <param name="Source">The file, as it was named.</param>
/// <param name="Bytes">What it holds.</param>
/// <param name="Path">The path that it gets, from the root of the collection.</param>
internal sealed record NewPhotograph(string Source, byte[] Bytes, string Path);

/// <summary>Takes photographs into a collection: looked at as a check does, named after board, day and a number, copied byte by byte. The
/// originals are only read, and what is there is never written over.</summary>
/// <param name="root">The collection's folder.</param>
internal sealed class NewPhotographs(string root)
{
    private const string Usual = "photos";

    /// <summary>Looks at files and gives them names.</summary>
    /// <param name="files">The files, in the order in which they are entered.</param>
    /// <param name="board">The number of the board.</param>
    /// <param name="day">The day.</param>
    /// <returns>The photographs, or why one of them cannot be taken.</returns>
    public Outcome<IReadOnlyList<NewPhotograph>> Read(IReadOnlyList<string> files, string board, DateOnly day)
    {
        var photographs = new List<NewPhotograph>();
        var next = NextNumber(board, day);
        foreach (var file in files)
        {
            if (!Bytes(file).Is(out var taken, out var why))
            {
                return Outcome<IReadOnlyList<NewPhotograph>>.Refused($"{file}: {why}");
            }

            if (photographs.FirstOrDefault(other => other.Bytes.AsSpan().SequenceEqual(taken.Bytes)) is { } same)
            {
                return Outcome<IReadOnlyList<NewPhotograph>>.Refused($"{file} is the same picture as {same.Source}");
            }

            if (Known(board, taken.Bytes) is { } known)
            {
                return Outcome<IReadOnlyList<NewPhotograph>>.Refused($"{file} is in the collection already: {known}");
            }

            var name = string.Create(CultureInfo.InvariantCulture, $"{IsoDate.Text(day)}-{next++}{taken.Extension}");
            photographs.Add(new(file, taken.Bytes, $"{Usual}/{board}/{name}"));
        }

        return Outcome<IReadOnlyList<NewPhotograph>>.From(photographs);
    }

    /// <summary>Copies them, all or none.</summary>
    /// <exception cref="IOException">One could not be written; those that were are gone again.</exception>
    public void Copy(IReadOnlyList<NewPhotograph> photographs)
    {
        var done = new List<NewPhotograph>();
        try
        {
            foreach (var photograph in photographs)
            {
                using var folder = FolderPath.Below(root, Path.GetDirectoryName(photograph.Path)!, makes: true);
                WholeFile.Write(folder, Path.GetFileName(photograph.Path), photograph.Bytes, FileFacts.None);
                done.Add(photograph);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            TakeBack(done);
            throw;
        }
    }

    /// <summary>Takes copies away that were just made, as far as they hold what was written.</summary>
    public void TakeBack(IReadOnlyList<NewPhotograph> photographs)
    {
        foreach (var photograph in photographs)
        {
            try
            {
                using var folder = FolderPath.Below(root, Path.GetDirectoryName(photograph.Path)!, makes: false);
                if (IsThere(photograph.Path, photograph.Bytes))
                {
                    folder.Delete(Path.GetFileName(photograph.Path));
                }
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // A picture that no record names hurts nobody; the failure before is the one that is told.
            }
        }
    }

    private static Outcome<(byte[] Bytes, string Extension)> Bytes(string file)
    {
        try
        {
            var info = new FileInfo(file);
            if (!info.Exists)
            {
                return Outcome<(byte[], string)>.Refused(Directory.Exists(file) ? "it is a folder" : "there is no such file");
            }

            if (info.Length > PictureLimits.Usual.Bytes)
            {
                return Outcome<(byte[], string)>.Refused(
                    FormattableString.Invariant($"it has {info.Length} bytes, at most {PictureLimits.Usual.Bytes} are opened")
                );
            }

            // A pipe or a device has no length and is never opened: it could keep the command waiting for ever.
            var bytes = info.Length == 0 ? [] : File.ReadAllBytes(file);
            using var stream = new MemoryStream(bytes, writable: false);
            return PictureLimits.Usual.Read(stream, file).Is(out _, out var why)
                ? Outcome<(byte[], string)>.From((bytes, Path.GetExtension(file).ToLowerInvariant()))
                : Outcome<(byte[], string)>.Refused(why);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Outcome<(byte[], string)>.Refused($"it cannot be read: {problem.Message}");
        }
    }

    // Beyond all that are there, so that a number that was once used for another picture of the day is not used again.
    private int NextNumber(string board, DateOnly day)
    {
        var start = IsoDate.Text(day) + "-";
        return NamesOf(board)
                .Where(name => name.StartsWith(start, StringComparison.Ordinal))
                .Select(name => Path.GetFileNameWithoutExtension(name)[start.Length..])
                .Select(number => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var known) ? known : 0)
                .Append(0)
                .Where(number => number < int.MaxValue - 1_000)
                .Max() + 1;
    }

    private string? Known(string board, byte[] bytes) =>
        NamesOf(board).Select(name => $"{Usual}/{board}/{name}").FirstOrDefault(path => IsThere(path, bytes));

    private bool IsThere(string path, byte[] bytes)
    {
        var info = new FileInfo(Path.Combine(root, path));
        return info is { Exists: true, LinkTarget: null }
            && info.Length == bytes.Length
            && File.ReadAllBytes(info.FullName).AsSpan().SequenceEqual(bytes);
    }

    private IEnumerable<string> NamesOf(string board)
    {
        var folder = Path.Combine(root, Usual, board);
        return Directory.Exists(folder) && CollectionFolder.MayBeListed(folder)
            ? Directory.EnumerateFileSystemEntries(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)
            : [];
    }
}
