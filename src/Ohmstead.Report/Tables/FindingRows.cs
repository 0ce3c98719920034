using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>Findings as rows of a table: the line, how much it weighs, what was found, what to do next, and the check that explains
/// it.</summary>
internal static class FindingRows
{
    /// <summary>The columns.</summary>
    public static Column[] Columns { get; } = [new("Line", IsShort: true), "Weight", "Finding", "What next", new("Check", IsShort: true)];

    /// <summary>Writes the section of the findings of one record; nothing when there are none.</summary>
    public static void WriteSection(HtmlWriter html, ReportContext context, ImmutableArray<Finding> findings)
    {
        if (findings.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "findings", "Findings", "what the record says that does not add up");
        using var table = Ledger.Open(html, "Findings", Columns);
        using var body = html.Open(Tag.TBody);
        foreach (
            var finding in findings
                .OrderBy(finding => finding.Place.Line)
                .ThenBy(finding => finding.Place.Column)
                .ThenBy(finding => finding.Check, StringComparer.Ordinal)
        )
        {
            Write(html, table, context, finding, 1);
        }
    }

    /// <summary>Writes a row.</summary>
    /// <param name="html">The page.</param>
    /// <param name="table">The table.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="levelsUp">How many folders below the root the page stands.</param>
    public static void Write(HtmlWriter html, Ledger table, ReportContext context, Finding finding, int levelsUp)
    {
        using var row = html.Open(Tag.Tr);
        table.Head().Text(string.Create(CultureInfo.InvariantCulture, $"{finding.Place.Line}:{finding.Place.Column}"));
        Cells(html, table, context, finding, levelsUp);
    }

    /// <summary>Writes the cells behind the one that heads the row.</summary>
    public static void Cells(HtmlWriter html, Ledger table, ReportContext context, Finding finding, int levelsUp)
    {
        using (table.Cell(1))
        {
            var (words, tone) = finding.Severity switch
            {
                Severity.Error => ("error", ClassName.Bad),
                Severity.Warning => ("warning", ClassName.Open),
                _ => ("note", ClassName.Quiet),
            };
            html.Open(Tag.Span).With(ClassName.Told, tone).Text(words);
        }

        using (table.Cell(2))
        {
            html.Text(finding.Message);
            foreach (var related in finding.Related)
            {
                html.Open(Tag.P, ClassName.Fine).Text($"{related.Place.ToString()}: {related.Note}");
            }
        }

        table.Cell(3).Text(finding.NextStep ?? string.Empty);
        using var check = table.Cell(4);
        if (context.Checks.Contains(finding.Check))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Check(finding.Check), levelsUp)).Text(finding.Check);
        }
        else
        {
            html.Text(finding.Check);
        }
    }
}
