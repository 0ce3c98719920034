using System.Buffers;
using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>Finds what is wrong in indented lines: a colon, a space or a quote that is missing, one too many, or an indentation that fits
/// nothing.</summary>
internal sealed partial class BlockTrouble
{
    // A list of a record is read by people; far above, lines are about something else.
    private const int FarthestLines = 200;

    private static readonly SearchValues<char> KeyLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyz_");

    private readonly YamlSlice slice;
    private readonly YamlContext context;
    private readonly string said;
    private readonly int at;
    private readonly int line;

    private BlockTrouble(YamlSlice slice, YamlContext context, int at, string said)
    {
        this.slice = slice;
        this.context = context;
        this.said = said;
        this.at = at;
        line = slice.Source.LineAt(at);
    }

    /// <summary>The finding, or null when this is not understood.</summary>
    internal static Finding? Explain(YamlSlice slice, YamlContext context, int at, string said) =>
        new BlockTrouble(slice, context, at, said).Explain();

    /// <summary>A row of a table that was pasted on a line, or null.</summary>
    internal static Finding? Row(YamlSlice slice, int at) =>
        new BlockTrouble(slice, YamlContext.At(slice.Text, slice.Start, slice.Start), Math.Min(at, slice.End), string.Empty).TableRow();

    /// <summary>A bullet in place of the dash of an item, or null: an asterisk would be told as an alias.</summary>
    internal static Finding? Bullet(YamlSlice slice, int at)
    {
        var trouble = new BlockTrouble(slice, YamlContext.At(slice.Text, slice.Start, slice.Start), Math.Min(at, slice.End), string.Empty);
        var start = slice.Source.LineStart(trouble.line) + trouble.IndentationOf(trouble.line);
        return start < slice.End && slice.Text[start] == '*' ? trouble.OtherDash() : null;
    }

    private Finding? Explain() =>
        TableRow()
        ?? OddSpace()
        ?? OtherDash()
        ?? BehindClosing()
        ?? said switch
        {
            _ when Says("cannot start any token") => BadBeginning(),
            _ when Says("invalid mapping") || Says("Mapping values are not allowed") => AtColon(),
            _ when Says("expected ':'") => NoColon(LineWithContentBefore()),
            _ when Says("expected key") || Says("expected '-'") => Misplaced(),
            _ when Says("sequence entries are not allowed") => Syntax(
                at,
                1,
                RestOfLine(at).Length == 1
                    ? "a dash alone is no value"
                    : "a list cannot begin on the line of its key; expected the first - on a line of its own",
                RestOfLine(at).Length == 1 ? $"leave {KeyOfLine()} out when it is not known" : "begin a new line before the -"
            ),
            _ when Says("keys are not allowed") => Syntax(
                at,
                1,
                RestOfLine(at).Length == 1 ? "a question mark alone is no value" : "a value cannot begin with ? and a space",
                RestOfLine(at).Length == 1
                    ? $"leave {KeyOfLine()} out when it is not known; a note may say why"
                    : $"{InQuotes()}, or leave the key out when nothing is known"
            ),
            _ when Says("block scalar") => AtBlock(),
            _ when Says("comment") => Syntax(
                at,
                1,
                "a comment begins where none can; expected a space before # and the value on one line",
                "write a space before #, or put the value in quotes"
            ),
            _ when Says("node content") => Syntax(at, 1, $"a value cannot begin with {Letter()}", InQuotes()),
            _ => null,
        };

    private string KeyOfLine()
    {
        var content = slice.Source.Line(line).Trim();
        var key = content[..Math.Max(content.IndexOf(':'), 0)].TrimStart("- ").Trim();
        return key.Length is > 0 and <= 60 ? key.ToString() : "the key";
    }

    private Finding? TableRow()
    {
        foreach (var number in Lines())
        {
            var start = slice.Source.LineStart(number) + IndentationOf(number);
            var content = RestOfLine(start);
            if (LineCures.IsTableRow(content))
            {
                return Syntax(
                    start,
                    content.Length,
                    $"a row of a table stands here: {Quotation.Quote(content)}; expected each value after its key",
                    "write it as an item, - { key: value, key: value }, with the keys that the items around it have"
                );
            }
        }

        return null;
    }

