using System.Diagnostics;
using System.Text;

namespace Ohmstead.Browser.Tests;

/// <summary>What a command printed, both streams in order of arrival, and how it ended.</summary>
internal sealed record Command(string Line, int ExitCode, string Output)
{
    public static async Task<Command> RunAsync(
        string program,
        IReadOnlyList<string> arguments,
        IReadOnlyDictionary<string, string>? environment = null,
        string? folder = null
    )
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? string.Empty,
        };
        foreach (var (name, value) in environment ?? new Dictionary<string, string>())
        {
            start.Environment[name] = value;
        }

        var output = new StringBuilder();
        void Keep(string? line)
        {
            lock (output)
            {
                output.AppendLine(line);
            }
        }

        using var process = new Process { StartInfo = start };
        process.OutputDataReceived += (_, data) => Keep(data.Data);
        process.ErrorDataReceived += (_, data) => Keep(data.Data);
        process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        await process.WaitForExitAsync();
        return new($"{program} {string.Join(' ', arguments)}", process.ExitCode, output.ToString());
    }
}
