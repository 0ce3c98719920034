using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>The files that every page leads to, in head and foot.</summary>
internal static class Beside
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Alternate> Files { get; } =
    [
        new(AtomFeed.PathName, "application/atom+xml", "What changed at the bench"),
        new(DataFiles.JsonName, "application/json", "Everything, for programs"),
        .. DataShapes.All.Select(table => new Alternate(DataFiles.CsvName(table.Name), "text/csv", table.Row.Description)),
    ];
}
