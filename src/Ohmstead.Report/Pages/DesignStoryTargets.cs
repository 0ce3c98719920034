using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Pages;

/// <summary>What names in the text of a design lead to: its own parts, boards, other designs, pictures of the collection.</summary>
internal sealed class DesignStoryTargets(ReportContext context, DesignUnits design) : IStoryTargets
{
    private readonly HashSet<string> parts = design.Design.Parts.Select(part => part.Ref.Value).ToHashSet(StringComparer.Ordinal);

    /// <inheritdoc/>
    public Link? Reference(string name) =>
        parts.Contains(name) ? LocalLink.ToFragment(ElementId.For(IdPrefix.Part, name))
        : context.Boards.Contains(name) ? LocalLink.ToFile(SiteAddress.Board(name), 1)
        : null;

    /// <inheritdoc/>
    public LocalLink? File(string path, string? place) => context.PageOf(path);

    /// <inheritdoc/>
    public LocalLink? Picture(string path) => context.PictureOf(path);
}
