using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What stands at the address of a number that a board had before: it leads to the page of the board.</summary>
public static class FormerPage
{
    private const string Had = "The board that had this number: ";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, string number, BoardSummary board) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Board(number), $"{number} is {board.Id.Value} now", $"{Had}{board.Id.Value} {board.Title}."),
            (number, board),
            static (html, asked) =>
            {
                using var opening = html.Open(Tag.Header, ClassName.Opening);
                PageFrame.PlateHeading(html, asked.number, $"is {asked.board.Id.Value} now");
                using var content = html.Open(Tag.Div, ClassName.Content);
                using var lead = html.Open(Tag.P, ClassName.Lead);
                html.Text(Had);
                html.Open(Tag.A)
                    .To(LocalLink.ToFile(SiteAddress.Board(asked.board.Id.Value), 1))
                    .Text($"{asked.board.Id.Value} {asked.board.Title}");
            },
            LocalLink.ToFile(SiteAddress.Board(board.Id.Value), 1)
        );
}
