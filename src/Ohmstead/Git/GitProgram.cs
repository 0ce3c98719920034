namespace Ohmstead.Git;

/// <summary>Where the git of the machine lies.</summary>
/// <remarks>
/// By its bare name the system would look beside this program and in the folder that is worked in before it looks in the path; and there a
/// collection of strangers may hold a file of that name.
/// </remarks>
internal static class GitProgram
{
    /// <summary>Its path, of the folders in PATH that are named from the root; null where none of them holds it.</summary>
    public static string? Find() =>
        (Environment.GetEnvironmentVariable("PATH") ?? string.Empty)
            .Split(Path.PathSeparator)
            .Where(Path.IsPathFullyQualified)
            .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "git.exe" : "git"))
            .FirstOrDefault(IsProgram);

    private static bool IsProgram(string path) =>
        File.Exists(path)
        && (
            OperatingSystem.IsWindows()
            || (File.GetUnixFileMode(path) & (UnixFileMode.UserExecute | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute))
                != UnixFileMode.None
        );
}
