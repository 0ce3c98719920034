using System.Text;

namespace Ohmstead.Synthetic.Text;

/// <summary>Makes a generated record look like one that many hands wrote: remarks everywhere, odd spaces, folds, indentation and line ends.
/// It says the same as before.</summary>
/// <remarks>Made for the plain lines that <see cref="LineWriter"/> and <see cref="FlowLine"/> write, not for YAML of any kind.</remarks>
public sealed class Sprinkle
{
    private static readonly string[] Words =
    [
        "# warm",
        "# C12: { see, the story }",
        "# \"boxed\" - not 'sealed'",
        "## once more",
        "#!",
        "#",
        "# key: value # and on",
        "# ±5 % of 4k7 Ω",
        "# - { ref: R1 }",
    ];

    private readonly SeededRandom random;
    private readonly List<string> remarks = [];
    private readonly StringBuilder text = new(16 << 10);
    private readonly int[] indents;

    private Sprinkle(SeededRandom random)
    {
        this.random = random;
        indents = new int[16];
        for (var i = 1; i < indents.Length; i++)
        {
            indents[i] = indents[i - 1] + random.Between(2, 4);
        }
    }

    /// <summary>The record as many hands would write it, and its remarks in order.</summary>
    /// <param name="record">A generated record: front matter and body.</param>
    /// <param name="random">What decides where.</param>
    public static (string Text, IReadOnlyList<string> Remarks) Over(string record, SeededRandom random)
    {
        var sprinkle = new Sprinkle(random);
        var end = record.IndexOf("\n---\n", StringComparison.Ordinal) + 1;
        sprinkle.text.Append("---").Append(sprinkle.Blanks(0, 2)).Append('\n');
        foreach (var line in record[4..end].Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            sprinkle.Line(line);
        }

        sprinkle.OwnLines();
        sprinkle.text.Append(record, end, record.Length - end);
        return (random.Chance(10) ? sprinkle.text.Replace("\n", "\r\n").ToString() : sprinkle.text.ToString(), sprinkle.remarks);
    }

    private void Line(string line)
    {
        OwnLines();
        var stands = line.AsSpan().IndexOfAnyExcept(' ');
        var rest = line[stands..];
        var depth = stands / 2;
        text.Append(' ', indents[depth]);
        if (rest.StartsWith("- ", StringComparison.Ordinal))
        {
            text.Append('-').Append(' ', indents[depth + 1] - indents[depth] - 1);
            rest = rest[2..];
            depth++;
        }

        if (rest.StartsWith('{'))
        {
            Flow(rest, indents[depth]);
        }
        else
        {
            Entry(rest, indents[depth]);
        }

        if (random.Chance(15))
        {
            text.Append(Blanks(1, 9)).Append(Remark());
        }

        text.Append(Blanks(0, 1)).Append('\n');
    }

    private void Entry(string entry, int indent)
    {
        var colon = entry.IndexOf(':', StringComparison.Ordinal);
        text.Append(entry, 0, colon).Append(Blanks(0, 1)).Append(':');
        var value = entry[(colon + 1)..].TrimStart();
        if (value.Length == 0)
        {
            return;
        }

        if (random.Chance(5))
        {
            text.Append(Blanks(0, 2)).Append('\n').Append(' ', indent + random.Between(1, 6));
        }
        else
        {
            text.Append(Blanks(1, 3));
        }

        if (value.StartsWith('{'))
        {
            Flow(value, indent);
        }
        else if (value[0] is not '"' && random.Chance(20))
        {
            text.Append(value.Replace(" ", Blanks(0, 2) + "\n" + new string(' ', indent + random.Between(1, 5)), StringComparison.Ordinal));
        }
        else
        {
            text.Append(value);
        }
    }

    // Only blanks that stand between the words change: those in quotes, and single ones within a value, are part of it.
    private void Flow(string flow, int indent)
    {
        var isQuoted = false;
        for (var at = 0; at < flow.Length; at++)
        {
            var letter = flow[at];
            isQuoted ^= letter == '"';
            if (isQuoted || (letter != ' ' && !(letter is ',' or ']' or '}')))
            {
                text.Append(letter);
            }
            else if (letter != ' ')
            {
                text.Append(random.Chance(8) ? Between(indent) : string.Empty).Append(letter);
            }
            else if (flow[at - 1] is ',' or ':' or '{' || flow[at + 1] is '}')
            {
                // In front of a colon's value a fold needs its blank; elsewhere the blank may go.
                text.Append(
                    random.Chance(20) ? Between(indent)
                    : flow[at - 1] is ':' || random.Chance(80) ? " "
                    : string.Empty
                );
            }
            else
            {
                text.Append(letter);
            }
        }
    }

    private string Between(int indent)
    {
        var between = Blanks(1, 4);
        if (random.Chance(60))
        {
            return between;
        }

        between += random.Chance(50) ? Remark() : string.Empty;
        between += "\n";
        while (random.Chance(25))
        {
            between += random.Chance(60) ? new string(' ', indent + random.Between(0, 8)) + Remark() + "\n" : Blanks(0, 3) + "\n";
        }

        return between + new string(' ', indent + random.Between(1, 12));
    }

    private void OwnLines()
    {
        while (random.Chance(25))
        {
            text.Append(random.Chance(60) ? Blanks(0, 12) + Remark() : Blanks(0, 3)).Append('\n');
        }
    }

    private string Remark()
    {
        var remark = random.Pick(Words);
        remarks.Add(remark);
        return remark;
    }

    private string Blanks(int least, int most) => new(' ', random.Between(least, most));
}
