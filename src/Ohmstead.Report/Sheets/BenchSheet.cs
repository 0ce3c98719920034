using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>What a person takes to the bench on paper: cautions first, then what stands, what to measure with its limits, what to confirm
/// and what to prove, with room to write.</summary>
public static class BenchSheet
{
    /// <summary>Writes the sheet, a page that stands alone in one file.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="board">The board.</param>
    /// <param name="paper">What it is printed on.</param>
    /// <param name="today">The day of the sheet.</param>
    /// <param name="collection">The collection of the board.</param>
    /// <param name="site">Where its pages are found, or null for a sheet without a code.</param>
    public static void Write(
        PageBuffer buffer,
        JudgedBoard board,
        Paper paper,
        DateOnly today,
        CollectionFile collection,
        PublishedAt? site = null
    ) =>
        new LonePage($"Bench sheet {board.Board.Id.Value} {board.Board.Title.Value}", paper.Style).Write(
            buffer,
            (board, today, collection, site),
            static (html, all) =>
            {
                SheetCode.Write(html, all.board, all.site);
                Content(html, all.board, all.today, all.collection);
            }
        );

    private static void Content(HtmlWriter html, JudgedBoard board, DateOnly today, CollectionFile collection)
    {
        Opening(html, board, today);
        SheetCautions.Write(html, board);
        Standing(html, board, today);
        MeasureTable.Write(html, board);
        PolarityTable.Write(html, board);
        PointsTable.Write(html, board);
        html.Open(Tag.H2).Text($"Notes on {board.Board.Id.Value}");
        html.Open(Tag.Div, SheetClass.Ruled).Close();
        html.Open(Tag.P, SheetClass.Fine)
            .Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{collection.Name}, {board.Board.Path}, as of {today:yyyy-MM-dd}. Limits are computed from the "
                        + $"record.{(collection.IsInvented ? " Everything in this collection is invented." : string.Empty)} "
                        + $"{SafetyNotice.Defer}"
                )
            );
    }

    private static void Opening(HtmlWriter html, JudgedBoard board, DateOnly today)
    {
        using var head = html.Open(Tag.Header);
        using (html.Open(Tag.H1))
        {
            html.Open(Tag.Span, SheetClass.Number).Text(board.Board.Id.Value);
            html.Text(board.Board.Title.Value);
        }

        html.Open(Tag.P)
            .Text(
                PageFrame.Joined(
                    board.Design?.Title.Value ?? board.Board.Design?.Value,
                    (board.Board.Maker ?? board.Design?.Maker)?.Value,
                    board.Board.Serial is { } serial ? "serial " + serial.Value : null,
                    (board.Board.Revision ?? board.Design?.Revision) is { } revision ? "revision " + revision.Value : null,
                    "sheet of " + PageFrame.Iso(today)
                )
            );
        using var line = html.Open(Tag.P, SheetClass.Line);
        foreach (var asked in new[] { "Day", "By", "Room °C" })
        {
            using var one = html.Open(Tag.Span);
            html.Text(asked + " ");
            html.Open(Tag.Span, SheetClass.Short).Close();
        }

        using var last = html.Open(Tag.Span);
        html.Text("Instrument ");
        html.Open(Tag.Span, SheetClass.Blank).Close();
    }

    private static void Standing(HtmlWriter html, JudgedBoard board, DateOnly today)
    {
        html.Open(Tag.H2).Text($"Where it stands: {BoardStates.Told(board.State, board.OverdueSince)}");
        using var list = html.Open(Tag.Ul);
        foreach (var wet in Drying.Find(board, today))
        {
            html.Open(Tag.Li)
                .Text(
                    $"Still drying: {wet.Place}, wet on {PageFrame.Iso(wet.Since)}, to dry for {wet.For}; no power before "
                        + $"{PageFrame.Iso(wet.Until)}."
                );
        }

        foreach (var reason in board.Reasons)
        {
            html.Open(Tag.Li).Text($"{(reason.At is { } at ? at + ": " : string.Empty)}{reason.Text}. Next: {reason.NextStep}.");
        }

        foreach (var place in board.Overruled)
        {
            html.Open(Tag.Li).Text($"{place.Part.Ref.Value}: outside its limit, kept by decision: {place.Decision!.Because.Value}.");
        }

        foreach (var open in board.MeasureAgain)
        {
            html.Open(Tag.Li).Text($"To measure again, {open.At}: {open.Text}.");
        }

        if (board.Reasons.Length == 0)
        {
            html.Open(Tag.Li).Text("Nothing stands against it.");
        }
    }
}
