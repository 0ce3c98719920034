using System.CommandLine;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters an incoming reading: a part of a lot, measured before any is fitted.</summary>
internal sealed class IncomingCommand(Terminal terminal)
{
    private readonly StockOptions options = new();
    private readonly Argument<string> lot = new("LOT")
    {
        CompletionSources = { Completions.Lots },
        Description = "The lot, such as L-031.",
    };
    private readonly Argument<string[]> values = new("VALUE")
    {
        CompletionSources = { Completions.Readings },
        Description = "What was read, with its unit: 474uF 112mohm 120Hz, or key=value.",
        Arity = ArgumentArity.OneOrMore,
    };
    private readonly Option<string?> by = new("--by") { Description = "Initials of who works. Otherwise OHMSTEAD_BY." };
    private readonly Option<string?> instrument = new("--instrument")
    {
        CompletionSources = { Completions.Instruments },
        Description = "The instrument used. Otherwise the one of the day's incoming inspection.",
    };

    public Command Build()
    {
        var command = options.DatedCommand(
            "incoming",
            """
            Enter the reading of a new part of a lot, and tell its verdict: only delivery limits count.

            Examples:
              ohmstead incoming L-002 474uF 112mohm 120Hz --by TS --instrument bridge-1
              ohmstead incoming L-002 14.2uA after=2min at_voltage=35V --instrument leak-1
              ohmstead incoming L-002 471uF 120Hz --on 2026-11-20
              ohmstead incoming L-008 "insulation=>20Gohm" at_voltage=100V piece=2
            """,
            lot,
            values,
            by,
            instrument
        );
        command.SetAction(parsed => options.Run(parsed, terminal, (stock, run) =>
            {
                var id = parsed.GetValue(lot)!;
                if (!stock.Workshop.Lots.TryGetValue(id, out var known))
                {
                    var near = Nearest.To(id, stock.Workshop.Lots.Keys);
                    terminal.Error.WriteLine(Printable.Escape(Nearest.Told($"there is no lot '{id}'", near)));
                    return ExitCode.Usage;
                }

                var (read, fault) = EnteredValues.Read(parsed.GetValue(values)!, known.Values.Kind.Value, null, BenchShape.Reading);
                if (fault is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(fault));
                    return ExitCode.Usage;
                }

                var used = parsed.GetValue(instrument);
                if (options.Visit(parsed, terminal, known, parsed.GetValue(by), used, run.Today) is not { } who)
                {
                    return ExitCode.Usage;
                }

                return stock.Change(
                    parsed.GetValue(options.Sure),
                    parsed.GetValue(options.Trial),
                    editor => StockEntry.Into(editor, who, "readings", joins =>
                        {
                            var line = read.ToDictionary(value => value.Key, value => (string?)value.Value, StringComparer.Ordinal);
                            line["lot"] = id;
                            line["state"] = "new";
                            line["instrument"] = joins is not null && joins.GetValueOrDefault("instrument") != used ? used : null;
                            line["note"] = parsed.GetValue(options.Note);
                            return FlowText.Mapping(BenchShape.Reading.Keys.Select(key => (key.Name, line.GetValueOrDefault(key.Name))));
                        }),
                    (after, place) =>
                    {
                        var (visit, reading) = after.IncomingReadings[id].Single(pair => pair.Reading.Spot == place);
                        foreach (var verdict in new ReadingJudge(after).AssessIncoming(visit, reading).Verdicts)
                        {
                            terminal.Out.WriteLine(Printable.Escape("  " + verdict.Why));
                        }
                    }
                );
            }));
        return command;
    }
}
