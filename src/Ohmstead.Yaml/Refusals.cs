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
            $"the tag {Word(slice, at)} asks for a type; expected a value alone",
            "remove the tag; put the value in quotes when it should begin with an exclamation mark"
        );

    internal static Finding Anchor(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.AnchorUsed,
            at,
            WordLength(slice, at),
            $"the anchor {Word(slice, at)} prepares a repetition; expected every fact to be written where it belongs",
            "remove the anchor; put the value in quotes when it should begin with an ampersand"
        );

    internal static Finding Alias(YamlSlice slice, AnchorAlias alias) => Alias(slice, slice.Offset(alias.Start));

    internal static Finding Alias(YamlSlice slice, int at) =>
        slice.Error(
            TextChecks.AliasUsed,
            at,
            WordLength(slice, at),
            $"the alias {Word(slice, at)} repeats another place; expected the value itself",
            "write the value out; put it in quotes when it should begin with an asterisk"
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
            $"the key {Quotation.Of(entry.Key)} stands twice here, first on line {Text(earlier.KeySpot.Line)}",
            "keep one of the two, or give the second the name it should have"
        )
        {
            Related = [new RelatedPlace(earlier.KeySpot.In(slice.Source.Path), "first written here")],
        };

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
            "write lines of the form key: value, with a space behind the colon"
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
            "replace the tab by spaces, two for each level"
        );

    private static int WordLength(YamlSlice slice, int at)
    {
        var length = slice.Text.AsSpan(at, slice.End - at).IndexOfAny(WordEnds);
        return length < 0 ? slice.End - at : length;
    }

    private static string Word(YamlSlice slice, int at) => Quotation.Of(slice.Text.AsSpan(at, WordLength(slice, at)));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
