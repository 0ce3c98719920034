using System.Buffers;
using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>Finds what is wrong between brackets and braces: a comma or a closing mark that is missing, one too many, or a line at the left
/// edge.</summary>
internal static class FlowTrouble
{
    // A mapping of a record takes a line or a few; far below, a comment is about something else.
    private const int FarthestLines = 20;

    private static readonly SearchValues<char> WordEnds = SearchValues.Create(" :,\r\n]}");
    private static readonly SearchValues<char> NextValue = SearchValues.Create(",{}[]:");
    private static readonly SearchValues<char> NotPlain = SearchValues.Create("{}[]#\"'");

    /// <summary>The finding, or null when no bracket has to do with it.</summary>
    internal static Finding? Explain(YamlSlice slice, YamlContext context, int at, string said)
    {
        var text = slice.Text;
        if (said.Contains("invalid comment", StringComparison.Ordinal))
        {
            return null;
        }

        if (context.Brackets.Count == 0)
        {
            return at < slice.End && text[at] is '}' or ']'
                ? slice.Error(
                    TextChecks.YamlSyntax,
                    at,
                    1,
                    $"the {text[at]} here closes nothing",
                    $"remove it, or write its {(text[at] == '}' ? '{' : '[')} where it begins"
                )
                : null;
        }

        var open = context.Brackets[^1];
        if (at >= slice.End || LeavesTheBracket(slice, context.Brackets[0], at))
        {
            return CutByComment(slice, open, at) ?? Unclosed(slice, open, at);
        }

        return text[at] switch
        {
            '}' or ']' when text[at] != Closing(text[open]) => slice.Error(
                TextChecks.YamlSyntax,
                at,
                1,
                $"the {text[at]} here does not close the {text[open]} of line {LineOf(slice, open)}; expected {Closing(text[open])}",
                context.Brackets.Any(bracket => text[at] == Closing(text[bracket]))
                    ? $"write {Closing(text[open])} before it"
                    : $"write {Closing(text[open])} in its place"
            ),
            ':' => AtColon(slice, open, at),
            ',' or '}' or ']' => slice.Error(
                TextChecks.YamlSyntax,
                at,
                1,
                $"nothing stands before this {text[at]}; expected a value",
                "remove the comma, or write the value"
            ),
            _ when IsFirstOnLine(slice, at) && said.Length == 0 => slice.Error(
                TextChecks.YamlSyntax,
                at,
                0,
                $"this line belongs to the {text[open]} of line {LineOf(slice, open)} and begins at its left edge; expected it further "
                    + "right",
                "indent the line by two spaces more than the line with the opening mark"
            ),
            _ => MissingComma(slice, open, at),
        };
    }

    private static Finding AtColon(YamlSlice slice, int open, int colon)
    {
        // The word before the colon was meant as a key; what stands before the word tells what is missing.
        var text = slice.Text;
        var word = colon;
        while (word > open + 1 && !char.IsWhiteSpace(text[word - 1]) && text[word - 1] is not (',' or ':'))
        {
            word--;
        }

        var before = text.AsSpan(open + 1, word - open - 1).TrimEnd();
        return before.EndsWith(":", StringComparison.Ordinal)
            ? slice.Error(
                TextChecks.YamlSyntax,
                colon,
                1,
                "a second colon follows in the same value; expected a comma or the end of the value",
                Whole(slice, open, word) is { } whole ? $"write it in quotes: {whole}" : "put the value in quotes"
            )
            : MissingComma(slice, open, word);
    }

    /// <summary>The key and the whole value in quotes, where a colon stands in the value: <c>what: "print: worn"</c>.</summary>
    private static string? Whole(YamlSlice slice, int open, int word) =>
        PairAt(slice, word) is (var from, { } pair) && from > open ? pair : null;

    /// <summary>The key and the value in quotes, of the pair between braces that an offset stands in; null where it stands in none, or is
    /// too long to be told.</summary>
    internal static string? PairInQuotes(YamlSlice slice, int at) => PairAt(slice, at).Pair;

    private static (int From, string? Pair) PairAt(YamlSlice slice, int word)
    {
        var line = slice.Text.AsSpan(0, slice.Source.LineEnd(slice.Source.LineAt(word)));
        var from = slice.Text.AsSpan(0, word).TrimEnd().LastIndexOfAny(',', '{', '\n') + 1;
        var end = line[word..].IndexOfAny(',', '}') is >= 0 and var length ? word + length : line.Length;
        var pair = slice.Text.AsSpan(from..end).Trim();
        return (from, LineCures.WithQuotedValue(pair));
    }

