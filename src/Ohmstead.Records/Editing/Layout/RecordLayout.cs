using System.Text;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>Brings the front matter of a record, or a file of plain YAML, into the one layout. No word, no key and no remark changes, nor
/// their order.</summary>
/// <remarks>
/// Only what stands between the words is changed, by splicing. The changed text is read again and counts only when it says the same, node
/// for node and remark for remark, when the body is the same, and when laying it out once more changes nothing.
/// </remarks>
public static class RecordLayout
{
    /// <summary>Lays a text out.</summary>
    /// <param name="path">The path from the root of the collection, for findings.</param>
    /// <param name="text">The whole file, without a byte order mark.</param>
    /// <param name="form">Front matter with a body, or plain YAML.</param>
    /// <param name="reader">Reads the text before and after.</param>
    public static LayoutOutcome Compute(string path, string text, FileForm form, INodeReader reader)
    {
        var before = reader.Read(path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
        if (before.Root is not { } root || before.Findings.Any(finding => finding.Severity == Severity.Error))
        {
            return new(LayoutState.NotRead, text, null);
        }

        if (LaidText.Read(path, text, form, root, out var lost) is not { } parts)
        {
            return new(
                LayoutState.NotLaidOut,
                text,
                new EditRefusal(
                    $"line {lost.Line} holds a way of writing YAML that is not laid out",
                    "write it as 'key: value', as a line that begins with a dash, or in braces"
                )
            );
        }

        var edits = parts.Edits();
        if (edits.Count == 0)
        {
            return new(LayoutState.Tidy, text, null);
        }

        var changed = TextEdit.Apply(text, edits);
        var after = reader.Read(path, Encoding.UTF8.GetBytes(changed), form, ReadingLimits.Usual);
        return
            after.Root is { } again
            && !after.Findings.Any(finding => finding.Severity == Severity.Error)
            && after.Body == before.Body
            && NodeEquality.Same(root, again)
            && LaidText.Read(path, changed, form, again, out _) is { } laid
            && parts.Remarks.SequenceEqual(laid.Remarks)
            && laid.Edits().Count == 0
            ? new(LayoutState.Changed, changed, null)
            : new(
                LayoutState.Doubted,
                text,
                new EditRefusal(
                    "laid out, this file would not surely say the same",
                    "leave it as it is, and report it as a bug of the program"
                )
            );
    }
}

/// <summary>What laying a text out gave.</summary>
/// <param name="State">How it ended.</param>
/// <param name="Text">The text in layout; as it was in every state but <see cref="LayoutState.Changed"/>.</param>
/// <param name="Refusal">Why it stays as it is, where the text itself is in the way.</param>
public sealed record LayoutOutcome(LayoutState State, string Text, EditRefusal? Refusal);

/// <summary>How laying out ended.</summary>
public enum LayoutState
{
    /// <summary>The text is laid out already.</summary>
    Tidy,

    /// <summary>The text was changed, and the change proved.</summary>
    Changed,

    /// <summary>The text cannot be read without errors.</summary>
    NotRead,

    /// <summary>The text holds YAML that records do not use.</summary>
    NotLaidOut,

    /// <summary>The change could not be proved to keep what the text says: a bug.</summary>
    Doubted,
}
