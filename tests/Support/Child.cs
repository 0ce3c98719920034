using System.Diagnostics;

namespace Ohmstead.Tests.Support;

/// <summary>The built program as a process of its own, found beside the tests.</summary>
internal static class Child
{
    /// <summary>The day of every run, 2026-11-25, as SOURCE_DATE_EPOCH says it.</summary>
    public const string Day = "1795564800";

    /// <summary>
    /// The command that starts the program: the one beside the tests, or where all are asked for the published one, which starts twenty
    /// times as fast; OHMSTEAD_PROGRAM may name another.
    /// </summary>
    public static string Program { get; } =
        Environment.GetEnvironmentVariable("OHMSTEAD_PROGRAM") is { Length: > 0 } named ? named
        : TestExtent.IsAll ? Published
        : Ordinary;

    /// <summary>The program as a person publishes it, there only where all tests are asked for.</summary>
    public static string Published =>
        ProjectFolder.At(Path.Combine("artifacts", "published", "program", OperatingSystem.IsWindows() ? "ohmstead.exe" : "ohmstead"));

    /// <summary>The command that starts the program beside the tests.</summary>
    public static string Ordinary => $"dotnet {Path.Combine(AppContext.BaseDirectory, "ohmstead.dll")}";

    // How long a busy machine takes is its own affair: whoever waits does so until the run is given up.
    private static CancellationToken GivenUp => TestContext.Current.CancellationToken;

    /// <summary>Runs a line of shell in which $ohmstead stands for the program, to its end.</summary>
    public static async Task<Run> ShellAsync(string line, string folder, params (string Name, string Value)[] environment)
    {
        using var process = Start(line, folder, environment);
        return await EndAsync(process);
    }

    /// <summary>Starts a line of shell; the caller ends it.</summary>
    public static Process Start(string line, string folder, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("sh", ["-c", line])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            WorkingDirectory = folder,
        };
        start.Environment["ohmstead"] = Program;
        start.Environment["SOURCE_DATE_EPOCH"] = Day;
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    /// <summary>Waits for a line that holds the words, and gives it; fails with what was told of an error when the program ends
    /// first.</summary>
    public static async Task<string> ToldAsync(Process process, string words)
    {
        try
        {
            while (await process.StandardOutput.ReadLineAsync(GivenUp) is { } line)
            {
                if (line.Contains(words, StringComparison.Ordinal))
                {
                    return line;
                }
            }
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }

        throw new InvalidOperationException(
            $"the program ended and never told '{words}': {await process.StandardError.ReadToEndAsync(GivenUp)}"
        );
    }

    /// <summary>Waits for the end.</summary>
    public static async Task<Run> EndAsync(Process process)
    {
        var output = process.StandardOutput.ReadToEndAsync(GivenUp);
        var error = process.StandardError.ReadToEndAsync(GivenUp);
        try
        {
            await process.WaitForExitAsync(GivenUp);
            return new(process.ExitCode, await output, await error);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }
    }
}