    private static Finding MissingComma(YamlSlice slice, int open, int at)
    {
        var length = slice.Text.AsSpan(at, slice.End - at).IndexOfAny(WordEnds);
        var word = Quotation.Quote(slice.Text.AsSpan(at, Math.Max(length, 1)));
        var before = slice.Text.AsSpan(open, at - open).TrimEnd();
        if (before.EndsWith(";", StringComparison.Ordinal))
        {
            var sign = open + before.Length - 1;
            return slice.Error(
                TextChecks.YamlSyntax,
                sign,
                1,
                $"a semicolon stands before {word}; expected a comma",
                "write a comma in its place, and so for each other in these braces"
            );
        }

        // YAML's own signs at the beginning of the value before it are why the comma is not seen.
        var pair = slice.Text.AsSpan(open, at - open).TrimEnd().TrimEnd(',');
        var value = pair[..Math.Max(pair.LastIndexOf(": ", StringComparison.Ordinal), 0)].Length;
        if (value > 0 && open + value + 2 < at && slice.Text[open + value + 2] == '&')
        {
            return Refusals.Anchor(slice, open + value + 2);
        }

        return slice.Error(
            TextChecks.YamlSyntax,
            at,
            Math.Max(length, 1),
            $"a comma is missing before {word}; expected , or {Closing(slice.Text[open])}",
            "write a comma after the value before it"
        );
    }

    /// <summary>A number sign that hides the closing mark from the reader: <c>{ complaint: pen #2 drifts }</c>.</summary>
    private static Finding? CutByComment(YamlSlice slice, int open, int at)
    {
        var last = Math.Min(slice.Source.LineAt(Math.Min(at, slice.End)), slice.Source.LineAt(open) + FarthestLines);
        for (var line = slice.Source.LineAt(open); line <= last; line++)
        {
            var start = Math.Max(slice.Source.LineStart(line), open);
            var end = slice.Source.LineEnd(line);
            var sign = end > start ? slice.Text.AsSpan(start, end - start).IndexOf(" #", StringComparison.Ordinal) : -1;
            var rest = sign < 0 ? [] : slice.Text.AsSpan(start + sign + 1, end - start - sign - 1);
            if (rest.Contains(Closing(slice.Text[open])))
            {
                return slice.Error(
                    TextChecks.ValueCutByComment,
                    start + sign + 1,
                    rest.Length,
                    $"the {slice.Text[open]} of line {LineOf(slice, open)} is never closed, for {Quotation.Quote(rest)} is read as a "
                        + "comment",
                    HiddenPair(slice, start, start + sign + 1 + rest.LastIndexOf(Closing(slice.Text[open]))) is { } pair
                        ? $"write it in quotes: {pair}"
                        : "put the value in quotes"
                );
            }
        }

        return null;
    }

    // From the last key before the sign to the closing mark behind it, where no other value stands between the two.
    private static string? HiddenPair(YamlSlice slice, int start, int closing)
    {
        var text = slice.Text.AsSpan(start, closing - start);
        var sign = text.IndexOf(" #", StringComparison.Ordinal);
        var from = text[..sign].LastIndexOfAny(',', '{') + 1;
        return text[sign..].IndexOfAny(NextValue) < 0 ? LineCures.WithQuotedValue(text[from..]) : null;
    }

    private static Finding Unclosed(YamlSlice slice, int open, int at)
    {
        var mark = slice.Text[open];
        var line = slice.Source.Line(slice.Source.LineAt(open)).Trim();
        var isWhole =
            mark == '{'
            && line.StartsWith("- {", StringComparison.Ordinal)
            && line.Length <= 120
            && line[3..].IndexOfAny(NotPlain) < 0
            && !line.EndsWith(",", StringComparison.Ordinal)
            && slice.Source.LineAt(Math.Min(at, slice.End)) <= slice.Source.LineAt(open) + 1;
        return slice.Error(
            TextChecks.YamlSyntax,
            open,
            1,
            $"the {mark} opened here is never closed; expected {Closing(mark)}",
            isWhole ? $"write {line} }}" : $"write {Closing(mark)} after the last value that belongs to it"
        ) with
        {
            Related = [new RelatedPlace(slice.Source.PlaceAt(at), "something else begins here")],
        };
    }

    /// <summary>True when the line at an offset stands no further right than the line with the bracket and looks like an entry of its
    /// own.</summary>
    private static bool LeavesTheBracket(YamlSlice slice, int open, int at)
    {
        var openLine = slice.Source.Line(slice.Source.LineAt(open));
        var number = slice.Source.LineAt(at);
        var line = slice.Source.Line(number);
        var indentation = Indentation(line);
        if (number == slice.Source.LineAt(open) || indentation > Indentation(openLine))
        {
            return false;
        }

        var content = line[indentation..];
        return content.StartsWith("- ", StringComparison.Ordinal)
            || content.Contains(": ", StringComparison.Ordinal)
            || content.EndsWith(":", StringComparison.Ordinal);
    }

    private static int Indentation(ReadOnlySpan<char> line)
    {
        var first = line.IndexOfAnyExcept(' ');
        return first < 0 ? line.Length : first;
    }

    private static bool IsFirstOnLine(YamlSlice slice, int at) =>
        slice.Text.AsSpan(slice.Source.LineStart(slice.Source.LineAt(at))..at).IsWhiteSpace();

    private static char Closing(char open) => open == '[' ? ']' : '}';

    private static string LineOf(YamlSlice slice, int at) => slice.Source.LineAt(at).ToString(CultureInfo.InvariantCulture);
}
