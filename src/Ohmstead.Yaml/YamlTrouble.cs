using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;
using YamlDotNet.Core;

namespace Ohmstead.Yaml;

/// <summary>Says in the words of this product what an exception of the YAML library is about, at the place where a person would
/// look.</summary>
/// <remarks>The library's text never reaches anybody: it speaks of scanners and tokens, and changes with each release.</remarks>
internal sealed class YamlTrouble
{
    private readonly YamlSlice slice;
    private readonly int from;
    private readonly int to;
    private readonly int position;
    private readonly string said;
    private readonly bool isPlaced;
    private readonly bool isBadTag;

    private YamlTrouble(YamlSlice slice, Exception exception, int position)
    {
        this.slice = slice;
        this.position = position;
        if (exception is YamlException yaml && (yaml.End.Index > 0 || yaml.Start.Line > 1))
        {
            from = slice.Offset(yaml.Start);
            to = slice.Offset(yaml.End);
            isPlaced = true;
        }
        else
        {
            from = to = position;
        }

        isBadTag = exception is ArgumentException and not ArgumentOutOfRangeException;
        said = exception is YamlException ? exception.Message : string.Empty;
    }

    /// <summary>The one finding for a file that cannot be read.</summary>
    /// <param name="slice">The YAML.</param>
    /// <param name="exception">What the library threw.</param>
    /// <param name="position">Where its scanner stood.</param>
    internal static Finding Explain(YamlSlice slice, Exception exception, int position) =>
        new YamlTrouble(slice, exception, position).Explain();

    private Finding Explain()
    {
        if ((BlockTrouble.Bullet(slice, from) ?? BlockTrouble.Row(slice, from) ?? Tab() ?? Refused()) is { } named)
        {
            return named;
        }

        if (BareSign() is { } sign)
        {
            return sign;
        }

        var context = YamlContext.At(slice.Text, slice.Start, from);
        return Quoted(context)
            ?? LateQuote(context)
            ?? FlowTrouble.Explain(slice, context, from, said)
            ?? BlockTrouble.Explain(slice, context, from, said)
            ?? Unknown();
    }

    private Finding Unknown() =>
        slice.Error(
            TextChecks.YamlSyntax,
            from,
            0,
            "this cannot be read as YAML",
            "put the value in quotes, or compare the line with those above"
        );

    /// <summary>A reading that begins with the sign by which YAML begins a block of text: <c>esr: &gt; 20 MΩ</c>.</summary>
    private Finding? BareSign()
    {
        var line = slice.Source.LineAt(Math.Min(from, slice.End));
        var start = slice.Source.LineStart(line);
        var text = slice.Text.AsSpan(start..slice.Source.LineEnd(line));
        var at = text.IndexOf(": >", StringComparison.Ordinal);
        while (at >= 0 && start + at <= from)
        {
            var value = text[(at + 2)..];
            var figure = value[1..].TrimStart('=').TrimStart(' ');
            if (!figure.IsEmpty && (char.IsAsciiDigit(figure[0]) || figure[0] is '.' or '-') && !IsIndentation(value[1..]))
            {
                var end = value.IndexOfAny(",}]#") is >= 0 and var length ? length : value.Length;
                var shown = value[..end].TrimEnd();
                return slice.Error(
                    TextChecks.YamlSyntax,
                    start + at + 2,
                    shown.Length,
                    $"a value cannot begin with > unless it is in quotes: {Quotation.Quote(shown)}",
                    $"write it in quotes: \"{shown}\""
                );
            }

            var next = text[(at + 1)..].IndexOf(": >", StringComparison.Ordinal);
            at = next < 0 ? -1 : at + 1 + next;
        }

        return null;
    }

    // >2 and >-2 alone on their line are a block of text with its indentation.
    private static bool IsIndentation(ReadOnlySpan<char> header) => header.TrimEnd().Length <= 2 && header.IndexOf(' ') < 0;

    private Finding? Tab()
    {
        var line = slice.Source.LineAt(from);
        var isSaid = Says(" tab ");
        foreach (var tab in slice.Tabs.All)
        {
            if (slice.Source.LineAt(tab) == line || (isSaid && tab >= Math.Min(from, position)))
            {
                return Refusals.Tabs(slice, tab, 0);
            }
        }

        return isSaid ? Refusals.Tabs(slice, isPlaced ? to : position, 0) : null;
    }

