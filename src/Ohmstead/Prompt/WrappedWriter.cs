using System.Text;

namespace Ohmstead.Prompt;

/// <summary>Breaks lines between words where a terminal would break them within one; what goes on stands further right than where its line
/// began.</summary>
/// <param name="inner">Where the lines go.</param>
/// <param name="columns">How many columns the terminal has now.</param>
/// <remarks>Colours take no room. A word that is longer than the terminal is wide is left to the terminal: somebody may copy it.</remarks>
internal sealed class WrappedWriter(TextWriter inner, Func<int> columns) : TextWriter
{
    private const int Further = 2;
    private readonly StringBuilder line = new();

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        if (value != '\n')
        {
            line.Append(value);
            return;
        }

        inner.Write(Broken(line.ToString(), columns()));
        inner.Write('\n');
        line.Clear();
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        inner.Write(line);
        line.Clear();
        inner.Flush();
    }

    /// <summary>One line in rows of the terminal.</summary>
    internal static string Broken(string line, int columns)
    {
        // The last column is left free, as everywhere: terminals do not agree what happens there.
        var room = columns - 1;
        var shown = Shown(line);
        var indent = Math.Min(shown.Length - shown.TrimStart(' ').Length, Math.Max(room / 2, 0));
        var rows = new StringBuilder();
        var used = 0;
        foreach (var (word, at) in Words(line))
        {
            var cells = Cells(word);
            var gap = at > 0 ? 1 : 0;
            if (used > indent && used + gap + cells > room)
            {
                rows.Append('\n').Append(' ', indent + Further);
                used = indent + Further;
                gap = 0;
            }

            rows.Append(gap > 0 ? " " : string.Empty).Append(word);
            used += gap + cells;
        }

        return rows.ToString();
    }

    // The words, the first with the spaces before it; several spaces in a row belong to the word behind them.
    private static IEnumerable<(string Word, int At)> Words(string line)
    {
        var start = 0;
        while (start <= line.Length)
        {
            var from = start;
            while (from < line.Length && line[from] == ' ')
            {
                from++;
            }

            var end = line.IndexOf(' ', from);
            end = end < 0 ? line.Length : end;
            yield return (line[start..end], start);
            start = end + 1;
        }
    }

    private static int Cells(string word) => CellWidth.Measure(Shown(word));

    // Without the colours, which end with an m.
    private static string Shown(string text)
    {
        var pieces = text.Split('\e');
        return pieces[0] + string.Concat(pieces.Skip(1).Select(piece => piece[(piece.IndexOf('m', StringComparison.Ordinal) + 1)..]));
    }
}
