using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>The lines of the front matter as blocks: how far in a line stands, and where what hangs from it ends.</summary>
internal sealed class BlockLines(SourceText source, int afterLast)
{
    /// <summary>The line, from 1, behind the last one of the front matter.</summary>
    internal int AfterLast { get; } = afterLast;

    /// <summary>The line end the file uses at a line; LF where there is none.</summary>
    internal string LineEndAt(int line)
    {
        var end = source.LineEnd(line);
        var next = line < source.LineCount ? source.LineStart(line + 1) : source.Text.Length;
        return end < next ? source.Text[end..next] : "\n";
    }

    /// <summary>How many blanks stand before the first letter of a line, or -1 where there is no letter.</summary>
    internal int IndentationOf(int line) => source.Line(line).IndexOfAnyExcept(' ');

    /// <summary>Where the dash of a list item stands, in blanks from the left: the last dash before the item on its line.</summary>
    internal int DashBefore(Spot item) => source.Line(item.Line)[..(item.Column - 1)].LastIndexOf('-');

    /// <summary>
    /// The last line that belongs to a block: every line below its first that is further in. Lines with nothing on them, and remarks that
    /// stand less far in, belong to what follows.
    /// </summary>
    /// <param name="first">The first line of the block.</param>
    /// <param name="indentation">How far in its key or its dash stands.</param>
    /// <param name="listMayHang">True for a key, whose list may stand as far in as the key itself.</param>
    internal int LastOf(int first, int indentation, bool listMayHang)
    {
        var last = first;
        for (var line = first + 1; line < AfterLast; line++)
        {
            var stands = IndentationOf(line);
            if (stands < 0)
            {
                continue;
            }

            var text = source.Line(line)[stands..];
            var belongs =
                stands > indentation
                || (listMayHang && stands == indentation && (text is "-" || text.StartsWith("- ", StringComparison.Ordinal)));
            if (belongs)
            {
                last = line;
            }
            else if (text[0] != '#')
            {
                break;
            }
        }

        return last;
    }

    /// <summary>The offset at which the line after a line begins.</summary>
    internal int Behind(int line) => line < source.LineCount ? source.LineStart(line + 1) : source.Text.Length;
}
