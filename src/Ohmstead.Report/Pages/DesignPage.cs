using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Markdown;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Pages;

/// <summary>
/// The page of one design: its units side by side, cautions, identity, parts with their markings, points to prove, known faults, text.
/// </summary>
public static class DesignPage
{
    private const int MostUnits = 60;
    private const int MostRenewed = 12;
    private static readonly Column[] UnitColumns =
    [
        "Unit",
        "State",
        "Why",
        new("Serial", IsShort: true),
        "Rev.",
        new("Last seen", IsShort: true),
    ];
    private static readonly Column[] PartColumns =
    [
        new("Place", IsShort: true),
        "Kind",
        "Value",
        new("Tolerance", IsShort: true),
        "Rated",
        "Marking",
        "Renewed in",
    ];
    private static readonly Column[] PointColumns = [new("Point", IsShort: true), "Measures", "Wanted", "Ripple", "Source"];
    private static readonly Column[] FaultColumns = ["At", "What happens", "What to do"];

    /// <summary>The file of a design's page, from the root of the report. It lasts as long as the design keeps its name.</summary>
    public static string PathOf(string design) => $"designs/{design}.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, DesignUnits design) =>
        PageFrame.Write(
            buffer,
            context,
            $"{design.Design.Title.Value} ({design.Design.Id.Value})",
            1,
            (context, design),
            static (html, page) => Content(html, page.context, page.design)
        );

    /// <summary>Writes the pages on which its units go on.</summary>
    public static void WriteRest(IReportFiles files, ReportContext context, DesignUnits design)
    {
        OfUnits(design).WritePages(files, context, design.Units, MostUnits);
        PlacesCompared.WritePage(files, context, design);
    }

    // No name of a design holds a tilde, so no other design's page can have this name.
    private static LongTable<BoardSummary> OfUnits(DesignUnits design) =>
        new(
            $"designs/{design.Design.Id.Value}~units",
            "Units",
            $"of {design.Design.Title.Value}",
            UnitColumns,
            150,
            unit => unit.Id.Value,
            Unit
        );

    private static void Content(HtmlWriter html, ReportContext context, DesignUnits design)
    {
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            PageFrame.PlateHeading(html, design.Design.Id.Value, design.Design.Title.Value);
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(CollectionWords.Lead(design.Units, "unit"));
            Identity(html, design.Design);
        }

        Units(html, design);
        Cautions.Write(html, design);
        Parts(html, design);
        PlacesCompared.Write(html, design);
        Points(html, design.Design.Points);
        Faults(html, design.Design);
        if (!string.IsNullOrWhiteSpace(design.Design.Body))
        {
            using var entry = Entry.Open(html, "story", "In its keeper's words");
            StoryWriter.Write(html, new Story(design.Design.Body, "designs", new DesignStoryTargets(context, design)));
        }

