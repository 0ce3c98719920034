using System.Globalization;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Writing;

/// <summary>A change of the stock file, or why it cannot be made.</summary>
/// <param name="Splice">The splice, and the entry as one line.</param>
/// <param name="Refusal">Why there is none.</param>
internal readonly record struct OrderChange(Func<RecordEditor, (EditOutcome Outcome, string Line)>? Splice, string? Refusal)
{
    /// <summary>A change that cannot be made.</summary>
    public static OrderChange No(string why) => new(null, why);
}

/// <summary>What is said of a line of an order beside its values.</summary>
/// <param name="Quantity">How many.</param>
/// <param name="What">What it is in words.</param>
/// <param name="Price">What one costs.</param>
internal readonly record struct SaidLine(int? Quantity, string? What, string? Price);

/// <summary>Makes entries about orders out of what a person says.</summary>
/// <param name="stock">The stock file.</param>
/// <param name="today">The day.</param>
/// <param name="note">A remark.</param>
/// <param name="isSure">True to say once more what stands there already.</param>
internal sealed class OrderEntry(StockEntry stock, DateOnly today, string? note, bool isSure)
{
    private const string List = "orders";

    // More names in one line are not read to their end.
    private const int MostListed = 8;

    private string Today => IsoDate.Text(today);

    /// <summary>What of a line may be said to have come under an order: the entry that says so.</summary>
    public static string Arrival(string date, string line, long count, (string? Lot, string? Note) more) =>
        FlowText.Mapping([("date", date), ("line", line), ("quantity", Number(count)), ("lot", more.Lot), ("note", more.Note)]);

    /// <summary>Where an order stands in the file: orders that cannot be read stand between those that can.</summary>
    public static (string Key, int Index) Locate(RecordEditor editor, string id) =>
        (List, new ItemSplicer(editor).IndexOf(List, "order", id));

    /// <summary>A new order.</summary>
    public OrderChange Place(string id, string[] words, string? from)
    {
        if (words is not [{ Length: > 0 } ordered])
        {
            return OrderChange.No(
                words.Length > 1
                    ? $"what was ordered stands in quotes; write order {id} placed \"{string.Join(' ', words)}\""
                    : $"WHAT is missing: what was ordered, in words; write order {id} placed \"...\""
            );
        }

        var item = FlowText.Mapping([("order", id), ("placed", Today), ("from", from), ("for", ordered), ("note", note)]);
        return new(editor => (editor.Append(FileShapes.Stock, List, item), item), null);
    }

