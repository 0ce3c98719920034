using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the drawer: what to buy and what is on order, then every lot with its age, its incoming readings and the boards
/// that took from it.</summary>
public static class DrawerPage
{
    private const int MostToBuy = 20;

    // A small drawer is told whole; of a large one the page tells the beginning, and what to buy stays in sight.
    private const int FirstLots = 12;
    private const int MostPlaces = 20;

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var lots = Stories(context, boards);
        PageFrame.Write(buffer, context, new(SiteAddress.Drawer, "The drawer", Lead(lots)), (context, boards, lots), static (html, page) =>
            Content(html, page.context, page.boards, page.lots)
        );
    }

    /// <summary>Writes the pages on which the lots and the buying list go on.</summary>
    public static void WriteRest(IReportFiles files, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        // The page of the collection shows fewer lines than this one: what it leads to is there when there is more than it shows.
        BuyingTable.WriteRest(files, context, boards, BuyingTable.MostOnCollection);
        var working = new SharedWorking(context.Workshop.Rule);
        Lots(context, working).WritePages(files, context, Stories(context, boards), LotAddresses.MostOnPage);
    }

    private static LotStory[] Stories(ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var fittings = boards
            .SelectMany(board => board.Fittings)
            .ToLookup(fitted => fitted.Lot, fitted => fitted.Fitting, StringComparer.Ordinal);
        return
        [
            .. LotAddresses
                .InOrder(context.Workshop)
                .Select(lot => LotStory.Gather(context.Workshop, lot, fittings[lot.Id.Value], context.Today)),
        ];
    }

    private static LongTable<LotStory> Lots(ReportContext context, SharedWorking working)
    {
        var orders = BuyingTable.Addresses(context);
        return new(
            LotAddresses.Path,
            "Lots",
            "what came together, in order of name",
            new(
                new("Lot", lot => lot.Lot.Id.Value) { IsShort = true },
                new("What lies there", (html, lot) => WhatLies(html, context, orders, working, lot)) { IsPlain = true },
                new("Incoming readings", (html, lot) => Incoming(html, lot, working)) { IsPlain = true }
            )
            {
                Anchor = lot => ElementId.For(IdPrefix.Lot, lot.Lot.Id.Value),
            },
            LotAddresses.RowsAPage,
            lot => lot.Lot.Id.Value
        )
        {
            // The strips of the rows show shapes that each page has once.
            Above = StripShapes.Write,
            Below = html =>
            {
                working.Rule(html, 0);
                working.WriteEnd(html);
            },
        };
    }

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards, LotStory[] lots)
    {
        var working = new SharedWorking(context.Workshop.Rule);
        StripShapes.Write(html);
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("The drawer");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(lots));
        }

        BuyingTable.Write(html, context, boards, MostToBuy);
        if (lots.Length > 0)
        {
            using var section = Section.Open(html, "lots", "Lots", "what came together");
            working.Rule(html, 0);
            Lots(context, working).WriteStart(html, lots, lots.Length <= LotAddresses.MostOnPage ? LotAddresses.MostOnPage : FirstLots);
        }

        working.WriteEnd(html);
    }

    private static string Lead(LotStory[] lots)
    {
        var old = lots.Count(lot => lot.Left > 0 && lot.Doubts.Over is not null);
        var unread = lots.Count(lot => lot.Left > 0 && lot.Doubts.IsUnread);
        return lots.Length == 0
            ? "The drawer holds no lot."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{lots.Length} lots, {lots.Sum(lot => Math.Max(0, lot.Left ?? 0))} parts left; {old} past their shelf life, {unread} "
                    + $"with no incoming reading."
            );
    }

    private static void WhatLies(
        HtmlWriter html,
        ReportContext context,
        Func<string, LocalLink?> orders,
        SharedWorking working,
        LotStory lot
    )
    {
        Part(html, context, orders, lot.Lot);
        html.Open(Tag.P).Text(Left(lot));
        Bad(html, lot);
        LotAge.Write(html, lot, context.Today, working);
        Taken(html, lot);
    }

    private static void Part(HtmlWriter html, ReportContext context, Func<string, LocalLink?> orders, Lot lot)
    {
        var arrival = context.Workshop.ArrivalOf(lot.Id.Value);
        var order = (lot.Order ?? arrival?.Order.Id)?.Value;
        html.Text(PartWords.Describe(lot.Values));
        html.Text(" ");
        using var small = html.Open(Tag.Small);
        html.Text(
            PageFrame.Joined(
                lot.Values.Maker?.Value,
                lot.Values.Series?.Value,
                lot.Received is { } received ? "came " + received.Text : null,
                order is null ? null : "order "
            )
        );
        if (order is null)
        {
            return;
        }

        // Only orders that are open or lost have a row to lead to.
        if (orders(order) is { } address)
        {
            html.Open(Tag.A).To(address).Text(order);
        }
        else
        {
            html.Text(order);
        }

        html.Text(arrival is { } came ? $", line {came.Arrival.Line.Value}" : string.Empty);
    }

    private static string Left(LotStory lot) =>
        lot.Lot.Quantity is not { } came
            ? string.Create(CultureInfo.InvariantCulture, $"how many came is not written, {lot.Fittings.Count} fitted{Binned(lot)}")
            : string.Create(CultureInfo.InvariantCulture, $"{lot.Left} left of {came.Value}{Binned(lot)}");

    private static string Binned(LotStory lot) =>
        lot.Pieces.Scrapped == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", {lot.Pieces.Scrapped} scrapped");

    // The share of bad pieces, and why each went to the bin.
    private static void Bad(HtmlWriter html, LotStory lot)
    {
        if (lot.Pieces.ShareInWords is { } share)
        {
            html.Open(Tag.P).Text(lot.Pieces.IsDoubted ? "Doubt all of it: " + lot.Pieces.DoubtInWords : share);
        }

        foreach (var (visit, scrap) in lot.Scraps)
        {
            html.Open(Tag.P, ClassName.Fine)
                .Text(
                    $"{visit.Date.Text}: {scrap.Count.Text} "
                        + $"scrapped{(scrap.Piece is { } piece ? ", piece " + piece.Value : string.Empty)}, {scrap.Because.Value}"
                );
        }
    }

    private static void Incoming(HtmlWriter html, LotStory lot, SharedWorking working)
    {
        if (lot.Incoming.Count == 0)
        {
            html.Text("none: a new part is measured before it is fitted");
        }

        foreach (var reading in lot.Incoming)
        {
            html.Open(Tag.P, ClassName.Fine)
                .Text(
                    PageFrame.Joined(
                        reading.Visit.Date.Text,
                        reading.Reading.Piece is { } piece ? "piece " + piece.Value : null,
                        reading.Reading.Frequency?.Text,
                        (reading.Reading.Instrument ?? reading.Visit.Instrument) is { } instrument ? "with " + instrument.Value : null
                    )
                );
            foreach (var verdict in reading.Verdicts)
            {
                VerdictCell.Write(html, working, verdict);
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
            html.Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Board(fitting.Board), 0, ElementId.For(IdPrefix.Part, fitting.Reference)))
                .Text($"{fitting.Board} {fitting.Reference}");
            html.Text(fitting.IsThere ? string.Empty : " (gone since)");
        }

        if (lot.Fittings.Count > MostPlaces)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $" and {lot.Fittings.Count - MostPlaces} more"));
        }
    }
}
