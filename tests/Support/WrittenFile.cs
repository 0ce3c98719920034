namespace Ohmstead.Tests.Support;

/// <summary>A file of the project that the tests write from the code when OHMSTEAD_WRITE=1 says so.</summary>
internal static class WrittenFile
{
    // The tests that are running are those that write it.
    private static string Project => typeof(WrittenFile).Assembly.GetName().Name!;

    /// <summary>Fails when a file is not what the code gives, and tells how it is written anew.</summary>
    /// <param name="path">The file, from the root of the project.</param>
    /// <param name="current">What the code gives.</param>
    public static void IsCurrent(string path, string current)
    {
        var file = ProjectFolder.At(path);
        if (Environment.GetEnvironmentVariable("OHMSTEAD_WRITE") == "1")
        {
            File.WriteAllText(file, current);
        }

        Assert.True(
            File.Exists(file) && File.ReadAllText(file) == current,
            $"{file} is not current; write it with: OHMSTEAD_WRITE=1 dotnet run --project tests/{Project}"
        );
    }
}
