namespace Ohmstead.Records.Text;

/// <summary>The text of one file with its lines, so that any offset can be named as an editor names it.</summary>
/// <remarks>LF, CRLF and a lone CR end a line. U+0085, U+2028 and U+2029 do not, though YAML 1.1 and some tools count them.</remarks>
public sealed class SourceText
{
    private readonly int[] lineStarts;
    private readonly SurrogateCount? surrogates;

    /// <summary>Takes a text apart into lines.</summary>
    /// <param name="path">The path from the root of the collection.</param>
    /// <param name="text">The text, without a byte order mark.</param>
    /// <param name="hasByteOrderMark">True when the file began with a UTF-8 byte order mark.</param>
    public SourceText(string path, string text, bool hasByteOrderMark = false)
    {
        Path = path;
        Text = text;
        HasByteOrderMark = hasByteOrderMark;
        lineStarts = FindLines(text);
        surrogates = text.AsSpan().ContainsAnyInRange('\uD800', '\uDFFF') ? new(text) : null;
    }

    /// <summary>The path from the root of the collection.</summary>
    public string Path { get; }

    /// <summary>The text, without a byte order mark, with its line ends as written.</summary>
    public string Text { get; }

    /// <summary>True when the file began with a UTF-8 byte order mark, which whoever rewrites the file keeps.</summary>
    public bool HasByteOrderMark { get; }

    /// <summary>How many lines an editor shows; at least 1. A line end at the end of the file opens one more, empty line.</summary>
    public int LineCount => lineStarts.Length;

    /// <summary>The line, from 1, on which an offset lies. An offset past the end lies on the last line.</summary>
    public int LineAt(int offset)
    {
        var index = Array.BinarySearch(lineStarts, offset);
        return index >= 0 ? index + 1 : ~index;
    }

    /// <summary>The offset in UTF-16 units at which a line, counted from 1, begins.</summary>
    public int LineStart(int line) => lineStarts[line - 1];

    /// <summary>The offset just behind the last character of a line, before its line end.</summary>
    public int LineEnd(int line)
    {
        var end = line == lineStarts.Length ? Text.Length : lineStarts[line];
        var start = lineStarts[line - 1];
        if (end > start && Text[end - 1] == '\n')
        {
            end--;
        }

        if (line < lineStarts.Length && end > start && Text[end - 1] == '\r')
        {
            end--;
        }

        return end;
    }

    /// <summary>A line, counted from 1, without its line end.</summary>
    public ReadOnlySpan<char> Line(int line) => Text.AsSpan(lineStarts[line - 1], LineEnd(line) - lineStarts[line - 1]);

    /// <summary>The spot of a stretch of text. What runs over several lines is cut at the end of its first.</summary>
    /// <param name="offset">Where it starts, in UTF-16 units; held within the text.</param>
    /// <param name="length">How long it is, in UTF-16 units.</param>
    public Spot SpotAt(int offset, int length = 0)
    {
        var from = Math.Clamp(offset, 0, Text.Length);
        var line = LineAt(from);
        var start = lineStarts[line - 1];
        var end = length == 0 ? from : Math.Clamp(offset + length, from, Math.Max(from, LineEnd(line)));
        return surrogates is not null
            ? new Spot(line, surrogates.Between(start, from) + 1, surrogates.Between(from, end))
            : new Spot(line, from - start + 1, end - from);
    }

    /// <summary>The place of a stretch of text, with the path of the file.</summary>
    public Place PlaceAt(int offset, int length = 0) => SpotAt(offset, length).In(Path);

    /// <summary>The offset, in UTF-16 units, of a spot in this file.</summary>
    public int OffsetOf(Spot spot)
    {
        var at = lineStarts[spot.Line - 1];
        return surrogates?.Behind(at, spot.Column - 1) ?? at + spot.Column - 1;
    }

    /// <summary>The offset, in UTF-16 units, behind the last character of a spot in this file.</summary>
    public int EndOf(Spot spot) => surrogates?.Behind(OffsetOf(spot), spot.Length) ?? OffsetOf(spot) + spot.Length;

    private static int[] FindLines(string text)
    {
        // Counted first, which takes less than room that is given back at once.
        var count = 1;
        for (var at = NextLine(text, 0); at >= 0; at = NextLine(text, at))
        {
            count++;
        }

        var starts = new int[count];
        for (var line = 1; line < count; line++)
        {
            starts[line] = NextLine(text, starts[line - 1]);
        }

        return starts;
    }

    // Where the line behind the next line end begins, or -1 where no line end follows.
    private static int NextLine(string text, int from)
    {
        if (text.AsSpan(from).IndexOfAny('\r', '\n') is not (>= 0 and var found))
        {
            return -1;
        }

        var at = from + found + 1;
        return text[at - 1] == '\r' && at < text.Length && text[at] == '\n' ? at + 1 : at;
    }
}
