using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Slips;

/// <summary>What came of a line that was typed into the collection of the slips.</summary>
/// <param name="Exit">The exit code.</param>
/// <param name="Told">What was told, line by line.</param>
/// <param name="Written">The lines that came into files, and behind a minus those that went.</param>
internal sealed record TypedRun(int Exit, IReadOnlyList<string> Told, IReadOnlyList<string> Written)
{
    private const string Day = "2026-06-01";
    private const char Mark = '\u0001';

    /// <summary>Runs a command line, or types a line at the bench.</summary>
    public static TypedRun Of(TypedSlip slip, string line)
    {
        using var copy = CollectionCopy.Empty();
        foreach (var (path, sound) in Slip.Collection)
        {
            copy.Write(path, sound);
        }

        var before = Files(copy.Root);
        var (exit, told) = slip.Bench is var (board, place)
            ? AtBench(copy.Root, board, place, line)
            : OfCommand(copy.Root, slip.Words(line));
        return new(exit, told, [.. Changes(before, Files(copy.Root))]);
    }

    // The folder and the day stand behind the name of the command, so that the end of the line stays as it was typed.
    private static (int Exit, IReadOnlyList<string> Told) OfCommand(string root, IReadOnlyList<string> words)
    {
        var command = CommandTree.Leaves.FirstOrDefault(leaf => words.Take(leaf.Path.Length).SequenceEqual(leaf.Path));
        var options = command.Command is null ? [] : CommandTree.Own(command.Command).Select(option => option.Name).ToArray();
        string[] more =
        [
            .. options.Contains("--in") && !words.Contains("--in") ? [$"--in={root}"] : Array.Empty<string>(),
            .. options.Contains("--as-of") && !words.Contains("--as-of") ? [$"--as-of={Day}"] : Array.Empty<string>(),
        ];
        var name = command.Path?.Length ?? 0;
        var typed = words.Select(word => word.Replace("{folder}", root, StringComparison.Ordinal)).ToArray();
        var run = Run.Of([.. typed.Take(name), .. more, .. typed.Skip(name)]);
        return (run.Exit, Lines(run.Error.Replace(root, "{folder}", StringComparison.Ordinal)));
    }

    private static (int Exit, IReadOnlyList<string> Told) AtBench(string root, string board, string place, string line)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var input = new MarkedLines(output, [place, line]);
        using var terminal = new Terminal(output, output, showsProgress: false, input);
        using var interruption = new Interruption();
        var exit = CommandLine.Run(["bench", board, "--in", root, "--as-of", Day, "--by", "RK"], terminal, interruption);
        var shown = output.ToString().Split(Mark);
        // What is asked at the place stands behind what is told, as it stood before the line.
        var (asked, after) = (shown[1].Split('\n'), shown[2].Split('\n'));
        var same = 0;
        while (same < Math.Min(asked.Length, after.Length) && asked[^(same + 1)] == after[^(same + 1)])
        {
            same++;
        }

        return (exit, after[..^same]);
    }

    private static string[] Lines(string text) => text.Length == 0 ? [] : text.TrimEnd('\n').Split('\n');

    private static Dictionary<string, string[]> Files(string root) =>
        Directory
            .EnumerateFiles(root, "*", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(root, file), File.ReadAllLines, StringComparer.Ordinal);

    private static IEnumerable<string> Changes(Dictionary<string, string[]> before, Dictionary<string, string[]> after) =>
        after
            .OrderBy(file => file.Key, StringComparer.Ordinal)
            .SelectMany(file => Changed(before.GetValueOrDefault(file.Key) ?? [], file.Value))
            .Concat(before.Keys.Except(after.Keys).Order(StringComparer.Ordinal).Select(gone => $"- {gone}"));

    // One place of a file changes at a time.
    private static IEnumerable<string> Changed(string[] before, string[] after)
    {
        var start = before.Zip(after).TakeWhile(pair => pair.First == pair.Second).Count();
        var end = before.Reverse().Zip(after.Reverse()).TakeWhile(pair => pair.First == pair.Second).Count();
        end = Math.Min(end, Math.Min(before.Length, after.Length) - start);
        return before[start..^end].Select(line => $"- {line.Trim()}").Concat(after[start..^end].Select(line => $"+ {line.Trim()}"));
    }

    /// <summary>Lines for a session, which mark in what is shown where each was read.</summary>
    private sealed class MarkedLines(StringWriter shown, IReadOnlyList<string> lines) : TextReader
    {
        private int next;

        public override string? ReadLine()
        {
            shown.Write(Mark);
            return next < lines.Count ? lines[next++] : null;
        }
    }
}
