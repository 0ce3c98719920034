using Ohmstead.Assessment.Changes;
using Ohmstead.Electronics;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>What the repository tells of a board: the commits that changed its meaning, and who first wrote what stands in its
/// record.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class HistorySection(BoardOnPage page)
{
    private readonly HtmlWriter html = page.Html;

    /// <summary>Writes the section; nothing where the repository was not asked.</summary>
    public void Write()
    {
        if (!page.Context.Histories.TryGetValue(page.Board.Board.Path, out var history))
        {
            return;
        }

        using var section = Section.Open(html, "repository", "In the repository", "the commits that changed what is said or judged of it");
        new Ledger<HistoryStep>(
            new("Day", step => step.Commit is { } commit ? IsoDate.Text(commit.Day) : "not yet") { IsShort = true },
            new("Commit", step => step.Commit?.Short) { IsShort = true },
            new("Who", step => step.Commit?.Who),
            new("What changed", step => (step.Commit?.IsMerge == true ? "merge: " : string.Empty) + HistoryLines.Told(step.Changes, null))
        ).Write(html, "Commits that changed it", history.Steps);
        if (history.Begins is { } begins)
        {
            html.Open(Tag.P, ClassName.Fine)
                .Text($"The history of the clone that this was made from begins on {IsoDate.Text(begins.Day)} ({begins.Short}).");
        }

        if (history.Entries.Length == 0)
        {
            return;
        }

        using var fold = html.Open(Tag.Details, ClassName.Working);
        html.Open(Tag.Summary).Text("Who first wrote what stands in the record");
        new Ledger<EntryOrigin>(new("Entry", origin => HistoryLines.Told(origin.Entry)), new("First written", HistoryLines.Told)).Write(
            html,
            "Who first wrote each entry",
            history.Entries
        );
    }
}
