using System.Buffers;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Decoding;

/// <summary>The front matter of a Markdown file: the lines between a first line of three dashes and the next such line.</summary>
/// <param name="Start">The offset at which the YAML begins.</param>
/// <param name="End">The offset just behind the YAML: the start of the closing line.</param>
/// <param name="BodyStart">The offset at which the Markdown begins.</param>
public readonly record struct FrontMatter(int Start, int End, int BodyStart)
{
    private static readonly SearchValues<char> KeyLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz_");

    /// <summary>Finds the front matter, or says why there is none.</summary>
    public static FrontMatterReading Find(SourceText source) =>
        IsFence(source.Line(1)) ? FindEnd(source) : new FrontMatterReading(null, Missing(source));

    private static FrontMatterReading FindEnd(SourceText source)
    {
        for (var line = 2; line <= source.LineCount; line++)
        {
            if (IsFence(source.Line(line)))
            {
                var body = line == source.LineCount ? source.Text.Length : source.LineStart(line + 1);
                return new FrontMatterReading(new FrontMatter(LineStart(source, 2), source.LineStart(line), body), null);
            }
        }

        return new FrontMatterReading(null, Unclosed(source));
    }

    /// <summary>Tells of keys that stand below the line that ends the front matter, with another such line behind them.</summary>
    public Finding? CutShort(SourceText source)
    {
        if (BodyStart >= source.Text.Length)
        {
            return null;
        }

        var line = source.LineAt(BodyStart);
        while (line < source.LineCount && source.Line(line).IsWhiteSpace())
        {
            line++;
        }

        var first = source.Line(line);
        var colon = first.IndexOf(':');
        if (colon <= 0 || first[..colon].IndexOfAnyExcept(KeyLetters) >= 0 || (colon + 1 < first.Length && first[colon + 1] != ' '))
        {
            return null;
        }

        for (var below = line + 1; below <= source.LineCount; below++)
        {
            if (IsFence(source.Line(below)))
            {
                return new Finding(
                    TextChecks.FrontMatterCut,
                    Severity.Warning,
                    source.PlaceAt(End, 3),
                    $"the front matter ends here, so {Quotation.Quote(first)} on line {Number(line)} is read as story and not as a key",
                    $"take this line out, so that the front matter ends on line {Number(below)}"
                );
            }

            // What no key begins with is the story.
            if (source.Line(below) is [>= 'A' and <= 'Z', ..] or ['#', ..])
            {
                return null;
            }
        }

        return null;
    }

    private static int LineStart(SourceText source, int line) => line > source.LineCount ? source.Text.Length : source.LineStart(line);

    private static bool IsFence(ReadOnlySpan<char> line) =>
        line.StartsWith("---", StringComparison.Ordinal) && line[3..].IndexOfAnyExcept(' ', '\t') < 0;

    private static Finding Missing(SourceText source)
    {
        var (found, next) = Describe(source);
        return new Finding(
            TextChecks.FrontMatterMissing,
            Severity.Error,
            source.PlaceAt(0),
            $"{found}; expected a first line of three dashes (---) that opens the front matter",
            next
        );
    }

    private static (string Found, string Next) Describe(SourceText source)
    {
        const string Begin = "write --- on the first line, the keys below it, and --- again below the keys";
        if (source.Text.AsSpan().IndexOfAnyExcept(" \t\r\n") is var first && first < 0)
        {
            return ("no front matter: the file is empty", Begin);
        }

        var line = source.Line(1);
        var start = line.Trim();
        return start switch
        {
            ['+', '+', '+', ..] => (
                "the front matter is fenced with +++ as TOML is",
                "write the front matter as YAML between two lines of ---"
            ),
            ['{', ..] => ("the file begins with { as JSON does", "write the front matter as YAML between two lines of ---"),
            [] when IsFence(source.Line(source.LineAt(first)).Trim()) => (
                "a blank line stands before the first ---",
                "remove the blank lines before the first ---"
            ),
            [] => ("no front matter: the first line is blank", Begin),
            _ when line[0] is ' ' or '\t' && IsFence(start) => (
                "a space stands before the first ---",
                "remove the space before the first ---"
            ),
            _ when IsDashes(start) => ($"the first line has {Number(start.Length)} dashes", "write exactly three dashes: ---"),
            _ when IsLongDashes(start) => ($"the first line has long dashes ({start[..1]})", "write --- with hyphens in its place"),
            ['`' or '~', '`' or '~', '`' or '~', ..] => (
                $"the front matter is fenced with {start[..3]} as code is",
                "write --- on the first line in its place, and --- on a line below the keys"
            ),
            _ when LaterFence(source) is > 0 and var fence => (
                $"{Quotation.Quote(start)} stands before the first --- on line {Number(fence)}",
                "move what stands before the first --- below the second"
            ),
            _ => ($"no front matter: the first line is {Quotation.Quote(start)}", Begin),
        };
    }

    /// <summary>The line that opens keys further down, as a heading before them leaves it; 0 where none does.</summary>
    private static int LaterFence(SourceText source)
    {
        var last = Math.Min(source.LineCount - 1, 20);
        for (var line = 2; line <= last; line++)
        {
            if (
                IsFence(source.Line(line))
                && source.Line(line + 1) is var below
                && below.IndexOf(':') > 0
                && char.IsAsciiLetterLower(below[0])
            )
            {
                return line;
            }
        }

        return 0;
    }

    private static bool IsDashes(ReadOnlySpan<char> line) => line.Length > 1 && line.IndexOfAnyExcept('-') < 0;

    private static bool IsLongDashes(ReadOnlySpan<char> line) => line.Length > 0 && line.IndexOfAnyExcept("–—―−‒") < 0;

    // What was meant for the closing line and is none: it has a space before it, or other signs.
    private static (int Line, string Found, string Next)? Almost(SourceText source)
    {
        for (var line = 2; line <= source.LineCount; line++)
        {
            var text = source.Line(line);
            var content = text.Trim();
            if (IsFence(content) && text[0] == ' ' && text[1] != ' ')
            {
                return (line, $"the --- on line {Number(line)} has a space before it, so it closes nothing", "write it at the left edge");
            }

            if (text.TrimEnd().SequenceEqual("...") || IsLongDashes(text.TrimEnd()))
            {
                return (line, $"the {text.TrimEnd()} on line {Number(line)} does not close the front matter", "write --- in its place");
            }
        }

        return null;
    }

    private static Finding Unclosed(SourceText source)
    {
        if (Almost(source) is var (at, found, next))
        {
            return new Finding(TextChecks.FrontMatterUnclosed, Severity.Error, source.PlaceAt(source.LineStart(at)), found, next);
        }

        var line = WhereTheFenceBelongs(source);
        return new Finding(
            TextChecks.FrontMatterUnclosed,
            Severity.Error,
            source.PlaceAt(0, 3),
            $"the front matter opened here is never closed; expected a line of three dashes (---) near line {Number(line)}",
            $"write --- on a line of its own before line {Number(line)}, where the keys end"
        )
        {
            Related = [new RelatedPlace(new Place(source.Path, line, 1), "the closing --- was expected here")],
        };
    }

    /// <summary>The first line that no longer looks like YAML at its left edge, else the last line.</summary>
    private static int WhereTheFenceBelongs(SourceText source)
    {
        for (var line = 2; line <= source.LineCount; line++)
        {
            var text = source.Line(line);
            if (text.IsEmpty || text[0] is ' ' or '\t' or '-' or '}' or ']')
            {
                continue;
            }

            var isHeading =
                text.StartsWith("##", StringComparison.Ordinal)
                || (text.StartsWith("# ", StringComparison.Ordinal) && source.Line(line - 1).IsWhiteSpace() && IsBlankAfter(source, line));
            if (isHeading || (text[0] != '#' && !text.Contains(':')))
            {
                return line;
            }
        }

        return source.LineCount;
    }

    private static bool IsBlankAfter(SourceText source, int line) => line == source.LineCount || source.Line(line + 1).IsWhiteSpace();

    private static string Number(int value) => value.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>The front matter found, or the reason why there is none.</summary>
/// <param name="FrontMatter">The front matter, or null.</param>
/// <param name="Finding">Why there is none, or null.</param>
public readonly record struct FrontMatterReading(FrontMatter? FrontMatter, Finding? Finding);
