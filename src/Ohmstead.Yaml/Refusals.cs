using System.Buffers;
using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using YamlDotNet.Core.Events;

namespace Ohmstead.Yaml;

/// <summary>What YAML allows and a record does not, with the reason.</summary>
internal static class Refusals
{
    private static readonly SearchValues<char> WordEnds = SearchValues.Create(" \t\r\n,]}");

    internal static Finding AnchorOrTag(YamlSlice slice, NodeEvent node)
    {
        var at = slice.Offset(node.Start);
        return slice.Text[at] == '!' ? Tag(slice, at) : Anchor(slice, at);
    }

    internal static Finding Tag(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.TagUsed,
            at,
            WordLength(slice, at),
            MarkdownPicture.At(slice, at) is null
                ? $"a value cannot begin with ! unless it is in quotes, for YAML takes {Word(slice, at)} for the name of a type; "
                    + "expected a value alone"
                : "a Markdown picture stands here; expected a photograph in braces",
            MarkdownPicture.At(slice, at) ?? InQuotes(slice, at)
        );

    internal static Finding Anchor(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.AnchorUsed,
            at,
            WordLength(slice, at),
            WordLength(slice, at) > 1
                ? $"a value cannot begin with & unless it is in quotes, for YAML takes {Word(slice, at)} for a name by which to repeat it"
                : "a value cannot begin with & unless it is in quotes, for YAML takes what follows for a name by which to repeat it",
            WordLength(slice, at) > 1 ? $"remove {Word(slice, at)} before a figure; else {InQuotes(slice, at)}" : InQuotes(slice, at)
        );

    internal static Finding Alias(YamlSlice slice, AnchorAlias alias) => Alias(slice, slice.Offset(alias.Start));

    internal static Finding Alias(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.AliasUsed,
            at,
            WordLength(slice, at),
            $"a value cannot begin with * unless it is in quotes, for YAML takes {Word(slice, at)} for the name of another place to repeat",
            $"{InQuotes(slice, at)}; else write out what it was to repeat"
        );

    internal static Finding MergeKey(YamlSlice slice, Node key) =>
        slice.Error(
            TextChecks.MergeKeyUsed,
            key.Spot,
            "the merge key << copies another mapping; expected every key to be written out",
            "write the copied keys out"
        );

    internal static Finding KeyNotText(YamlSlice slice, Node key) =>
        slice.Error(
            TextChecks.KeyNotText,
            key.Spot,
            key switch
            {
                MappingNode => "a mapping stands where a key is expected",
                SequenceNode => "a list stands where a key is expected",
                _ => "nothing stands where a key is expected",
            },
            "write the name of the field before the colon"
        );

    internal static Finding NoKey(YamlSlice slice, int colon) =>
        slice.Error(
            TextChecks.KeyNotText,
            colon,
            1,
            "nothing stands before this colon; expected a key",
            "write the name of the field before the colon"
        );

    internal static Finding KeyRepeated(YamlSlice slice, MappingEntry entry, MappingEntry earlier) =>
        new(
            TextChecks.KeyRepeated,
            Severity.Error,
            entry.KeySpot.In(slice.Source.Path),
            $"the key {Quotation.Quote(entry.Key)} stands twice here, first on line {Text(earlier.KeySpot.Line)}",
            (entry.Value, earlier.Value) switch
            {
                (SequenceNode, SequenceNode) =>
                    $"move the items below this line under those of line {Text(earlier.KeySpot.Line)}, then take this line out",
                (ScalarNode one, ScalarNode other) when one.Text == other.Text => "take this line out; it says the same",
                (ScalarNode { IsNothing: false } one, ScalarNode { IsNothing: false } other) =>
                    $"keep {Quotation.Quote(other.Text)} or {Quotation.Quote(one.Text)}, whichever is right, and tell the other in a note; "
                        + "or give the second the key it should have",
                _ => "give the second the key it should have, or join the two",
            }
        )
        {
            Related = [new RelatedPlace(earlier.KeySpot.In(slice.Source.Path), "first written here")],
        };