        html.Open(Tag.P, ClassName.Fine).Text($"Record: {design.Design.Path}");
    }

    private static void Identity(HtmlWriter html, DesignFile design)
    {
        using var list = html.Open(Tag.Dl, ClassName.Facts);
        PageFrame.Fact(html, "Maker", design.Maker?.Value);
        PageFrame.Fact(html, "Revision", design.Revision?.Value);
        PageFrame.Fact(html, "Made", design.Made?.Value.ToString());
        PageFrame.Fact(html, "Note", design.Note?.Value);
    }

    private static void Units(HtmlWriter html, DesignUnits design)
    {
        if (design.Units.Count == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "units", "Units side by side");
        OfUnits(design).WriteStart(html, design.Units, MostUnits);
    }

    private static void Unit(HtmlWriter html, Ledger table, BoardSummary unit)
    {
        using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Board, unit.Id.Value));
        using (table.Head())
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Board(unit.Id.Value), 1)).Text(unit.Id.Value);
            html.Text(" ");
            html.Open(Tag.Small).Text(unit.Title);
        }

        using (table.Cell(1).With(NumberAttribute.Order, (int)unit.State))
        {
            StateMark.Write(html, unit.State, unit.OverdueSince);
        }

        using (table.Cell(2))
        {
            CollectionWords.Why(html, unit);
        }

        table.Cell(3).Text(unit.Serial ?? string.Empty);
        table.Cell(4).Text(unit.Revision ?? string.Empty);
        table.Cell(5).Text(PageFrame.Iso(unit.LastSeen));
    }

    private static void Parts(HtmlWriter html, DesignUnits design)
    {
        if (design.Design.Parts.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "parts", "Parts", $"{design.Design.Parts.Length} places, with what is marked on them");
        using var table = Ledger.Open(html, "Parts", PartColumns);
        using var body = html.Open(Tag.TBody);
        var renewed = design.RenewedByPlace();
        foreach (var part in design.Design.Parts)
        {
            Part(html, table, part, [.. renewed[part.Ref.Value]]);
        }
    }

    private static void Part(HtmlWriter html, Ledger table, Part part, BoardSummary[] renewedIn)
    {
        var values = part.Values;
        using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Part, part.Ref.Value));
        table.Head().Text(part.Ref.Value);
        using (table.Cell(1))
        {
            html.Text(values.Kind.Text);
            if (PageFrame.Joined(values.Role?.Text, values.Note?.Value) is { Length: > 0 } more)
            {
                html.Text(" ");
                html.Open(Tag.Small).Text(more);
            }
        }

        using (table.Cell(2))
        {
            if (ChosenBy.Value(values) is { } value)
            {
                PageFrame.Aligned(html, Tag.Span, QuantityText.Format(value.Value));
            }
        }

        table.Cell(3).Text(values.Tolerance?.Text ?? string.Empty);
        using (table.Cell(4))
        {
            Whole(
                html,
                values.RatedVoltage?.Text,
                values.Power?.Text,
                values.Temperature?.Text,
                values.SafetyClass is { } safety ? "class " + safety.Text : null
            );
        }

        table
            .Cell(5)
            .Text(
                PageFrame.Joined(
                    values.Maker?.Value,
                    values.Series?.Value,
                    values.Type?.Value,
                    values.DateCode is { } code ? "date code " + code.Value : null
                )
            );
        using var renewed = table.Cell(6);
        var commas = new Commas(html);
        foreach (var unit in renewedIn.Take(MostRenewed))
        {
            commas
                .Next()
                .Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Board(unit.Id.Value), 1, ElementId.Of(IdPrefix.Part, part.Ref.Value)))
                .Text(unit.Id.Value);
        }

        if (renewedIn.Length > MostRenewed)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $" and {renewedIn.Length - MostRenewed} more"));
        }
    }

    // A figure and its unit stay on one line.
    private static void Whole(HtmlWriter html, params ReadOnlySpan<string?> figures)
    {
        var commas = new Commas(html);
        foreach (var figure in figures)
        {
            if (figure is not null)
            {
                commas.Next().Open(Tag.Span, ClassName.Short).Text(figure);
            }
        }
    }

    private static void Points(HtmlWriter html, ImmutableArray<TestPoint> points)
    {
        if (points.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "points", "Points to prove");
        using var table = Ledger.Open(html, "Points to prove", PointColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var point in points)
        {
            using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Point, point.Name.Value));
            table.Head().Text(point.Name.Value);
            table.Cell(1).Text(Vocabulary.PointMeasures.WordFor(point.Measures) + (point.IsRequired ? string.Empty : ", not required"));
            table.Cell(2).Text(Wanted(point));
            table.Cell(3).Text(point.RippleLimit is { } ripple ? "at most " + ripple.Text : string.Empty);
            table.Cell(4).Text(PageFrame.Joined(point.Source?.Value, point.Note?.Value));
        }
    }

    private static string Wanted(TestPoint point) =>
        PageFrame.Joined(
            point.Nominal is { } nominal ? nominal.Text + (point.Tolerance is { } tolerance ? " " + tolerance.Text : string.Empty) : null,
            point.Low is { } low ? "at least " + low.Text : null,
            point.High is { } high ? "at most " + high.Text : null,
            point.Hours is { } hours ? "at least " + hours.Text + " h" : null
        )
            is { Length: > 0 } wanted
            ? wanted
            : "pass";

    private static void Faults(HtmlWriter html, DesignFile design)
    {
        if (design.KnownFaults.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "faults", "Known faults");
        using var table = Ledger.Open(html, "Known faults", FaultColumns);
        using var body = html.Open(Tag.TBody);
        var parts = design.Parts.Select(part => part.Ref.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var fault in design.KnownFaults)
        {
            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                if (fault.At is { } at && parts.Contains(at.Value))
                {
                    html.Open(Tag.A, ClassName.Reference).To(ElementId.Of(IdPrefix.Part, at.Value)).Text(at.Value);
                }
                else
                {
                    html.Text(fault.At?.Value ?? "board");
                }
            }

            table.Cell(1).Text(fault.What.Value);
            table.Cell(2).Text(fault.Advice?.Value ?? string.Empty);
        }
    }
}
