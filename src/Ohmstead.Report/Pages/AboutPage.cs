using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The page that says how verdicts are reached and how the drawings are read.</summary>
public static class AboutPage
{
    /// <summary>The file, from the root of the report.</summary>
    public const string PathName = "about.html";

    /// <summary>Where the drawings are explained.</summary>
    internal static ElementId Drawings { get; } = ElementId.Of(IdPrefix.Section, "drawings");
}
