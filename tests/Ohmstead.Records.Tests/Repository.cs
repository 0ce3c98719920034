namespace Ohmstead.Records.Tests;

/// <summary>The folder of the whole project.</summary>
internal static class Repository
{
    internal static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("the tests run outside the project's folder");
    }
}
