using Ohmstead.Writing;

namespace Ohmstead.Starting;

/// <summary>Writes files that are not there yet. What is there stays as it is, whatever it holds.</summary>
internal static class NewFiles
{
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

        RecordFile.Create(full, file.Text);
        if (file.IsProgram && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(full, File.GetUnixFileMode(full) | UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute);
        }

        return FileFate.Written;
    }

    private static bool IsSame(string full, string text) => new FileInfo(full) is { LinkTarget: null, Length: > 0 and < 1 << 20 } && File.ReadAllText(full) == text;
}
