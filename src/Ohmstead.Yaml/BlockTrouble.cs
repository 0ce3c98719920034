using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>Finds what is wrong in indented lines: a colon, a space or a quote that is missing, one too many, or an indentation that fits
/// nothing.</summary>
internal sealed class BlockTrouble
{
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

    private Finding? Explain() =>
        BehindClosing()
        ?? said switch
        {
            _ when Says("cannot start any token") => BadBeginning(),
            _ when Says("invalid mapping") || Says("Mapping values are not allowed") => AtColon(),
            _ when Says("expected ':'") => NoColon(LineWithContentBefore()),
            _ when Says("expected key") || Says("expected '-'") => Misplaced(),
            _ when Says("sequence entries are not allowed") => Syntax(
                at,
                1,
                "a list cannot begin on the line of its key; expected the first - on a line of its own",
                "begin a new line before the -"
            ),
            _ when Says("keys are not allowed") => Syntax(at, 1, "a value cannot begin with ? and a space", "put the value in quotes"),
            _ when Says("block scalar") => AtBlock(),
            _ when Says("comment") => Syntax(
                at,
                1,
                "a comment begins where none can; expected a space before # and the value on one line",
                "write a space before #, or put the value in quotes"
            ),
            _ when Says("node content") => Syntax(at, 1, $"a value cannot begin with {Letter()}", "put the value in quotes"),
            _ => null,
        };

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
            $"{Quotation.Of(RestOfLine(at))} stands behind the closing {(mark is '"' or '\'' ? "quote" : mark)}; "
                + "expected the end of the line",
            mark switch
            {
                '\'' => "write '' for an apostrophe inside single quotes",
                '"' => "write \\\" for a quote inside double quotes",
                _ => $"remove it, or move the {mark} behind it",
            }
        );
    }

    private Finding BadBeginning() => Syntax(at, 1, $"a value cannot begin with {Letter()}", "put the value in quotes");

    private Finding? AtColon()
    {
        var text = slice.Source.Line(line);
        var column = at - slice.Source.LineStart(line);
        var before = text[..column];
        if (before.Contains(": ", StringComparison.Ordinal))
        {
            return Syntax(
                at,
                1,
                "a second colon with a space behind it stands in the value; expected one colon a line",
                "put the value in quotes"
            );
        }

        // The line goes on with a value above it, which has no colon or has been given its value already.
        var above = LineWithContentBefore();
        var content = slice.Source.Line(above).Trim();
        return HasColon(content)
            ? Syntax(
                slice.Source.LineStart(line) + IndentationOf(line),
                column - IndentationOf(line),
                $"this key is indented deeper than {Quotation.Of(content)} above it, which has its value already",
                "indent the line as the line above it is, or remove the value above"
            )
            : NoColon(above);
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
            return Syntax(
                at,
                1,
                "a list item stands where a key is expected",
                "indent the item as the items above it are, or write the key before it"
            );
        }

        return HasColon(content) ? Misindented() : NoColon(line);
    }

    private Finding Misindented()
    {
        if (Says("expected '-'"))
        {
            return Syntax(
                at,
                RestOfLine(at).Length,
                "this line is no item of the list above it; expected - at its beginning",
                "write - before it, or indent it as the list's key is"
            );
        }

        var indentation = IndentationOf(line);
        return Syntax(
            slice.Source.LineStart(line) + IndentationOf(line),
            RestOfLine(slice.Source.LineStart(line) + IndentationOf(line)).Length,
            $"this line is indented by {Text(indentation)} {(indentation == 1 ? "space" : "spaces")}, which fits no line above it",
            "indent the line as the lines are that it belongs with"
        );
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
            return Syntax(start, 1, $"no space stands behind the dash of {Quotation.Of(content)}", "write a space behind the -");
        }

        var colon = content.IndexOf(':');
        return colon > 0
            ? Syntax(start + colon, 1, $"no space stands behind the colon of {Quotation.Of(content)}", "write a space behind the colon")
            : Syntax(
                start,
                content.Length,
                $"{Quotation.Of(content)} has no colon; expected key: value",
                "write the key and a colon before it"
            );
    }

    private Finding AtBlock() =>
        Syntax(
            at,
            1,
            "the block of text cannot be read: expected | or > alone on its line and the text below it evenly indented",
            "begin the text on the next line, two spaces further right than the key"
        );

    private int LineWithContentBefore()
    {
        var first = slice.Source.LineAt(slice.Start);
        for (var above = line - 1; above >= first; above--)
        {
            var content = slice.Source.Line(above).TrimStart();
            if (!content.IsEmpty && content[0] != '#')
            {
                return above;
            }
        }

        return Math.Max(line - 1, 1);
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
        at < slice.End ? Quotation.Of(slice.Text.AsSpan(at, char.IsHighSurrogate(slice.Text[at]) ? 2 : 1)) : "nothing";

    private Finding Syntax(int offset, int length, string message, string nextStep) =>
        slice.Error(TextChecks.YamlSyntax, offset, length, message, nextStep);

    private bool Says(string words) => said.Contains(words, StringComparison.Ordinal);

    private static bool HasColon(ReadOnlySpan<char> content) =>
        content.Contains(": ", StringComparison.Ordinal) || content.EndsWith(":", StringComparison.Ordinal);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
