using Ohmstead.Records.Nodes;

namespace Ohmstead.Yaml.Plain;

/// <summary>
/// Keeps the entries that stood on one line of the file that was read before, for whoever reads two states of a file one after the other:
/// what stands there again, on the same line and in the same column, is the same node.
/// </summary>
/// <remarks>An instance is used by one thread at a time. What it gives decides what is shared, never what is read.</remarks>
internal sealed class LinesBefore
{
    private List<Kept> before = [];
    private List<Kept> now = [];
    private string textBefore = string.Empty;
    private string textNow = string.Empty;
    private int fieldBytes = -1;

    // Both files are walked from the first line to the last.
    private int next;

    /// <summary>Begins a file; what was read last is the file before it.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="longest">The longest value that is read. Where another one was asked before, nothing is known.</param>
    internal void Begin(string text, int longest)
    {
        (before, now) = (now, before);
        now.Clear();
        if (fieldBytes != longest)
        {
            before.Clear();
            fieldBytes = longest;
        }

        (textBefore, textNow) = (textNow, text);
        next = 0;
    }

    /// <summary>The entry that begins where the cursor stands, if the same began there in the file before. The cursor is then behind
    /// it.</summary>
    /// <param name="cursor">Stands at the brace.</param>
    /// <param name="levels">How many levels may follow: with the text they decide what is read.</param>
    /// <param name="events">How many events it takes.</param>
    internal Node? Find(PlainCursor cursor, int levels, out int events)
    {
        events = 0;
        while (next < before.Count && before[next].Line < cursor.Line)
        {
            next++;
        }

        if (next == before.Count)
        {
            return null;
        }

        var kept = before[next];
        if (
            kept.Line != cursor.Line
            || kept.Column != cursor.Column
            || kept.Levels != levels
            || !cursor.RestOfLine.StartsWith(textBefore.AsSpan(kept.Start, kept.Length), StringComparison.Ordinal)
        )
        {
            return null;
        }

        now.Add(kept with { Start = cursor.At });
        cursor.At += kept.Length;
        events = kept.Events;
        return kept.Node;
    }

    /// <summary>Keeps an entry that began and ended on one line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="column">The column in which it begins.</param>
    /// <param name="stretch">Where it stands in the text.</param>
    /// <param name="levels">How many levels may follow.</param>
    /// <param name="events">How many events it took.</param>
    /// <param name="node">The entry.</param>
    internal void Add(int line, int column, Range stretch, int levels, int events, Node node)
    {
        var (start, length) = stretch.GetOffsetAndLength(textNow.Length);
        now.Add(new(line, column, start, length, levels, events, node));
    }

    private readonly record struct Kept(int Line, int Column, int Start, int Length, int Levels, int Events, Node Node);
}
