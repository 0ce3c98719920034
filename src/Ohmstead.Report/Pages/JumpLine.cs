using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The line that stays in sight on the page of a board: its parts, and the boards before and after it.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class JumpLine(BoardOnPage page)
{
    private readonly HtmlWriter html = page.Html;

    /// <summary>Writes the line.</summary>
    /// <param name="hasPhotographs">Whether the page has photographs below.</param>
    public void Write(bool hasPhotographs)
    {
        var board = page.Board;
        using var line = html.Open(Tag.Nav, ClassName.Jump).With(TextAttribute.AriaLabel, "On this page");
        To("cautions", "Cautions");
        To(board.Places.Length > 0, "parts", "Parts");
        To(board.Proofs.Length > 0, "proof", "Proof");
        To(board.Visits.Length > 0, "bench", "At the bench");
        To(!string.IsNullOrWhiteSpace(board.Board.Body), "story", "Story");
        To(hasPhotographs, "photographs", "Photographs");
        var (before, after) = page.Context.Beside(board.Board.Id.Value);
        Neighbour(before, "Previous");
        Neighbour(after, "Next");
    }

    private void To(bool isThere, string section, string words)
    {
        if (isThere)
        {
            To(section, words);
        }
    }

    private void To(string section, string words)
    {
        html.Open(Tag.A).To(ElementId.For(IdPrefix.Section, section)).Text(words);
        html.Text(" ");
    }

    private void Neighbour(string? board, string words)
    {
        if (board is not null)
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Board(board), 1)).Text($"{words}: {board}");
            html.Text(" ");
        }
    }
}
