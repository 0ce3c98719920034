using System.Globalization;
using Ohmstead.Disk;
using Ohmstead.Records.Merging;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Merging;

/// <summary>One file of a collection that is merged: which kind it is by its path, what is told of it, and how it is written.</summary>
internal static class SettledFile
{
    /// <summary>The usual number of signs of a mark.</summary>
    public const int UsualSize = 7;

    /// <summary>The file as it is merged, or null where its path is that of no record.</summary>
    /// <param name="path">Its path from the top of the repository, wherever in it the collection lies.</param>
    /// <param name="size">How many signs a mark of a conflict has.</param>
    public static MergedFile? Of(string path, int size)
    {
        // Where the folder of the records begins, wherever in the repository the collection lies.
        var at = Math.Max(FolderIn(path, "/boards/"), FolderIn(path, "/designs/"));
        var within =
            at >= 0 ? path[at..]
            : path.EndsWith(".md", StringComparison.Ordinal) ? string.Empty
            : path[(path.LastIndexOf('/') + 1)..];
        return within.Length > 0 && RecordKind.Find(within) is { } kind
            ? new(path, kind.Form, kind.IsMeters ? null : kind.Shape, new YamlNodeReader(), kind.Findings, size)
            : null;
    }

    /// <summary>What is told of a merged file: a line with what came of it, and a line for each reason.</summary>
    public static IEnumerable<string> Told(MergedFile file, MergeOutcome outcome)
    {
        var visits =
            outcome.Visits.Length == 0
                ? "merged"
                : Invariant($"merged {Count(outcome.Visits.Length, "visit")} ({string.Join(", ", outcome.Visits)})");
        var how = outcome.IsByLines ? "merged line by line" : visits;
        var left = outcome.Conflicts == 0 ? string.Empty : Invariant($"; {Count(outcome.Conflicts, "conflict")} left");
        yield return Printable.Escape($"{file.Path}: {how}{left}");
        foreach (var reason in outcome.Reasons)
        {
            yield return "  " + Printable.Escape(reason);
        }
    }

    /// <summary>Reads a file.</summary>
    /// <exception cref="IOException">It cannot be read, or is too large.</exception>
    public static byte[] Read(string path)
    {
        var length = new FileInfo(path).Length;
        return length <= ReadingLimits.Usual.FileBytes
            ? File.ReadAllBytes(path)
            : throw new IOException(Invariant($"'{path}' has {length} bytes, at most {ReadingLimits.Usual.FileBytes} are read"));
    }

    /// <summary>Writes a file whole, with a rename as the last act.</summary>
    /// <param name="path">The file.</param>
    /// <param name="collection">The folder below which no link is followed; null for the one that is worked in.</param>
    /// <param name="bytes">What it is to hold.</param>
    /// <param name="beforeTheLast">What is done when the bytes are on the disk and only the rename is left.</param>
    /// <exception cref="IOException">It was not written.</exception>
    public static void Write(string path, string? collection, ReadOnlySpan<byte> bytes, Action beforeTheLast)
    {
        var full = Path.GetFullPath(path);
        using var folder = FolderPath.Open(Path.GetDirectoryName(full)!, collection, makes: false);
        var name = Path.GetFileName(full);
        var old = folder.Look(name);
        if (old.Kind is not (FileKind.File or FileKind.Missing))
        {
            throw new IOException($"'{path}' is no file, so it is not written");
        }

        var isInPlace = false;
        try
        {
            WholeFile.Wait(folder, name, bytes, old);
            beforeTheLast();
            WholeFile.Place(folder, name, old);
            isInPlace = true;
        }
        finally
        {
            if (!isInPlace)
            {
                WholeFile.Clear(folder, name);
            }
        }
    }

    private static int FolderIn(string path, string folder) => ("/" + path).LastIndexOf(folder, StringComparison.Ordinal);

    private static string Count(int count, string what) => Invariant($"{count} {what}{(count == 1 ? string.Empty : "s")}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
