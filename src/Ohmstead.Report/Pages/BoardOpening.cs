using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The head of a board's page: plate, state, what is outside now, the latest photograph, and its life on one line.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class BoardOpening(BoardOnPage page)
{
    private const int MostSteps = 10;
    private readonly HtmlWriter html = page.Html;
    private readonly JudgedBoard board = page.Board;

    /// <summary>Writes the head.</summary>
    /// <param name="photographs">The photographs of the board.</param>
    public void Write(Photographs photographs)
    {
        using var opening = html.Open(Tag.Header, ClassName.Opening);
        PageFrame.PlateHeading(html, board.Board.Id.Value, board.Board.Title.Value);
        using var content = html.Open(Tag.Div, ClassName.Content);
        using (html.Open(Tag.Div, ClassName.Portrait))
        {
            using (html.Open(Tag.Div))
            {
                Answer();
            }

            photographs.Head();
        }

        Years();
    }

    private void Answer()
    {
        using (html.Open(Tag.P, ClassName.Lead))
        {
            StateMark.Write(html, board.State, board.OverdueSince);
        }

        if (board.Whereabouts.Told is { } where)
        {
            html.Open(Tag.P).Text(where);
        }

        if (board.Readings.Length > 0)
        {
            var now = HoldsNow.Of(board);
            html.Open(Tag.P).Text($"{Sentence(now.Told)}.");
            if (now.ToldBefore is { } before)
            {
                html.Open(Tag.P, ClassName.Fine).Text($"{before}.");
            }
        }

        // The line of its life says the rest.
        if (board.LastWork is null)
        {
            html.Open(Tag.P, ClassName.Fine).Text("no work yet");
        }
    }

    private void Years()
    {
        var steps = BoardStep.Of(board);
        if (board.Visits.Length == 0)
        {
            return;
        }

        var places = VisitAnchors.For(board.Visits);
        YearsLine.Write(html, (board.Board.Made ?? board.Design?.Made)?.Value.ToString(), steps, page.Context.Today, places);
        using var list = html.Open(Tag.Ol, ClassName.Steps);
        var late = steps.Length > MostSteps ? steps.Length - MostSteps : 0;
        if (late > 0)
        {
            using var item = html.Open(Tag.Li);
            html.Open(Tag.A)
                .To(ElementId.For(IdPrefix.Section, "bench"))
                .Text(string.Create(CultureInfo.InvariantCulture, $"{late} steps before"));
        }

        foreach (var step in steps.Skip(late))
        {
            using var item = html.Open(Tag.Li);
            if (step.Visit is { } visit)
            {
                html.Open(Tag.A).To(places[visit]).Text(step.When);
            }
            else
            {
                html.Text(step.When);
            }

            html.Text($" {step.Words}");
        }
    }

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