    /// <summary>The key that begins an item stands again among its keys: the dash of the next item is missing.</summary>
    internal static Finding DashMissing(YamlSlice slice, MappingEntry entry, MappingEntry first)
    {
        var line = slice.Source.Line(entry.KeySpot.Line).Trim();
        return new(
            TextChecks.KeyRepeated,
            Severity.Error,
            entry.KeySpot.In(slice.Source.Path),
            $"no dash stands before {Quotation.Quote(entry.Key)}, which begins a new item as it does on line {Text(first.KeySpot.Line)}",
            line.Length <= 120
                ? $"write - {line}, with the dash in the column of that on line {Text(first.KeySpot.Line)}"
                : "write - and a space before it"
        )
        {
            Related = [new RelatedPlace(first.KeySpot.In(slice.Source.Path), "the item before it begins here")],
        };
    }

    internal static Finding Directive(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.DirectiveUsed,
            at,
            WordLength(slice, at),
            $"the directive {Word(slice, at)} changes how YAML is read; expected none",
            "remove the line"
        );

    internal static Finding SecondDocument(YamlSlice slice, DocumentStart second) => SecondDocument(slice, slice.Offset(second.Start));

    internal static Finding SecondDocument(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.SecondDocument,
            at,
            0,
            "a second YAML document begins here; expected one in a file",
            "remove the line of dashes or dots above, or move what follows to a file of its own"
        );

    internal static Finding NotAMapping(YamlSlice slice, Node root) =>
        slice.Error(
            TextChecks.NotAMapping,
            root.Spot,
            $"{(root is SequenceNode ? "a list" : "a single value")} stands at the top; expected keys with values",
            "write lines of the form key: value, with a space after the colon"
        );

    internal static Finding TooDeep(YamlSlice slice, ParsingEvent node, int deepest) =>
        slice.Error(
            TextChecks.TooDeep,
            slice.Offset(node.Start),
            1,
            $"mappings and lists are nested deeper than the limit of {Text(deepest)} levels",
            "write it flatter; no field of a record needs so many levels"
        );

    internal static Finding TooManyEvents(YamlSlice slice, int at, int limit) =>
        slice.Error(
            TextChecks.TooLarge,
            at,
            0,
            $"more YAML than the limit of {Text(limit)} events stands in this file",
            "divide the record, or raise the limit"
        );

    internal static Finding FieldTooLarge(YamlSlice slice, int from, int to, int limit) =>
        slice.Error(
            TextChecks.TooLarge,
            from,
            to - from,
            $"the value is larger than the limit of {Text(limit)} bytes for one field",
            "move long text to the body below the front matter, or raise the limit"
        );

    internal static Finding Tabs(YamlSlice slice, int at, int others) =>
        slice.Error(
            TextChecks.TabIndentation,
            at,
            1,
            $"a tab stands in the indentation; expected spaces{(others > 0 ? $"; {Text(others)} more lines have one" : string.Empty)}",
            SpacesBelow(slice, slice.Source.LineAt(at)) is var (number, count)
                ? $"delete the tabs and type {Text(count)} spaces, as line {Text(number)} has, if it belongs with that; "
                    + "else two for each level"
                : "replace the tab by spaces, two for each level"
        );

    // The next line tells how far the keys of an item stand, unless it begins an item itself.
    private static (int Number, int Count)? SpacesBelow(YamlSlice slice, int line)
    {
        var below = line + 1;
        if (below > slice.Source.LineAt(slice.End))
        {
            return null;
        }

        var text = slice.Source.Line(below);
        var count = text.IndexOfAnyExcept(' ');
        return count > 1 && text[count] is not ('-' or '\t' or '#') ? (below, count) : null;
    }

    // No record needs any of the three, so a text that begins with its sign was meant nearly always.
    private static string InQuotes(YamlSlice slice, int at)
    {
        var line = slice.Source.LineAt(at);
        var isOfBlock = slice.Text.AsSpan(slice.Source.LineStart(line)..at).IndexOfAny('{', '[') < 0;
        var cure = isOfBlock ? LineCures.WithQuotedValue(slice.Source.Line(line)) : FlowTrouble.PairInQuotes(slice, at);
        return cure is null ? "put the value in quotes if it is text" : $"write it in quotes if it is text: {cure}";
    }

    private static int WordLength(YamlSlice slice, int at)
    {
        var length = slice.Text.AsSpan(at, slice.End - at).IndexOfAny(WordEnds);
        return length < 0 ? slice.End - at : length;
    }

    private static string Word(YamlSlice slice, int at) => Quotation.Quote(slice.Text.AsSpan(at, WordLength(slice, at)));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
