using System.CommandLine;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters an order, its lines, or what became of it.</summary>
internal sealed class OrderCommand(Terminal terminal)
{
    private static readonly string[] Words = ["placed", "line", "came", "came-in-part", "received", "lost", "cancelled"];

    private readonly StockOptions options = new();
    private readonly Argument<string> name = new("ORDER")
    {
        CompletionSources = { Completions.Orders },
        Description = "Its name in the records, such as PO-14.",
    };
    private readonly Argument<string> state = EntryOptions.OneOf("STATE", "What happened", Words);
    private readonly Argument<string[]> said = new("WHAT")
    {
        Description =
            "After placed what was ordered; after line the kind of part and what is printed on it; after came the line and how many, "
            + "all of it when not said; after lost and cancelled one line, where it is not the whole order.",
        Arity = ArgumentArity.ZeroOrMore,
    };
    private readonly Option<string?> from = new("--from") { Description = "From whom; with placed." };
    private readonly Option<int?> quantity = new("--quantity") { Description = "How many were ordered; with line." };
    private readonly Option<string?> price = new("--price") { Description = "What one of them costs, with the currency; with line." };
    private readonly Option<string?> what = new("--what") { Description = "What it is in words, for what is no kind of part; with line." };
    private readonly Option<string?> lot = new("--lot")
    {
        CompletionSources = { Completions.Lots },
        Description = "The lot in the drawer that they became; with came.",
    };

    public Command Build()
    {
        var command = options.Command(
            "order",
            """
            Enter an order, its lines, or what became of it. The state of an order is never typed: it follows from the days, and with lines
            from what came of each. What comes and goes into the drawer is entered by lot, which takes the line with --order and --line.

            Examples:
              ohmstead order PO-21 placed "parts for the winter" --from "Two Weirs Electronics"
              ohmstead order PO-21 line "aluminium electrolytic" 220uF 20% 100V 105C --quantity 10 --price "0.42 EUR"
              ohmstead order PO-21 line --what "pen motor belt" --quantity 2
              ohmstead order PO-21 came 2 1
              ohmstead order PO-21 cancelled 2
              ohmstead order PO-09 lost --as-of 2026-11-20
            """,
            name,
            state,
            said,
            from,
            quantity,
            price,
            what,
            lot
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (stock, run) =>
            {
                var (id, happened) = (parsed.GetValue(name)!, parsed.GetValue(state)!);
                if (Misplaced(parsed, happened) is { } option)
                {
                    return Refuse(option);
                }

                var entry = new OrderEntry(stock, run.Today, parsed.GetValue(options.Note), parsed.GetValue(options.Sure));
                var known = stock.Workshop.StockFile?.Orders ?? [];
                var order = known.FirstOrDefault(one => one.Id.Value == id);
                if (happened == "placed")
                {
                    return order is not null
                        ? Refuse($"there is an order '{id}' already, {OrderStates.Words(OrderStates.For(order))}")
                        : Write(parsed, stock, entry.Place(id, parsed.GetValue(said)!, parsed.GetValue(from)), happened);
                }

                return order is null
                    ? Refuse(Nearest.Told($"there is no order '{id}'", Nearest.To(id, known.Select(one => one.Id.Value))))
                    : Write(parsed, stock, Step(parsed, entry, order, happened), happened);
            }));
        return command;
    }

    private OrderChange Step(ParseResult parsed, OrderEntry entry, Order order, string happened)
    {
        var words = parsed.GetValue(said)!;
        return happened switch
        {
            "line" => entry.Line(order, words, new(parsed.GetValue(quantity), parsed.GetValue(what), parsed.GetValue(price))),
            "came" => entry.Came(order, words, parsed.GetValue(lot)),
            _ => entry.Ended(order, words, happened == "came-in-part" ? "part_received" : happened),
        };
    }

    private int Write(ParseResult parsed, StockEntry stock, OrderChange change, string happened) =>
        change.Refusal is { } why
            ? Refuse(why)
            : stock.Change(parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), change.Splice!, (_, _) => Next(happened));

    // What an option says would be dropped without a word where another thing happened.
    private string? Misplaced(ParseResult parsed, string happened)
    {
        (Option Option, string Belongs)[] tied = [(from, "placed"), (quantity, "line"), (price, "line"), (what, "line"), (lot, "came")];
        return tied.Where(one => one.Belongs != happened && parsed.GetResult(one.Option) is { Implicit: false })
            .Select(one => $"{one.Option.Name} is said with '{one.Belongs}', not with '{happened}'")
            .FirstOrDefault();
    }

    private void Next(string happened)
    {
        var next = happened switch
        {
            "placed" => null,
            "line" => "orders lists the lines; lot with --order and --line takes what comes of one into the drawer",
            "received" or "came-in-part" or "came" =>
                "lot takes what came into the drawer, incoming measures it, wait --over ends what waited for it",
            _ => "what boards waited for will not come under it: orders says what is open again",
        };
        if (next is not null)
        {
            terminal.Out.WriteLine($"  next: {next}");
        }
    }

    private int Refuse(string why)
    {
        terminal.Error.WriteLine(Printable.Escape(why));
        return ExitCode.Usage;
    }
}