    /// <summary>Things that are refused in any case and that the library stumbled over before it could tell them by an event.</summary>
    private Finding? Refused()
    {
        if (Says("document end") || Says("document start"))
        {
            return slice.Text[Math.Min(from, slice.End - 1)] is '}' or ']' ? null : Refusals.SecondDocument(slice, from);
        }

        if (said.Length == 0 && AfterDocumentEnd() is >= 0 and var second)
        {
            return Refusals.SecondDocument(slice, second);
        }

        var mark = isBadTag ? LastTag() : StartOfMark(from);
        if (mark < 0)
        {
            return null;
        }

        return slice.Text[mark] switch
        {
            '!' when Says("tag") || said.Length == 0 => Refusals.Tag(slice, mark),
            '&' when Says("nchor") => Refusals.Anchor(slice, mark),
            '*' when Says("nchor") || Says("node, did not find expected token") => Refusals.Alias(slice, mark),
            _ => null,
        };
    }

    /// <summary>The beginning of a tag, an anchor or an alias at or shortly before an offset on the same line, or -1.</summary>
    private int StartOfMark(int offset)
    {
        var line = slice.Source.LineStart(slice.Source.LineAt(Math.Min(offset, slice.End)));
        for (var at = Math.Min(offset, slice.End - 1); at >= line; at--)
        {
            if (slice.Text[at] is '!' or '&' or '*' && (at == line || IsBeforeMark(slice.Text[at - 1])))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>The last tag before the place where the library gave up, which may be lines further down; or -1.</summary>
    private int LastTag()
    {
        for (var at = Math.Min(position, slice.End) - 1; at >= slice.Start; at--)
        {
            if (slice.Text[at] == '!' && (at == slice.Start || IsBeforeMark(slice.Text[at - 1])))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>The offset of the first line with content below a line of three dots, or -1.</summary>
    private int AfterDocumentEnd()
    {
        var last = slice.Source.LineAt(position);
        for (var line = slice.Source.LineAt(slice.Start); line < last; line++)
        {
            if (slice.Source.Line(line).TrimEnd().SequenceEqual("..."))
            {
                return slice.Source.LineStart(line + 1);
            }
        }

        return -1;
    }

    private Finding? Quoted(YamlContext context)
    {
        var quote =
            Says("quoted scalar") ? from
            : said.Length == 0 ? context.OpenQuote
            : -1;
        if (quote < 0)
        {
            return null;
        }

        var isEscape = Says("escape") || Says("hexadecimal") || Says("surrogates") || said.Length == 0;
        if (isEscape && Escapes.FirstFault(slice.Source, quote + 1, slice.Source.LineEnd(slice.Source.LineAt(to))) is { } fault)
        {
            return fault;
        }

        if ((Says("wrong indentation") || Says("end of stream")) && OpenQuote.Explain(slice, context, quote) is { } open)
        {
            return open;
        }

        if (Says("wrong indentation"))
        {
            var line = slice.Source.LineAt(to).ToString(CultureInfo.InvariantCulture);
            return slice.Error(
                TextChecks.YamlSyntax,
                quote,
                1,
                $"the quote opened here is not closed before line {line}, where something else begins",
                "close the quote at the end of the value"
            );
        }

        return Says("end of stream") || Says("document indicator") ? UnclosedQuote(quote) : null;
    }

    /// <summary>A quote that found its end at the opening quote of another value, lines further down: that value follows without a
    /// space.</summary>
    private Finding? LateQuote(YamlContext context)
    {
        if (context.LongQuote < 0 || context.LongQuoteEnd + 1 != from)
        {
            return null;
        }

        var line = slice.Source.LineAt(from);
        var rest = slice.Text.AsSpan(from..slice.Source.LineEnd(line));
        return slice.Error(
            TextChecks.YamlSyntax,
            context.LongQuote,
            1,
            $"the quote opened here closes only on line {line.ToString(CultureInfo.InvariantCulture)}, before {Quotation.Quote(rest)}",
            "close the quote at the end of its value"
        );
    }

    private Finding UnclosedQuote(int quote) =>
        slice.Error(TextChecks.YamlSyntax, quote, 1, "the quote opened here is never closed", "close it at the end of the value");

    private static bool IsBeforeMark(char before) => before is ' ' or '\t' or '\r' or '\n' or '[' or '{' or ',' or ']' or '}';

    private bool Says(string words) => said.Contains(words, StringComparison.Ordinal);
}
