using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Names in the record of a board that nothing has: one row for each kind of thing that is named.</summary>
public static class UnknownNames
{
    private const char RangeSign = '-';

    /// <summary>The checks, in order of name.</summary>
    public static IReadOnlyList<IBoardCheck> All { get; } =
    [
        new UnknownNameCheck(
            new(
                "design-unknown",
                Severity.Error,
                "a board names a design that the collection does not have",
                CheckEffect.HoldsBack,
                "what the board must prove is not known"
            ),
            "design"
        )
        {
            Named = static board => board.Board.Design is { } design ? [design] : [],
            Has = static (board, name) => board.Assessment.Design is not null || board.Workshop.UnreadDesigns.Contains(name),
            Known = static board => board.Workshop.Designs.Keys.Order(StringComparer.Ordinal),
            Missing = static name => $"there is no design '{name}'",
            Add = static name => $"write designs/{name}.md",
            Otherwise = static name => $"write designs/{name}.md, or list the parts on the board",
        },
        new UnknownNameCheck(
            new(
                "instrument-unknown",
                Severity.Error,
                "a visit, reading or proof names an instrument that the collection does not have",
                CheckEffect.HoldsBack,
                "how good a reading is is not known"
            ),
            "instrument"
        )
        {
            Named = static board => board.Assessment.Visits.SelectMany(InstrumentsOf),
            Has = static (board, name) =>
                board.Workshop.Instruments.ContainsKey(name) || (board.Workshop.InstrumentsFile?.Unread.MayHold(name) ?? false),
            Known = static board => board.Workshop.Instruments.Keys.Order(StringComparer.Ordinal),
            Missing = static name => $"there is no instrument '{name}'",
            Add = static name => $"add {name} to instruments.yaml",
        },
        new UnknownNameCheck(
            new(
                "lot-unknown",
                Severity.Error,
                "a reading or work entry names a lot that is not in the drawer",
                CheckEffect.HoldsBack,
                "what sits there is not known"
            ),
            "lot"
        )
        {
            Named = static board =>
                board.Assessment.Visits.SelectMany(static visit =>
                    new List<Written<string>>().And(visit.Readings, static reading => reading.Lot).And(visit.Work, static work => work.Lot)
                ),
            Has = static (board, name) =>
                board.Workshop.Lots.ContainsKey(name) || (board.Workshop.StockFile?.UnreadLots.MayHold(name) ?? false),
            Known = static board => board.Workshop.Lots.Keys.Order(StringComparer.Ordinal),
            Missing = static name => $"there is no lot '{name}' in the drawer",
            Add = static name => $"add lot {name} to stock.yaml",
        },
        new UnknownNameCheck(
            new(
                "order-unknown",
                Severity.Error,
                "work waits for an order that was never placed",
                CheckEffect.HoldsBack,
                "what the work waits for is not known"
            ),
            "order"
        )
        {
            Named = static board => board.Board.Waiting.Select(static wait => wait.Order).OfType<Written<string>>(),
            Has = static (board, name) =>
                board.Workshop.Orders.ContainsKey(name) || (board.Workshop.StockFile?.UnreadOrders.MayHold(name) ?? false),
            Known = static board => board.Workshop.Orders.Keys.Order(StringComparer.Ordinal),
            Missing = static name => $"there is no order '{name}'",
            Add = static name => $"add order {name} to stock.yaml",
        },
        new UnknownNameCheck(
            new(
                "part-unknown",
                Severity.Error,
                "a reading, work entry or decision names a part that is not in the parts list",
                CheckEffect.HoldsBack,
                "what was read, done or decided about is not known"
            ),
            "part"
        )
        {
            // A board of which no part is listed names what it likes.
            Named = static board =>
                board.Assessment.Places.Length == 0 && board.Board.Design is null ? [] : board.Assessment.Visits.SelectMany(PartsOf),
            Has = static (board, name) => board.Assessment.Place(name) is not null || board.MayBeUnreadPart(name),
            Known = static board => board.Assessment.Places.Select(static place => place.Part.Ref.Value),
            Missing = static name => $"this board has no part '{name}'",
            Add = static name => $"add {name} to parts",
            Otherwise = static name => $"add {name} to parts, or name a part that is there",
            Several = static (board, name) =>
                name.Split(RangeSign) is [var first, var last]
                && board.Assessment.Place(first) is not null
                && board.Assessment.Place(last) is not null
                    ? (
                        $"'{name}' is a range, and an entry is about one part",
                        $"write part: {first}, and an entry of its own for each other up to {last}"
                    )
                    : null,
        },
        new UnknownNameCheck(
            new(
                "point-unknown",
                Severity.Error,
                "a reading or proof names a test point that neither the design nor the board has",
                CheckEffect.HoldsBack,
                "what was proved is not known"
            ),
            "point"
        )
        {
            Named = static board => board.Assessment.Points.Length == 0 ? [] : UnlistedPoints(board),
            Has = static (board, name) => board.MayBeUnreadPoint(name),
            Known = static board => board.Assessment.Points.Select(static point => point.Name.Value),
            Missing = static name => $"there is no test point '{name}'",
            Add = static name => $"add {name} to points",
            Otherwise = static name => $"add {name} to the points of the design or the board",
        },
    ];

    private static List<Written<string>> InstrumentsOf(BenchVisit visit) =>
        (visit.Instrument is { } ofAll ? new List<Written<string>>(1) { ofAll } : [])
            .And(visit.Readings, static reading => reading.Instrument)
            .And(visit.Proofs, static proof => proof.Instrument);

    private static List<Written<string>> PartsOf(BenchVisit visit) =>
        new List<Written<string>>(visit.Readings.Length)
            .And(visit.Readings, static reading => reading.Part)
            .And(visit.Work, static work => work.Part)
            .And(visit.Decided, static decision => decision.Part);

    private static IEnumerable<Written<string>> UnlistedPoints(BoardUnderCheck board)
    {
        var listed = board.Assessment.Points.Select(static point => point.Name.Value).ToHashSet(StringComparer.Ordinal);
        return board
            .Assessment.Readings.Select(static reading => reading.Reading.Point)
            .OfType<Written<string>>()
            .Concat(board.Assessment.Proofs.Select(static proof => proof.Proof.Point))
            .Where(name => !listed.Contains(name.Value));
    }
}
