namespace Ohmstead.Report.Addresses;

/// <summary>The pages of a report that every other page leads to, in the order in which they are listed.</summary>
internal static class SitePages
{
    /// <summary>Each with its file and the words of the link. The page of the collection is listed before them, by the name of the
    /// collection.</summary>
    public static IReadOnlyList<(string Path, string Words)> All { get; } =
    [
        (SiteAddress.Ahead, "Year ahead"),
        (SiteAddress.Drawer, "Drawer"),
        (SiteAddress.Instruments, "Instruments"),
        (SiteAddress.Families, "Failures"),
        (SiteAddress.Findings, "Findings"),
        (SiteAddress.Checks, "Checks"),
        (SiteAddress.About, "How verdicts are reached"),
    ];
}