    /// <summary>A space that YAML takes for a letter, in the indentation or behind a dash or a colon.</summary>
    private Finding? OddSpace()
    {
        foreach (var number in Lines())
        {
            var start = slice.Source.LineStart(number);
            var text = slice.Source.Line(number);
            var first = text.IndexOfAnyExcept(' ', '-');
            var odd =
                first >= 0 && IsOddSpace(text[first]) ? first
                : text.IndexOf(':') is >= 0 and var colon && colon + 1 < text.Length && IsOddSpace(text[colon + 1]) ? colon + 1
                : -1;
            if (odd >= 0)
            {
                var where =
                    odd != first ? "after the colon"
                    : first > 0 && text[first - 1] == '-' ? "after the dash"
                    : "in the indentation";
                var run = text[odd..].IndexOfAnyExcept(text[odd]) is > 1 and var length ? length : 1;
                return Syntax(
                    start + odd,
                    1,
                    run > 1
                        ? $"{Text(run)} no-break spaces stand {where}, which YAML takes for letters; expected ordinary spaces"
                        : $"a no-break space stands {where}, which YAML takes for a letter; expected an ordinary space",
                    run > 1 ? $"delete them and type {Text(run)} spaces" : "delete it and type a space"
                );
            }
        }

        return null;
    }

    private Finding? OtherDash()
    {
        var start = slice.Source.LineStart(line) + IndentationOf(line);
        var content = RestOfLine(start);
        return LineCures.WithDash(content) is { } cure
            ? Syntax(
                start,
                cure.Mark.Length,
                cure.Mark == "-"
                    ? $"no space stands after the dash of {Quotation.Quote(content)}"
                    : $"{cure.Mark} begins no item of a list; expected a dash and a space",
                $"write {cure.Line}"
            )
            : null;
    }

    /// <summary>The line where the reader gave up, and the line with content above it.</summary>
    private IEnumerable<int> Lines()
    {
        yield return LineWithContentBefore();
        yield return line;
    }

    private static bool IsOddSpace(char letter) => letter is '\u00A0' or '\u2007' or '\u202F' or '\u3000' or '\u2003' or '\u2009';

    private Finding? BehindClosing()
    {
        var before = slice.Text.AsSpan(slice.Source.LineStart(line)..at).TrimEnd();
        if (before.IsEmpty || before[^1] is not ('"' or '\'' or ']' or '}') || slice.Text[Math.Min(at, slice.End - 1)] is ':' or '#')
        {
            return null;
        }

        var mark = before[^1];
        return Syntax(
            at,
            RestOfLine(at).Length,
            $"{Quotation.Quote(RestOfLine(at))} "
                + (
                    mark is '"' or '\''
                        ? $"stands after the closing quote, for the {mark} before it ends the text; expected the end of the line"
                        : $"stands after the closing {mark}; expected the end of the line"
                ),
            mark is '"' or '\'' && LineCures.WithQuotedValue(slice.Source.Line(line)) is { } cure ? $"write {cure}"
                : mark is '"' or '\''
                    ? $"write {(mark == '"' ? "\\\" for a quote inside double" : "'' for an apostrophe inside single")} quotes"
                : LineCures.WithQuotedValue(slice.Source.Line(line)) is { } quoted ? $"write {quoted}"
                : $"move the {mark} after it"
        );
    }

    private Finding BadBeginning() => Syntax(at, 1, $"a value cannot begin with {Letter()}", InQuotes());

    private string InQuotes() =>
        LineCures.WithQuotedValue(slice.Source.Line(line)) is { } cure && context.Brackets.Count == 0
            ? $"write it in quotes: {cure}"
            : "put the value in quotes";

