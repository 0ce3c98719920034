using System.Globalization;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Editing;

/// <summary>Splices what belongs within an item of a list, such as the lines of an order: each splice with the proof of the
/// editor.</summary>
/// <param name="editor">The record.</param>
public sealed class ItemSplicer(RecordEditor editor)
{
    /// <summary>The place, from 0, of the first item of a list at the top of the record that has a name; -1 where none has it.</summary>
    /// <param name="list">The list.</param>
    /// <param name="key">The key of the name.</param>
    /// <param name="name">The name.</param>
    public int IndexOf(string list, string key, string name) => IndexOf(editor.Root.ValueOf(list), key, name);

    /// <summary>The same of a list within an item of a list.</summary>
    /// <param name="list">The list at the top of the record, and the item of it.</param>
    /// <param name="inner">The list within that item, and the key of the name.</param>
    /// <param name="name">The name.</param>
    public int IndexOf((string Key, int Index) list, (string Key, string Name) inner, string name) =>
        IndexOf(NodeTrail.At(editor.Root, $"{PathOf(list)}/{inner.Key}"), inner.Name, name);

    /// <summary>Adds a key with a value to an item of a list within an item of a list, such as the day a line of an order was
    /// cancelled.</summary>
    /// <param name="list">The list at the top of the record, and the item of it.</param>
    /// <param name="inner">The list within that item, and the item of it.</param>
    /// <param name="key">The key, which the item does not hold yet.</param>
    /// <param name="value">The value.</param>
    public EditOutcome Add((string Key, int Index) list, (string Key, int Index) inner, string key, string value) =>
        editor.AddAt($"{PathOf(list)}{PathOf(inner)}", key, value);

    /// <summary>Adds items at the end of a list within an item of a list, such as what came of an order. An item that stands in braces
    /// becomes lines first, each value as it was written.</summary>
    /// <param name="shape">The shape of the item, for the order of its keys.</param>
    /// <param name="list">The list at the top of the record, and the item of it.</param>
    /// <param name="key">The list within that item.</param>
    /// <param name="added">The items, each as one line of YAML; at least one.</param>
    public EditOutcome Append(Shape shape, (string Key, int Index) list, string key, IReadOnlyList<string> added)
    {
        var path = PathOf(list);
        if (NodeTrail.At(editor.Root, path) is not MappingNode { Entries.Length: > 0 } item)
        {
            return EditOutcome.Refused($"there is no item at '{path}'", $"write it by hand: {key}: {string.Join(", ", added)}");
        }

        if (!item.IsFlow)
        {
            return editor.IntoAll(new(item, path, key), shape, [.. added.Select(one => new[] { one })]);
        }

        return FlowItem.Unfold(editor.Source, editor.Lines, item, (shape, key, added)) is { } edit
            ? editor.Checked(
                TextEdit.Apply(editor.Source.Text, edit),
                [$"{path}/{key}"],
                $"{path}/{key}#0",
                $"{key}: {string.Join(", ", added)}"
            )
            : EditOutcome.Refused(
                $"the item on line {Text(item.Spot.Line)} stands in braces and cannot be made into lines",
                $"write its keys as lines of their own, or add by hand: {key}: [{string.Join(", ", added)}]"
            );
    }

    private static int IndexOf(Node? list, string key, string name)
    {
        var items = list is SequenceNode sequence ? sequence.Items : [];
        for (var i = 0; i < items.Length; i++)
        {
            if (items[i] is MappingNode item && item.ValueOf(key) is ScalarNode scalar && scalar.Text == name)
            {
                return i;
            }
        }

        return -1;
    }

    private static string PathOf((string Key, int Index) list) => $"/{list.Key}#{Text(list.Index)}";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
