using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>A board while its page is written: what the sections of the page share.</summary>
/// <param name="Html">The page.</param>
/// <param name="Context">What every page knows.</param>
/// <param name="Board">The board.</param>
internal sealed record BoardOnPage(HtmlWriter Html, ReportContext Context, JudgedBoard Board)
{
    /// <summary>What the verdicts of the page have in common, each thing told once.</summary>
    public SharedWorking Working { get; } = new(Context.Workshop.Rule);

    /// <summary>The addresses of its readings.</summary>
    public ReadingAnchors Anchors { get; } = new(Board.Readings);

    /// <summary>Writes the reference of a part, leading to its row where it has one.</summary>
    public void Link(string place) => PartLink.Write(Html, Board, place);
}
