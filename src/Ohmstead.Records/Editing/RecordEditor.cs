using System.Globalization;
using System.Text;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>Splices entries into the front matter of a record. Every byte it has no reason to touch stays, comments and line ends included.</summary>
/// <remarks>
/// What was written is read again before it counts: if it does not say all that the record said before, in the same order, and the new entry beside
/// it, the record stays as it is and the person is told what to write by hand.
/// </remarks>
public sealed class RecordEditor
{
    private readonly SourceText source;
    private readonly MappingNode root;
    private readonly INodeReader reader;
    private readonly FileForm form;
    private readonly BlockLines lines;

    private RecordEditor(SourceText source, MappingNode root, INodeReader reader, FileForm form, BlockLines lines)
    {
        this.source = source;
        this.root = root;
        this.reader = reader;
        this.form = form;
        this.lines = lines;
    }

    /// <summary>The single values of the last visit to the bench, by key; null where there is no visit.</summary>
    public IReadOnlyDictionary<string, string>? LastVisit => ValueOf(root, "bench") is SequenceNode { Items: [.., MappingNode last] }
        ? last.Entries.Where(entry => entry.Value is ScalarNode).ToDictionary(entry => entry.Key, entry => ((ScalarNode)entry.Value).Text, StringComparer.Ordinal)
        : null;

    /// <summary>Opens a text for one change.</summary>
    /// <returns>The editor, or null with the findings that keep the text from being read.</returns>
    public static RecordEditor? Open(string path, string text, FileForm form, INodeReader reader, out IReadOnlyList<Finding> findings)
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

    /// <summary>Adds an item at the end of a list at the top of the record; a list that is not there yet is begun where its key belongs.</summary>
    /// <param name="shape">The shape of the record, for the order of its keys.</param>
    /// <param name="key">The list.</param>
    /// <param name="item">The item, as one line of YAML.</param>
    public EditOutcome Append(Shape shape, string key, string item) => Into(root, string.Empty, shape, key, [item]);

    /// <summary>Adds an entry to a visit to the bench: to the last visit that is the one meant, else to a new one at the end.</summary>
    /// <param name="shape">The shape of the record.</param>
    /// <param name="isMeant">Whether a visit, by its keys and texts, is the one meant.</param>
    /// <param name="head">The first keys of a new visit, the date first.</param>
    /// <param name="key">The list of the visit: readings, work, found, decided, proof or photos.</param>
    /// <param name="item">The entry, as one line of YAML.</param>
    public EditOutcome AppendToVisit(Shape shape, Func<IReadOnlyDictionary<string, string>, bool> isMeant, IReadOnlyList<(string Key, string Value)> head, string key, string item)
    {
        if (ValueOf(root, "bench") is SequenceNode { IsFlow: false, Items: [.., MappingNode last] } visits && isMeant(LastVisit!))
        {
            return last.IsFlow
                ? EditOutcome.Refused($"line {Text(last.Spot.Line)} holds the visit in braces", $"add to it by hand: {key}: [{item}]")
                : Into(last, "/bench#" + Text(visits.Items.Count - 1), BenchShape.Shape, key, [item]);
        }

        return Into(root, string.Empty, shape, "bench", [.. head.Select(entry => $"{entry.Key}: {FlowText.Scalar(entry.Value)}"), $"{key}:", $"  - {item}"]);
    }

    /// <summary>Adds a key with a value to an item of a list that stands in braces on one line, such as the day a wait ended.</summary>
    /// <param name="list">The list at the top of the record.</param>
    /// <param name="index">The item, from 0.</param>
    /// <param name="key">The key, which the item does not hold yet.</param>
    /// <param name="value">The value.</param>
    public EditOutcome Add(string list, int index, string key, string value)
    {
        var added = $"{key}: {FlowText.Scalar(value)}";
        if (ValueOf(root, list) is not SequenceNode { Items: var items } || index >= items.Count || items[index] is not MappingNode { Entries: [.., var last] } item)
        {
            return EditOutcome.Refused($"there is no such item in '{list}'", $"write it by hand: {added}");
        }

        // Braces close where the text after the last value first shows one; what it lies in is checked when the text is read again.
        var from = source.OffsetOf(last.Value.Spot) + (last.Value is ScalarNode ? last.Value.Spot.Length : 1);
        var brace = item.IsFlow ? source.Text.AsSpan(from, source.LineEnd(last.Value.Spot.Line) - from).LastIndexOf('}') : -1;
        if (brace < 0)
        {
            return EditOutcome.Refused($"the item on line {Text(item.Spot.Line)} does not stand in braces on one line", $"write it by hand: {added}");
        }

        var at = source.Text.AsSpan(0, from + brace).TrimEnd(' ').Length;
        return Checked(TextEdit.Apply(source.Text, new TextEdit(at, 0, ", " + added)), $"/{list}#{Text(index)}/{key}", added);
    }

