namespace Ohmstead.Browser.Tests;

/// <summary>Where things lie in the repository.</summary>
internal static class Repository
{
    /// <summary>The root folder, found upwards from the tests.</summary>
    public static string Root { get; } = Above(AppContext.BaseDirectory);

    /// <summary>The program as it was built together with these tests, in the same configuration.</summary>
    public static string Program { get; } =
        Path.Combine(
            Root,
            "artifacts",
            "bin",
            "Ohmstead",
            Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory)),
            "ohmstead.dll"
        );

    private static string Above(string start)
    {
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"there is no Ohmstead.slnx above {start}");
    }
}
