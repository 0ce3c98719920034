using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>How a job ended.</summary>
internal enum JobEnd
{
    Skipped,
    Succeeded,
    Failed,
}

/// <summary>A job that was run: how each script ended, by the name of its step, and what was left in its folders.</summary>
/// <param name="Workspace">GITHUB_WORKSPACE.</param>
/// <param name="Temp">RUNNER_TEMP.</param>
internal sealed record JobRun(string Workspace, string Temp)
{
    public JobEnd End { get; set; }

    /// <summary>The scripts that were run, in order.</summary>
    public List<(string Name, Run Run)> Scripts { get; } = [];

    /// <summary>Every command line of the .NET program, with the folder it was given in, as in "base: dotnet publish …".</summary>
    public IReadOnlyList<string> Calls =>
        File.Exists(Path.Combine(Temp, "calls"))
            ?
            [
                .. File.ReadAllLines(Path.Combine(Temp, "calls"))
                    .Select(line =>
                        line.Replace(Workspace + "/", string.Empty, StringComparison.Ordinal)
                            .Replace(Workspace, ".", StringComparison.Ordinal)
                            .Replace(Temp, "TEMP", StringComparison.Ordinal)
                    ),
            ]
            : [];

    /// <summary>What was written for people to read, of all steps together.</summary>
    public string Summary { get; set; } = string.Empty;

    /// <summary>The files that were kept, each by the name it is kept under.</summary>
    public Dictionary<string, string> Kept { get; } = new(StringComparer.Ordinal);

    /// <summary>The folder that was handed on to be published, or null.</summary>
    public string? Artifact { get; set; }

    /// <summary>The address of what was published, or null.</summary>
    public string? Address { get; set; }

    public Run Script(string name) => Assert.Single(Scripts, script => script.Name == name).Run;
}
