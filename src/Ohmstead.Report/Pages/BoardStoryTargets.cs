using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Pages;

/// <summary>What names in the story of a board lead to: its own parts, other boards, pictures of the collection.</summary>
internal sealed class BoardStoryTargets(ReportContext context, BoardAssessment board) : IStoryTargets
{
    /// <inheritdoc/>
    public Link? Reference(string name) =>
        board.Place(name) is not null ? LocalLink.ToFragment(ElementId.For(IdPrefix.Part, name))
        : name != board.Board.Id.Value && context.Boards.Contains(name) ? LocalLink.ToFile(SiteAddress.Board(name), 1)
        : null;

    /// <inheritdoc/>
    public LocalLink? File(string path, string? place) => context.PageOf(path);

    /// <inheritdoc/>
    public LocalLink? Picture(string path) => context.PictureOf(path);
}
