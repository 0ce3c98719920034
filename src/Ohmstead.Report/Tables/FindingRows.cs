using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>Findings as rows of a table: the line, how much it weighs, what was found, what to do next, and the check that explains
/// it.</summary>
/// <param name="context">What every page knows.</param>
/// <param name="levelsUp">How many folders below the root the page stands.</param>
internal sealed class FindingRows(ReportContext context, int levelsUp)
{
    /// <summary>The columns of a table that is about one record.</summary>
    public Column<Finding>[] OfRecord => [new("Line", Line) { IsShort = true }, .. Told];

    /// <summary>The columns behind the one that says where a finding is.</summary>
    public Column<Finding>[] Told =>
        [
            new("Weight", Weight),
            new("Finding", Message),
            new("What next", finding => finding.NextStep),
            new("Check", Check) { IsShort = true },
        ];

    /// <summary>Writes the section of the findings of one record; nothing when there are none.</summary>
    public void WriteSection(HtmlWriter html, ImmutableArray<Finding> findings)
    {
        if (findings.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "findings", "Findings", "what the record says that does not add up");
        new Ledger<Finding>(OfRecord).Write(
            html,
            "Findings",
            findings
                .OrderBy(finding => finding.Place.Line)
                .ThenBy(finding => finding.Place.Column)
                .ThenBy(finding => finding.Check, StringComparer.Ordinal)
        );
    }

    private static string Line(Finding finding) =>
        string.Create(CultureInfo.InvariantCulture, $"{finding.Place.Line}:{finding.Place.Column}");

    private static void Weight(HtmlWriter html, Finding finding)
    {
        var (words, tone) = finding.Severity switch
        {
            Severity.Error => ("error", ClassName.Bad),
            Severity.Warning => ("warning", ClassName.Open),
            _ => ("note", ClassName.Quiet),
        };
        html.Open(Tag.Span).With(ClassName.Told, tone).Text(words);
    }

    private static void Message(HtmlWriter html, Finding finding)
    {
        html.Text(finding.Message);
        foreach (var related in finding.Related)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"{related.Place.ToString()}: {related.Note}");
        }
    }

    private void Check(HtmlWriter html, Finding finding)
    {
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
