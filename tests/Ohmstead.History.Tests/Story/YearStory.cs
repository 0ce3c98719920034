using System.Globalization;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Story;

/// <summary>A year of one collection in a repository of its own: each step is typed at a pseudo terminal on its day, and committed; what
/// the commit holds is what the step said.</summary>
internal sealed class YearStory : IDisposable
{
    private readonly ScratchRepository repository = ScratchRepository.Empty();
    private readonly CollectionCopy desk = CollectionCopy.Empty();

    /// <summary>The folder beside the repository, with old tables and pictures.</summary>
    public CollectionCopy Desk => desk;

    /// <summary>The text of a record.</summary>
    public string Read(string path) => repository.Read(path);

    /// <summary>Types the command that begins the collection; beside the records there is what editors and Git need.</summary>
    /// <param name="day">The day on which it is done.</param>
    /// <param name="line">The command behind the name of the program.</param>
    /// <param name="records">The records that it writes.</param>
    public async Task BeginAsync(string day, string line, string[] records)
    {
        await RunAsync(day, $"exec $ohmstead {line}", []);
        Committed(line);
        var files = repository.Git("ls-files").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(records, files.Where(file => file[0] != '.' && !file.StartsWith("schema/", StringComparison.Ordinal)));
        IsSound(day);
    }

    /// <summary>Types a command, and at what it asks the keys given; gives all that was shown.</summary>
    /// <param name="day">The day on which it is done.</param>
    /// <param name="line">The command behind the name of the program.</param>
    /// <param name="facts">The lines that its commit holds, file by file: + for those that came, - for those that went.</param>
    /// <param name="typed">What is waited for, and then typed.</param>
    public Task<string> StepAsync(string day, string line, string facts, params (string Shown, string Keys)[] typed) =>
        ShellAsync(day, $"exec $ohmstead {line}", facts, typed);

    /// <summary>Types a line of shell.</summary>
    public async Task<string> ShellAsync(string day, string line, string facts, params (string Shown, string Keys)[] typed)
    {
        var shown = await RunAsync(day, line, typed);
        Assert.Equal(facts, Committed(line));
        IsSound(day);
        return shown;
    }

    private async Task<string> RunAsync(string day, string line, (string Shown, string Keys)[] typed)
    {
        using var terminal = PseudoTerminal.Open();
        using var run = terminal.Start(
            line,
            repository.Root,
            ("SOURCE_DATE_EPOCH", SecondsOf(day)),
            ("desk", desk.Root),
            ("XDG_STATE_HOME", desk.Root)
        );
        foreach (var (shown, keys) in typed)
        {
            await terminal.UntilAsync(shown);
            terminal.Type(keys);
        }

        await terminal.EndAsync();
        var exit = (await Child.EndAsync(run)).Exit;
        Assert.True(exit == 0, $"{line} ended with {exit}:\n{terminal.Shown.Replace('\e', '^')}");
        Assert.True(terminal.IsAsItWas());
        return terminal.Shown;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        repository.Dispose();
        desk.Dispose();
    }

    // What the commit of a step holds; nothing where the step wrote nothing that Git keeps.
    private string Committed(string message)
    {
        repository.Git("add", "--all");
        if (repository.Git("status", "--porcelain").Length == 0)
        {
            return string.Empty;
        }

        repository.Git("commit", "--quiet", "--message", message);
        var facts = repository
            .Git("show", "--unified=0", "--format=", "--no-color", "--find-renames")
            .Split('\n')
            .Select(line =>
                line.StartsWith("+++ ", StringComparison.Ordinal) ? line["+++ b/".Length..]
                : line.StartsWith("rename ", StringComparison.Ordinal) ? line
                : line.StartsWith("Binary files ", StringComparison.Ordinal)
                    ? "binary " + line.Split(" and b/")[1].Replace(" differ", string.Empty, StringComparison.Ordinal)
                : line is ['-', '-', '-', ..] ? string.Empty
                : line is ['+' or '-', ..] ? $"{line[0]} {line[1..]}"
                : string.Empty
            )
            .Where(line => line.Length > 0);
        return string.Join('\n', facts);
    }

    // A year that is kept by commands alone never stands wrong.
    private void IsSound(string day)
    {
        var check = Run.Of("check", repository.Root, "--as-of", day);
        Assert.True(check.Exit == 0, check.Out + check.Error);
        Assert.Contains("; 0 errors, ", check.Out, StringComparison.Ordinal);
    }

    private static string SecondsOf(string day) =>
        new DateTimeOffset(DateTime.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture), TimeSpan.Zero)
            .ToUnixTimeSeconds()
            .ToString(CultureInfo.InvariantCulture);
}
