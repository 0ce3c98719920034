using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The list of all checks, each with the way to its page.</summary>
public static class ChecksPage
{
    private static readonly Ledger<CheckText> Table = new(
        new("Check", (html, check) => html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Check(check.Name))).Text(check.Name))
        {
            IsShort = true,
        },
        new("Weight", check => Words(check.Severity)),
        new("A finding of it means", check => check.Summary)
    )
    {
        Anchor = check => ElementId.For(IdPrefix.Check, check.Name),
    };

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<CheckText> checks) =>
        PageFrame.Write(buffer, context, new(SiteAddress.Checks, "Checks explained", Lead(checks)), checks, static (html, all) =>
            Content(html, all)
        );

    private static string Lead(IReadOnlyList<CheckText> checks) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{checks.Count} checks look at every record, each with its reason, a wrong and a right example, and what to do."
        );

    /// <summary>How serious the findings of a check are; null where that differs.</summary>
    internal static string? Words(Severity? severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            Severity.Note => "note",
            _ => null,
        };

    private static void Content(HtmlWriter html, IReadOnlyList<CheckText> checks)
    {
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("Checks explained");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(checks));
        }

        using var section = Section.Open(html, "checks", "All checks", "in order of name");
        Table.Write(html, "Checks", checks);
    }
}
