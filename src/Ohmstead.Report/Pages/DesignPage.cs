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
    private static readonly Ledger<BoardSummary> UnitTable = new(
        new("Unit", Number),
        new("State", (html, unit) => StateMark.Write(html, unit.State, unit.OverdueSince)) { Order = unit => (int)unit.State },
        new("Why", CollectionWords.Why),
        new("Serial", unit => unit.Serial) { IsShort = true },
        new("Rev.", unit => unit.Revision),
        new("Last seen", unit => PageFrame.Iso(unit.LastSeen)) { IsShort = true }
    )
    {
        Anchor = unit => ElementId.For(IdPrefix.Board, unit.Id.Value),
    };
    private static readonly Ledger<TestPoint> PointTable = new(
        new("Point", point => point.Name.Value) { IsShort = true },
        new("Measures", point => Vocabulary.PointMeasures.WordFor(point.Measures) + (point.IsRequired ? string.Empty : ", not required")),
        new("Wanted", Wanted),
        new("Ripple", point => point.RippleLimit is { } ripple ? "at most " + ripple.Text : null),
        new("Source", point => PageFrame.Joined(point.Source?.Value, point.Note?.Value))
    )
    {
        Anchor = point => ElementId.For(IdPrefix.Point, point.Name.Value),
    };

    /// <summary>The file of a design's page, from the root of the report. It lasts as long as the design keeps its name.</summary>
    public static string PathOf(string design) => $"designs/{design}.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, DesignUnits design) =>
        PageFrame.Write(
            buffer,
            context,
            new(
                SiteAddress.Design(design.Design.Id.Value),
                $"{design.Design.Title.Value} ({design.Design.Id.Value})",
                CollectionWords.Lead(design.Units, "unit")
            ),
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
        new($"designs/{design.Design.Id.Value}~units", "Units", $"of {design.Design.Title.Value}", UnitTable, 150, unit => unit.Id.Value);

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
        new Cautions(html).Write(design);
        Parts(html, design);
        PlacesCompared.Write(html, design);
        Points(html, design.Design.Points);
        Faults(html, design.Design);
        if (!string.IsNullOrWhiteSpace(design.Design.Body))
        {
            using var section = Section.Open(html, "story", "In its keeper's words");
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

        using var section = Section.Open(html, "units", "Units side by side");
        OfUnits(design).WriteStart(html, design.Units, MostUnits);
    }

    private static void Number(HtmlWriter html, BoardSummary unit)
    {
        html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Board(unit.Id.Value), 1)).Text(unit.Id.Value);
        html.Text(" ");
        html.Open(Tag.Small).Text(unit.Title);
    }

    private static void Parts(HtmlWriter html, DesignUnits design)
    {
        if (design.Design.Parts.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "parts", "Parts", $"{design.Design.Parts.Length} places, with what is marked on them");
        var renewed = design.RenewedByPlace();
        new Ledger<Part>(
            new("Place", part => part.Ref.Value) { IsShort = true },
            new("Kind", (cell, part) => Kind(cell, part.Values)),
            new("Value", (cell, part) => Value(cell, part.Values)),
            new("Tolerance", part => part.Values.Tolerance?.Text) { IsShort = true },
            new("Rated", (cell, part) => Rated(cell, part.Values)),
            new("Marking", part => Marking(part.Values)),
            new("Renewed in", (cell, part) => Renewed(cell, part, [.. renewed[part.Ref.Value]]))
        )
        {
            Anchor = part => ElementId.For(IdPrefix.Part, part.Ref.Value),
        }.Write(html, "Parts", design.Design.Parts);
    }

    private static void Kind(HtmlWriter html, PartValues values)
    {
        html.Text(values.Kind.Text);
        if (PageFrame.Joined(values.Role?.Text, values.Note?.Value) is { Length: > 0 } more)
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(more);
        }
    }

    private static void Value(HtmlWriter html, PartValues values)
    {
        if (ChosenBy.Value(values) is { } value)
        {
            PageFrame.Aligned(html, Tag.Span, QuantityText.Format(value.Value));
        }
    }

    private static void Rated(HtmlWriter html, PartValues values) =>
        Whole(
            html,
            values.RatedVoltage?.Text,
            values.Power?.Text,
            values.Temperature?.Text,
            values.SafetyClass is { } safety ? "class " + safety.Text : null
        );

    private static string Marking(PartValues values) =>
        PageFrame.Joined(
            values.Maker?.Value,
            values.Series?.Value,
            values.Type?.Value,
            values.DateCode is { } code ? "date code " + code.Value : null
        );

    private static void Renewed(HtmlWriter html, Part part, BoardSummary[] units)
    {
        var commas = new Commas(html);
        foreach (var unit in units.Take(MostRenewed))
        {
            commas
                .Next()
                .Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Board(unit.Id.Value), 1, ElementId.For(IdPrefix.Part, part.Ref.Value)))
                .Text(unit.Id.Value);
        }

        if (units.Length > MostRenewed)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $" and {units.Length - MostRenewed} more"));
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

        using var section = Section.Open(html, "points", "Points to prove");
        PointTable.Write(html, "Points to prove", points);
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

        using var section = Section.Open(html, "faults", "Known faults");
        var parts = design.Parts.Select(part => part.Ref.Value).ToHashSet(StringComparer.Ordinal);
        new Ledger<KnownFault>(
            new("At", (cell, fault) => FaultyPlace(cell, fault, parts)),
            new("What happens", fault => fault.What.Value),
            new("What to do", fault => fault.Advice?.Value)
        ).Write(html, "Known faults", design.KnownFaults);
    }

    private static void FaultyPlace(HtmlWriter html, KnownFault fault, HashSet<string> parts)
    {
        if (fault.At is { } at && parts.Contains(at.Value))
        {
            html.Open(Tag.A, ClassName.Reference).To(ElementId.For(IdPrefix.Part, at.Value)).Text(at.Value);
        }
        else
        {
            html.Text(fault.At?.Value ?? "board");
        }
    }
}
