using System.CommandLine;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Takes parts that came into the drawer.</summary>
internal sealed class LotCommand(Terminal terminal)
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
    private readonly Option<string?> price = new("--price") { Description = "What one of them cost, with the currency." };

    public Command Build()
    {
        var command = options.Command(
            "lot",
            """
            Take parts that came into the drawer as a lot.

            Examples:
              ohmstead lot L-023 "aluminium electrolytic" 470uF 20% 35V 105C date_code=2610 --quantity 10 --order PO-08
              ohmstead lot L-024 fuse current=250mA maker=Wexcote --quantity 5 --price "0.30 EUR"
            """,
            name,
            kind,
            values,
            quantity,
            order,
            price
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (stock, run) =>
            {
                var id = parsed.GetValue(name)!;
                if (stock.Workshop.Lots.ContainsKey(id))
                {
                    terminal.Error.WriteLine(Printable.Escape($"there is a lot '{id}' already"));
                    return ExitCode.Usage;
                }

                var (said, fault) = SaidPart.Read(parsed.GetValue(values)!, FileShapes.LotShape);
                if (fault is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(fault));
                    return ExitCode.Usage;
                }

                var line = new Dictionary<string, string?>(said, StringComparer.Ordinal)
                {
                    ["lot"] = id,
                    ["kind"] = parsed.GetValue(kind),
                    ["quantity"] = parsed.GetValue(quantity)?.ToString(System.Globalization.CultureInfo.InvariantCulture),
                    ["order"] = parsed.GetValue(order),
                    ["price"] = parsed.GetValue(price),
                    ["note"] = parsed.GetValue(options.Note),
                };
                line.TryAdd("received", IsoDate.Text(run.Today));
                var item = FlowText.Mapping(FileShapes.LotShape.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name))));
                return stock.Change(parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
                    (editor.Append(FileShapes.Stock, "lots", item), item)
                );
            }));
        return command;
    }
}
