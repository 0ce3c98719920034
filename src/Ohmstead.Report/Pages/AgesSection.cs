using System.Globalization;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The ages at which families fail, as far as they can be told.</summary>
internal static class AgesSection
{
    private const int MostFamilies = 15;
    private const int FamiliesAPage = 50;
    private const string PagesPath = "ages";
    private static readonly Ledger<AgeStep> Table = new(
        new("Failed", step => step.Range),
        new("Share", step => step.Share) { IsNumber = true, IsPlain = true },
        new("Together", step => step.Together) { IsNumber = true, IsPlain = true }
    )
    {
        IsCompact = true,
    };

    /// <summary>Writes the section.</summary>
    public static void Write(HtmlWriter html, IReadOnlyList<FamilyStatistics> families)
    {
        using var section = Section.Open(html, "ages", "Ages at failure", "as far as looks can tell");
        html.Open(Tag.P).Text(FamilyWords.AgeFrom);
        FamilyStatistics[] told = [.. FamilyAges.WorthTelling(families)];
        if (told.Length > 0)
        {
            AgeSteps.WriteKey(html);
        }

        var here = told.Take(MostFamilies).ToLookup(FamilyAges.SaysLittle);
        foreach (var family in here[false])
        {
            One(html, family);
        }

        if (here[true].Any())
        {
            using var fold = html.Open(Tag.Details);
            html.Open(Tag.Summary).Text(FamilyAges.Little(here[true].Count()));
            foreach (var family in here[true])
            {
                One(html, family);
            }
        }

        if (told.Length > MostFamilies)
        {
            using var line = html.Open(Tag.P);
            html.Text(string.Create(CultureInfo.InvariantCulture, $"The first {MostFamilies} of {told.Length}: "));
            html.Open(Tag.A).To(LocalLink.ToFile(TablePages.PathOf(PagesPath, 0))).Text("the ages of the others");
        }

        html.Open(Tag.P).Text(FamilyAges.Rest(families.Count, told.Length));
        html.Open(Tag.P, ClassName.Fine)
            .Text(
                $"Shares by age: {IntervalCensoredEstimate.Source.Text}. Weibull life: {WeibullFit.Source.Text}. Estimates, not promises."
            );
    }

    /// <summary>Writes the pages of the families that the section does not tell.</summary>
    public static void WriteRest(IReportFiles files, ReportContext context, IReadOnlyList<FamilyStatistics> families)
    {
        FamilyStatistics[][] pages = [.. FamilyAges.WorthTelling(families).Skip(MostFamilies).Chunk(FamiliesAPage)];
        using var buffer = new PageBuffer();
        for (var page = 0; page < pages.Length; page++)
        {
            var path = TablePages.PathOf(PagesPath, page);
            PageFrame.Write(buffer, context, new(path, "Ages at failure", FamilyWords.AgeFrom), (pages, page), static (html, told) =>
                Content(html, told.pages, told.page)
            );
            files.Put(path, buffer.Written);
        }
    }

    private static void Content(HtmlWriter html, FamilyStatistics[][] pages, int here)
    {
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("Ages at failure");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(FamilyWords.AgeFrom);
            using var line = html.Open(Tag.P);
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Families)).Text("Families, and the ages told first");
        }

        TablePages.Links(html, PagesPath, "Pages of Ages at failure", [.. pages.Select(page => page[0].Name.Text)], here);
        using var section = Section.Open(html, "ages", "Families, continued");
        foreach (var family in pages[here])
        {
            One(html, family);
        }
    }

    private static void One(HtmlWriter html, FamilyStatistics family)
    {
        html.Open(Tag.H3).Text(family.Name.Text);
        html.Open(Tag.P).Text(FamilyAges.Counts(family));
        if (FamilyAges.FirstLooks(family) is { Length: > 0 } looks)
        {
            html.Open(Tag.P).Text(looks);
        }

        if (family.Ages.Steps.Is(out var estimate, out _))
        {
            using var figure = html.Open(Tag.Figure);
            AgeSteps.Write(html, family, estimate);
            Table.Write(html, $"Ages at failure, {family.Name.Text}", FamilyAges.Steps(estimate));
        }

        html.Open(Tag.P).Text(FamilyAges.Life(family));
    }
}
