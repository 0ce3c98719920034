using System.Globalization;
using System.Text;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>A word that an entry of a record shall hold under a key.</summary>
/// <param name="Entry">Where the entry stands.</param>
/// <param name="Shape">The shape of the entry, for the order of its keys.</param>
/// <param name="Key">The key.</param>
/// <param name="Word">The word; null where the entry shall not have the key.</param>
public readonly record struct EntryWord(Spot Entry, Shape Shape, string Key, string? Word);

/// <summary>Sets single words of many entries at once by splicing: added behind the keys that come before, put in place of another, or
/// taken out.</summary>
/// <remarks>The changed text is read again and counts only when it says all that it said before in the same order, but for these
/// words.</remarks>
public static class EntryWords
{
    /// <summary>Sets the words.</summary>
    /// <param name="path">The path from the root of the collection.</param>
    /// <param name="text">The whole file, without a byte order mark.</param>
    /// <param name="form">Front matter with a body, or plain YAML.</param>
    /// <param name="reader">Reads the text before and after.</param>
    /// <param name="words">The words, each for an entry of its own.</param>
    public static EditOutcome Set(string path, string text, FileForm form, INodeReader reader, IReadOnlyList<EntryWord> words)
    {
        var reading = reader.Read(path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
        if (reading.Root is not { } root || LaidText.Read(path, text, form, root, out _) is not { } parts)
        {
            return EditOutcome.Refused("the file holds what cannot be read", "mend it first; 'check' says where");
        }

        var source = new SourceText(path, text);
        var entries = new Dictionary<Spot, (string Path, MappingNode Node)>();
        Gather(entries, string.Empty, root);
        var edits = new List<TextEdit>();
        var changed = new List<string>();
        foreach (var word in words)
        {
            if (!entries.TryGetValue(word.Entry, out var entry) || EntrySplice.Plan(source, parts, entry.Node, word) is not { } edit)
            {
                return EditOutcome.Refused(
                    $"the entry on line {Number(word.Entry.Line)} is written in a way that '{word.Key}' cannot be set in without "
                        + "touching more",
                    word.Word is null ? $"take {word.Key} out by hand" : $"write it by hand: {word.Key}: {word.Word}"
                );
            }

            edits.Add(edit);
            changed.Add($"{entry.Path}/{word.Key}");
        }

        var result = TextEdit.Apply(text, edits);
        var again = reader.Read(path, Encoding.UTF8.GetBytes(result), form, ReadingLimits.Usual);
        return
            again.Root is { } after
            && !again.Findings.Any(finding => finding.Severity == Severity.Error)
            && again.Body == reading.Body
            && Says(NodeTrail.Walk(root), NodeTrail.Walk(after), changed, words)
            && LaidText.Read(path, result, form, after, out _) is { } laid
            && laid.Remarks.SequenceEqual(parts.Remarks)
            ? EditOutcome.Written(result)
            : EditOutcome.Refused($"'{words[0].Key}' cannot be set here without touching more than itself", "write it by hand");
    }

    private static bool Says(
        IReadOnlyList<(string Path, string Text)> before,
        IReadOnlyList<(string Path, string Text)> after,
        List<string> changed,
        IReadOnlyList<EntryWord> words
    )
    {
        var now = after.ToDictionary(entry => entry.Path, entry => entry.Text, StringComparer.Ordinal);
        return changed.Zip(words).All(pair => now.GetValueOrDefault(pair.First) == pair.Second.Word)
            && NodeTrail.IsMoreBy(before, after, changed);
    }

    private static void Gather(Dictionary<Spot, (string Path, MappingNode Node)> entries, string path, Node node)
    {
        switch (node)
        {
            case MappingNode mapping:
                entries[mapping.Spot] = (path, mapping);
                foreach (var entry in mapping.Entries)
                {
                    Gather(entries, path + "/" + entry.Key, entry.Value);
                }

                break;
            case SequenceNode list:
                for (var i = 0; i < list.Items.Length; i++)
                {
                    Gather(entries, path + "#" + Number(i), list.Items[i]);
                }

                break;
            default:
                break;
        }
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
