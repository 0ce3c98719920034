using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>The files beside the pages: the page about the verdicts leads to all of them, and the head of every page to the
/// feed.</summary>
internal static class FilesForPrograms
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Alternate> Files { get; } =
    [
        new(AtomFeed.PathName, "application/atom+xml", "What changed at the bench", IsOnEveryPage: true),
        new(DataFiles.JsonName, "application/json", "Everything, for programs"),
        .. DataShapes.All.Select(table => new Alternate(DataFiles.CsvName(table.Name), "text/csv", table.Row.Description)),
    ];
}
