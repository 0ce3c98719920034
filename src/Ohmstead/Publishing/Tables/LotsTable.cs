using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Collections;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every lot.</summary>
internal static class LotsTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<(LotStory Story, string? Line)> Columns { get; } =
        new(
            "lot row",
            "One lot of spare parts.",
            "{ lot: L-031, what: tantalum 10 µF, came: 10, fitted: 2, scrapped: 1, left: 7, shelf_life_until: 2028-03-01 }",
            new(Key.Id("lot", "Its name.", "L-031").Needed(), row => row.Story.Lot.Id.Value),
            new(Key.Text("what", "What the parts are.", "tantalum 10 µF ±10 % 35 V").Needed(), row =>
                PartWords.Describe(row.Story.Lot.Values)
            ),
            new(Figures.Marked, row => Figures.Of(MarkingLimits.Nominal(row.Story.Lot.Values))),
            new(Figures.Unit, row => Figures.UnitOf(MarkingLimits.Nominal(row.Story.Lot.Values)?.Dimension)),
            new(Figures.Low, row => Figures.Limit(PartsTable.Marked(row.Story.Lot.Values)?.Lower)),
            new(Figures.High, row => Figures.Limit(PartsTable.Marked(row.Story.Lot.Values)?.Upper)),
            new(Key.Count("came", "How many came.", "10"), row => row.Story.Lot.Quantity is { } came ? Number(came.Value) : null),
            new(Key.Count("fitted", "How many were fitted on boards.", "2").Needed(), row => Number(row.Story.Fittings.Count)),
            new(Key.RoughDate("received", "When it came.", "2026-03"), row => row.Story.Lot.Received?.Value.ToString()),
            new(Key.Id("order", "The order.", "O-004"), row => row.Story.Lot.Order?.Value),
            new(Key.Count("scrapped", "How many went to the bin.", "1").Needed(), row => Number(row.Story.Pieces.Scrapped)),
            new(Key.Id("line", "The line of that order which it is.", "2"), row => row.Line),
            new(Key.Count("left", "How many are left; absent where it is not written how many came, or where more were taken.", "7"), row =>
                row.Story.Left is { } left and >= 0 ? Number(left) : null
            ),
            new(
                Key.Date(
                    "shelf_life_until",
                    "The day on which their shelf life ends; absent where they do not age on the shelf, or nothing says how old they are.",
                    "2028-03-01"
                ),
                row => Day(row.Story.Shelf?.Due)
            )
        );

    /// <summary>The lots of a collection, in order of name, as the page of the drawer tells them.</summary>
    public static IEnumerable<(LotStory Story, string? Line)> Rows(RunResult result, DateOnly today)
    {
        var fittings = result
            .Boards.SelectMany(board => board.Fittings)
            .ToLookup(fitted => fitted.Lot, fitted => fitted.Fitting, StringComparer.Ordinal);
        return result
            .Workshop.Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal)
            .Select(lot =>
                (
                    LotStory.Gather(result.Workshop, lot, fittings[lot.Id.Value], today),
                    result.Workshop.ArrivalOf(lot.Id.Value)?.Arrival.Line.Value
                )
            );
    }
}
