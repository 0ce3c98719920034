using System.Globalization;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The same place across the units of a design: what sits there and the readings that stand, unit beside unit.</summary>
internal static class PlacesCompared
{
    private const string Heading = "The same place, unit by unit";
    private const string Remark = "what sits there now, and the readings that stand";
    private const string Lead = "What sits there now, and the readings that stand.";

    // More than this and the page of the design would grow beyond what loads at once: the table has a page of its own then.
    private const int MostCellsInPlace = 100;

    /// <summary>Writes the section: the table, or the way to it.</summary>
    public static void Write(HtmlWriter html, DesignUnits design)
    {
        if (References(design) is not { Length: > 0 } references)
        {
            return;
        }

        using var section = Section.Open(html, "places", Heading, Remark);
        if (IsHere(design, references))
        {
            Table(html, design, references);
            return;
        }

        using var line = html.Open(Tag.P);
        html.Open(Tag.A)
            .To(LocalLink.ToFile(SiteAddress.PlacesCompared(design.Design.Id.Value), 1))
            .Text(string.Create(CultureInfo.InvariantCulture, $"{references.Length} places of {design.Compared.Count} units"));
        html.Text(" on a page of their own.");
    }

    /// <summary>Writes the page of its own, when there is one.</summary>
    public static void WritePage(IReportFiles files, ReportContext context, DesignUnits design)
    {
        if (References(design) is not { Length: > 0 } references || IsHere(design, references))
        {
            return;
        }

        using var buffer = new PageBuffer();
        var head = new PageHead(SiteAddress.PlacesCompared(design.Design.Id.Value), $"{Heading}: {design.Design.Title.Value}", Lead);
        PageFrame.Write(buffer, context, head, (design, references), static (html, page) =>
        {
            using (html.Open(Tag.Header, ClassName.Opening))
            {
                PageFrame.PlateHeading(html, page.design.Design.Id.Value, Heading);
                using var content = html.Open(Tag.Div, ClassName.Content);
                html.Open(Tag.P, ClassName.Lead).Text(Lead);
                using var line = html.Open(Tag.P);
                html.Open(Tag.A)
                    .To(LocalLink.ToFile(SiteAddress.Design(page.design.Design.Id.Value), 1))
                    .Text(page.design.Design.Title.Value);
            }

            Table(html, page.design, page.references);
        });
        files.Put(SiteAddress.PlacesCompared(design.Design.Id.Value), buffer.Written);
    }

    private static bool IsHere(DesignUnits design, string[] references) => design.Compared.Count * references.Length <= MostCellsInPlace;

    // A unit alone has nothing beside it, and a place of which nothing is known on any unit says nothing.
    private static string[] References(DesignUnits design) =>
        design.Compared.Count < 2
            ? []
            :
            [
                .. design
                    .Design.Parts.Select(part => part.Ref.Value)
                    .Where(reference => design.Compared.Any(unit => unit.Place(reference) is not null)),
            ];

    private static void Table(HtmlWriter html, DesignUnits design, string[] references)
    {
        if (design.Units.Count > design.Compared.Count)
        {
            html.Open(Tag.P)
                .Text(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The first {design.Compared.Count} of {design.Units.Count} units, in order of number."
                    )
                );
        }

        new Ledger<string>([
            new("Place", reference => reference) { IsShort = true },
            .. design.Compared.Select(unit => new Column<string>(unit.Board, (cell, reference) => Cell(cell, unit, reference))),
        ]).Write(html, Heading, references);
    }

    private static void Cell(HtmlWriter html, UnitPlaces unit, string reference)
    {
        if (unit.Place(reference) is { } place)
        {
            Cell(html, unit.Board, place);
        }
    }

    private static void Cell(HtmlWriter html, string board, UnitPlace place)
    {
        using (html.Open(Tag.P, ClassName.Fine))
        {
            html.Open(Tag.A)
                .To(LocalLink.ToFile(SiteAddress.Board(board), 1, ElementId.For(IdPrefix.Part, place.Reference)))
                .Text(
                    place.IsEmpty ? "nothing, removed"
                    : place.IsRenewed ? "renewed"
                    : "original"
                );
        }

        foreach (var reading in place.Readings)
        {
            html.Open(Tag.P)
                .Toned(ClassName.Told, reading.Outcome)
                .Text($"{VerdictWords.Describe(reading.Outcome)} {VerdictWords.Describe(reading.Measured)} {reading.Text}");
        }

        if (place.PassedTest is { } passed)
        {
            html.Open(Tag.P).With(ClassName.Told, passed ? ClassName.Good : ClassName.Bad).Text(VerdictMark.TestWords(passed));
        }
    }
}
