using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Ohmstead.Records.Decoding;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>Splices entries into the front matter of a record. Every byte it has no reason to touch stays, comments and line ends
/// included.</summary>
/// <remarks>
/// What was written is read again before it counts: if it does not say all that the record said before, in the same order, and the new
/// entry beside it, the record stays as it is and the person is told what to write by hand.
/// </remarks>
public sealed class RecordEditor
{
    private readonly SourceText source;
    private readonly INodeReader reader;
    private readonly FileForm form;
    private readonly BlockLines lines;

    private RecordEditor(SourceText source, MappingNode root, INodeReader reader, FileForm form, BlockLines lines)
    {
        this.source = source;
        Root = root;
        this.reader = reader;
        this.form = form;
        this.lines = lines;
    }

    /// <summary>What the record says.</summary>
    internal MappingNode Root { get; }

    /// <summary>Its text.</summary>
    internal SourceText Source => source;

    /// <summary>Where the story begins; the end of the text where none can.</summary>
    internal int StoryStart => form == FileForm.Markdown ? FrontMatter.Find(source).FrontMatter!.Value.BodyStart : source.Text.Length;

    /// <summary>Its lines as blocks.</summary>
    internal BlockLines Lines => lines;

    /// <summary>The single values of the last visit to the bench, by key; null where there is no visit.</summary>
    public IReadOnlyDictionary<string, string>? LastVisit =>
        Root.ValueOf("bench") is SequenceNode { Items: [.., MappingNode last] }
            ? last
                .Entries.Where(entry => entry.Value is ScalarNode)
                .ToDictionary(entry => entry.Key, entry => ((ScalarNode)entry.Value).Text, StringComparer.Ordinal)
            : null;

