using System.Text;
using Ohmstead.Running;

namespace Ohmstead.Fuzz.Targets;

/// <summary>Command lines, a word a line. Commands that look at files are asked for their help instead: an input must not write
/// anywhere.</summary>
internal static class CommandTarget
{
    private const int InternalFault = 4;

    private static readonly HashSet<string> WithoutFiles = new(
        ["marking", "calculate", "method", "explain", "completion"],
        StringComparer.Ordinal
    );

    public static void Try(byte[] input)
    {
        string[] words = [.. Encoding.UTF8.GetString(input).Split('\n')];
        if (words is [var first, ..] && !WithoutFiles.Contains(first) && !words.Contains("--help", StringComparer.Ordinal))
        {
            words = [.. words, "--help"];
        }

        using var typed = new StringReader(string.Empty);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, error, showsProgress: false, typed);
        using var interruption = new Interruption();
        var exit = CommandLine.Run(words, terminal, interruption);
        FaultFoundException.Unless(exit != InternalFault, $"exit {exit}: {error}");
        Bytes.AreHarmless(output.ToString(), "what is said");
        Bytes.AreHarmless(error.ToString(), "what is told");
    }
}
