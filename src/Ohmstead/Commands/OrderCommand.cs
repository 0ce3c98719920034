using System.CommandLine;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Enters an order, or what became of it.</summary>
internal sealed class OrderCommand(Terminal terminal)
{
    private static readonly string[] Words = ["placed", "part-received", "received", "lost", "cancelled"];

    private readonly StockOptions options = new();
    private readonly Argument<string> name = new("ORDER")
    {
        CompletionSources = { Completions.Orders },
        Description = "Its name in the records, such as PO-14.",
    };
    private readonly Argument<string> state = EntryOptions.OneOf("STATE", "What happened", Words);
    private readonly Argument<string?> what = new("FOR")
    {
        Description = "What was ordered; for an order that is placed.",
        DefaultValueFactory = _ => null,
    };
    private readonly Option<string?> from = new("--from") { Description = "From whom." };

    public Command Build()
    {
        var command = options.Command(
            "order",
            """
            Enter an order, or what became of it. The state of an order is never typed: it follows from the days.

            Examples:
              ohmstead order PO-11 placed "220 µF 100 V, radial, ten" --from "Two Weirs Electronics"
              ohmstead order PO-11 received
              ohmstead order PO-09 lost --as-of 2026-11-20
            """,
            name,
            state,
            what,
            from
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (stock, run) =>
            {
                var (id, happened, today) = (parsed.GetValue(name)!, parsed.GetValue(state)!, IsoDate.Text(run.Today));
                var known = stock.Workshop.StockFile?.Orders ?? [];
                var index = Enumerable.Range(0, known.Length).FirstOrDefault(i => known[i].Id.Value == id, -1);
                if (happened == "placed")
                {
                    return index >= 0
                        ? Refuse($"there is an order '{id}' already, {OrderStates.Words(OrderStates.For(known[index]))}")
                        : Place(parsed, stock, id, today);
                }

                if (index < 0)
                {
                    var near = Nearest.To(id, known.Select(order => order.Id.Value));
                    return Refuse(Nearest.Told($"there is no order '{id}'", near));
                }

                var key = happened.Replace('-', '_');
                return OrderStates.For(known[index]) is var was && was is not (OrderState.Placed or OrderState.PartReceived)
                        ? Refuse($"'{id}' is {OrderStates.Words(was)} already; place a new one")
                    : was == OrderState.PartReceived && key == "part_received"
                        ? Refuse(
                            $"a part of '{id}' came already on {known[index].PartReceived!.Text}; the rest is 'received', 'lost' or "
                                + "'cancelled'"
                        )
                    : stock.Change(
                        parsed.GetValue(options.Sure),
                        parsed.GetValue(options.Trial),
                        editor => (editor.Add("orders", index, key, today), $"{id}: {key}: {today}"),
                        (_, _) => Next(happened)
                    );
            }));
        return command;
    }

    private int Place(ParseResult parsed, Writing.StockEntry stock, string id, string today)
    {
        if (parsed.GetValue(what) is not { Length: > 0 } ordered)
        {
            return Refuse($"say what was ordered: order {id} placed \"220 µF 100 V, ten\"");
        }

        var item = FlowText.Mapping([
            ("order", id),
            ("placed", today),
            ("from", parsed.GetValue(from)),
            ("for", ordered),
            ("note", parsed.GetValue(options.Note)),
        ]);
        return stock.Change(parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
            (editor.Append(FileShapes.Stock, "orders", item), item)
        );
    }

    private void Next(string happened) =>
        terminal.Out.WriteLine(
            happened switch
            {
                "received" or "part-received" =>
                    "  next: lot takes what came into the drawer, incoming measures it, wait --over ends what waited for it",
                _ => "  next: what boards waited for will not come under it: orders says what is open again",
            }
        );

    private int Refuse(string why)
    {
        terminal.Error.WriteLine(Printable.Escape(why));
        return ExitCode.Usage;
    }
}
