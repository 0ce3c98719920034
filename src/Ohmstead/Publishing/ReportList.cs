using System.Collections.Frozen;
using System.Text;
using Ohmstead.Disk;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>The list of its files that a report carries.</summary>
internal static class ReportList
{
    private const int Longest = 64 << 20;

    /// <summary>The files of a list; none where there is no list. A line that leads out of the folder is no file of it.</summary>
    /// <param name="folder">The folder of the report.</param>
    public static FrozenSet<string> Read(Folder folder)
    {
        using var file = folder.Read(ReportPlace.ListName);
        if (file is null)
        {
            return [];
        }

        using var bytes = new PageBuffer();
        FileBytes.Read(file, 0, (int)Math.Min(RandomAccess.GetLength(file), Longest), bytes);
        return Encoding
            .UTF8.GetString(bytes.Written)
            .Split('\n')
            .Select(line => line.TrimEnd('\r'))
            .Where(path => FolderTree.IsInside(path) && path != ReportPlace.ListName)
            .ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>A list of files, as it is written.</summary>
    public static byte[] Bytes(IEnumerable<string> files) =>
        Encoding.UTF8.GetBytes(string.Join('\n', files.Order(StringComparer.Ordinal)) + "\n");

    /// <summary>The folders that files lie in.</summary>
    public static HashSet<string> FoldersOf(IEnumerable<string> files)
    {
        var folders = new HashSet<string>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            for (var end = file.LastIndexOf('/'); end > 0 && folders.Add(file[..end]); end = file.LastIndexOf('/', end - 1)) { }
        }

        return folders;
    }
}
