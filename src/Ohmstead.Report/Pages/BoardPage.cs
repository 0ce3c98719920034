using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Pages;

/// <summary>The page of one board: identity, state and reasons, cautions, parts with verdicts, the bench day by day, proof, story, photographs.</summary>
public static class BoardPage
{
    /// <summary>The file of a board's page, from the root of the report.</summary>
    public static string PathOf(string board) => $"boards/{board}.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, BoardAssessment board) =>
        PageFrame.Write(buffer, context, $"{board.Board.Id.Value} {board.Board.Title.Value}", 1, (context, board), static (html, page) => Content(html, page.context, page.board));

    private static void Content(HtmlWriter html, ReportContext context, BoardAssessment board)
    {
        using (html.Open(Tag.Header))
        {
            html.Open(Tag.H1).Text($"{board.Board.Id.Value} {board.Board.Title.Value}");
            StateBox(html, board);
        }

        Cautions.Write(html, board);
        Facts(html, board);
        PartsTable.Write(html, board);
        ProofTable.Write(html, board);
        BenchLog.Write(html, board);
        Waits(html, board);
        Story(html, context, board);
        Photographs(html, board);
        html.Open(Tag.P, ClassName.Fine).Text($"Record: {board.Board.Path}");
    }

    private static void StateBox(HtmlWriter html, BoardAssessment board)
    {
        using (html.Open(Tag.P))
        {
            Marks.State(html, board.State);
        }

        if (board.Reasons.Count > 0)
        {
            using var list = html.Open(Tag.Ul);
            foreach (var reason in board.Reasons)
            {
                using var item = html.Open(Tag.Li);
                if (reason.At is { } at)
                {
                    Reference(html, board, at);
                    html.Text(": ");
                }

                html.Text($"{reason.Text}. Next: {reason.NextStep}.");
            }
        }

        foreach (var place in board.Overruled)
        {
            using var line = html.Open(Tag.P);
            Reference(html, board, place.Part.Ref.Value);
            html.Text($" is outside its limit and stays by decision ({place.Decision!.What.Value}): {place.Decision.Because.Value}.");
        }

        if (board.MeasureAgain.Count > 0)
        {
            html.Open(Tag.P).Text("To measure again, since the reading is too close to call:");
            using var list = html.Open(Tag.Ul);
            foreach (var open in board.MeasureAgain)
            {
                using var item = html.Open(Tag.Li);
                Reference(html, board, open.At);
                html.Text($": {open.Text}");
            }
        }
    }

    internal static void Reference(HtmlWriter html, BoardAssessment board, string name)
    {
        if (board.Place(name) is not null)
        {
            html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFragment(ElementId.Of(IdPrefix.Part, name))).Text(name);
        }
        else
        {
            html.Text(name);
        }
    }

    private static void Facts(HtmlWriter html, BoardAssessment board)
    {
        PageFrame.Heading(html, "identity", "Identity");
        using var list = html.Open(Tag.Dl, ClassName.Facts);
        PageFrame.Fact(html, "Number", board.Board.Id.Value);
        PageFrame.Fact(html, "Design", board.Design is { } design ? $"{design.Title.Value} ({design.Id.Value})" : board.Board.Design?.Value);
        PageFrame.Fact(html, "Maker", board.Board.Maker?.Value ?? board.Design?.Maker?.Value);
        PageFrame.Fact(html, "Serial", board.Board.Serial?.Value);
        PageFrame.Fact(html, "Revision", board.Board.Revision?.Value ?? board.Design?.Revision?.Value);
        PageFrame.Fact(html, "Made", (board.Board.Made ?? board.Design?.Made)?.Value.ToString());
        PageFrame.Fact(html, "Came", string.Join(", ", new[] { board.Board.Arrived?.Date?.Text, board.Board.Arrived?.From is { } from ? "from " + from.Value : null }.OfType<string>()));
        PageFrame.Fact(html, "Complaint", board.Board.Arrived?.Complaint?.Value);
        PageFrame.Fact(html, "Duty", string.Join(", ", new[] { board.Board.Duty?.HoursPerYear is { } hours ? hours.Text + " h a year" : null, board.Board.Duty?.Temperature is { } warm ? "at " + warm.Text : null }.OfType<string>()));
        PageFrame.Fact(html, "Last work", board.LastWork?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        PageFrame.Fact(html, "Look again", board.LookAgain?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        PageFrame.Fact(html, "Note", board.Board.Note?.Value);
    }

    private static void Waits(HtmlWriter html, BoardAssessment board)
    {
        if (board.Board.Waiting.Count == 0)
        {
            return;
        }

        PageFrame.Heading(html, "waits", "Waits");
        using var list = html.Open(Tag.Ul);
        foreach (var wait in board.Board.Waiting)
        {
            html.Open(Tag.Li).Text(
                $"{wait.For.Value}, since {wait.Since.Text}" + (wait.Order is { } order ? $", order {order.Value}" : string.Empty) + (wait.Blocks is { } blocks ? $"; blocks {blocks.Value}" : string.Empty)
                + (wait.Until is { } until ? $"; ended {until.Text}" : "; still open"));
        }
    }

    private static void Story(HtmlWriter html, ReportContext context, BoardAssessment board)
    {
        if (string.IsNullOrWhiteSpace(board.Board.Body))
        {
            return;
        }

        PageFrame.Heading(html, "story", "In its keeper's words");
        StoryWriter.Write(html, new Story(board.Board.Body, "boards", new BoardStoryTargets(context, board)));
    }

    private static void Photographs(HtmlWriter html, BoardAssessment board)
    {
        var photos = board.Visits.SelectMany(visit => visit.Photos.Select(photo => (visit, photo))).Where(pair => PictureNames.IsSafe(pair.photo.File.Value)).ToArray();
        if (photos.Length == 0)
        {
            return;
        }

        PageFrame.Heading(html, "photographs", "Photographs");
        using var box = html.Open(Tag.Div, ClassName.Photos);
        foreach (var (visit, photo) in photos)
        {
            using var figure = html.Open(Tag.Figure);
            html.Open(Tag.Img).Showing(LocalLink.ToFile(photo.File.Value, 1)).With(TextAttribute.Alt, photo.Shows.Value).With(FixedAttribute.LazyLoading).Close();
            html.Open(Tag.FigCaption).Text($"{visit.Date.Text}: {photo.Shows.Value}");
        }
    }
}
