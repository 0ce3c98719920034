using Ohmstead.Records.Model;

namespace Ohmstead.Records.Shapes;

/// <summary>What was ordered, and what came of it.</summary>
public static class OrderShape
{
    private static readonly Key Note = Key.Text("note", "Anything the next person should know.", "manual in the hut");

    /// <summary>A line of an order.</summary>
    public static Shape Line { get; } =
        new(
            "line of an order",
            "How many of what. With its kind and its values it counts in the buying list; in words alone it does not.",
            "{ line: 2, quantity: 10, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 35 V, price: 0.42 EUR }",
            [
                Key.Id("line", "Its name within the order.", "2").Needed(),
                Key.Count("quantity", "How many were ordered.", "10").Needed(),
                Key.Word("kind", Vocabulary.PartKinds, "no kind of part", "What kind of part it is, where it is one."),
                .. PartShape.OfThePart.Where(key => key != PartShape.Note),
                Key.Text("what", "What it is in words; needed where the line has no kind.", "pen motor belt"),
                Key.Text("price", "What one of them costs, with the currency; for the keeper, nothing is computed from it.", "0.42 EUR"),
                Key.Date("lost", "When what had not come of it was known to be lost.", "2026-04-20"),
                Key.Date("cancelled", "When what had not come of it was cancelled.", "2026-04-20"),
                Note,
            ]
        );

    /// <summary>What came of a line.</summary>
    public static Shape Arrival { get; } =
        new(
            "arrival of a line",
            "What came of a line in one parcel. New ones are appended at the end.",
            "{ date: 2026-03-30, line: 2, quantity: 6, lot: L-031 }",
            [
                Key.Date("date", "The day it came.", "2026-03-30").Needed(),
                Key.Id("line", "The line of the order.", "2").Needed(),
                Key.Count("quantity", "How many came.", "6").Needed(),
                Key.Id("lot", "The lot in the drawer that they became.", "L-031"),
                Note,
            ]
        );

    /// <summary>An order.</summary>
    public static Shape Order { get; } =
        new(
            "order",
            "Something ordered. Its state follows from the dates, and with lines from what came of each.",
            "{ order: PO-12, placed: 2026-03-16, from: Dunmere parts, for: pen motor belt }",
            [
                Key.Id("order", "Its name in the records.", "PO-12").Needed(),
                Key.Date("placed", "When it was placed.", "2026-03-16").Needed(),
                Key.Text("from", "From whom.", "Dunmere parts"),
                Key.Text("for", "What was ordered.", "pen motor belt").Needed(),
                Key.List("lines", Line, "What was ordered, line by line."),
                Key.List("came", Arrival, "What came of the lines, parcel by parcel."),
                Key.Date("part_received", "When a part of it came, of an order without lines.", "2026-03-30"),
                Key.Date("received", "When all of it had come, of an order without lines.", "2026-04-02"),
                Key.Date("lost", "When it was known to be lost, or what had not come of it.", "2026-04-20"),
                Key.Date("cancelled", "When it was cancelled, or what had not come of it.", "2026-04-20"),
                Note,
            ]
        );
}
