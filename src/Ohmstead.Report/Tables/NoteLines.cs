using Ohmstead.Assessment.Notes;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What follows from figures of the record and decides nothing, with its working and source behind a fold.</summary>
internal static class NoteLines
{
    /// <summary>Writes the notes; nothing when there are none.</summary>
    public static void Write(HtmlWriter html, SharedWorking working, IReadOnlyList<WorkedNote> notes)
    {
        for (var at = 0; at < notes.Count; at++)
        {
            var note = notes[at];
            using var fold = html.Open(Tag.Details);
            html.Open(Tag.Summary).Text(Sentence(note.Says));
            using var list = html.Open(Tag.Ul);
            using var line = html.Open(Tag.Li);
            html.Text(note.Arithmetic);
            working.Sources.Cite(html, note.Source);
        }
    }

    private static string Sentence(string words) =>
        words.Length == 0 || !char.IsAsciiLetterLower(words[0]) ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
