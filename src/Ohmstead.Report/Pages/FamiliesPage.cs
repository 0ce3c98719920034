using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the families of parts: which of them fail, how sure that is, and at what ages.</summary>
public static class FamiliesPage
{
    private const int MostRows = 40;

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<FamilyStatistics> families) =>
        PageFrame.Write(buffer, context, new(SiteAddress.Families, "Families of parts", Lead(families)), families, static (html, all) =>
            Content(html, all)
        );

    /// <summary>Writes the pages on which it goes on.</summary>
    public static void WriteRest(IReportFiles files, ReportContext context, IReadOnlyList<FamilyStatistics> families)
    {
        OfShares.WritePages(files, context, [.. FamilyAges.Apart(families)], MostRows);
        AgesSection.WriteRest(files, context, families);
    }

    private static Ledger<FamilyStatistics> Table { get; } =
        new(
            new("Family", family => family.Name.Text),
            new("Parts", family => family.Parts),
            new("Measured", family => family.Measured),
            new("Boards", family => family.Boards),
            new("Failed as found", family => family.FailedAsFound),
            new("Share", Share),
            new("Failed later", family => family.FailedLater),
            new("In circuit", family => family.FailedInCircuit)
        )
        {
            Anchor = family => ElementId.For(IdPrefix.Family, family.Name.Text),
        };

    private static LongTable<FamilyStatistics> OfShares { get; } =
        new("families-all", "Families", "the largest share first; no share of fewer than five parts", Table, 90, family =>
            family.Name.Text
        );

    /// <summary>The section of the collection's page that leads here.</summary>
    internal static void Mention(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        var measured = boards.SelectMany(board => board.Families).SelectMany(family => family.Lives).Count(life => life.IsOriginal);
        var failed = boards
            .SelectMany(board => board.Families)
            .SelectMany(family => family.Lives)
            .Count(life => life is { IsOriginal: true, FailedAsFound: true });
        using var section = Section.Open(html, "families", "Failures by family", "parts that age and fail alike; which of them go bad");
        using var line = html.Open(Tag.P);
        html.Text(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{failed} of {measured} parts that a reading out of circuit decided about were outside as found. "
            )
        );
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Families)).Text("By kind, maker and series, with intervals and ages");
    }

    private static void Content(HtmlWriter html, IReadOnlyList<FamilyStatistics> families)
    {
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("Families of parts");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(families));
            html.Open(Tag.P).Text(FamilyWords.Caution);
        }

        if (families.Count > 0)
        {
            Shares(html, families);
            AgesSection.Write(html, families);
        }
    }

    private static string Lead(IReadOnlyList<FamilyStatistics> families) =>
        families.Count == 0 ? "No part was measured out of circuit yet."
        : families[0] is { Share: { IsUpperLimit: false } share } worst
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"The worst family: {worst.Name.Text}, {share.Failed} of {share.Measured} measured failed as found, "
                    + $"{FamilyWords.Share(worst)}."
            )
        : "No family of five or more measured parts has one that failed.";

    private static void Shares(HtmlWriter html, IReadOnlyList<FamilyStatistics> families)
    {
        using var section = Section.Open(html, "shares", "Failed as found", OfShares.Remark);
        FamilyStatistics[] apart = [.. FamilyAges.Apart(families)];
        FamilyStatistics[] here = [.. apart.Take(MostRows)];
        var told = here.Where(family => family.Share is not null).ToArray();
        if (told.Length > 0)
        {
            Table.Write(html, OfShares.Heading, told);
        }

        if (here.Length > told.Length)
        {
            using var fold = html.Open(Tag.Details);
            html.Open(Tag.Summary).Text(FamilyWords.TooFewMeasured(here.Length - told.Length));
            Table.Write(html, "Families of which too few were measured", here.Where(family => family.Share is null));
        }

        OfShares.WriteRest(html, apart.Length, MostRows);
        html.Open(Tag.P, ClassName.Fine)
            .Text(
                "Measured are originals that a reading out of circuit, or a test of function, decided about; what was too close to call "
                    + "is not among them. What only a reading in circuit proved outside stands in the last column and counts in no "
                    + "share: in circuit nothing but a failure can be proved."
            );
    }

    private static void Share(HtmlWriter html, FamilyStatistics family)
    {
        if (family.Share is not { } share)
        {
            html.Text(FamilyWords.Share(family));
            return;
        }

        ShareBar.Write(html, family, share);
        using var fold = html.Open(Tag.Details);
        html.Open(Tag.Summary).Text(FamilyWords.Share(family));
        using var list = html.Open(Tag.Ul);
        html.Open(Tag.Li).Text($"95 % interval{(share.IsUpperLimit ? ", one-sided" : string.Empty)}: {share.Arithmetic}");
        html.Open(Tag.Li).Text($"Source: {share.Source.Text}");
    }
}
