using System.CommandLine;

namespace Ohmstead.Commands;

/// <summary>Names of files and folders, where a word of a command line means one.</summary>
internal static class NamedPaths
{
    /// <summary>What a word can name.</summary>
    internal enum Kind
    {
        /// <summary>Files and the folders on the way to them.</summary>
        Any,

        /// <summary>Folders alone.</summary>
        Folder,
    }

    /// <summary>What an argument or option names, by the word that help shows for its value; null where it names no file.</summary>
    public static Kind? Meant(Symbol symbol) =>
        (symbol is Option { HelpName: { } shown } ? shown : symbol.Name) switch
        {
            "FILE" or "PATH" => Kind.Any,
            "FOLDER" => Kind.Folder,
            _ => null,
        };

    /// <summary>The names that begin so, a slash behind those of folders. What cannot be listed gives none.</summary>
    /// <param name="typed">What was typed so far, with forward slashes; a tilde stands for the home folder.</param>
    /// <param name="kind">What is meant.</param>
    public static IEnumerable<string> Beginning(string typed, Kind kind)
    {
        var end = typed.LastIndexOf('/') + 1;
        var (folder, start) = (typed[..end], typed[end..]);
        var place =
            folder.Length == 0 ? "."
            : folder.StartsWith("~/", StringComparison.Ordinal)
                ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), folder[2..])
            : folder;
        try
        {
            return
            [
                .. new DirectoryInfo(place)
                    .EnumerateFileSystemInfos()
                    .Where(entry => entry.Name.StartsWith(start, StringComparison.Ordinal))
                    .Where(entry => start.Length > 0 || entry.Name[0] != '.')
                    .Where(entry => kind == Kind.Any || IsFolder(entry))
                    .Select(entry => folder + entry.Name + (IsFolder(entry) ? "/" : string.Empty))
                    .Order(StringComparer.Ordinal),
            ];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [];
        }
    }

    private static bool IsFolder(FileSystemInfo entry) => entry.Attributes.HasFlag(FileAttributes.Directory);
}
