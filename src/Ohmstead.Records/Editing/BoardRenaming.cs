using System.Collections.Immutable;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>What became of a record in which a board got another number.</summary>
/// <param name="Outcome">The text after the change, or why there is none.</param>
/// <param name="Changes">How many names and paths were replaced.</param>
/// <param name="Left">The lines on which the former number still stands, as they are after the change.</param>
public sealed record RenamedText(EditOutcome Outcome, int Changes, ImmutableArray<Spot> Left);

/// <summary>Gives a board another number in the text of a record, wherever the record names it: in words, in paths, in remarks and in the
/// story. What is printed on a thing is left.</summary>
/// <remarks>The changed text is read again and counts only when each value says what it said with the new number in it.</remarks>
public static class BoardRenaming
{
    /// <summary>Replaces the number.</summary>
    /// <param name="editor">The record.</param>
    /// <param name="shape">Its shape: which of its values are words, and which name other things.</param>
    /// <param name="names">The number and the paths.</param>
    /// <param name="isOwn">True for the record of the board itself, whose number is replaced, too.</param>
    public static RenamedText Replace(RecordEditor editor, Shape shape, BoardNames names, bool isOwn)
    {
        var text = editor.Source.Text;
        var values = new List<Value>();
        Gather(values, editor.Source, editor.Root, shape, isOwn);
        values.Sort((one, other) => one.Start.CompareTo(other.Start));
        var story = editor.StoryStart;
        var edits = names
            .EditsIn(text)
            .Select(edit => edit.Offset >= story ? edit : Changed(values, editor.Source, edit, names))
            .OfType<TextEdit>()
            .ToArray();
        var changed = TextEdit.Apply(text, edits);
        if (editor.ReadAgain(changed) is not { } after || !Says(editor.Root, after, shape, names, isOwn))
        {
            return new(
                EditOutcome.Refused(
                    $"'{names.From}' cannot be replaced here without touching more than itself",
                    $"write {names.To} there by hand first"
                ),
                0,
                []
            );
        }

        var source = new SourceText(editor.Source.Path, changed);
        return new(
            EditOutcome.Written(changed),
            edits.Length,
            [.. names.PlacesIn(changed).Select(at => source.SpotAt(at, names.From.Length)).DistinctBy(spot => spot.Line)]
        );
    }

    // Where a value begins and ends on its first line, and whether the name of a board in it is one.
    private readonly record struct Value(int Start, int End, bool IsOurs, bool IsNumber);

    private static TextEdit? Changed(List<Value> values, SourceText source, TextEdit edit, BoardNames names)
    {
        var index = IndexAt(values, edit.Offset);
        if (index < 0)
        {
            return edit;
        }

        var value = values[index];
        if (value.IsNumber && value.Start == edit.Offset && value.End == edit.Offset + edit.Length)
        {
            // A number by itself may be what YAML takes for another thing.
            return edit with { Text = FlowText.TextScalar(names.To) };
        }

        // Behind a value that is none of ours there may stand a remark.
        return value.IsOurs || (edit.Offset >= value.End && IsRemark(source, value.End, edit.Offset)) ? edit : null;
    }

    // The last value that begins at or before an offset.
    private static int IndexAt(List<Value> values, int offset)
    {
        var (low, high) = (0, values.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = values[middle].Start <= offset ? (middle + 1, high) : (low, middle);
        }

        return low - 1;
    }

    private static bool IsRemark(SourceText source, int valueEnd, int at)
    {
        var start = Math.Max(source.LineStart(source.LineAt(at)), valueEnd);
        var sign = source.Text.IndexOf('#', start, at - start);
        return sign >= 0 && (sign == 0 || char.IsWhiteSpace(source.Text[sign - 1]));
    }

    private static void Gather(List<Value> values, SourceText source, Node node, Shape? shape, bool isOwn, Key? key = null)
    {
        switch (node)
        {
            case ScalarNode scalar:
                var isNumber = isOwn && key is not null && ReferenceEquals(key, NumberKey);
                values.Add(
                    new(
                        source.OffsetOf(scalar.Spot),
                        source.EndOf(scalar.Spot),
                        isNumber || IsWords(key),
                        isNumber && scalar.Style == ScalarWriting.Plain
                    )
                );
                break;
            case SequenceNode list:
                foreach (var item in list.Items)
                {
                    Gather(values, source, item, shape, isOwn, key);
                }

                break;
            case MappingNode mapping:
                foreach (var entry in mapping.Entries)
                {
                    var known = KeyOf(shape, entry.Key);
                    values.Add(new(source.OffsetOf(entry.KeySpot), source.EndOf(entry.KeySpot), false, false));
                    Gather(values, source, entry.Value, known?.Inner, isOwn, known);
                }

                break;
        }
    }

    private static bool Says(MappingNode before, MappingNode after, Shape shape, BoardNames names, bool isOwn)
    {
        var (old, now) = (NodeTrail.Walk(before), NodeTrail.Walk(after));
        return old.Count == now.Count
            && old.Zip(now)
                .All(pair =>
                    pair.First.Path == pair.Second.Path
                    && pair.Second.Text
                        == (
                            KeyAt(shape, pair.First.Path) is var key && (IsWords(key) || (isOwn && ReferenceEquals(key, NumberKey)))
                                ? names.In(pair.First.Text)
                                : pair.First.Text
                        )
                );
    }

    private static Key? KeyAt(Shape shape, string path)
    {
        Key? key = null;
        var at = shape;
        foreach (var step in path.Split('/').Skip(1))
        {
            key = KeyOf(at, step.Split('#')[0]);
            at = key?.Inner;
        }

        return key;
    }

    private static Key NumberKey { get; } = FileShapes.Board.Keys[0];

    private static Key? KeyOf(Shape? shape, string name) => shape?.Keys.FirstOrDefault(key => key.Name == name);

    private static bool IsWords(Key? key) => key is { Kind: ValueKind.Text, IsPrinted: false };
}
