using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Binding;

/// <summary>Reads orders, their lines and what came of them.</summary>
internal static class OrderBinding
{
    /// <summary>An order, or null when its name, its day or its words could not be read.</summary>
    internal static Order? Order(Fields fields)
    {
        var (id, placed, what) = (fields.Id("order"), fields.Date("placed"), fields.Text("for"));

        // Everything is read even when the name is missing, so that one run names every fault.
        var (lines, unreadLines) = BenchBinding.Named(fields, "lines", "line", Line);
        var came = BenchBinding.Each(fields, "came", Arrival);
        return id is null || placed is null || what is null
            ? null
            : new Order(id, placed, what, fields.Spot)
            {
                From = fields.Text("from"),
                Lines = lines,
                UnreadLines = unreadLines,
                Came = came,
                PartReceived = fields.Date("part_received"),
                Received = fields.Date("received"),
                Lost = fields.Date("lost"),
                Cancelled = fields.Date("cancelled"),
                Note = fields.Text("note"),
            };
    }

    private static OrderLine? Line(Fields fields)
    {
        var (id, quantity) = (fields.Id("line"), fields.Count("quantity"));
        var (values, what) = (PartBinding.Values(fields, isLot: true), fields.Text("what"));

        var hasLoose =
            !fields.Holds(PartShape.Kind.Name) && PartShape.OfThePart.Any(key => key != PartShape.Note && fields.Holds(key.Name));
        var loose = hasLoose ? PartBinding.ReadLoose(fields) : null;
        return id is null || quantity is null
            ? null
            : new OrderLine(id, quantity, fields.Spot)
            {
                Values = values,
                What = what,
                HasLooseValues = hasLoose,
                Price = fields.Text("price"),
                Lost = fields.Date("lost"),
                Cancelled = fields.Date("cancelled"),
                Note = (values ?? loose) is { } read ? read.Note : fields.Text("note"),
            };
    }

    private static OrderArrival? Arrival(Fields fields)
    {
        var (date, line, quantity, lot) = (fields.Date("date"), fields.Id("line"), fields.Count("quantity"), fields.Id("lot"));
        return date is null || line is null || quantity is null
            ? null
            : new OrderArrival(date, line, quantity, fields.Spot) { Lot = lot, Note = fields.Text("note") };
    }
}
