namespace Ohmstead.Report.Markdown;

/// <summary>Estimates from the characters alone how much work a text would make, so that a hostile one is refused before any is done.</summary>
/// <remarks>
/// Laying out a paragraph can take time that grows with the square of its link and emphasis marks, with its backtick runs times its
/// length, and with the rows times the columns of a table. The figures of the limits are measured, common practice has none:
/// a text at a limit takes a few tenths of a second, a hand-written one stays below a hundredth of any of them.
/// </remarks>
internal sealed class StoryWork
{
    private const int LongestText = 2 << 20;
    private const int DeepestQuote = 100;
    private const int DeepestIndent = 250;
    private const long MostMarkPairs = 100_000_000;
    private const long MostBacktickSteps = 1_000_000_000;
    private const long MostCells = 100_000;

    private long markPairs;
    private long backtickSteps;
    private long cells;
    private Block block;

    /// <summary>Says why a text is refused, or null when it can be laid out.</summary>
    /// <param name="body">The text.</param>
    /// <param name="line">The line, from 1, at which the limit was passed.</param>
    public static string? Refusal(ReadOnlySpan<char> body, out int line)
    {
        line = 1;
        if (body.Length > LongestText)
        {
            return "a text of more than 2 million characters";
        }

        var work = new StoryWork();
        foreach (var text in body.EnumerateLines())
        {
            if (work.Add(text) is { } refusal)
            {
                return refusal;
            }

            line++;
        }

        return null;
    }

    private string? Add(ReadOnlySpan<char> line)
    {
        var trimmed = line.TrimStart(" \t");
        if (trimmed.IsEmpty)
        {
            block = default;
            return null;
        }

        if (trimmed[0] == '>' && QuoteDepth(trimmed) > DeepestQuote)
        {
            return $"quotes nested more than {DeepestQuote} deep";
        }

        if (line.Length - trimmed.Length > DeepestIndent)
        {
            return $"a line indented by more than {DeepestIndent} characters";
        }

        var before = block;
        block = before.With(line);
        markPairs += (block.Marks * block.Marks) - (before.Marks * before.Marks);
        backtickSteps += block.BacktickSteps - before.BacktickSteps;
        cells += block.Cells - before.Cells;
        return markPairs > MostMarkPairs ? "too many brackets and emphasis marks without an empty line between them"
            : backtickSteps > MostBacktickSteps ? "too many backticks in too long a paragraph"
            : cells > MostCells ? "tables of more than 100000 cells"
            : null;
    }

    private static int QuoteDepth(ReadOnlySpan<char> line)
    {
        var depth = 0;
        foreach (var c in line)
        {
            if (c == '>')
            {
                depth++;
            }
            else if (c != ' ')
            {
                break;
            }
        }

        return depth;
    }

    /// <summary>Counts over lines without an empty one between them.</summary>
    private readonly record struct Block(long Marks, long BacktickRuns, long Length, long PipeLines, long WidestRow)
    {
        public long BacktickSteps => BacktickRuns * Length;

        public long Cells => PipeLines * WidestRow;

        public Block With(ReadOnlySpan<char> line)
        {
            var (marks, runs, pipes) = (0L, 0L, 0L);
            var last = '\0';
            foreach (var c in line)
            {
                switch (c)
                {
                    case '[' or ']':
                        marks++;
                        break;
                    case '*' or '_' or '~' when c != last:
                        marks++;
                        break;
                    case '`' when c != last:
                        runs++;
                        break;
                    case '|':
                        pipes++;
                        break;
                }

                last = c;
            }

            return new Block(Marks + marks, BacktickRuns + runs, Length + line.Length, WidestRow + pipes == 0 ? 0 : PipeLines + 1, Math.Max(WidestRow, pipes));
        }
    }
}