    private EditOutcome Into(MappingNode mapping, string path, Shape shape, string key, IReadOnlyList<string> item)
    {
        var value = ValueOf(mapping, key);
        var count = value is SequenceNode { Items.Count: var known } ? known : 0;
        var edit = value switch
        {
            SequenceNode { IsFlow: false, Items: [.., var last] } => Below(lines.LastOf(last.Spot.Line, lines.DashBefore(last.Spot), listMayHang: false), lines.DashBefore(last.Spot), item),
            SequenceNode { IsFlow: true, Items.Count: 0 } or ScalarNode { IsNothing: true } => InsteadOf(mapping, key, value, item),
            SequenceNode => (TextEdit?)null,
            null => NewKey(mapping, shape, key, item),
            _ => null,
        };
        return edit is { } change
            ? Checked(TextEdit.Apply(source.Text, change), $"{path}/{key}#{Text(count)}", string.Join(' ', item))
            : EditOutcome.Refused($"the list '{key}' on line {Text(value!.Spot.Line)} stands in brackets", $"write it as lines that begin with a dash, or add by hand: {string.Join(' ', item)}");
    }

    private TextEdit Below(int line, int dash, IReadOnlyList<string> item)
    {
        var end = lines.LineEndAt(line);
        var blanks = new string(' ', dash);
        var text = string.Concat(item.Select((part, i) => blanks + (i == 0 ? "- " : "  ") + part + end));
        var at = lines.Behind(line);
        // The last line of a file may have no end of its own.
        return new TextEdit(at, 0, at > 0 && source.Text[at - 1] is not ('\n' or '\r') ? end + text[..^end.Length] : text);
    }

    private TextEdit NewKey(MappingNode mapping, Shape shape, string key, IReadOnlyList<string> item)
    {
        var place = shape.PlaceOf(key);
        var before = mapping.Entries.LastOrDefault(entry => shape.PlaceOf(entry.Key) is var known && known >= 0 && known < place) ?? mapping.Entries[0];
        var stands = before.KeySpot.Column - 1;
        var line = lines.LastOf(before.KeySpot.Line, stands, listMayHang: true);
        var end = lines.LineEndAt(line);
        var below = Below(line, stands + 2, item);
        return below with { Text = below.Text.StartsWith(end, StringComparison.Ordinal) ? end + new string(' ', stands) + key + ":" + below.Text : new string(' ', stands) + key + ":" + end + below.Text };
    }

    private TextEdit InsteadOf(MappingNode mapping, string key, Node value, IReadOnlyList<string> item)
    {
        var entry = mapping.Entries.Single(known => known.Key == key);
        var colon = source.Text.IndexOf(':', source.OffsetOf(entry.KeySpot));
        var blanks = entry.KeySpot.Column - 1 + 2;
        var end = lines.LineEndAt(entry.KeySpot.Line);
        var until = value is SequenceNode ? source.Text.IndexOf(']', source.OffsetOf(value.Spot)) + 1 : Math.Max(source.EndOf(value.Spot), colon + 1);
        return new TextEdit(colon + 1, until - colon - 1, string.Concat(item.Select((part, i) => end + new string(' ', blanks) + (i == 0 ? "- " : "  ") + part)));
    }

    private EditOutcome Checked(string text, string added, string byHand)
    {
        var again = reader.Read(source.Path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
        return again.Root is { } after && !again.Findings.Any(finding => finding.Severity == Severity.Error) && Adds(NodeTrail.Of(after), added)
            ? EditOutcome.Of(Folded(text, after))
            : EditOutcome.Refused("the record is laid out in a way that this entry cannot be put into without touching more than itself", $"write it by hand: {byHand}");
    }

    // In a record that is tidy a new entry is, too: a long one is folded.
    private string Folded(string text, MappingNode after) =>
        LaidText.Of(source.Path, text, form, after, out _)?.Edits() is { Count: > 0 } && LaidText.Of(source.Path, source.Text, form, root, out _)?.Edits() is { Count: 0 }
            ? RecordLayout.Of(source.Path, text, form, reader).Text
            : text;

    private bool Adds(IReadOnlyList<(string Path, string Text)> after, string added)
    {
        // An empty list stands in the trail by its own path, which goes with the first item.
        var before = NodeTrail.Of(root);
        var list = added[..Math.Max(added.LastIndexOf('#'), 0)];
        var wasEmpty = list.Length > 0 && before.Any(entry => entry.Path == list);
        return NodeTrail.IsMoreBy(before, after, wasEmpty ? [added, list] : [added]) && after.Any(entry => entry.Path.StartsWith(added, StringComparison.Ordinal));
    }

    private static Node? ValueOf(MappingNode mapping, string key) => mapping.Entries.FirstOrDefault(entry => entry.Key == key)?.Value;

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
