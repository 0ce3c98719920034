using System.Text;

namespace Ohmstead.Synthetic.Text;

/// <summary>Gathers the lines of one file. Lines end with LF on every system.</summary>
public sealed class LineWriter
{
    private readonly StringBuilder text = new(12 << 10);

    /// <summary>Adds a line.</summary>
    public LineWriter Line(string line = "")
    {
        text.Append(line).Append('\n');
        return this;
    }

    /// <summary>Adds a key and a list of facts below it, one a line; nothing when there are none.</summary>
    /// <param name="indent">How far the key stands to the right.</param>
    /// <param name="key">The key.</param>
    /// <param name="facts">The facts.</param>
    public LineWriter List(int indent, string key, IEnumerable<FlowLine> facts)
    {
        var space = new string(' ', indent);
        var isFirst = true;
        foreach (var fact in facts)
        {
            if (isFirst)
            {
                Line($"{space}{key}:");
                isFirst = false;
            }

            Line($"{space}  - {fact}");
        }

        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => text.ToString();
}
