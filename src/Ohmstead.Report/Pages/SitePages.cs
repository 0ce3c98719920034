namespace Ohmstead.Report.Pages;

/// <summary>The pages of a report that every other page leads to, in the order in which they are listed.</summary>
internal static class SitePages
{
    /// <summary>Each with its file and the words of the link. The page of the collection is listed before them, by the name of the
    /// collection.</summary>
    public static IReadOnlyList<(string Path, string Words)> All { get; } =
    [
        (AheadPage.PathName, "Year ahead"),
        (DrawerPage.PathName, "Drawer"),
        (InstrumentsPage.PathName, "Instruments"),
        (FamiliesPage.PathName, "Families"),
        (FindingsPage.PathName, "Findings"),
        (ChecksPage.PathName, "Checks"),
        (AboutPage.PathName, "How verdicts are reached"),
    ];
}