    /// <summary>Opens a text for one change.</summary>
    /// <returns>The editor, or null with the findings that keep the text from being read.</returns>
    public static RecordEditor? Open(string path, string text, FileForm form, INodeReader reader, out ImmutableArray<Finding> findings)
    {
        var reading = reader.Read(path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
        findings = reading.Findings;
        if (reading.Root is not { } root || findings.Any(finding => finding.Severity == Severity.Error))
        {
            return null;
        }

        var whole = new SourceText(path, text);
        var end = form == FileForm.Markdown ? FrontMatter.Find(whole).FrontMatter!.Value.End : text.Length;
        var afterLast = form == FileForm.Markdown ? whole.LineAt(end) : whole.LineCount + 1;
        return new RecordEditor(whole, root, reader, form, new BlockLines(whole, afterLast));
    }

    /// <summary>Adds an item at the end of a list at the top of the record; a list that is not there yet is begun where its key
    /// belongs.</summary>
    /// <param name="shape">The shape of the record, for the order of its keys.</param>
    /// <param name="key">The list.</param>
    /// <param name="item">The item, as one line of YAML.</param>
    public EditOutcome Append(Shape shape, string key, string item) => Into(new(Root, string.Empty, key), shape, [item]);

    /// <summary>Puts a single value at the top of the record: in place of the one that stands there, else on a line of its own where its
    /// key belongs.</summary>
    /// <param name="shape">The shape of the record, for the order of its keys.</param>
    /// <param name="key">The key.</param>
    /// <param name="value">The value.</param>
    public EditOutcome Put(Shape shape, string key, string value)
    {
        var yaml = FlowText.Scalar(value);
        var (path, byHand) = ($"/{key}", $"{key}: {yaml}");
        if (Root.ValueOf(key) is not { } there)
        {
            return Root.IsFlow
                ? EditOutcome.Refused($"the record stands in braces on line {Text(Root.Spot.Line)}", $"write it by hand: {byHand}")
                : Checked(TextEdit.Apply(source.Text, NewValue(shape, key, yaml)), [path], path, byHand);
        }

        var from = source.OffsetOf(there.Spot);
        var text = there is ScalarNode { IsNothing: false }
            ? TextEdit.Apply(source.Text, new TextEdit(from, source.EndOf(there.Spot) - from, yaml))
            : null;
        return text is not null && ReadAgain(text) is { } after && Others(after, path).SequenceEqual(Others(Root, path))
            ? EditOutcome.Written(text, NodeTrail.At(after, path)!.Spot)
            : EditOutcome.Refused(
                $"what stands after '{key}' on line {Text(there.Spot.Line)} is no single value",
                $"write it by hand: {byHand}"
            );
    }

    private static IEnumerable<(string Path, string Text)> Others(MappingNode root, string path) =>
        NodeTrail.Walk(root).Where(entry => entry.Path != path);

    /// <summary>Adds several items at the end of a list at the top of the record, in their order.</summary>
    /// <param name="shape">The shape of the record, for the order of its keys.</param>
    /// <param name="key">The list.</param>
    /// <param name="items">The items, each as one line of YAML; at least one.</param>
    public EditOutcome AppendAll(Shape shape, string key, IReadOnlyList<string> items) =>
        IntoAll(new(Root, string.Empty, key), shape, [.. items.Select(item => new[] { item })]);

    /// <summary>Whether an entry may join the last visit without saying that it happened earlier than it did; false where there is no
    /// visit.</summary>
    /// <param name="key">The list of the visit.</param>
    /// <param name="item">The entry, as one line of YAML.</param>
    public bool MayJoinLastVisit(string key, string item) =>
        Root.ValueOf("bench") is SequenceNode { Items: [.., MappingNode last] }
        && EntryOf(item) is { } entry
        && DayOrder.MayJoin(last, key, entry);

    /// <summary>Whether a list of the last visit holds an entry already, word for word.</summary>
    /// <param name="key">The list of the visit.</param>
    /// <param name="item">The entry, as one line of YAML.</param>
    public bool LastVisitHolds(string key, string item) =>
        Root.ValueOf("bench") is SequenceNode { Items: [.., MappingNode last] } && Holds(last, key, item);

    /// <summary>Whether a list at the top of the record holds an item already, word for word.</summary>
    /// <param name="list">The list.</param>
    /// <param name="item">The item, as one line of YAML.</param>
    public bool Holds(string list, string item) => Holds(Root, list, item);

    /// <summary>The single values of an entry at the bench, by key; none where no entry begins at that place.</summary>
    /// <param name="spot">Where it begins.</param>
    public IReadOnlyDictionary<string, string> EntryAt(Spot spot) =>
        Root.ValueOf("bench") is SequenceNode visits
            ? visits
                .Items.OfType<MappingNode>()
                .SelectMany(visit => visit.Entries.Select(entry => entry.Value).OfType<SequenceNode>())
                .SelectMany(list => list.Items.OfType<MappingNode>())
                .Where(entry => entry.Spot == spot)
                .SelectMany(entry => entry.Entries)
                .Where(entry => entry.Value is ScalarNode)
                .ToDictionary(entry => entry.Key, entry => ((ScalarNode)entry.Value).Text, StringComparer.Ordinal)
            : new Dictionary<string, string>(StringComparer.Ordinal);

    private bool Holds(MappingNode mapping, string key, string item)
    {
        if (mapping.ValueOf(key) is not SequenceNode list || EntryOf(item) is not { } entry)
        {
            return false;
        }

        var said = NodeTrail.Walk(entry);
        return list.Items.OfType<MappingNode>().Any(known => NodeTrail.Walk(known).SequenceEqual(said));
    }

    /// <summary>An entry as it will be read, or null where it is no mapping.</summary>
    internal MappingNode? EntryOf(string item) =>
        reader.Read(source.Path, Encoding.UTF8.GetBytes($"entry: {item}"), FileForm.Yaml, ReadingLimits.Usual).Root
            is { Entries: [{ Value: MappingNode entry }] }
            ? entry
            : null;

    /// <summary>Adds an entry to a visit to the bench: to the last visit that is the one meant, else to a new one at the end.</summary>
    /// <param name="shape">The shape of the record.</param>
    /// <param name="isMeant">Whether a visit, by its keys and texts, is the one meant.</param>
    /// <param name="head">The first keys of a new visit, the date first.</param>
    /// <param name="key">The list of the visit: readings, work, found, decided, proof or photos.</param>
    /// <param name="item">The entry, as one line of YAML.</param>
    public EditOutcome AppendToVisit(
        Shape shape,
        Func<IReadOnlyDictionary<string, string>, bool> isMeant,
        IReadOnlyList<(string Key, string Value)> head,
        string key,
        string item
    )
    {
        if (Root.ValueOf("bench") is SequenceNode { IsFlow: false, Items: [.., MappingNode last] } visits && isMeant(LastVisit!))
        {
            return last.IsFlow
                ? EditOutcome.Refused($"line {Text(last.Spot.Line)} holds the visit in braces", $"add to it by hand: {key}: [{item}]")
                : Into(new(last, "/bench#" + Text(visits.Items.Length - 1), key), BenchShape.Shape, [item]);
        }

        return Into(
            new(Root, string.Empty, "bench"),
            shape,
            [.. head.Select(entry => $"{entry.Key}: {FlowText.Scalar(entry.Value)}"), $"{key}:", $"  - {item}"],
            $"/{key}#0"
        );
    }

    /// <summary>Adds a key with a value to an item of a list, such as the day a wait ended.</summary>
    /// <param name="list">The list at the top of the record.</param>
    /// <param name="index">The item, from 0.</param>
    /// <param name="key">The key, which the item does not hold yet.</param>
    /// <param name="value">The value.</param>
    public EditOutcome Add(string list, int index, string key, string value) => AddAt($"/{list}#{Text(index)}", key, value);

    /// <summary>Adds a key with a value to the item at a path.</summary>
    internal EditOutcome AddAt(string path, string key, string value)
    {
        var added = $"{key}: {FlowText.Scalar(value)}";
        if (NodeTrail.At(Root, path) is not MappingNode { Entries: [.., var last] } item)
        {
            return EditOutcome.Refused($"there is no item at '{path}'", $"write it by hand: {added}");
        }

        return (item.IsFlow ? BeforeBrace(last.Value, added) : BelowKey(item, added)) is { } edit
            ? Checked(TextEdit.Apply(source.Text, edit), [$"{path}/{key}"], path, added)
            : EditOutcome.Refused(
                $"the item on line {Text(item.Spot.Line)} does not end as an item in braces does",
                $"write it by hand: {added}"
            );
    }

    // Behind a single value only space, or the next line of a folded item, may come before the brace. Behind a list the line's last brace
    // is taken; what it lies in is checked when the text is read again.
    private TextEdit? BeforeBrace(Node last, string added)
    {
        var from = source.OffsetOf(last.Spot) + last.Spot.Length;
        if (last is ScalarNode)
        {
            return source.Text.AsSpan(from).TrimStart(" \r\n") is ['}', ..] ? new TextEdit(from, 0, ", " + added) : null;
        }

        var brace = source.Text.AsSpan(from, source.LineEnd(last.Spot.Line) - from).LastIndexOf('}');
        return brace < 0 ? null : new TextEdit(source.Text.AsSpan(0, from + brace).TrimEnd(' ').Length, 0, ", " + added);
    }

    private TextEdit BelowKey(MappingNode item, string added)
    {
        var stands = item.Entries[^1].KeySpot.Column - 1;
        return LineBelow(lines.LastOf(item.Entries[^1].KeySpot.Line, stands, listMayHang: true), stands, added);
    }

    private TextEdit LineBelow(int line, int stands, string yaml)
    {
        var end = lines.LineEndAt(line);
        var at = lines.Behind(line);
        var text = new string(' ', stands) + yaml;
        return new TextEdit(at, 0, at > 0 && source.Text[at - 1] is not ('\n' or '\r') ? end + text : text + end);
    }

    private EditOutcome Into(ListAt list, Shape shape, IReadOnlyList<string> item, string entry = "") =>
        IntoAll(list, shape, [item], entry);

    /// <summary>Adds items at the end of a list; one that is not there yet is begun.</summary>
    internal EditOutcome IntoAll(ListAt list, Shape shape, IReadOnlyList<IReadOnlyList<string>> items, string entry = "")
    {
        var (mapping, path, key) = list;
        var value = mapping.ValueOf(key);
        var count = value is SequenceNode { Items.Length: var known } ? known : 0;
        var edit = IntoList(mapping, shape, key, items);
        var byHand = string.Join(' ', items[0]) + (items.Count > 1 ? $" and {Text(items.Count - 1)} more" : string.Empty);
        return edit is { } change
            ? Checked(
                TextEdit.Apply(source.Text, change),
                [.. items.Select((_, i) => $"{path}/{key}#{Text(count + i)}")],
                $"{path}/{key}#{Text(count)}{entry}",
                byHand
            )
            : EditOutcome.Refused(
                value is null
                    ? $"the record stands in braces on line {Text(mapping.Spot.Line)}"
                    : $"the list '{key}' on line {Text(value.Spot.Line)} stands in brackets",
                $"write it as lines that begin with a dash, or add by hand: {byHand}"
            );
    }

    /// <summary>The change that puts items at the end of a list, or null where it is laid out otherwise.</summary>
    internal TextEdit? IntoList(MappingNode mapping, Shape shape, string key, IReadOnlyList<IReadOnlyList<string>> items) =>
        mapping.ValueOf(key) switch
        {
            SequenceNode { IsFlow: false, Items: [.., var last] } => Below(
                lines.LastOf(last.Spot.Line, lines.DashBefore(last.Spot), listMayHang: false),
                lines.DashBefore(last.Spot),
                items
            ),
            (SequenceNode { IsFlow: true, Items.Length: 0 } or ScalarNode { IsNothing: true }) and var value => InsteadOf(
                mapping,
                key,
                value,
                items
            ),
            SequenceNode => null,
            null when mapping is { IsFlow: true, Entries: [] } => InsteadOfBraces(mapping, key, items),
            null => NewKey(mapping, shape, key, items),
            _ => null,
        };

    /// <summary>The change that puts visits behind one that is there, or before all of them (-1).</summary>
    internal TextEdit? VisitEdit(int behind, IReadOnlyList<IReadOnlyList<string>> items)
    {
        if (Root.ValueOf("bench") is not SequenceNode { IsFlow: false, Items: { Length: > 0 } visits })
        {
            return null;
        }

        var dash = lines.DashBefore(visits[0].Spot);
        return Below(
            behind >= 0
                ? lines.LastOf(visits[behind].Spot.Line, dash, listMayHang: false)
                : Root.Entries.Single(entry => entry.Key == "bench").KeySpot.Line,
            dash,
            items
        );
    }

    private TextEdit Below(int line, int dash, IReadOnlyList<IReadOnlyList<string>> items)
    {
        var end = lines.LineEndAt(line);
        var blanks = new string(' ', dash);
        var text = string.Concat(items.SelectMany(item => item.Select((part, i) => blanks + (i == 0 ? "- " : "  ") + part + end)));
        var at = lines.Behind(line);
        // The last line of a file may have no end of its own.
        return new TextEdit(at, 0, at > 0 && source.Text[at - 1] is not ('\n' or '\r') ? end + text[..^end.Length] : text);
    }

    private TextEdit NewKey(MappingNode mapping, Shape shape, string key, IReadOnlyList<IReadOnlyList<string>> items)
    {
        var (line, stands) = PlaceFor(mapping, shape, key);
        var end = lines.LineEndAt(line);
        var below = Below(line, stands + 2, items);
        return below with
        {
            Text = below.Text.StartsWith(end, StringComparison.Ordinal)
                ? end + new string(' ', stands) + key + ":" + below.Text
                : new string(' ', stands) + key + ":" + end + below.Text,
        };
    }

    // The line behind which a key that is not there yet belongs, and how far in it stands.
    private (int Line, int Stands) PlaceFor(MappingNode mapping, Shape shape, string key)
    {
        if (mapping.Entries.Length == 0)
        {
            // Nothing is said yet: behind the remarks. Behind the last line end there is one more line, with nothing on it.
            return (source.Line(lines.AfterLast - 1).IsEmpty ? Math.Max(lines.AfterLast - 2, 1) : lines.AfterLast - 1, 0);
        }

        var place = shape.PlaceOf(key);
        var before = mapping.Entries.LastOrDefault(
            entry => shape.PlaceOf(entry.Key) is var known && known >= 0 && known < place,
            mapping.Entries[0]
        );
        var stands = before.KeySpot.Column - 1;
        return (lines.LastOf(before.KeySpot.Line, stands, listMayHang: true), stands);
    }

    /// <summary>The change that puts a single value at the top of the record, where its key belongs.</summary>
    internal TextEdit NewValue(Shape shape, string key, string yaml)
    {
        var (line, stands) = PlaceFor(Root, shape, key);
        return LineBelow(line, stands, $"{key}: {yaml}");
    }

    private TextEdit InsteadOf(MappingNode mapping, string key, Node value, IReadOnlyList<IReadOnlyList<string>> items)
    {
        var entry = mapping.Entries.Single(known => known.Key == key);
        var colon = source.Text.IndexOf(':', source.OffsetOf(entry.KeySpot));
        var blanks = entry.KeySpot.Column - 1 + 2;
        var end = lines.LineEndAt(entry.KeySpot.Line);
        var until =
            value is SequenceNode
                ? source.Text.IndexOf(']', source.OffsetOf(value.Spot)) + 1
                : Math.Max(source.EndOf(value.Spot), colon + 1);
        return new TextEdit(colon + 1, until - colon - 1, Laid(items, end, blanks));
    }

    // A file of {} says nothing, as an empty one does.
    private TextEdit? InsteadOfBraces(MappingNode mapping, string key, IReadOnlyList<IReadOnlyList<string>> items)
    {
        var from = source.OffsetOf(mapping.Spot);
        var inside = source.Text.AsSpan(from + 1);
        var length = inside.IndexOf('}');
        return length < 0 || !inside[..length].IsWhiteSpace()
            ? null
            : new TextEdit(from, length + 2, $"{key}:" + Laid(items, lines.LineEndAt(mapping.Spot.Line), 2));
    }

    // Items of a list, each part on a line of its own, which begins with a line end.
    private static string Laid(IReadOnlyList<IReadOnlyList<string>> items, string end, int blanks) =>
        string.Concat(items.SelectMany(item => item.Select((part, i) => end + new string(' ', blanks) + (i == 0 ? "- " : "  ") + part)));

    // What comes in without its proof stays outside: the text is read again, and the entry is where it was put.
    internal EditOutcome Checked(string text, IReadOnlyList<string> added, string entry, string byHand)
    {
        if (ReadAgain(text) is not { } after || !Adds(NodeTrail.Walk(after), added))
        {
            return EditOutcome.Refused(
                "the record is laid out in a way that this entry cannot be put into without touching more than itself",
                $"write it by hand: {byHand}"
            );
        }

        var (laid, root) = Folded(text, after);
        return EditOutcome.Written(laid, NodeTrail.At(root, entry)!.Spot);
    }

    /// <summary>What a changed text says, or null when it cannot be read.</summary>
    internal MappingNode? ReadAgain(string text)
    {
        var again = reader.Read(source.Path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
        return again.Findings.Any(finding => finding.Severity == Severity.Error) ? null : again.Root;
    }

    /// <summary>The text as it is written, with what it says: in a record that is tidy a new entry is, too, and a long one is
    /// folded.</summary>
    internal (string Text, MappingNode Root) Folded(string text, MappingNode after) =>
        Fold(text, after) is var folded
        && folded != text
        && ReadAgain(folded) is { } root
        && NodeTrail.Walk(root).SequenceEqual(NodeTrail.Walk(after))
            ? (folded, root)
            : (text, after);

    private string Fold(string text, MappingNode after) =>
        !HasLongLine(text) ? text
        : LaidText.Read(source.Path, text, form, after, out _)?.Edits() is { Count: > 0 }
        && LaidText.Read(source.Path, source.Text, form, Root, out _)?.Edits() is { Count: 0 }
            ? RecordLayout.Compute(source.Path, text, form, reader).Text
        : text;

    // Laying a record out costs more than everything else an entry does, and what is short enough stays as it was spliced in.
    private bool HasLongLine(string text)
    {
        var fences = 0;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.Length > Layout.Placement.Width)
            {
                return true;
            }

            // The story below is nobody's to lay out.
            if (form == FileForm.Markdown && line is "---" && ++fences == 2)
            {
                return false;
            }
        }

        return false;
    }

    private bool Adds(IReadOnlyList<(string Path, string Text)> after, IReadOnlyList<string> added)
    {
        // An empty list stands in the trail by its own path, which goes with the first item.
        var before = NodeTrail.Walk(Root);
        var list = added[0][..Math.Max(added[0].LastIndexOf('#'), 0)];
        var wasEmpty = list.Length > 0 && before.Any(entry => entry.Path == list);
        return NodeTrail.IsMoreBy(before, after, wasEmpty ? [.. added, list] : added) && NodeTrail.HoldsAll(after, added);
    }

    // A list: the mapping that holds it, the path of that mapping, and its key.
    internal readonly record struct ListAt(MappingNode Mapping, string Path, string Key);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
