using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters pieces of a lot that went to the bin: what is left goes down, and the lot lives on.</summary>
internal sealed class ScrapCommand(Terminal terminal)
{
    private readonly StockOptions options = new();
    private readonly Argument<string> lot = new("LOT") { Description = "The lot, such as L-031." };
    private readonly Argument<int> count = new("COUNT") { Description = "How many pieces went to the bin." };
    private readonly Argument<string> because = new("BECAUSE") { Description = "Why." };
    private readonly Option<string?> piece = new("--piece") { Description = "Which piece, where a reading names it." };
    private readonly Option<string?> by = new("--by") { Description = "Initials of who works. Otherwise OHMSTEAD_BY." };

    public Command Build()
    {
        var command = options.Command(
            "scrap",
            """
            Enter pieces of a lot that went to the bin. What is left of the lot goes down; readings of a scrapped piece speak for no other.

            Examples:
              ohmstead scrap L-013 1 "reads 70 % of its mark" --piece 2
              ohmstead scrap L-002 2 "leads torn off"
            """,
            lot,
            count,
            because,
            piece,
            by
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (stock, run) =>
            {
                var (id, pieces) = (parsed.GetValue(lot)!, parsed.GetValue(count));
                if (!stock.Workshop.Lots.ContainsKey(id))
                {
                    terminal.Error.WriteLine(
                        Printable.Of(Nearest.Told($"there is no lot '{id}'", Nearest.To(id, stock.Workshop.Lots.Keys)))
                    );
                    return ExitCode.Usage;
                }

                if (pieces < 1 || (parsed.GetValue(piece) is not null && pieces > 1))
                {
                    terminal.Error.WriteLine(
                        pieces < 1 ? "say how many pieces went to the bin, 1 or more" : "--piece names one piece: say 1, once for each"
                    );
                    return ExitCode.Usage;
                }

                var line = new Dictionary<string, string?>(StringComparer.Ordinal)
                {
                    ["lot"] = id,
                    ["piece"] = parsed.GetValue(piece),
                    ["count"] = pieces.ToString(CultureInfo.InvariantCulture),
                    ["because"] = parsed.GetValue(because),
                };
                var item = FlowText.Mapping(BenchShape.Scrap.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name))));
                var who = new VisitHead(IsoDate.Text(run.Today), Initials.Of(parsed.GetValue(by)), null);
                return stock.Change(
                    parsed.GetValue(options.Sure),
                    parsed.GetValue(options.Trial),
                    editor => (editor.AppendToVisit(FileShapes.Stock, who.IsOf, who.Keys, "scrapped", item), item),
                    (after, _) =>
                    {
                        var known = LotPieces.Gather(after, new ReadingJudge(after), id);
                        terminal.Out.WriteLine(Printable.Of($"  {(known.IsDoubted ? known.DoubtInWords : known.ShareInWords)}"));
                    }
                );
            }));
        return command;
    }
}
