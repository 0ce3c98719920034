using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>The code that leads from a sheet of paper to the record of its board, with the number below it in words.</summary>
internal static class SheetCode
{
    /// <summary>Writes it; nothing where the collection says no address.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board, PublishedAt? site)
    {
        if (site is null)
        {
            return;
        }

        var address = site.Board(board.Board.Id.Value);
        using var figure = html.Open(Tag.Figure, SheetClass.Code);
        QrCode.Of(address).Write(html, address);
        html.Open(Tag.FigCaption).Text(board.Board.Id.Value);
    }
}
