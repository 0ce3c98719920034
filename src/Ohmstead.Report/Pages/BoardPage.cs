using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;
using Ohmstead.Report.Style;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of one board: state, the evidence for it, cautions, identity, parts with verdicts, proof, the bench day by day, story,
/// photographs.</summary>
public static class BoardPage
{
    private static readonly Column[] Waiting =
    [
        "For",
        new("Since", IsShort: true),
        new("Order", IsShort: true),
        "Blocks",
        new("Until", IsShort: true),
    ];

    private static readonly Column[] Steps = ["What", new("On", IsShort: true), "Where", "Whom", new("Until", IsShort: true), "Note"];

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
        PageFrame.Write(
            buffer,
            context,
            $"{board.Board.Id.Value} {board.Board.Title.Value}",
            1,
            (context, board, open),
            static (html, page) => Content(html, page.context, page.board, page.open)
        );

    private static void Content(HtmlWriter html, ReportContext context, JudgedBoard board, ICollection<OpenPlace>? open)
    {
        var working = new SharedWorking(context.Workshop.Rule);
        var anchors = new ReadingAnchors(board.Readings);
        StripShapes.Write(html);
        Opening(html, board);
        EvidenceSection.Write(html, context, board, anchors);
        Cautions.Write(html, board.Hazards);
        Identity(html, board);
        FindingRows.WriteSection(html, context, board.Reported);
        PartsTable.Write(html, context, board, working, anchors, open);
        var drifts = board.Drifts;
        OverTime.Write(html, board, drifts, anchors);
        DriftTable.Write(html, board, drifts);
        ProofTable.Write(html, board, working);
        LifeTable.Write(html, context, board, working);
        BenchLog.Write(html, context, board, working, anchors);
        WentTo(html, board);
        Waits(html, board);
        Story(html, context, board);
        Photographs.Write(html, context, board);
        working.Sources.Write(html);
        using var record = html.Open(Tag.P, ClassName.Fine);
        html.Text($"Record: {board.Board.Path}");
        if (context.Beside.Count > 0)
        {
            html.Text("; the same for programs: ");
            html.Open(Tag.A).To(LocalLink.ToFile(DataOf(board.Board.Id.Value), 1)).Text($"{board.Board.Id.Value}.json");
        }
    }

    private static void Opening(HtmlWriter html, JudgedBoard board)
    {
        using var opening = html.Open(Tag.Header, ClassName.Opening);
        PageFrame.PlateHeading(html, board.Board.Id.Value, board.Board.Title.Value);
        using var content = html.Open(Tag.Div, ClassName.Content);
        using (html.Open(Tag.P, ClassName.Lead))
        {
            StateMark.Write(html, board.State, board.OverdueSince);
        }

        if (board.Whereabouts.Told is { } where)
        {
            html.Open(Tag.P).Text(where);
        }

        html.Open(Tag.P, ClassName.Fine)
            .Text(
                PageFrame.Joined(
                    board.LastWork is { } work ? "last work " + PageFrame.Iso(work) : "no work yet",
                    board.LastSeen is { } seen ? "last seen " + PageFrame.Iso(seen) : null,
                    board.LookAgain is { } look ? "look again " + PageFrame.Iso(look) : null
                )
            );
    }

    private static void Identity(HtmlWriter html, JudgedBoard board)
    {
        using var entry = Entry.Open(html, "identity", "Identity");
        using var list = html.Open(Tag.Dl, ClassName.Facts);
        if (board.Design is { } design)
        {
            using var pair = html.Open(Tag.Div);
            html.Open(Tag.Dt).Text("Design");
            using var said = html.Open(Tag.Dd);
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Design(design.Id.Value), 1)).Text(design.Title.Value);
        }
        else
        {
            PageFrame.Fact(html, "Design", board.Board.Design?.Value);
        }

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

    private static void WentTo(HtmlWriter html, BoardAssessment board)
    {
        if (board.Board.Whereabouts.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "whereabouts", "Where it went");
        using var table = Ledger.Open(html, "Where it went", Steps);
        using var body = html.Open(Tag.TBody);
        foreach (var step in board.Board.Whereabouts)
        {
            using var row = html.Open(Tag.Tr);
            table.Head().Text(step.Did.Text);
            table.Cell(1).Text(step.Date.Text);
            table.Cell(2).Text(step.At?.Value ?? string.Empty);
            table.Cell(3).Text(step.To?.Value ?? step.Owner?.Value ?? string.Empty);
            table.Cell(4).Text(step.Until?.Text ?? string.Empty);
            table.Cell(5).Text(PageFrame.Joined(step.Note?.Value, step.By is { } by ? $"told by {by.Value}" : null));
        }
    }

    private static void Waits(HtmlWriter html, JudgedBoard board)
    {
        if (board.Board.Waiting.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "waits", "Waits");
        using var table = Ledger.Open(html, "Waits", Waiting);
        using var body = html.Open(Tag.TBody);
        foreach (var wait in board.Board.Waiting)
        {
            using var row = html.Open(Tag.Tr);
            table.Head().Text(wait.For.Value);
            table.Cell(1).Text(wait.Since.Text);
            table.Cell(2).Text(wait.Order?.Value ?? string.Empty);
            table.Cell(3).Text(wait.Blocks?.Value ?? string.Empty);
            table.Cell(4).Text(wait.Until?.Text ?? "still open");
        }
    }

    private static void Story(HtmlWriter html, ReportContext context, JudgedBoard board)
    {
        if (string.IsNullOrWhiteSpace(board.Board.Body))
        {
            return;
        }

        using var entry = Entry.Open(html, "story", "In its keeper's words");
        StoryWriter.Write(html, new Story(board.Board.Body, "boards", new BoardStoryTargets(context, board)));
    }
}