    private Finding? AtColon()
    {
        var text = slice.Source.Line(line);
        var column = at - slice.Source.LineStart(line);
        var before = text[..column];
        if (before.Contains(": ", StringComparison.Ordinal))
        {
            var start = slice.Source.LineStart(line) + IndentationOf(line);
            if (text.TrimStart().StartsWith('-') && LineCures.InBraces(text.Trim()) is { } braces)
            {
                return Syntax(start, text.Trim().Length, "several keys stand on one line without braces around them", $"write {braces}");
            }

            return Syntax(at, 1, "a second colon with a space after it stands in the value; expected one colon a line", InQuotes());
        }

        // The line goes on with a value above it, which has no colon or has been given its value already.
        var above = LineWithContentBefore();
        var content = slice.Source.Line(above).Trim();
        return HasColon(content) ? Deeper(above, content) : NoColon(above);
    }

    // The line above has its value, so this one can be no part of it: one of the two stands in the wrong column.
    private Finding Deeper(int above, ReadOnlySpan<char> content)
    {
        var start = slice.Source.LineStart(line) + IndentationOf(line);
        if (slice.Source.Line(line).TrimStart().StartsWith("- ") && IndentationOf(above) < IndentationOf(line))
        {
            return Syntax(
                slice.Source.LineStart(above) + IndentationOf(above),
                content.Length,
                $"{Quotation.Quote(content)} ends the list above it, which goes on on line {Text(line)}",
                $"indent it as the lines are that it belongs with, by {Text(KeyColumn(above))} spaces"
            );
        }

        var column = KeyColumnOfLine(above);
        return Syntax(
            start,
            RestOfLine(start).Length,
            $"this key is indented by {Spaces(IndentationOf(line))}, deeper than {Quotation.Quote(content)} above it, which has its value "
                + "already",
            column == 0 ? "write the line without indentation" : $"indent the line by {Spaces(column)}"
        );
    }

    /// <summary>The column at which the keys of a line stand: behind its dash, where it has one.</summary>
    private int KeyColumnOfLine(int number)
    {
        var text = slice.Source.Line(number);
        var first = text.IndexOfAnyExcept(' ', '-');
        return first < 0 ? IndentationOf(number) : first;
    }

    /// <summary>The nearest column above a line at which keys stand, and that is not the line's own.</summary>
    private int KeyColumn(int number)
    {
        var own = IndentationOf(number);
        var first = slice.Source.LineAt(slice.Start);
        for (var above = number - 1; above >= first && above > number - FarthestLines; above--)
        {
            var content = slice.Source.Line(above).TrimStart();
            if (!content.IsEmpty && content[0] is not ('#' or '-') && HasColon(content.TrimEnd()) && IndentationOf(above) > own)
            {
                return IndentationOf(above);
            }
        }

        return own;
    }

    // The words of a block of text that stand no further right than its key.
    private Finding? UnderBlock()
    {
        var above = slice.Source.Line(LineWithContentBefore()).TrimEnd();
        var mark = above.TrimEnd("+-123456789");
        if (mark.Length < 2 || mark[^1] is not ('|' or '>') || mark[^2] != ' ' || above.Length - mark.Length > 2)
        {
            return null;
        }

        var start = slice.Source.LineStart(line) + IndentationOf(line);
        return Syntax(
            start,
            RestOfLine(start).Length,
            $"this line stands no further right than the key of the block of text that {mark[^1]} begins; expected it indented",
            "indent the text by two spaces more than its key"
        );
    }

    private Finding? Misplaced()
    {
        if (UnderBlock() is { } unindented)
        {
            return unindented;
        }

        var content = slice.Source.Line(line).Trim();
        if (context.BlockEnd >= 0 && slice.Source.LineAt(context.BlockEnd) == line - 1 && !HasColon(content))
        {
            return Syntax(
                slice.Source.LineStart(line) + IndentationOf(line),
                content.Length,
                "this line is indented less than the block of text above it; expected the same indentation",
                "indent the line as the first line of the block is"
            );
        }

        if (content.StartsWith("- ", StringComparison.Ordinal))
        {
            return MisplacedItem(content);
        }

        return HasColon(content) ? Misindented() : NoColon(line);
    }

