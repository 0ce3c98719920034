using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Changes;
using Ohmstead.Running;

namespace Ohmstead.Output.Changes;

/// <summary>
/// What differs, as Markdown for a pull request. Whatever comes out of a record stands in code, where nothing in it is a name that is
/// called, a number that is linked, a heading or a mark of a table.
/// </summary>
internal static class ChangesMarkdown
{
    /// <summary>How many bytes a summary may have: hosts drop one of more than 1 MiB as a whole.</summary>
    public const int Most = 900 << 10;

    // For what is said of lines that were left out, and for the end of a block.
    private const int Spare = 1 << 10;

    /// <summary>Writes it.</summary>
    /// <param name="target">Where to.</param>
    /// <param name="changes">What differs.</param>
    /// <param name="most">How many bytes it may have.</param>
    public static void Write(TextWriter target, CollectionChanges changes, int most = Most)
    {
        var text = new Bounded(most - Spare);
        text.Add($"**{ChangeLines.Counts(changes)}**\n\n");
        var states = changes.Boards.Where(board => board.Changes.Any(change => change.Kind == ChangeKind.State)).ToArray();
        if (states.Length > 0)
        {
            // A table is whole or says how much of it is missing.
            text.Add("| board | was | now | because of |\n|---|---|---|---|\n");
            var rows = states.TakeWhile(board => text.Add(Row(board), share: 2)).Count();
            text.Add(Left(states.Length - rows, "board", "boards") is { } left ? $"\n{left}\n\n" : "\n");
        }

        var lines = Lines(changes).Select(line => new string(' ', 2 * line.Depth) + Printable.Escape(line.Text) + "\n").ToArray();
        if (lines.Length > 0)
        {
            var fence = new string('`', Math.Max(3, lines.Max(LongestFence) + 1));
            text.Add($"<details><summary>what differs, line by line</summary>\n\n{fence}text\n");
            var told = lines.TakeWhile(line => text.Add(line)).Count();
            text.Force($"{fence}\n\n{(Left(lines.Length - told, "line", "lines") is { } left ? left + "\n\n" : string.Empty)}</details>\n");
        }

        target.Write(text.ToString());
    }

    private static string? Left(int count, string one, string many) =>
        count == 0 ? null
        : count == 1 ? $"and 1 more {one}, left out"
        : string.Create(CultureInfo.InvariantCulture, $"and {count} more {many}, left out");

    private static IEnumerable<ChangeLine> Lines(CollectionChanges changes) =>
        ChangeLines.Rewritten(changes).Concat(changes.Boards.SelectMany(ChangeLines.Board)).Concat(ChangeLines.Shared(changes));

    private static string Row(BoardChanges board)
    {
        var state = board.Changes.First(change => change.Kind == ChangeKind.State);
        return $"| {Code(board.Number)} | {Told(state.Was)} | {Told(state.Now)} | {state.Cause.Words} |\n";
    }

    // States are our own words; the number of a board is somebody's.
    private static string Told(string? state) => state ?? "not there";

    private static string Code(string text)
    {
        var shown = Printable.Escape(text).Replace("|", "\\|", StringComparison.Ordinal);
        var fence = new string('`', LongestFence(shown) + 1);
        return $"{fence} {shown} {fence}";
    }

    private static int LongestFence(string text)
    {
        var (longest, run) = (0, 0);
        foreach (var letter in text)
        {
            run = letter == '`' ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }

    // Text that grows no longer than it may.
    private sealed class Bounded(int most)
    {
        private readonly StringBuilder text = new();
        private int bytes;

        // A share of 2 leaves half of the room to what follows.
        public bool Add(string more, int share = 1)
        {
            var length = Encoding.UTF8.GetByteCount(more);
            if (bytes + length > most / share)
            {
                return false;
            }

            Force(more);
            return true;
        }

        public void Force(string more)
        {
            text.Append(more);
            bytes += Encoding.UTF8.GetByteCount(more);
        }

        public override string ToString() => text.ToString();
    }
}
