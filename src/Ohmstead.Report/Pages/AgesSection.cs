using System.Globalization;
using Ohmstead.Assessment.Families;
using Ohmstead.Electronics.Statistics;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pictures;

namespace Ohmstead.Report.Pages;

/// <summary>The ages at which families fail, as far as they can be told.</summary>
internal static class AgesSection
{
    private const int MostFamilies = 100;
    private static readonly Column[] Columns = ["Failed", new("Share", IsNumber: true, IsPlain: true), new("Together", IsNumber: true, IsPlain: true)];

    /// <summary>Writes the section.</summary>
    public static void Write(HtmlWriter html, IReadOnlyList<FamilyStatistics> families)
    {
        using var entry = Entry.Open(html, "ages", "Ages at failure", "as far as looks can tell");
        html.Open(Tag.P).Text(FamilyWords.AgeFrom);
        FamilyStatistics[] told = [.. FamilyAges.WorthTelling(families)];
        foreach (var family in told.Take(MostFamilies))
        {
            One(html, family);
        }

        if (told.Length > MostFamilies)
        {
            html.Open(Tag.P).Text(string.Create(CultureInfo.InvariantCulture, $"and {told.Length - MostFamilies} more: ohmstead families lists all"));
        }

        html.Open(Tag.P).Text(FamilyAges.Rest(families.Count, told.Length));
        html.Open(Tag.P, ClassName.Fine).Text($"Shares by age: {IntervalCensoredEstimate.Source}. Weibull life: {WeibullFit.Source}. Estimates, not promises.");
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
            using var table = Ledger.Open(html, $"Ages at failure, {family.Name.Text}", Columns, isCompact: true);
            using var body = html.Open(Tag.TBody);
            foreach (var step in FamilyAges.Steps(estimate))
            {
                using var row = html.Open(Tag.Tr);
                table.Head().Text(step.Range);
                table.Cell(1).Text(step.Share);
                table.Cell(2).Text(step.Together);
            }
        }

        html.Open(Tag.P).Text(FamilyAges.Life(family));
    }
}
