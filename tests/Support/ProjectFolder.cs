namespace Ohmstead.Tests.Support;

/// <summary>The project's own folder, for tests of files that are not beside the tests.</summary>
internal static class ProjectFolder
{
    /// <summary>The folder.</summary>
    public static string Root { get; } = Find();

    /// <summary>The absolute path of a file or folder in it.</summary>
    public static string At(string path) => Path.Combine(Root, path);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("there is no Ohmstead.slnx above the tests");
    }
}
