using System.Buffers;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Yaml;

/// <summary>Catches text that YAML reads in another way than it was meant, without an error of its own.</summary>
internal static class PlainScalarTraps
{
    private static readonly SearchValues<char> Number = SearchValues.Create(".,0123456789");
    private static readonly SearchValues<char> SignedNumber = SearchValues.Create("+-.,0123456789");

    // A longer chain of digits and commas is no number any more; what follows is left out, and the finding stands.
    private const int LongestNumber = 60;

    /// <summary>Warns when a plain value is followed by a space and a number sign that opens no comment as people write them: <c>page
    /// #3</c>.</summary>
    internal static void AddCutByComment(FindingList findings, YamlSlice slice, int valueEnd)
    {
        var text = slice.Text;
        var at = valueEnd;
        while (at < slice.End && text[at] is ' ' or '\t')
        {
            at++;
        }

        if (at == valueEnd || at + 1 >= slice.End || text[at] != '#' || text[at + 1] is ' ' or '\t' or '\r' or '\n' or '#')
        {
            return;
        }

        var rest = slice.Source.LineEnd(slice.Source.LineAt(at)) - at;
        findings.Add(
            new Finding(
                TextChecks.ValueCutByComment,
                Severity.Warning,
                slice.Source.PlaceAt(at, rest),
                $"the value ends before {Quotation.Quote(text.AsSpan(at, rest))}, which is read as a comment",
                LineCures.WithQuotedValue(slice.Source.Line(slice.Source.LineAt(at))) is { } cure
                    ? $"write it in quotes: {cure}; or a space after # when it is a comment"
                    : "put the value in quotes, or write a space after # when it is a comment"
            )
        );
    }

    /// <summary>Joins what a comma inside a number cut in two: <c>{ capacitance: 1,287 µF }</c> reads as 1 and a key <c>287 µF</c> with
    /// nothing.</summary>
    /// <returns>True when the entry was part of the number before it and is no entry.</returns>
    internal static bool JoinAtComma(
        FindingList findings,
        YamlSlice slice,
        List<MappingEntry> entries,
        int first,
        ScalarNode key,
        Node value
    )
    {
        if (
            entries.Count == first
            || !BeginsWithDigit(key)
            || value is not ScalarNode { Style: ScalarWriting.Plain, Text: "" }
            || entries[^1].Value is not ScalarNode before
            || !EndsWithDigit(before)
            || !IsCutHere(slice, key)
        )
        {
            return false;
        }

        if (before.Text.Length < LongestNumber)
        {
            entries[^1] = entries[^1] with { Value = Join(findings, slice, before, key) };
        }

        return true;
    }

    /// <summary>Whether a word between braces has no colon at all: <c>{ note: reads low, then rose }</c>.</summary>
    internal static bool IsWithoutColon(YamlSlice slice, ScalarNode key, Node value) =>
        key.Style == ScalarWriting.Plain && value is ScalarNode { Style: ScalarWriting.Plain, Text: "" } && IsCutHere(slice, key);

    /// <summary>Reports a colon without a space behind it between braces: <c>{ date:2026-02-02 }</c> reads as a key with nothing.</summary>
    internal static void AddMissingSpace(FindingList findings, YamlSlice slice, ScalarNode key, Node value)
    {
        var colon = key.Style == ScalarWriting.Plain ? key.Text.IndexOf(':', StringComparison.Ordinal) : -1;
        if (colon > 0 && value is ScalarNode { Style: ScalarWriting.Plain, Text: "" } && IsCutHere(slice, key))
        {
            findings.Add(
                slice.Error(
                    TextChecks.YamlSyntax,
                    slice.Source.OffsetOf(key.Spot) + colon,
                    1,
                    $"no space stands after the colon of {Quotation.Quote(key.Text)}",
                    $"write {key.Text[..colon]}: {key.Text[(colon + 1)..]}"
                )
            );
        }
    }

