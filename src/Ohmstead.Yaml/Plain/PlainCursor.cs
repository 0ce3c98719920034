using Ohmstead.Records.Text;

namespace Ohmstead.Yaml.Plain;

/// <summary>Walks over YAML line by line, and knows the line and the column it stands at.</summary>
/// <remarks>
/// Whatever is not surely plain makes it doubt, and once in doubt it stays so: what was read is thrown away then, so no reader here has to
/// be right behind a doubt.
/// </remarks>
internal sealed class PlainCursor
{
    private int lineStart;

    // Where this line ends, its line end not counted: every key and value on it asks.
    private int lineEnd;

    private int nextLine;

    /// <summary>The text of the whole file.</summary>
    internal string Text { get; private set; } = string.Empty;

    /// <summary>The offset behind the YAML.</summary>
    internal int End { get; private set; }

    /// <summary>The offset of the character that is next.</summary>
    internal int At { get; set; }

    /// <summary>The line, from 1.</summary>
    internal int Line { get; private set; }

    /// <summary>The column, from 0.</summary>
    internal int Column => At - lineStart;

    /// <summary>True behind the last line with content.</summary>
    internal bool IsAtEnd => At >= End;

    /// <summary>True once something was met that this subset leaves to the library.</summary>
    internal bool IsInDoubt { get; private set; }

    /// <summary>The next character of this line, or a line feed behind the last.</summary>
    internal char Next => At < lineEnd ? Text[At] : '\n';

    /// <summary>The character behind the next, or a line feed behind the last of this line.</summary>
    internal char AfterNext => At + 1 < lineEnd ? Text[At + 1] : '\n';

    /// <summary>The rest of the line, without its line end.</summary>
    internal ReadOnlySpan<char> RestOfLine => Text.AsSpan(At, lineEnd - At);

    /// <summary>Stands at the first content of a stretch of a file that begins a line. All its lines end with LF, or all with
    /// CRLF.</summary>
    internal void Open(SourceText source, int start, int end)
    {
        (Text, End, At) = (source.Text, end, start);
        Line = source.LineAt(start);
        BeginLine();
        IsInDoubt = false;
        ToContent();
    }

    /// <summary>Lets go of the file.</summary>
    internal void Close() => Text = string.Empty;

    /// <summary>The spot of a stretch that begins on this line.</summary>
    internal Spot SpotAt(int offset, int length) => new(Line, offset - lineStart + 1, length);

    /// <summary>Gives up.</summary>
    internal void Doubt() => IsInDoubt = true;

    /// <summary>Passes over spaces.</summary>
    internal void PassSpaces()
    {
        while (At < lineEnd && Text[At] == ' ')
        {
            At++;
        }
    }

    /// <summary>Passes what may stand behind a value, a comment at most, and goes on to the next line with content.</summary>
    internal void FinishLine()
    {
        var before = At;
        PassSpaces();
        if (Next != '\n' && (At == before || Next != '#' || AfterNext is not (' ' or '\n')))
        {
            Doubt();
            return;
        }

        PassLine();
        ToContent();
    }

    /// <summary>Goes on within braces, over spaces and to the next line, as long as that stands deeper than the block around.</summary>
    internal void PassToNextInFlow(int blockColumn)
    {
        PassSpaces();
        if (Next != '\n')
        {
            return;
        }

        PassLine();
        PassSpaces();
        if (IsAtEnd || Column <= blockColumn || Next is '\n' or '#')
        {
            Doubt();
        }
    }

    private void ToContent()
    {
        while (At < End)
        {
            PassSpaces();
            if (IsAtEnd || Next is not ('\n' or '#'))
            {
                return;
            }

            PassLine();
        }
    }

    private void PassLine()
    {
        At = nextLine;
        Line++;
        BeginLine();
    }

    private void BeginLine()
    {
        lineStart = At;
        var length = Text.AsSpan(At, End - At).IndexOf('\n');
        (lineEnd, nextLine) = length < 0 ? (End, End) : (At + length, At + length + 1);
        if (lineEnd > At && Text[lineEnd - 1] == '\r')
        {
            lineEnd--;
        }
    }
}
