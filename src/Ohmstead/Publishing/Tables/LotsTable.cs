using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every lot.</summary>
internal static class LotsTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<(Lot Lot, int Fitted, int Scrapped, string? Line)> Columns { get; } =
        new(
            "lot row",
            "One lot of spare parts.",
            "{ lot: L-031, what: tantalum 10 µF, fitted: 2, scrapped: 1 }",
            new(Key.Id("lot", "Its name.", "L-031").Needed(), row => row.Lot.Id.Value),
            new(Key.Text("what", "What the parts are.", "tantalum 10 µF ±10 % 35 V").Needed(), row => PartWords.Describe(row.Lot.Values)),
            new(Key.Count("came", "How many came.", "10"), row => row.Lot.Quantity is { } came ? Number(came.Value) : null),
            new(Key.Count("fitted", "How many were fitted on boards.", "2").Needed(), row => Number(row.Fitted)),
            new(Key.RoughDate("received", "When it came.", "2026-03"), row => row.Lot.Received?.Value.ToString()),
            new(Key.Id("order", "The order.", "O-004"), row => row.Lot.Order?.Value),
            new(Key.Count("scrapped", "How many went to the bin.", "1").Needed(), row => Number(row.Scrapped)),
            new(Key.Id("line", "The line of that order which it is.", "2"), row => row.Line)
        );

    /// <summary>The lots of a collection, in order of name.</summary>
    public static IEnumerable<(Lot Lot, int Fitted, int Scrapped, string? Line)> Rows(RunResult result)
    {
        var use = BoardSummary.UseOfLots(result.Boards);
        return result
            .Workshop.Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal)
            .Select(lot =>
                (
                    lot,
                    use.Fitted(lot.Id.Value),
                    result.Workshop.ScrappedOf(lot.Id.Value),
                    result.Workshop.ArrivalOf(lot.Id.Value)?.Arrival.Line.Value
                )
            );
    }
}
