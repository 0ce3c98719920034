using System.Globalization;
using DiffPlex;
using DiffPlex.Chunkers;
using DiffPlex.Model;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Writes what changed in a file as a unified diff, three lines around each change. Hidden characters are written out, line ends
/// too where they differ from LF.</summary>
internal static class UnifiedDiff
{
    private const int Around = 3;

    /// <summary>Writes the diff; nothing when the texts are equal.</summary>
    public static void Write(TextWriter output, string path, string before, string after)
    {
        var diff = new Differ().CreateDiffs(before, after, ignoreWhiteSpace: false, ignoreCase: false, new LineEndingsPreservingChunker());
        if (diff.DiffBlocks.Count == 0)
        {
            return;
        }

        output.WriteLine(Printable.Escape($"--- {path}"));
        output.WriteLine(Printable.Escape($"+++ {path}"));
        for (var (from, to) = (0, 1); from < diff.DiffBlocks.Count; (from, to) = (to, to + 1))
        {
            // Changes whose surroundings touch stand together.
            while (to < diff.DiffBlocks.Count && diff.DiffBlocks[to].DeleteStartA - EndOf(diff.DiffBlocks[to - 1]) <= 2 * Around)
            {
                to++;
            }

            Together(output, diff, [.. diff.DiffBlocks.Skip(from).Take(to - from)]);
        }
    }

    private static void Together(TextWriter output, DiffResult diff, DiffBlock[] blocks)
    {
        var start = Math.Max(blocks[0].DeleteStartA - Around, 0);
        var end = Math.Min(EndOf(blocks[^1]) + Around, diff.PiecesOld.Count);
        var newStart = blocks[0].InsertStartB - (blocks[0].DeleteStartA - start);
        var newCount = end - start + blocks.Sum(block => block.InsertCountB - block.DeleteCountA);
        output.WriteLine($"@@ -{Range(start, end - start)} +{Range(newStart, newCount)} @@");
        var at = start;
        foreach (var block in blocks)
        {
            Lines(output, ' ', diff.PiecesOld, at, block.DeleteStartA);
            Lines(output, '-', diff.PiecesOld, block.DeleteStartA, EndOf(block));
            Lines(output, '+', diff.PiecesNew, block.InsertStartB, block.InsertStartB + block.InsertCountB);
            at = EndOf(block);
        }

        Lines(output, ' ', diff.PiecesOld, at, end);
    }

    private static void Lines(TextWriter output, char sign, IReadOnlyList<string> lines, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            var isWhole = lines[i].EndsWith('\n');
            output.WriteLine(sign + Printable.Escape(isWhole ? lines[i][..^1] : lines[i]));
            if (!isWhole && !lines[i].EndsWith('\r'))
            {
                output.WriteLine("\\ No newline at end of file");
            }
        }
    }

    private static int EndOf(DiffBlock block) => block.DeleteStartA + block.DeleteCountA;

    // A range of no lines names the line before it.
    private static string Range(int start, int count) =>
        count == 1
            ? (start + 1).ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{(count == 0 ? start : start + 1)},{count}");
}
