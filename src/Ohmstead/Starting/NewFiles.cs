using Ohmstead.Disk;
using Ohmstead.Writing;

namespace Ohmstead.Starting;

/// <summary>Writes files that are not there yet. What is there stays as it is, whatever it holds.</summary>
internal static class NewFiles
{
    /// <summary>Looks whether a link or a file stands where a folder is needed, before anything is written.</summary>
    /// <param name="root">The folder they belong to, absolute; made where it is not there.</param>
    /// <param name="files">The files.</param>
    /// <exception cref="IOException">Something stands in the way.</exception>
    public static void LookAt(string root, IEnumerable<StartingFile> files)
    {
        using var folder = FolderPath.Open(root, null, makes: true);
        foreach (var path in files.Select(file => Path.GetDirectoryName(file.Path)!).Distinct(StringComparer.Ordinal))
        {
            LookAt(folder, path.Split('/', Path.DirectorySeparatorChar));
        }
    }

    /// <summary>Writes one file where there is none.</summary>
    /// <param name="root">The folder it belongs to, absolute.</param>
    /// <param name="file">The file.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static FileFate Write(string root, StartingFile file)
    {
        var full = Path.Combine(root, file.Path);
        if (File.Exists(full) || Directory.Exists(full) || new FileInfo(full).LinkTarget is not null)
        {
            return File.Exists(full) && IsSame(full, file.Text) ? FileFate.Same : FileFate.LeftAlone;
        }

        RecordFile.Create(root, file.Path, file.Text);
        if (file.IsProgram && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(
                full,
                File.GetUnixFileMode(full) | UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute
            );
        }

        return FileFate.Written;
    }

    private static void LookAt(Folder folder, ReadOnlySpan<string> names)
    {
        if (names is [{ Length: > 0 } name, .. var rest])
        {
            using var inside = folder.Find(name);
            if (inside is not null)
            {
                LookAt(inside, rest);
            }
        }
    }

    private static bool IsSame(string full, string text) =>
        new FileInfo(full) is { LinkTarget: null, Length: > 0 and < 1 << 20 } && File.ReadAllText(full) == text;
}
