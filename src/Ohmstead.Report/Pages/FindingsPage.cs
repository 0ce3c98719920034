using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the findings: everything the check says of the records, file by file, with its line and the next step; and every
/// hazard that is still there.</summary>
public static class FindingsPage
{
    private const int MostRows = 100;
    private const int MostCautions = 60;

    /// <summary>Writes the page.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="findings">All findings, in order of path and line.</param>
    /// <param name="boards">All boards.</param>
    public static void Write(
        PageBuffer buffer,
        ReportContext context,
        ImmutableArray<Finding> findings,
        IReadOnlyList<BoardSummary> boards
    ) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Findings, "Findings and cautions", Lead(findings)),
            (context, findings, boards),
            static (html, page) => Content(html, page.context, page.findings, page.boards)
        );

    /// <summary>Writes the pages on which its tables go on.</summary>
    public static void WriteRest(
        IReportFiles files,
        ReportContext context,
        ImmutableArray<Finding> findings,
        IReadOnlyList<BoardSummary> boards
    )
    {
        All(context).WritePages(files, context, findings, MostRows);
        OfHazards.WritePages(files, context, Hurting(boards), MostCautions);
    }

    // Here each row says which file it is of: sorted, no group would hold.
    private static LongTable<Finding> All(ReportContext context) =>
        new("findings-all", "Findings", "in the order of the records", new([new("Record", (html, finding) =>
                {
                    File(html, context, finding.Place.Path);
                    html.Text(string.Create(CultureInfo.InvariantCulture, $":{finding.Place.Line}:{finding.Place.Column}"));
                }), .. new FindingRows(context, 0).Told]), 120, finding => finding.Place.Path);

    private static LongTable<BoardSummary> OfHazards { get; } =
        new(
            "cautions",
            "Cautions",
            "what must be made safe stands first",
            new(new("Board", BoardLink), new("What can hurt", HazardsOf))
            {
                Anchor = board => ElementId.For(IdPrefix.Board, board.Id.Value),
            },
            150,
            board => board.Id.Value
        );

    private static BoardSummary[] Hurting(IReadOnlyList<BoardSummary> boards) =>
        [
            .. boards
                .Where(board => board.Hazards.Length > 0)
                .OrderByDescending(board => board.Hazards.Any(hazard => hazard.MustGo))
                .ThenBy(board => board.Id.Value, StringComparer.Ordinal),
        ];

    private static void Content(
        HtmlWriter html,
        ReportContext context,
        ImmutableArray<Finding> findings,
        IReadOnlyList<BoardSummary> boards
    )
    {
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("Findings and cautions");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(findings));
        }

        Findings(html, context, findings);
        Hazards(html, boards);
    }

    private static string Lead(ImmutableArray<Finding> findings) =>
        findings.Length == 0
            ? "The records contradict nothing that is checked."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{Counted(findings, Severity.Error, "error", "errors")}, {Counted(findings, Severity.Warning, "warning", "warnings")}, "
                    + $"{Counted(findings, Severity.Note, "note", "notes")}, in "
                    + $"{findings.Select(finding => finding.Place.Path).Distinct(StringComparer.Ordinal).Count()} of the files."
            );

    private static string Counted(ImmutableArray<Finding> findings, Severity severity, string one, string more) =>
        findings.Where(finding => finding.Severity == severity).Sum(finding => 1 + finding.More) is var count && count == 1
            ? $"one {one}"
            : string.Create(CultureInfo.InvariantCulture, $"{count} {more}");

    private static void Findings(HtmlWriter html, ReportContext context, ImmutableArray<Finding> findings)
    {
        if (findings.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "findings", "Findings", "what the records say that does not add up");
        new Ledger<Finding>(new FindingRows(context, 0).OfRecord).WriteGroups(
            html,
            "Findings",
            findings.Take(MostRows).GroupBy(finding => finding.Place.Path, StringComparer.Ordinal),
            (page, path) => File(page, context, path)
        );
        All(context).WriteRest(html, findings.Length, MostRows);
    }

    private static void File(HtmlWriter html, ReportContext context, string path)
    {
        var page = path switch
        {
            "stock.yaml" => LocalLink.ToFile(SiteAddress.Drawer),
            "instruments.yaml" => LocalLink.ToFile(SiteAddress.Instruments),
            _ => context.PageOf(path, 0),
        };
        if (page is not null)
        {
            html.Open(Tag.A).To(page).Text(path);
        }
        else
        {
            html.Text(path);
        }
    }

    private static void Hazards(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        var hurting = Hurting(boards);
        using var section = Section.Open(html, "cautions", OfHazards.Heading, OfHazards.Remark);
        html.Open(Tag.P).Text(SafetyNotice.Defer);
        if (hurting.Length == 0)
        {
            html.Open(Tag.P).Text("No record names a hazard that is still there. That is not proof that there is none.");
            return;
        }

        OfHazards.WriteStart(html, hurting, MostCautions);
    }

    private static void BoardLink(HtmlWriter html, BoardSummary board)
    {
        html.Open(Tag.A, ClassName.Reference)
            .To(LocalLink.ToFile(SiteAddress.Board(board.Id.Value), 0, ElementId.For(IdPrefix.Section, "cautions")))
            .Text(board.Id.Value);
        html.Text(" ");
        html.Open(Tag.Small).Text(board.Title);
    }

    private static void HazardsOf(HtmlWriter html, BoardSummary board)
    {
        using var list = html.Open(Tag.Ul);
        foreach (var hazard in board.Hazards)
        {
            Hazard(html, hazard);
        }
    }

    private static void Hazard(HtmlWriter html, AssessedHazard assessed)
    {
        var hazard = assessed.Hazard;
        using var line = html.Open(Tag.Li);
        html.Open(assessed.MustGo ? Tag.Strong : Tag.Span)
            .Text(hazard.Kind.Text + (hazard.At is { } at ? $" at {at.Value}" : string.Empty));
        var first = true;
        if (assessed.MustGo)
        {
            html.Text(": must be made safe first");
            first = false;
        }

        foreach (var figure in HazardNotes.Figures(assessed))
        {
            html.Text(first ? ": " : "; ");
            html.Text(figure.Says);
            first = false;
        }
    }
}
