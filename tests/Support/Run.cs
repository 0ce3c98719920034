using Ohmstead.Running;

namespace Ohmstead.Tests.Support;

/// <summary>One command, run inside the tests: how it ended and what it printed.</summary>
internal sealed record Run(int Exit, string Out, string Error)
{
    /// <summary>Runs a command with nobody watching.</summary>
    public static Run Of(params string[] words) => Typing(string.Empty, words);

    /// <summary>Runs a command that is told something line by line.</summary>
    public static Run Typing(string typed, params string[] words)
    {
        using var input = new StringReader(typed);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, error, showsProgress: false, input);
        using var interruption = new Interruption();
        var exit = CommandLine.Run(words, terminal, interruption);
        return new(exit, output.ToString(), error.ToString());
    }
}
