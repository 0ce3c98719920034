using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Pages;

/// <summary>The page of one check: why it is made, a wrong and a right example, what to do, the source.</summary>
public static class CheckPage
{
    /// <summary>The file of a check's page, from the root of the report. It lasts as long as the check keeps its name.</summary>
    public static string PathOf(string check) => $"checks/{check}.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, CheckText check) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Check(check.Name), $"Check: {check.Name}", check.Summary),
            check,
            static (html, text) => Content(html, text)
        );

    private static void Content(HtmlWriter html, CheckText check)
    {
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text(check.Name);
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(check.Summary);
            if (CheckEffects.Told(check.Name) is { } effect)
            {
                html.Open(Tag.P).Text($"What it does to the state: {effect}.");
            }
        }

        using var section = Section.Open(html, "explained", "Explained", ChecksPage.Words(check.Severity));
        StoryWriter.Write(html, new Story(check.Body, string.Empty, NoTargets.Instance));
    }

    /// <summary>An explanation speaks of examples, never of this collection.</summary>
    private sealed class NoTargets : IStoryTargets
    {
        public static NoTargets Instance { get; } = new();

        public Link? Reference(string name) => null;

        public LocalLink? File(string path, string? place) => null;

        public LocalLink? Picture(string path) => null;
    }
}
