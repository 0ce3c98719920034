using System.CommandLine;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters pieces of a lot that went to the bin: what is left goes down, and the lot lives on.</summary>
internal sealed class ScrapCommand(Terminal terminal)
{
    private readonly StockOptions options = new();
    private readonly Argument<string> lot = new("LOT")
    {
        CompletionSources = { Completions.Lots },
        Description = "The lot, such as L-031.",
    };
    private readonly Argument<int> count = new("COUNT") { Description = "How many pieces went to the bin." };
    private readonly Argument<string> because = new("BECAUSE") { Description = "Why." };
    private readonly Option<string?> piece = new("--piece") { Description = "Which piece, where a reading names it." };
    private readonly Option<string?> by = new("--by") { Description = "Initials of who works. Otherwise OHMSTEAD_BY." };

    public Command Build()
    {
        var command = options.DatedCommand(
            "scrap",
            """
            Enter pieces of a lot that went to the bin. What is left of the lot goes down; readings of a scrapped piece speak for no other.

            Examples:
              ohmstead scrap L-013 1 "reads 70 % of its mark" --piece 2
              ohmstead scrap L-002 2 "leads torn off" --on 2026-11-20
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
                if (!stock.Workshop.Lots.TryGetValue(id, out var known))
                {
                    terminal.Error.WriteLine(
                        Printable.Escape(Nearest.Told($"there is no lot '{id}'", Nearest.To(id, stock.Workshop.Lots.Keys)))
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
                if (options.Visit(parsed, terminal, known, parsed.GetValue(by), null, run.Today) is not { } who)
                {
                    return ExitCode.Usage;
                }

                if (WhyNot(stock, known, pieces, parsed.GetValue(piece)) is { } why)
                {
                    terminal.Error.WriteLine(Printable.Escape($"{why}; nothing was written"));
                    return ExitCode.Findings;
                }

                return stock.Change(
                    parsed.GetValue(options.Sure),
                    parsed.GetValue(options.Trial),
                    editor => StockEntry.Into(editor, who, "scrapped", _ => item),
                    (after, _) =>
                    {
                        var gathered = LotPieces.Gather(after, new ReadingJudge(after), id);
                        terminal.Out.WriteLine(
                            Printable.Escape($"  {(gathered.IsDoubted ? gathered.DoubtInWords : gathered.ShareInWords)}")
                        );
                    }
                );
            }));
        return command;
    }

    // What was fitted is not in the drawer any more, and no piece goes to the bin twice.
    private static string? WhyNot(StockEntry stock, Lot lot, int pieces, string? piece)
    {
        var id = lot.Id.Value;
        foreach (var (visit, scrapped) in stock.Workshop.Scrapped[id])
        {
            if (piece is not null && scrapped.Piece?.Value == piece)
            {
                return $"piece {piece} of lot {id} went to the bin on {visit.Date.Text}";
            }
        }

        return stock.Left(lot) is var (came, fitted, left) && pieces > left
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"of lot {id} {came} came, {fitted} are fitted and {came - fitted - left} were scrapped before: "
                    + $"{Math.Max(0, left)} are left"
            )
            : null;
    }
}
