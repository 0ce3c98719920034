namespace Ohmstead.Report.Markdown;

/// <summary>Estimates from the characters alone how much work a text would make, so that a hostile one is refused before any is
/// done.</summary>
/// <remarks>
/// Laying out takes time for each block and each mark; in a paragraph it can grow with the square of the link and emphasis marks and
/// with the backtick runs times the length, in a table with the rows times the columns. The limits are our own and set by
/// measurement: a text at one of them takes a few tenths of a second; one written by hand stays far below.
/// </remarks>
internal sealed class StoryWork
{
    private const int LongestText = 2 << 20;
    private const int MostOpeners = 100;
    private const int DeepestIndent = 250;
    private const long MostBlocks = 50_000;
    private const long MostMarks = 60_000;
    private const long MostMarkPairs = 36_000_000;
    private const long MostBacktickSteps = 1_000_000_000;
    private const long MostCells = 50_000;

    private long blocks;
    private long marks;
    private long markPairs;
    private long backtickSteps;
    private long cells;
    private Paragraph paragraph;

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
            paragraph = default;
            return null;
        }

        var openers = Openers(trimmed);
        var here = LineMarks.Read(line);
        var before = paragraph;
        paragraph = before.With(here, line.Length);
        blocks += 1 + openers;
        marks += here.All;
        markPairs += (paragraph.Pairing * paragraph.Pairing) - (before.Pairing * before.Pairing);
        backtickSteps += paragraph.BacktickSteps - before.BacktickSteps;
        cells += paragraph.Cells - before.Cells;
        return openers > MostOpeners ? $"lists or quotes nested more than {Invariant(MostOpeners)} deep"
            : line.Length - trimmed.Length > DeepestIndent ? $"a line indented by more than {Invariant(DeepestIndent)} characters"
            : blocks > MostBlocks ? $"more than {Invariant(MostBlocks)} lines and items"
            : marks > MostMarks ? $"more than {Invariant(MostMarks)} marks"
            : markPairs > MostMarkPairs ? "too many brackets and emphasis marks without an empty line between them"
            : backtickSteps > MostBacktickSteps ? "too many backticks in too long a paragraph"
            : cells > MostCells ? $"tables of more than {Invariant(MostCells)} cells"
            : null;
    }

    private static string Invariant(long number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>How many items and quotes open at the start of a line, one in the other.</summary>
    private static int Openers(ReadOnlySpan<char> line)
    {
        var openers = 0;
        for (
            var i = 0;
            i < line.Length && (line[i] is '>' or '-' or '+' or '*' or '.' or ')' or ' ' or '\t' || char.IsAsciiDigit(line[i]));
            i++
        )
        {
            var isItem = line[i] is '-' or '+' or '*' or '.' or ')' && i + 1 < line.Length && line[i + 1] is ' ' or '\t';
            openers += isItem || line[i] == '>' ? 1 : 0;
        }

        return openers;
    }

    /// <summary>What stands in one line.</summary>
    private readonly record struct LineMarks(int All, int Pairing, int BacktickRuns, int Pipes)
    {
        public static LineMarks Read(ReadOnlySpan<char> line)
        {
            var (all, pairing, runs, pipes) = (0, 0, 0, 0);
            var last = '\0';
            foreach (var c in line)
            {
                all += c is '[' or ']' or '*' or '_' or '`' or '<' or '&' or '\\' ? 1 : 0;
                pairing += c is '[' or ']' || (c is '*' or '_' && c != last) ? 1 : 0;
                runs += c == '`' && c != last ? 1 : 0;
                pipes += c == '|' ? 1 : 0;
                last = c;
            }

            return new LineMarks(all, pairing, runs, pipes);
        }
    }

    /// <summary>Counts over lines without an empty one between them.</summary>
    private readonly record struct Paragraph(long Pairing, long BacktickRuns, long Length, long PipeLines, long WidestRow)
    {
        public long BacktickSteps => BacktickRuns * Length;

        public long Cells => PipeLines * WidestRow;

        public Paragraph With(LineMarks line, int length)
        {
            var widest = Math.Max(WidestRow, line.Pipes);
            return new Paragraph(
                Pairing + line.Pairing,
                BacktickRuns + line.BacktickRuns,
                Length + length,
                widest == 0 ? 0 : PipeLines + 1,
                widest
            );
        }
    }
}
