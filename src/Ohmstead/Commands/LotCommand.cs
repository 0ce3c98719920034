using System.CommandLine;
using System.Text.RegularExpressions;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Starting;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Commands;

/// <summary>Takes parts that came into the drawer.</summary>
internal sealed partial class LotCommand(Terminal terminal)
{
    private readonly StockOptions options = new();
    private readonly Argument<string> name = new("LOT") { Description = "Its name in the records, such as L-031." };
    private readonly Argument<string> kind = EntryOptions.OneOf("KIND", "What the parts are", Vocabulary.PartKinds);
    private readonly Argument<string[]> values = new("VALUE")
    {
        Description = "What is printed on them: 470uF 20% 35V 105C, or key=value such as date_code=2610.",
        Arity = ArgumentArity.ZeroOrMore,
    };
    private readonly Option<int?> quantity = new("--quantity") { Description = "How many came." };
    private readonly Option<string?> order = new("--order")
    {
        CompletionSources = { Completions.Orders },
        Description = "The order they came under.",
    };
    private readonly Option<string?> line = new("--line")
    {
        CompletionSources = { Completions.OrderLines },
        Description = "The line of that order which they are; needed where it has lines.",
    };
    private readonly Option<string?> price = new("--price") { Description = "What one of them cost, with the currency." };

