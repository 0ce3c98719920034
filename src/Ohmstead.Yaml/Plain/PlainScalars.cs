using System.Buffers;
using System.Text;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml.Plain;

/// <summary>Reads keys and values of one line.</summary>
internal sealed class PlainScalars(PlainCursor cursor, RecentTexts texts)
{
    private const int LongestKey = 64;

    private static readonly SearchValues<char> KeyEnds = SearchValues.Create(": \n#{}[],\"'");
    private static readonly SearchValues<char> FlowEnds = SearchValues.Create(",}]");
    private static readonly SearchValues<char> FlowDoubts = SearchValues.Create("[{#?:\n");

    private int mostBytes;

    /// <summary>Begins a file.</summary>
    /// <param name="fieldBytes">How many bytes a value may have; what is longer is not judged here.</param>
    internal void Open(int fieldBytes) => mostBytes = fieldBytes;

    /// <summary>How long the key is that stands here, its colon not counted; 0 when none does.</summary>
    internal int KeyLength()
    {
        var line = cursor.RestOfLine;
        var length = line.IndexOfAny(KeyEnds);
        return
            length is > 0 and <= LongestKey
            && line[length] == ':'
            && (length + 1 == line.Length || line[length + 1] == ' ')
            && MayOpen(line, length)
            ? length
            : 0;
    }

    /// <summary>Takes a key, and stands behind its colon.</summary>
    internal (Spot Spot, string Text) Key(int length)
    {
        var key = (cursor.SpotAt(cursor.At, length), TextOf(cursor.Text.AsSpan(cursor.At, length)));
        cursor.At += length + 1;
        return key;
    }

    /// <summary>A value that runs to the end of its line, or to a comment.</summary>
    internal Node? OfLine()
    {
        if (cursor.Next is '"' or '\'')
        {
            return Quoted();
        }

        var line = cursor.RestOfLine;
        if (line.IndexOf(" #", StringComparison.Ordinal) is >= 0 and var comment)
        {
            line = line[..comment];
        }

        line = line.TrimEnd(' ');
        if (!MayOpen(line, line.Length) || line[^1] == ':' || line.Contains(": ", StringComparison.Ordinal))
        {
            return InDoubt();
        }

        return Plain(line);
    }

    /// <summary>A value between braces.</summary>
    internal Node? OfFlow()
    {
        if (cursor.Next is '"' or '\'')
        {
            return Quoted();
        }

        var line = cursor.RestOfLine;
        var length = line.IndexOfAny(FlowEnds);
        if (length <= 0)
        {
            return InDoubt();
        }

        line = line[..length].TrimEnd(' ');
        return line.ContainsAny(FlowDoubts) || !MayOpen(line, line.Length) ? InDoubt() : Plain(line);
    }

    private ScalarNode Plain(ReadOnlySpan<char> text)
    {
        var node = new ScalarNode(cursor.SpotAt(cursor.At, text.Length), TextOf(text), ScalarWriting.Plain);
        cursor.At += text.Length;
        return node;
    }

    private ScalarNode? Quoted()
    {
        var quote = cursor.Next;
        var rest = cursor.RestOfLine[1..];
        var length = rest.IndexOf(quote);
        if (length < 0 || (length + 1 < rest.Length && rest[length + 1] == quote) || (quote == '"' && rest[..length].Contains('\\')))
        {
            return InDoubt();
        }

        var style = quote == '"' ? ScalarWriting.DoubleQuoted : ScalarWriting.SingleQuoted;
        var node = new ScalarNode(cursor.SpotAt(cursor.At, length + 2), TextOf(rest[..length]), style);
        cursor.At += length + 2;
        return node;
    }

    /// <summary>True when a plain text may begin so: a letter, a figure, or a sign that YAML gives no meaning of its own.</summary>
    private static bool MayOpen(ReadOnlySpan<char> text, int length) =>
        length > 0
        && text[0] switch
        {
            '-' => length > 1 && char.IsAsciiLetterOrDigit(text[1]),
            '+' or '.' or '/' or '(' or '_' or '~' or '±' or '<' => length > 1 && text[1] is not ('<' or '.'),
            var unit => char.IsAsciiLetterOrDigit(unit) || unit is 'µ' or 'Ω' or >= 'À',
        };

    private string TextOf(ReadOnlySpan<char> text)
    {
        // No character takes more than four bytes.
        if (text.Length > mostBytes / 4 && Encoding.UTF8.GetByteCount(text) > mostBytes)
        {
            cursor.Doubt();
        }

        return texts.Intern(text);
    }

    private ScalarNode? InDoubt()
    {
        cursor.Doubt();
        return null;
    }
}