    /// <summary>A new line, which gets the next number.</summary>
    public OrderChange Line(Order order, string[] words, SaidLine said)
    {
        var (id, state) = (order.Id.Value, OrderStates.For(order));
        if (!OrderStates.IsOpen(state))
        {
            return Over(id, state);
        }

        if (said.Quantity is not > 0)
        {
            return OrderChange.No($"say how many: order {id} line … --quantity 10");
        }

        if (words is [] && said.What is null)
        {
            return OrderChange.No(
                $"say what: order {id} line \"aluminium electrolytic\" 220uF 100V --quantity 10, or --what \"pen motor belt\""
            );
        }

        if (words is [var kind, ..] && !Vocabulary.PartKinds.Contains(kind, StringComparer.Ordinal))
        {
            var told = Nearest.Told($"'{kind}' is no kind of part", Nearest.To(kind, Vocabulary.PartKinds));
            return OrderChange.No($"{told}; what is no kind of part is said with --what");
        }

        var (values, fault) = SaidPart.Read(words.Length == 0 ? [] : words[1..], OrderShape.Line);
        if (fault is not null)
        {
            return OrderChange.No(fault);
        }

        var line = new Dictionary<string, string?>(values, StringComparer.Ordinal)
        {
            ["line"] = NextLine(order),
            ["quantity"] = Number(said.Quantity.Value),
            ["kind"] = words.FirstOrDefault(),
            ["what"] = said.What,
            ["price"] = said.Price,
            ["note"] = note,
        };
        var item = FlowText.Mapping(OrderShape.Line.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name))));
        return new(editor => (new ItemSplicer(editor).Append(OrderShape.Order, Locate(editor, id), "lines", [item]), item), null);
    }

    /// <summary>What came of a line.</summary>
    public OrderChange Came(Order order, string[] words, string? lot)
    {
        var id = order.Id.Value;
        if (order.Lines.Length == 0)
        {
            return OrderChange.No($"order {id} has no lines: say received, or give it lines with 'order {id} line'");
        }

        if (words is not ([_] or [_, _]) || Standing(order, words[0]) is not { } line)
        {
            return OrderChange.No(
                words is [] or [_, _, _, ..]
                    ? $"say the line and how many came: order {id} came {order.Lines[0].Id.Value} 4; {OpenLines(order)}"
                    : NoLine(order, words[0])
            );
        }

        var (count, fault) = Count(words, line);
        if (fault is not null)
        {
            return OrderChange.No(fault);
        }

        if (lot is not null && !stock.Workshop.Lots.ContainsKey(lot))
        {
            var told = Nearest.Told($"there is no lot '{lot}'", Nearest.To(lot, stock.Workshop.Lots.Keys));
            return OrderChange.No($"{told}; lot with --order {id} --line {words[0]} takes it into the drawer and says that it came");
        }

        // It may be the second try of somebody whose first answer was lost.
        if (!isSure && order.Came.Any(came => came.Date.Value == today && came.Line.Value == words[0] && came.Quantity.Value == count))
        {
            return OrderChange.No(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{count} of line {words[0]} of order {id} came today already; --sure says it again"
                )
            );
        }

        var item = Arrival(Today, words[0], count, (lot, note));
        return new(editor => (new ItemSplicer(editor).Append(OrderShape.Order, Locate(editor, id), "came", [item]), item), null);
    }

    /// <summary>How an order or one of its lines ended, or that a part of an order in words alone came.</summary>
    /// <param name="order">The order.</param>
    /// <param name="words">The line, or none.</param>
    /// <param name="key">The key of the day: <c>received</c>, <c>part_received</c>, <c>lost</c>, <c>cancelled</c>.</param>
    public OrderChange Ended(Order order, string[] words, string key)
    {
        var (id, was) = (order.Id.Value, OrderStates.For(order));
        if (!OrderStates.IsOpen(was))
        {
            return Over(id, was);
        }

        if (words is [_, ..])
        {
            return key is not ("received" or "part_received") && words is [var line]
                ? LineEnded(order, line, key)
                : OrderChange.No(
                    order.Lines.Length > 0
                        ? $"what came of a line is said with came: order {id} came {words[0]}"
                        : $"'{words[0]}' says nothing there; a remark is said with --note"
                );
        }

        return order.Lines.Length > 0 && key == "received" ? AllCame(order)
            : order.Lines.Length > 0 && key == "part_received"
                ? OrderChange.No($"order {id} goes by lines: say which came with came; {OpenLines(order)}")
            : key == "part_received" ? PartCame(order)
            : Add(order, key);
    }

    /// <summary>The lines of an order of which something may still come, as words.</summary>
    public static string OpenLines(Order order) =>
        "open: "
        + string.Join(
            ", ",
            LineStanding
                .All(order)
                .Where(line => line.Outstanding > 0)
                .Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Line.Id.Value} ({line.Outstanding})"))
        );

    /// <summary>That an order has no such line, with the lines that it has.</summary>
    public static string NoLine(Order order, string line) =>
        $"order {order.Id.Value} has no line '{line}'; its lines: {string.Join(", ", order.Lines.Select(one => one.Id.Value))}";

    private OrderChange PartCame(Order order) =>
        order.PartReceived is { } already
            ? OrderChange.No($"a part of '{order.Id.Value}' came already on {already.Text}; the rest is 'received', 'lost' or 'cancelled'")
            : Add(order, "part_received");

    private OrderChange AllCame(Order order)
    {
        string[] items =
        [
            .. LineStanding
                .All(order)
                .Where(line => line.Outstanding > 0)
                .Select(line => Arrival(Today, line.Line.Id.Value, line.Outstanding, (null, note))),
        ];
        return items.Length == 0
            ? OrderChange.No(
                $"of order {order.Id.Value} nothing is outstanding that can be read; 'check' says what is wrong with its lines"
            )
            : new(
                editor =>
                    (
                        new ItemSplicer(editor).Append(OrderShape.Order, Locate(editor, order.Id.Value), "came", items),
                        $"came: {string.Join(", ", items)}"
                    ),
                null
            );
    }

    private OrderChange LineEnded(Order order, string line, string key)
    {
        var id = order.Id.Value;
        if (Standing(order, line) is not { } standing)
        {
            return OrderChange.No(order.Lines.Length == 0 ? $"order {id} has no lines; '{line}' says nothing" : NoLine(order, line));
        }

        return OrderStates.IsOpen(standing.State)
            ? new(
                editor =>
                {
                    var (place, items) = (Locate(editor, id), new ItemSplicer(editor));
                    var inner = ("lines", items.IndexOf(place, ("lines", "line"), line));
                    return (items.Add(place, inner, key, Today), $"{id} line {line}: {key}: {Today}");
                },
                null
            )
            : OrderChange.No($"line {line} of '{id}' is {OrderStates.Words(standing.State)} already");
    }

    private OrderChange Add(Order order, string key) =>
        new(editor => (editor.Add(List, Locate(editor, order.Id.Value).Index, key, Today), $"{order.Id.Value}: {key}: {Today}"), null);

    // An order that is over stays so: what came now is of another one.
    private OrderChange Over(string id, OrderState was)
    {
        string[] open =
        [
            .. stock.Workshop.Orders.Values.Where(one => OrderStates.IsOpen(OrderStates.For(one))).Select(one => one.Id.Value),
        ];
        return OrderChange.No(
            $"'{id}' is {OrderStates.Words(was)} already"
                + (
                    open.Length == 0
                        ? ", and no order is open"
                        : $"; still open: {string.Join(", ", open.Order(StringComparer.Ordinal).Take(MostListed))}"
                            + (open.Length > MostListed ? " and others" : string.Empty)
                )
        );
    }

    private static LineStanding? Standing(Order order, string line) => LineStanding.Find(order, line);

    private static (long Count, string? Fault) Count(string[] words, LineStanding line)
    {
        var name = $"line {line.Line.Id.Value} of order {line.Order.Id.Value}";
        if (line.Outstanding == 0)
        {
            return (0, $"of {name} {line.CameInWords} came, and nothing more is to come: it is {OrderStates.Words(line.State)}");
        }

        if (words is [_])
        {
            return (line.Outstanding, null);
        }

        return !long.TryParse(words[1], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count == 0
                ? (0, $"'{words[1]}' is no count; write how many came, such as 4")
            : count > line.Outstanding
                ? (0, string.Create(CultureInfo.InvariantCulture, $"of {name} only {line.Outstanding} are to come, not {count}"))
            : (count, null);
    }

    // The next number that no line has.
    private static string NextLine(Order order)
    {
        var taken = order.Lines.Select(line => line.Id.Value).Concat(order.UnreadLines.Names).ToHashSet(StringComparer.Ordinal);
        var next = order.Lines.Length + 1;
        while (taken.Contains(Number(next)))
        {
            next++;
        }

        return Number(next);
    }

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