    /// <summary>Joins what a comma cut in a list: <c>[1,287 µF]</c>, where the first part has no unit and the second has one.</summary>
    internal static bool JoinAtComma(FindingList findings, YamlSlice slice, List<Node> items, int first, Node item)
    {
        if (
            items.Count == first
            || item is not ScalarNode second
            || items[^1] is not ScalarNode before
            || !BeginsWithDigit(second)
            || !EndsWithDigit(before)
            || before.Text.AsSpan().IndexOfAnyExcept(SignedNumber) >= 0
            || second.Text.AsSpan().IndexOfAnyExcept(Number) < 0
            || slice.Text[slice.Source.OffsetOf(second.Spot) - 1] != ','
        )
        {
            return false;
        }

        items[^1] = Join(findings, slice, before, second);
        return true;
    }

    private static bool BeginsWithDigit(ScalarNode node) =>
        node.Style == ScalarWriting.Plain && node.Text.Length > 0 && char.IsAsciiDigit(node.Text[0]);

    private static bool EndsWithDigit(ScalarNode node) =>
        node.Style == ScalarWriting.Plain && node.Text.Length > 0 && char.IsAsciiDigit(node.Text[^1]);

    // A key with its colon is a key, whatever it begins with. Remarks may stand before what ends it.
    private static bool IsCutHere(YamlSlice slice, ScalarNode key)
    {
        var rest = slice.Text.AsSpan(slice.Source.EndOf(key.Spot)).TrimStart();
        while (rest.StartsWith('#'))
        {
            rest = rest[(rest.IndexOfAny('\r', '\n') is >= 0 and var length ? length : rest.Length)..].TrimStart();
        }

        return rest.IsEmpty || rest[0] is ',' or '}';
    }

    private static ScalarNode Join(FindingList findings, YamlSlice slice, ScalarNode before, ScalarNode after)
    {
        var from = slice.Source.OffsetOf(before.Spot);
        var to = slice.Source.EndOf(after.Spot);
        var joined = new ScalarNode(slice.Source.SpotAt(from, to - from), $"{before.Text},{after.Text}", ScalarWriting.Plain);
        var comma = slice.Text.LastIndexOf(',', slice.Source.OffsetOf(after.Spot));

        // 1,287,500 is one mistake: the finding at its first comma is written anew.
        var place = slice.Source.PlaceAt(comma, 1);
        if (before.Text.Contains(',', StringComparison.Ordinal) && findings.Last is { Check: TextChecks.DecimalComma } last)
        {
            place = last.Place;
            findings.TakeBackLast();
        }

        var (expected, next) = Meanings(joined.Text);
        findings.Add(
            new Finding(
                TextChecks.DecimalComma,
                Severity.Error,
                place,
                $"the comma cuts the number {Quotation.Quote(joined.Text)} in two; expected {expected}",
                next
            )
        );
        return joined;
    }

    private static (string Expected, string NextStep) Meanings(string written)
    {
        var point = written.Replace(',', '.');
        var whole = written.Replace(",", string.Empty, StringComparison.Ordinal);
        var isOneComma = written.AsSpan().Count(',') == 1;
        return (isOneComma, MayBeThousands(written)) switch
        {
            (true, true) => ($"{point} or {whole}", $"write {point} if the comma is a decimal mark, {whole} if it separates thousands"),
            (true, false) => (point, $"write {point}"),
            (false, true) => (whole, $"write {whole}"),
            _ => ("a number with a decimal point", "write the number with a decimal point and no commas"),
        };
    }

    /// <summary>True when every comma has one to three digits, not a lone zero, before it and exactly three behind it.</summary>
    private static bool MayBeThousands(ReadOnlySpan<char> written)
    {
        var before = written[..written.IndexOf(',')];
        var leading = before.Length - (before.LastIndexOfAnyExceptInRange('0', '9') + 1);
        if (leading is 0 or > 3 || before[^leading] == '0')
        {
            return false;
        }

        while (written.IndexOf(',') is >= 0 and var comma)
        {
            written = written[(comma + 1)..];
            var digits = written.IndexOfAnyExceptInRange('0', '9');
            if ((digits < 0 ? written.Length : digits) != 3)
            {
                return false;
            }
        }

        return true;
    }
}
