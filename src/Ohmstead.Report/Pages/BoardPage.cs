using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of one board: state, the evidence for it, cautions, identity, parts with verdicts, proof, the bench day by day, story,
/// photographs.</summary>
public sealed class BoardPage
{
    private readonly BoardOnPage page;
    private readonly HtmlWriter html;
    private readonly JudgedBoard board;

    private BoardPage(BoardOnPage page) => (this.page, html, board) = (page, page.Html, page.Board);

    /// <summary>The file of a board's page, from the root of the report. It lasts as long as the board keeps its number.</summary>
    public static string PathOf(string board) => $"boards/{board}.html";

    /// <summary>The file that tells programs what the page tells people, from the root of the report.</summary>
    public static string DataOf(string board) => $"boards/{board}.json";

    /// <summary>Writes the page.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="board">The board.</param>
    /// <param name="open">Takes the places that need a part when the drawer is not known yet; null when nothing is told of them
    /// later.</param>
    public static void Write(PageBuffer buffer, ReportContext context, JudgedBoard board, ICollection<OpenPlace>? open = null) =>
        PageFrame.Write(buffer, context, BoardHead.Of(context, board), (context, board, open), static (html, asked) =>
            new BoardPage(new(html, asked.context, asked.board)).Content(asked.open)
        );

    private void Content(ICollection<OpenPlace>? open)
    {
        Photographs photographs = new(page);
        new BoardOpening(page).Write(photographs);
        new JumpLine(page).Write(photographs.HasMore);
        new EvidenceSection(page).Write();
        new Cautions(html).Write(board.Hazards);
        Identity();
        new FindingRows(page.Context, 1).WriteSection(html, board.Reported);
        new PartsTable(page, open).Write();
        var drifts = board.Drifts;
        new OverTime(page).Write(drifts);
        new DriftTable(page).Write(drifts);
        new ProofTable(page).Write();
        new LifeTable(page).Write();
        new BenchLog(page).Write();
        WentTo();
        Waits();
        Story();
        photographs.Write();
        new HistorySection(page).Write();
        page.Working.WriteEnd(html);
        Code();
        Files();
        StripShapes.WriteShown(html);
    }

    private void Files()
    {
        using var record = html.Open(Tag.P, ClassName.Fine);
        html.Text("Record: ");
        RecordLink.Write(html, page.Context, board.Board.Path, board.Board.Path);
        html.Text("; ");
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.BoardSheet(board.Board.Id.Value), 1)).Text("on one sheet");
        if (page.Context.ForPrograms.Count > 0)
        {
            html.Text("; the same for programs: ");
            html.Open(Tag.A).To(LocalLink.ToFile(DataOf(board.Board.Id.Value), 1)).Text($"{board.Board.Id.Value}.json");
        }
    }

    // Shown on paper alone: whoever reads the page on a screen is there already.
    private void Code()
    {
        if (page.Context.Published is not { } published)
        {
            return;
        }

        using var line = html.Open(Tag.P, ClassName.Code);
        html.Open(Tag.Img)
            .Showing(LocalLink.ToFile(SiteAddress.Code(board.Board.Id.Value), 1))
            .With(TextAttribute.Alt, published.Board(board.Board.Id.Value))
            .Close();
        html.Open(Tag.B).Text(board.Board.Id.Value);
    }

    private void Identity()
    {
        using var section = Section.Open(html, "identity", "Identity");
        using var list = html.Open(Tag.Dl, ClassName.Facts);
        if (board.Design is { } design)
        {
            using var pair = html.Open(Tag.Div);
            html.Open(Tag.Dt).Text("Design");
            using var said = html.Open(Tag.Dd);
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Design(design.Id.Value), 1)).Text(design.Title.Value);
            html.Text("; ");
            html.Open(Tag.A)
                .To(LocalLink.ToFile(SiteAddress.Design(design.Id.Value), 1, ElementId.For(IdPrefix.Section, "units")))
                .Text("its units side by side");
        }
        else
        {
            PageFrame.Fact(html, "Design", board.Board.Design?.Value);
        }

        PageFrame.Fact(
            html,
            "Formerly",
            PageFrame.Joined([
                .. board.Board.Formerly.Select(former =>
                    former.Until is { } until ? $"{former.Number.Value} until {until.Text}" : former.Number.Value
                ),
            ])
        );
        PageFrame.Fact(html, "Maker", board.Board.Maker?.Value ?? board.Design?.Maker?.Value);
        PageFrame.Fact(html, "Serial", board.Board.Serial?.Value);
        PageFrame.Fact(html, "Revision", board.Board.Revision?.Value ?? board.Design?.Revision?.Value);
        PageFrame.Fact(html, "Made", (board.Board.Made ?? board.Design?.Made)?.Value.ToString());
        PageFrame.Fact(
            html,
            "Came",
            PageFrame.Joined(board.Board.Arrived?.Date?.Text, board.Board.Arrived?.From is { } from ? "from " + from.Value : null)
        );
        PageFrame.Fact(html, "Owner", board.Whereabouts.Owner);
        PageFrame.Fact(html, "Complaint", board.Board.Arrived?.Complaint?.Value);
        PageFrame.Fact(
            html,
            "Duty",
            PageFrame.Joined(
                board.Board.Duty?.HoursPerYear is { } hours ? hours.Text + " h a year" : null,
                board.Board.Duty?.Temperature is { } warm ? "at " + warm.Text : null,
                board.Board.Duty is { AtTimes.Length: > 0 } duty
                    ? string.Join(", ", duty.AtTimes.Select(part => $"{part.HoursPerYear.Text} h of them at {part.Temperature.Text}"))
                    : null
            )
        );
        PageFrame.Fact(html, "Note", board.Board.Note?.Value);
    }

    private void WentTo()
    {
        if (board.Board.Whereabouts.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "whereabouts", "Where it went");
        new Ledger<WhereaboutsEntry>(
            new("What", step => step.Did.Text),
            new("On", step => step.Date.Text) { IsShort = true },
            new("Where", step => step.At?.Value),
            new("Whom", step => step.To?.Value ?? step.Owner?.Value),
            new("Until", step => step.Until?.Text) { IsShort = true },
            new("Note", step => PageFrame.Joined(step.Note?.Value, step.By is { } by ? $"told by {by.Value}" : null))
        ).Write(html, "Where it went", board.Board.Whereabouts);
    }

    private void Waits()
    {
        if (board.Board.Waiting.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "waits", "Waits");
        new Ledger<Wait>(
            new("For", wait => wait.For.Value),
            new("Since", wait => wait.Since.Text) { IsShort = true },
            new("Order", wait => wait.Line is { } line ? $"{wait.Order?.Value} line {line.Value}" : wait.Order?.Value) { IsShort = true },
            new("Blocks", wait => wait.Blocks?.Value),
            new("Until", wait => wait.Until?.Text ?? "still open") { IsShort = true }
        ).Write(html, "Waits", board.Board.Waiting);
    }

    private void Story()
    {
        if (string.IsNullOrWhiteSpace(board.Board.Body))
        {
            return;
        }

        using var section = Section.Open(html, "story", "In its keeper's words");
        StoryWriter.Write(html, new Story(board.Board.Body, "boards", new BoardStoryTargets(page.Context, board)));
    }
}
