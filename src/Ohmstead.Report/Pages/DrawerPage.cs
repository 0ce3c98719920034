using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pictures;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the drawer: what to buy and what is on order, then every lot with its age, its incoming readings and the boards that took from it.</summary>
public static class DrawerPage
{
    private const int MostRows = 500;
    private const int MostPlaces = 20;

    // Beyond this many lots a reading is told in one line without its working, so that the page stays one that loads and reads.
    private const int MostInFull = 40;
    private static readonly Column[] Columns = [new("Lot", IsShort: true), new("What lies there", IsPlain: true), new("Incoming readings", IsPlain: true)];

    /// <summary>The file, from the root of the report.</summary>
    public const string PathName = "drawer.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        PageFrame.Write(buffer, context, "The drawer", 0, (context, boards), static (html, page) => Content(html, page.context, page.boards));

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var working = new SharedWorking(context.Workshop.Rule);
        var fittings = boards.SelectMany(board => board.Fittings).ToLookup(fitted => fitted.Lot, fitted => fitted.Fitting, StringComparer.Ordinal);
        LotStory[] lots = [.. Shown(context.Workshop).Select(lot => LotStory.Of(context.Workshop, lot, fittings[lot.Id.Value], context.Today))];
        StripShapes.Write(html);
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("The drawer");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(context.Workshop.Lots.Count, lots));
        }

        BuyingTable.Write(html, context, boards, MostRows);
        Lots(html, context, lots, working);
        working.Sources.Write(html);
    }

    /// <summary>Whether a lot has a row on the page.</summary>
    internal static bool Shows(Workshop workshop, string lot) => workshop.Lots.ContainsKey(lot) && (workshop.Lots.Count <= MostRows || Shown(workshop).Any(shown => shown.Id.Value == lot));

    private static IEnumerable<Lot> Shown(Workshop workshop) => workshop.Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal).Take(MostRows);

    private static string Lead(int all, LotStory[] lots)
    {
        var old = lots.Count(lot => lot.Left > 0 && lot.Doubts.Over is not null);
        var unread = lots.Count(lot => lot.Left > 0 && lot.Doubts.IsUnread);
        return lots.Length == 0 ? "The drawer holds no lot."
            : string.Create(CultureInfo.InvariantCulture, $"{all} lots{(all > lots.Length ? $", of the first {lots.Length}" : string.Empty)}, {lots.Sum(lot => Math.Max(0, lot.Left ?? 0))} parts left; {old} past their shelf life, {unread} with no incoming reading.");
    }

    private static void Lots(HtmlWriter html, ReportContext context, LotStory[] lots, SharedWorking working)
    {
        if (lots.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "lots", "Lots", "what came together");
        working.Rule(html, 0);
        if (context.Workshop.Lots.Count > lots.Length)
        {
            html.Open(Tag.P).Text(string.Create(CultureInfo.InvariantCulture, $"The first {lots.Length} of {context.Workshop.Lots.Count} lots, in order of name; ohmstead why tells each of the others."));
        }

        using var table = Ledger.Open(html, "Lots", Columns);
        using var body = html.Open(Tag.TBody);
        for (var at = 0; at < lots.Length; at++)
        {
            var lot = lots[at];
            using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Lot, lot.Lot.Id.Value));
            table.Head().Text(lot.Lot.Id.Value);
            using (table.Cell(1))
            {
                Part(html, context, lot.Lot);
                html.Open(Tag.P).Text(Left(lot));
                LotAge.Write(html, lot, context.Today, working, isFull: at < MostInFull);
                Taken(html, lot);
            }

            using var readings = table.Cell(2);
            Incoming(html, lot, working, isFull: at < MostInFull);
        }
    }

    private static void Part(HtmlWriter html, ReportContext context, Lot lot)
    {
        html.Text(PartWords.Describe(lot.Values));
        html.Text(" ");
        using var small = html.Open(Tag.Small);
        html.Text(PageFrame.Joined(lot.Values.Maker?.Value, lot.Values.Series?.Value, lot.Received is { } received ? "came " + received.Text : null, lot.Order is null ? null : "order "));
        if (lot.Order is not { } order)
        {
            return;
        }

        // Only orders that are open or lost have a row to lead to.
        if (context.Workshop.Orders.GetValueOrDefault(order.Value) is { } known && BuyingTable.IsShown(known))
        {
            html.Open(Tag.A).To(LocalLink.ToFragment(ElementId.Of(IdPrefix.Order, order.Value))).Text(order.Value);
        }
        else
        {
            html.Text(order.Value);
        }
    }

    private static string Left(LotStory lot) => lot.Lot.Quantity is not { } came
        ? string.Create(CultureInfo.InvariantCulture, $"how many came is not written, {lot.Fittings.Count} fitted")
        : string.Create(CultureInfo.InvariantCulture, $"{lot.Left} left of {came.Value}");

    private static void Incoming(HtmlWriter html, LotStory lot, SharedWorking working, bool isFull)
    {
        if (lot.Incoming.Count == 0)
        {
            html.Text("none: a new part is measured before it is fitted");
        }

        foreach (var reading in lot.Incoming)
        {
            html.Open(Tag.P, ClassName.Fine).Text(PageFrame.Joined(reading.Visit.Date.Text, reading.Reading.Frequency?.Text, (reading.Reading.Instrument ?? reading.Visit.Instrument) is { } instrument ? "with " + instrument.Value : null));
            foreach (var verdict in reading.Verdicts)
            {
                if (isFull)
                {
                    VerdictCell.Write(html, working, verdict);
                }
                else
                {
                    VerdictCell.Short(html, verdict);
                }
            }
        }
    }

    private static void Taken(HtmlWriter html, LotStory lot)
    {
        if (lot.Fittings.Count == 0)
        {
            return;
        }

        using var line = html.Open(Tag.P, ClassName.Fine);
        html.Text("Taken by ");
        for (var at = 0; at < Math.Min(lot.Fittings.Count, MostPlaces); at++)
        {
            var fitting = lot.Fittings[at];
            html.Text(at == 0 ? string.Empty : ", ");
            html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(BoardPage.PathOf(fitting.Board), 0, ElementId.Of(IdPrefix.Part, fitting.Reference))).Text($"{fitting.Board} {fitting.Reference}");
            html.Text(fitting.IsThere ? string.Empty : " (gone since)");
        }

        if (lot.Fittings.Count > MostPlaces)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $" and {lot.Fittings.Count - MostPlaces} more"));
        }
    }
}
