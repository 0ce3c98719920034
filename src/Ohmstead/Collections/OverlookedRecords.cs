using System.Text;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Collections;

/// <summary>
/// Files that lie among the records, say that they are records, and are not read because of their name or place: a board that was saved as
/// text, a stock with another ending, a folder with a capital. Whoever wrote them believes that they count.
/// </summary>
internal sealed class OverlookedRecords(CollectionFolder folder)
{
    /// <summary>The check under which they are told.</summary>
    public const string Check = "record-overlooked";

    // A record says what it is at its beginning.
    private const int Beginning = 4 << 10;

    private static readonly string[] Folders = ["boards", "designs"];
    private static readonly string[] Endings = [".md", ".markdown", ".mdown", ".txt", ".yaml", ".yml", ".text", ""];

    /// <summary>All of them, in order of path.</summary>
    public IReadOnlyList<Finding> Find()
    {
        var found = new List<Finding>();
        if (!CollectionFolder.MayBeListed(folder.Root))
        {
            return found;
        }

        foreach (var entry in Entries(folder.Root))
        {
            var name = Path.GetFileName(entry);
            if (Directory.Exists(entry))
            {
                AddFolder(found, name);
            }
            else if (SharedName(name) is { } shared)
            {
                if (name != shared)
                {
                    found.Add(Told(name, $"the name of this file is not {shared}", $"rename it to {shared}"));
                }
            }
            else if (name is not ("README.md" or "DEVELOPERS.md") && !folder.Boards.Contains(name) && KindOf(entry) is { } kind)
            {
                found.Add(Told(name, $"a record of a {kind} lies in the folder {kind}s", $"move it to {kind}s/{NameOf(name)}"));
            }
        }

        foreach (var among in Folders)
        {
            AddAmong(found, among);
        }

        found.Sort((one, other) => string.CompareOrdinal(one.Place.Path, other.Place.Path));
        return found;
    }

    private void AddFolder(List<Finding> found, string name)
    {
        var meant = Folders.FirstOrDefault(known =>
            known != name
            && (known.Equals(name, StringComparison.OrdinalIgnoreCase) || known[..^1].Equals(name, StringComparison.OrdinalIgnoreCase))
        );
        // On a disk that knows no capitals both names are one folder.
        if (meant is null || folder.Boards.Any(path => path.StartsWith(name + "/", StringComparison.Ordinal)))
        {
            return;
        }

        foreach (var file in Entries(folder.Full(name)).Where(file => !Directory.Exists(file) && KindOf(file) is not null))
        {
            var path = $"{name}/{Path.GetFileName(file)}";
            found.Add(Told(path, $"the folder of {meant} is named {meant}", $"move it to {meant}/{NameOf(Path.GetFileName(file))}"));
        }
    }

    private void AddAmong(List<Finding> found, string among)
    {
        foreach (var path in folder.OtherFiles(among))
        {
            if (KindOf(folder.Full(path)) is not null)
            {
                var place = path[..(path.LastIndexOf('/') + 1)];
                found.Add(Told(path, "the name of a record ends with .md", $"rename it to {place}{NameOf(path[place.Length..])}"));
            }
        }
    }

    private static Finding Told(string path, string why, string next) =>
        new(Check, Severity.Error, new Spot(1, 1).In(path), $"this record is not read: {why}", next);

    private static string[] Entries(string folder)
    {
        try
        {
            return Directory.GetFileSystemEntries(folder);
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            // Told by whoever reads it; here nothing is known to be overlooked.
            return [];
        }
    }

    // stock.yml, Stock.yaml, stock.yaml.txt; a text about the stock is none.
    private static string? SharedName(string name) =>
        CollectionRun.SharedFiles.FirstOrDefault(shared =>
        {
            var stem = shared[..shared.IndexOf('.', StringComparison.Ordinal)];
            return name.StartsWith(stem, StringComparison.OrdinalIgnoreCase)
                && name[stem.Length..].ToUpperInvariant() is ".YAML" or ".YML" or ".YAML.TXT" or ".YML.TXT";
        });

    private static string NameOf(string name)
    {
        var ending = Endings.Where(ending => name.EndsWith(ending, StringComparison.OrdinalIgnoreCase)).MaxBy(ending => ending.Length)!;
        var stem = name[..^ending.Length];
        return (stem.EndsWith(".md", StringComparison.OrdinalIgnoreCase) ? stem[..^3] : stem) + ".md";
    }

    // What a file says that it is a record of, board or design; null for anything else.
    private static string? KindOf(string file)
    {
        if (!Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase))
        {
            return null;
        }

        try
        {
            var info = new FileInfo(file);
            // A link is not followed, and a pipe, which has no length, would keep whoever opens it waiting.
            if (info.LinkTarget is not null || (info.Attributes & FileAttributes.ReparsePoint) != FileAttributes.None || info.Length == 0)
            {
                return null;
            }

            using var handle = File.OpenHandle(file);
            var room = new byte[(int)Math.Min(Beginning, info.Length)];
            var text = Encoding.UTF8.GetString(room.AsSpan(0, RandomAccess.Read(handle, room, 0)));
            var lines = text.TrimStart('\uFEFF').Split('\n');
            return lines[0].TrimEnd() != "---" ? null
                : lines.Any(line => line.StartsWith("board:", StringComparison.Ordinal)) ? "board"
                : lines.Any(line => line.StartsWith("design:", StringComparison.Ordinal)) ? "design"
                : null;
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
