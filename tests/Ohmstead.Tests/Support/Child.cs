using System.Diagnostics;

namespace Ohmstead.Tests.Support;

/// <summary>The built program as a process of its own, found beside the tests.</summary>
internal static class Child
{
    /// <summary>The day of every run, 2026-11-25, as SOURCE_DATE_EPOCH says it.</summary>
    public const string Day = "1795564800";

    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan LongestToTell = TimeSpan.FromMinutes(5);

    /// <summary>The command that starts the program.</summary>
    public static string Program { get; } = $"dotnet {Path.Combine(AppContext.BaseDirectory, "ohmstead.dll")}";

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

    /// <summary>Waits for a line that holds the words, and gives it; fails with what was told of an error when the program ends first.</summary>
    public static async Task<string> ToldAsync(Process process, string words)
    {
        using var patience = new CancellationTokenSource(LongestToTell);
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (line.Contains(words, StringComparison.Ordinal))
            {
                return line;
            }
        }

        throw new InvalidOperationException(
            $"the program ended and never told '{words}': {await process.StandardError.ReadToEndAsync(patience.Token)}"
        );
    }

    /// <summary>Waits for the end.</summary>
    public static async Task<Run> EndAsync(Process process)
    {
        using var patience = new CancellationTokenSource(Longest);
        var output = process.StandardOutput.ReadToEndAsync(patience.Token);
        var error = process.StandardError.ReadToEndAsync(patience.Token);
        try
        {
            await process.WaitForExitAsync(patience.Token);
            return new(process.ExitCode, await output, await error);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }
    }
}
