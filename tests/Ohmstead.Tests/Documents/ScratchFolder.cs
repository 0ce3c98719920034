using Ohmstead.Merging;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Documents;

/// <summary>Tests that type commands where a person would, in a folder with <c>records/</c> in it: the folder is that of the whole
/// process.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class InAFolder
{
    /// <summary>What the tests name.</summary>
    public const string Name = "in a folder";
}

/// <summary>A folder with a copy of the demo in <c>records/</c>, and the process in it, on a day that never changes.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private const string Today = "SOURCE_DATE_EPOCH";

    private readonly CollectionCopy folder = CollectionCopy.Empty();
    private readonly string before = Environment.CurrentDirectory;
    private readonly string? day = Environment.GetEnvironmentVariable(Today);

    /// <summary>Makes it.</summary>
    public ScratchFolder()
    {
        CollectionCopy.Put(folder.At("records"));
        Environment.CurrentDirectory = folder.Root;
        Environment.SetEnvironmentVariable(Today, Child.Day);
    }

    /// <summary>Runs a command; what it prints and what it complains of come together, as on a terminal.</summary>
    public Run Type(IReadOnlyList<string> words, string typed = "")
    {
        // Each command starts here, wherever the one before it went.
        Environment.CurrentDirectory = folder.Root;
        if (NeedsRepository(words) && !Directory.Exists(folder.At(".git")))
        {
            BeginRepository();
        }

        using var input = new StringReader(typed);
        using var screen = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(screen, screen, showsProgress: false, input);
        using var interruption = new Interruption();
        return new(CommandLine.Run(words, terminal, interruption), screen.ToString(), string.Empty);
    }

    /// <summary>Writes a file.</summary>
    public void Write(string path, string text) => folder.Write(path, text);

    /// <summary>Changes words of a file that holds them once.</summary>
    public void Replace(string path, string old, string @new)
    {
        var text = folder.Read(path);
        Assert.Equal(2, text.Split(old).Length);
        folder.Write(path, text.Replace(old, @new, StringComparison.Ordinal));
    }

    private static bool NeedsRepository(IReadOnlyList<string> words) =>
        words is ["settle" or "changes" or "history", ..] || words.Any(word => word is "--since" or "--known" or "--history");

    // The demo has none of its own: what merges and compares records needs one, with the lines that a new collection begins with.
    private void BeginRepository()
    {
        folder.Write("records/.gitattributes", string.Join('\n', DriverSetUp.Attributes) + "\n");
        using var git = ScratchRepository.In(folder.Root);
        git.Git("init", "--quiet", "--initial-branch=main");
        git.Commit("as it was");
        git.Git("tag", "v1");
        git.Git("tag", "v2");
        // A copy that somebody kept, beside it.
        Directory.CreateDirectory(folder.At("old-copy"));
        CollectionCopy.Put(folder.At("old-copy"));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Environment.CurrentDirectory = before;
        Environment.SetEnvironmentVariable(Today, day);
        folder.Dispose();
    }
}
