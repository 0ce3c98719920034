using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>The published program and the ordinary one, each told the same in a folder of its own.</summary>
internal static class SideBySide
{
    /// <summary>Runs a line of shell in which $ohmstead stands for the program in two copies of the demo, and holds everything against each
    /// other that comes of it.</summary>
    /// <param name="published">The published program.</param>
    /// <param name="line">The line.</param>
    /// <param name="prepare">What is done to each copy before.</param>
    /// <param name="typed">What stands in the variable $typed.</param>
    /// <returns>What both told and left behind.</returns>
    public static async Task<Outcome> AsOneAsync(
        PublishedProgram published,
        string line,
        Action<CollectionCopy>? prepare = null,
        string typed = ""
    )
    {
        var own = await OutcomeAsync(published.Path, line, prepare, typed);
        var ordinary = await OutcomeAsync(Child.Ordinary, line, prepare, typed);
        Assert.Equal(ordinary.Run, own.Run);
        Assert.Equal(ordinary.Files.Keys, own.Files.Keys);
        Assert.All(ordinary.Files, file =>
            Assert.True(
                file.Value.AsSpan().SequenceEqual(own.Files[file.Key]),
                $"{file.Key} is another file where the program was published, {PublishedKind.Words}"
            )
        );
        return own;
    }

    private static async Task<Outcome> OutcomeAsync(string program, string line, Action<CollectionCopy>? prepare, string typed)
    {
        using var copy = CollectionCopy.Make();
        prepare?.Invoke(copy);
        var told = await Child.ShellAsync(line, copy.Root, ("ohmstead", program), ("typed", typed));
        // The two folders are alike in everything but their names.
        var run = told with { Out = WithoutName(told.Out, copy), Error = WithoutName(told.Error, copy) };
        var files = Directory
            .EnumerateFiles(copy.Root, "*", SearchOption.AllDirectories)
            .ToDictionary(path => Path.GetRelativePath(copy.Root, path), File.ReadAllBytes, StringComparer.Ordinal);
        return new(run, new SortedDictionary<string, byte[]>(files, StringComparer.Ordinal));
    }

    private static string WithoutName(string text, CollectionCopy copy) => text.Replace(copy.Root, "FOLDER", StringComparison.Ordinal);
}
