using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml.Plain;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Ohmstead.Yaml;

/// <summary>Builds nodes from the events of one document, and refuses what a record does not need.</summary>
/// <remarks>A method that returns null has met something refused and left the reason in <see cref="refusal"/>.</remarks>
internal sealed class NodeBuilder
{
    // The walk calls itself once a level, so even a depth that was asked for has a bound that the stack bears.
    private const int DeepestEver = 256;

    private readonly YamlSlice slice;
    private readonly ReadingLimits limits;
    private readonly NodeBuffers buffers;
    private readonly FindingList findings;
    private readonly Scanner scanner;
    private readonly Parser parser;
    private readonly int deepest;
    private int events;
    private Finding? refusal;

    internal NodeBuilder(YamlSlice slice, ReadingLimits limits, NodeBuffers buffers, FindingList findings)
    {
        this.slice = slice;
        this.limits = limits;
        this.buffers = buffers;
        this.findings = findings;
        deepest = Math.Min(limits.Depth, DeepestEver);
        scanner = new Scanner(new SliceReader(slice.Text, slice.Start, slice.End), skipComments: true);
        parser = new Parser(scanner);
    }

    /// <summary>Where the scanner stands, as an offset in the file: the place of trouble that brings no place of its own.</summary>
    internal int Position => slice.Offset(scanner.CurrentPosition);

    /// <summary>Reads the one document there may be. The library's exceptions pass through.</summary>
    internal MappingNode? Read()
    {
        var root = ReadDocument();
        if (refusal is not null)
        {
            findings.Add(refusal);
        }

        return root;
    }

    private MappingNode? ReadDocument()
    {
        Next();
        if (Next() is not DocumentStart)
        {
            return Empty();
        }

        var first = Next();
        var root = ReadNode(first, 1);
        if (root is null || Next() is null || Next() is not { } after)
        {
            return null;
        }

        return after is DocumentStart second
            ? Refuse<MappingNode>(Refusals.SecondDocument(slice, second))
            : root switch
            {
                MappingNode mapping => mapping,
                ScalarNode { IsNothing: true } => Empty(),
                _ => Refuse<MappingNode>(Refusals.NotAMapping(slice, root)),
            };
    }

    private MappingNode Empty() => new(slice.Source.SpotAt(slice.Start), [], IsFlow: false);

    private ParsingEvent? Next()
    {
        if (++events > limits.Events)
        {
            return Refuse<ParsingEvent>(Refusals.TooManyEvents(slice, Position, limits.Events));
        }

        return parser.MoveNext() ? parser.Current : throw new InvalidOperationException("the events end before the stream does");
    }

    private Node? ReadNode(ParsingEvent? current, int depth, bool isItem = false)
    {
        if (current is NodeEvent { Anchor.IsEmpty: false } or NodeEvent { Tag.IsEmpty: false })
        {
            return Refuse<Node>(Refusals.AnchorOrTag(slice, (NodeEvent)current));
        }

        return current switch
        {
            null => null,
            Scalar scalar => ReadScalar(scalar),
            AnchorAlias alias => Refuse<Node>(Refusals.Alias(slice, alias)),
            _ when depth > deepest => Refuse<Node>(Refusals.TooDeep(slice, current, deepest)),
            MappingStart mapping => ReadMapping(mapping, depth, isItem),
            SequenceStart sequence => ReadSequence(sequence, depth),
            _ => throw new InvalidOperationException("an event stands where none is known"),
        };
    }

    private ScalarNode ReadScalar(Scalar scalar)
    {
        var from = slice.Offset(scalar.Start);
        var to = slice.Offset(scalar.End);
        var node = new ScalarNode(slice.Source.SpotAt(from, to - from), scalar.Value, WritingOf(scalar.Style));
        if (scalar.Value.Length > limits.FieldBytes / 4 && System.Text.Encoding.UTF8.GetByteCount(scalar.Value) > limits.FieldBytes)
        {
            findings.Add(Refusals.FieldTooLarge(slice, from, to, limits.FieldBytes));
        }

        switch (node.Style)
        {
            case ScalarWriting.Plain when to > from:
                PlainScalarTraps.AddCutByComment(findings, slice, to);
                break;
            case ScalarWriting.DoubleQuoted:
                Escapes.AddRefused(findings, slice.Source, from + 1, to - 1);
                break;
            case ScalarWriting.Block:
                slice.Tabs.PassBlock(from, to);
                break;
            default:
                break;
        }

        return node;
    }