    private Finding? NoColon(int number)
    {
        var start = slice.Source.LineStart(number) + IndentationOf(number);
        var content = RestOfLine(start);
        if (content.IsEmpty)
        {
            return null;
        }

        if (content[0] == '-' && content.Length > 1)
        {
            return Syntax(start, 1, $"no space stands after the dash of {Quotation.Quote(content)}", "write a space after the -");
        }

        if (LineCures.WithColon(content) is { } cure)
        {
            return Syntax(
                start,
                content.Length,
                cure.Sign == ":"
                    ? $"a space stands before the colon of {Quotation.Quote(content)} and none after it"
                    : $"{cure.Sign} stands where a colon is expected in {Quotation.Quote(content)}",
                $"write {cure.Line}"
            );
        }

        var colon = content.IndexOf(':');
        if (colon > 0)
        {
            return Syntax(
                start + colon,
                1,
                $"no space stands after the colon of {Quotation.Quote(content)}",
                content.Length <= 120 ? $"write {content[..colon].TrimEnd()}: {content[(colon + 1)..]}" : "write a space after the colon"
            );
        }

        var above = slice.Source.LineAt(slice.Start) < number ? LineWithContentAbove(number) : number;
        var next =
            content.StartsWith("//", StringComparison.Ordinal) ? $"write a remark after #: # {content[2..].TrimStart()}"
            : MayGoOn(above, number)
                ? $"indent it by {Spaces(KeyColumnOfLine(above) + 2)} if it goes on with line {Text(above)}, "
                    + "else write the colon that it lacks"
            : content.IndexOf(' ') is > 0 and var space && content.Length <= 120 && content[..space].IndexOfAnyExcept(KeyLetters) < 0
                ? $"write {content[..space]}: {content[(space + 1)..].TrimStart()} if that is a key and its value; indent the line "
                    + "when the one above goes on here"
            : content.IndexOfAnyExcept(KeyLetters) < 0 && content.Length <= 120
                ? $"write {content}: if it is the key of what stands below, else indent it when the line above goes on here"
            : "write the key and a colon before it, or indent the line when the one above goes on here";
        var found = content.StartsWith("//", StringComparison.Ordinal)
            ? $"// begins no remark, so {Quotation.Quote(content)} is read as a key"
            : $"{Quotation.Quote(content)} has no colon; expected key: value";
        return Syntax(start, content.Length, found, next);
    }

    // A value in braces has its end, and nothing goes on with it.
    private bool MayGoOn(int above, int number)
    {
        var text = slice.Source.Line(above).TrimEnd();
        return IndentationOf(number) < IndentationOf(above) && HasColon(text) && text[^1] is not ('}' or ']');
    }

    private Finding AtBlock() =>
        Syntax(
            at,
            1,
            "the block of text cannot be read: expected | or > alone on its line and the text below it evenly indented",
            "begin the text on the next line, two spaces further right than the key"
        );

    private int LineWithContentBefore() => LineWithContentAbove(line);

    private int LineWithContentAbove(int number)
    {
        var first = slice.Source.LineAt(slice.Start);
        for (var above = number - 1; above >= first; above--)
        {
            var content = slice.Source.Line(above).TrimStart();
            if (!content.IsEmpty && content[0] != '#')
            {
                return above;
            }
        }

        return Math.Max(number - 1, 1);
    }

    private int IndentationOf(int number)
    {
        var text = slice.Source.Line(number);
        var first = text.IndexOfAnyExcept(' ');
        return first < 0 ? 0 : first;
    }

    private ReadOnlySpan<char> RestOfLine(int offset) =>
        slice.Text.AsSpan(offset..slice.Source.LineEnd(slice.Source.LineAt(offset))).TrimEnd();

    private string Letter() =>
        at < slice.End ? Quotation.Quote(slice.Text.AsSpan(at, char.IsHighSurrogate(slice.Text[at]) ? 2 : 1)) : "nothing";

    private Finding Syntax(int offset, int length, string message, string nextStep) =>
        slice.Error(TextChecks.YamlSyntax, offset, length, message, nextStep);

    private bool Says(string words) => said.Contains(words, StringComparison.Ordinal);

    private static bool HasColon(ReadOnlySpan<char> content) =>
        content.Contains(": ", StringComparison.Ordinal) || content.EndsWith(":", StringComparison.Ordinal);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
