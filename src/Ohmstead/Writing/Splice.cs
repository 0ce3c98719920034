using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Running;
using Ohmstead.Yaml;

namespace Ohmstead.Writing;

/// <summary>One splice into the text of a record, before anything is judged or written.</summary>
internal static class Splice
{
    /// <summary>Makes a splice. What keeps it from being made is told, with what to do by hand.</summary>
    /// <param name="terminal">Where it is told.</param>
    /// <param name="path">The path of the record in its collection.</param>
    /// <param name="text">The text as it is.</param>
    /// <param name="form">Whether it is Markdown or YAML alone.</param>
    /// <param name="change">The splice, and the entry as one line.</param>
    /// <returns>The text as it would be, the entry as one line and where it stands in the text; or null.</returns>
    public static (string Text, string Line, Spot Entry)? Try(
        Terminal terminal,
        string path,
        string text,
        FileForm form,
        Func<RecordEditor, (EditOutcome Outcome, string Line)> change
    )
    {
        if (RecordEditor.Open(path, text, form, NodeReaders.ForWorker(0), out _) is not { } editor)
        {
            terminal.Error.WriteLine(Printable.Escape($"{path} holds what cannot be read; mend it first, 'check' says where"));
            return null;
        }

        var (outcome, line) = change(editor);
        if (outcome.Text is { } changed)
        {
            return (changed, line, outcome.Entry);
        }

        terminal.Error.WriteLine(Printable.Escape($"{path}: {outcome.Refusal!.Message}"));
        terminal.Error.WriteLine(Printable.Escape($"  = {outcome.Refusal.NextStep}"));
        return null;
    }
}