    private MappingNode? ReadMapping(MappingStart mapping, int depth, bool isItem)
    {
        var isFlow = mapping.Style == MappingStyle.Flow;
        var entries = buffers.Entries;
        var first = entries.Count;
        var keys = new RepeatedKeys(entries, first);
        while (Next() is { } current and not MappingEnd)
        {
            if (
                ReadNode(current, depth + 1) is not { } keyNode
                || ReadKey(keyNode) is not { } key
                || ReadNode(Next(), depth + 1) is not { } value
            )
            {
                return null;
            }

            var entry = new MappingEntry(key.Spot, buffers.Intern(key.Text), value);
            if (isFlow)
            {
                PlainScalarTraps.AddMissingSpace(findings, slice, key, value);
                if (PlainScalarTraps.IsWithoutColon(slice, key, value))
                {
                    // Its nothing stands where the word ends: by that the word is told from a key with nothing behind its colon.
                    entry = entry with
                    {
                        Value = new ScalarNode(slice.Source.SpotAt(slice.Source.EndOf(key.Spot)), "", ScalarWriting.Plain),
                    };
                }

                if (PlainScalarTraps.JoinAtComma(findings, slice, entries, first, key, value))
                {
                    continue;
                }
            }

            if (isItem && !isFlow && IsNextItem(entry, entries, first))
            {
                // The dash before the next item is missing: it is read as one, so that nothing else is told of what was run together.
                findings.Add(Refusals.DashMissing(slice, entry, entries[first]));
                buffers.Items.Add(
                    new MappingNode(
                        entries[first].KeySpot with
                        {
                            Length = 0,
                        },
                        [.. CollectionsMarshal.AsSpan(entries)[first..]],
                        IsFlow: false
                    )
                );
                entries.RemoveRange(first, entries.Count - first);
                keys = new RepeatedKeys(entries, first);
            }

            if (keys.Find(entry.Key) is { } earlier)
            {
                findings.Add(Refusals.KeyRepeated(slice, entry, earlier));
                continue;
            }

            entries.Add(entry);
            keys.Added();
        }

        if (refusal is not null)
        {
            return null;
        }

        var taken = ImmutableArray.Create(CollectionsMarshal.AsSpan(entries)[first..]);
        entries.RemoveRange(first, taken.Length);

        // A pair inside a flow list, [a: b], has a mapping without a mark of its own.
        var spot =
            isFlow && slice.Text[slice.Offset(mapping.Start)] != '{' && taken.Length > 0
                ? taken[0].KeySpot
                : slice.Source.SpotAt(slice.Offset(mapping.Start), isFlow ? 1 : 0);
        return new MappingNode(spot, taken, isFlow);
    }

    // Written at once again, a key is only written twice.
    private static bool IsNextItem(MappingEntry entry, List<MappingEntry> entries, int first) =>
        entries.Count > first + 1 && entries[first].Key == entry.Key;

    private ScalarNode? ReadKey(Node node) =>
        node switch
        {
            ScalarNode { Style: ScalarWriting.Plain, Text: "<<" } => Refuse<ScalarNode>(Refusals.MergeKey(slice, node)),
            ScalarNode { Text: not "" } key => key,
            ScalarNode { Style: ScalarWriting.Plain } => Refuse<ScalarNode>(Refusals.NoKey(slice, ColonBefore(Next()))),
            _ => Refuse<ScalarNode>(Refusals.KeyNotText(slice, node)),
        };

    // The library puts a key that is not there at the wrong line; the colon behind it is before its value.
    private int ColonBefore(ParsingEvent? value) =>
        value is null ? Position : slice.Text.LastIndexOf(':', Math.Max(slice.Offset(value.Start) - 1, slice.Start));

    private SequenceNode? ReadSequence(SequenceStart sequence, int depth)
    {
        var isFlow = sequence.Style == SequenceStyle.Flow;
        var items = buffers.Items;
        var first = items.Count;
        while (Next() is { } current and not SequenceEnd)
        {
            if (ReadNode(current, depth + 1, isItem: true) is not { } item)
            {
                return null;
            }

            if (!isFlow || !PlainScalarTraps.JoinAtComma(findings, slice, items, first, item))
            {
                items.Add(item);
            }
        }

        if (refusal is not null)
        {
            return null;
        }

        var taken = ImmutableArray.Create(CollectionsMarshal.AsSpan(items)[first..]);
        items.RemoveRange(first, taken.Length);
        return new SequenceNode(slice.Source.SpotAt(slice.Offset(sequence.Start), isFlow ? 1 : 0), taken, isFlow);
    }

    private T? Refuse<T>(Finding reason)
        where T : class
    {
        refusal ??= reason;
        return null;
    }

    private static ScalarWriting WritingOf(ScalarStyle style) =>
        style switch
        {
            ScalarStyle.SingleQuoted => ScalarWriting.SingleQuoted,
            ScalarStyle.DoubleQuoted => ScalarWriting.DoubleQuoted,
            ScalarStyle.Literal or ScalarStyle.Folded => ScalarWriting.Block,
            _ => ScalarWriting.Plain,
        };
}