    public Command Build()
    {
        var command = options.Command(
            "lot",
            """
            Take parts that came into the drawer as a lot.

            Examples:
              ohmstead lot L-023 "aluminium electrolytic" 470uF 20% 35V 105C date_code=2610 --quantity 10 --order PO-08
              ohmstead lot L-025 valve type=VK40 --quantity 1 --order PO-07 --line 2
              ohmstead lot L-024 fuse current=250mA maker=Wexcote --quantity 5 --price "0.30 EUR"
            """,
            name,
            kind,
            values,
            quantity,
            order,
            line,
            price
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (stock, run) =>
            {
                var id = parsed.GetValue(name)!;
                if (WhyNot(parsed, stock, id) is { } wrong)
                {
                    terminal.Error.WriteLine(Printable.Escape(wrong));
                    return ExitCode.Usage;
                }

                var (under, why) = Under(stock, parsed.GetValue(order), parsed.GetValue(line), parsed.GetValue(quantity));
                if (why is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(why));
                    return ExitCode.Usage;
                }

                var (said, fault) = SaidPart.Read(parsed.GetValue(values)!, FileShapes.LotShape);
                if (fault is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(fault));
                    return ExitCode.Usage;
                }

                var entry = new Dictionary<string, string?>(said, StringComparer.Ordinal)
                {
                    ["lot"] = id,
                    ["kind"] = parsed.GetValue(kind),
                    ["quantity"] = parsed.GetValue(quantity)?.ToString(System.Globalization.CultureInfo.InvariantCulture),
                    ["order"] = parsed.GetValue(order),
                    ["price"] = parsed.GetValue(price),
                    ["note"] = parsed.GetValue(options.Note),
                };
                entry.TryAdd("received", IsoDate.Text(run.Today));
                var item = FlowText.Mapping(FileShapes.LotShape.Keys.Select(key => (key.Name, entry.GetValueOrDefault(key.Name))));
                return stock.Change(parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
                    under is null
                        ? (editor.Append(FileShapes.Stock, "lots", item), item)
                        : WithArrival(
                            editor,
                            item,
                            under,
                            OrderEntry.Arrival(
                                IsoDate.Text(run.Today),
                                parsed.GetValue(line)!,
                                parsed.GetValue(quantity)!.Value,
                                (id, null)
                            )
                        )
                );
            }));
        return command;
    }

    // Both ends of one fact go in together, or neither.
    private static (EditOutcome Outcome, string Line) WithArrival(RecordEditor editor, string lot, Order order, string arrival)
    {
        var first = editor.Append(FileShapes.Stock, "lots", lot);
        return (
            first.Text is { } text && RecordEditor.Open(StockEntry.Path, text, FileForm.Yaml, NodeReaders.ForWorker(0), out _) is { } again
                ? new ItemSplicer(again).Append(OrderShape.Order, OrderEntry.Locate(again, order.Id.Value), "came", [arrival])
                : first,
            $"{lot}, and under the order came: {arrival}"
        );
    }

    // The order that the lot is a line of; none where it has no lines, or where nothing of them is to come.
    private static (Order? Order, string? Why) Under(StockEntry stock, string? name, string? line, int? quantity)
    {
        var under = name is null ? null : stock.Workshop.Orders.GetValueOrDefault(name);
        if (line is null)
        {
            return under is not { Lines.Length: > 0 } || !OrderStates.IsOpen(OrderStates.For(under))
                ? (null, null)
                : (null, $"order {name} goes by lines: say which this is with --line; {OrderEntry.OpenLines(under)}");
        }

        if (under is null)
        {
            return (
                null,
                name is null
                    ? "say the order of the line with --order"
                    : Nearest.Told($"there is no order '{name}'", Nearest.To(name, stock.Workshop.Orders.Keys))
            );
        }

        return LineStanding.Find(under, line) is not { } found
                ? (null, under.Lines.Length == 0 ? $"order {name} has no lines; leave --line out" : OrderEntry.NoLine(under, line))
            : quantity is not > 0 ? (null, "say how many came with --quantity")
            : quantity > found.Outstanding
                ? (null, $"of line {line} of order {name} {found.CameInWords} came; {found.Outstanding} are to come, not {quantity}")
            : (under, null);
    }

    private string? WhyNot(ParseResult parsed, StockEntry stock, string id)
    {
        var orders = stock.Workshop.StockFile?.Orders.Select(one => one.Id.Value).ToArray() ?? [];
        return stock.Workshop.Lots.ContainsKey(id)
                ? $"there is a lot '{id}' already"
                    + (NextName.Behind(id, stock.Workshop.Lots.Keys) is { } free ? $"; the next free name is {free}" : string.Empty)
            : parsed.GetValue(quantity) is < 1 and var none
                ? $"--quantity {none}: say how many came, 1 or more; a lot of which nothing is known needs no --quantity"
            : parsed.GetValue(order) is { } named && !orders.Contains(named)
                ? Nearest.Told($"there is no order '{named}'", Nearest.To(named, orders), $"; enter it first: order {named} placed")
            : parsed.GetValue(price) is { } said && !Price().IsMatch(said) ? $"--price '{said}' {NoPrice(said)}"
            : null;
    }

    // The currency is a fact of the order, so none is offered where none was said.
    private static string NoPrice(string said)
    {
        var figure = Figure(said);
        var currency =
            said.Contains('€', StringComparison.Ordinal) ? "EUR"
            : said.Contains('£', StringComparison.Ordinal) ? "GBP"
            : said.Split(' ') is [.., { Length: 3 } last] && last.All(char.IsAsciiLetterUpper) ? last
            : null;
        return currency is null ? $"has no currency; write --price \"{figure} ...\" with its three letters in place of the points"
            : said.Contains(',', StringComparison.Ordinal) ? $"has a decimal comma; write --price \"{figure} {currency}\""
            : said.EndsWith(currency, StringComparison.Ordinal) ? $"is no figure with its currency; write --price \"{figure} {currency}\""
            : $"has a sign for its currency; write --price \"{figure} {currency}\"";
    }

    private static string Figure(string said)
    {
        var figure = new string([.. said.Replace(',', '.').Where(letter => char.IsAsciiDigit(letter) || letter == '.')]).Trim('.');
        return figure.Length > 0 ? figure : "...";
    }

    // ISO 4217 names currencies by three capitals.
    [GeneratedRegex("^[0-9]+(\\.[0-9]+)? [A-Z]{3}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Price();
}
