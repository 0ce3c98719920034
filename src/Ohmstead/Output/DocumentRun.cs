using System.Globalization;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>A run that was asked for JSON. What it prints is held until it has ended, so that one whole document comes out whatever
/// happens.</summary>
/// <remarks>
/// Where a run comes to nothing, the document says why, in the words that stand on the error stream. Where the output takes nothing,
/// because a disk is full or the stream is closed, the document goes to the error stream in one line: that is the only place left for it.
/// </remarks>
/// <param name="command">The first word of the command line.</param>
/// <param name="terminal">Where it is printed.</param>
internal sealed class DocumentRun(string command, Terminal terminal)
{
    /// <summary>Whether a command line asks for JSON.</summary>
    public static bool IsAsked(IReadOnlyList<string> words) =>
        words.Any(word => word is "--json" or "--form=json" or "--form:json")
        || words.Zip(words.Skip(1)).Any(pair => pair is ("--form", "json"));

    /// <summary>Runs.</summary>
    /// <param name="run">The run, given the terminal to print on.</param>
    /// <returns>The exit code.</returns>
    public int Run(Func<Terminal, int> run)
    {
        using var held = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using var told = new OverheardWriter(terminal.Error);
#pragma warning disable CA2000 // It owns nothing: the streams behind it are closed by those who opened them.
        var own = new Terminal(held, told, terminal.ShowsProgress, terminal.In);
#pragma warning restore CA2000
        var (exit, isCut) = Guarded.Run(told, () => run(own));
        var text = held.ToString();
        if (isCut || (exit >= ExitCode.Usage && !text.StartsWith('{')))
        {
            // Help, or the beginning of a document, is no document.
            text = Problem(told.Heard, exit, isOneLine: false);
        }

        using var lost = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var (end, isLost) = Guarded.Run(lost, () =>
        {
            terminal.Out.Write(text);
            terminal.Out.Flush();
            return exit;
        });
        if (isLost)
        {
            Guarded.Tell(terminal.Error, Problem(lost.ToString(), end, isOneLine: true).TrimEnd('\n'));
        }

        return end;
    }

    private string Problem(string told, int exit, bool isOneLine)
    {
        // Progress is written over itself on one line; what counts is what stands there last.
        var problem = string.Join(
            "; ",
            told.Split('\n').Select(line => line[(line.LastIndexOf('\r') + 1)..].Trim()).Where(line => line.Length > 0)
        );
        return command == "check" ? JsonFindings.Problem(problem, exit, isOneLine) : JsonProblem.Text(problem, exit, isOneLine);
    }
}
