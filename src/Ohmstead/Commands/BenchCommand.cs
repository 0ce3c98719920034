using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Ohmstead.Bench;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Meters;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Walks over a board at the bench, reading after reading.</summary>
/// <param name="terminal">Where it is typed and told.</param>
/// <param name="other">Runs any other command, and tells what it tells on a terminal.</param>
internal sealed class BenchCommand(Terminal terminal, Func<IReadOnlyList<string>, Terminal, int> other)
{
    private readonly EntryOptions options = new();
    private readonly Option<string[]> classes = new("--class")
    {
        CompletionSources = { Completions.Classes },
        Description = "Stop only at parts whose references begin with these letters, such as C.",
        AllowMultipleArgumentsPerToken = true,
    };
    private readonly Option<bool> inCircuit = new("--in-circuit") { Description = "The parts are read in the circuit." };
    private readonly Option<bool> lifted = new("--lifted") { Description = "The parts are out of the circuit, or one leg is." };
    private readonly Option<bool> again = new("--again") { Description = "Stop at places that were read today too." };

    private readonly Option<bool> plain = new("--plain")
    {
        Description = "Move no cursor and use no keys of the terminal, for screen readers. Otherwise OHMSTEAD_PLAIN.",
    };

    private readonly Option<string?> from = new("--from")
    {
        Description =
            "Read the meter there: serial:/dev/ttyUSB0, serial:/dev/ttyUSB0,9600,8n1 or tcp:HOST:PORT. Enter alone reads it, "
            + "Enter again takes what it shows.",
        HelpName = "PORT",
    };
    private readonly Option<string?> meter = new("--meter")
    {
        Description = "How it talks: a name from meters.yaml. Otherwise it is asked in the words of SCPI.",
    };
    private readonly Option<int> wait = new("--wait")
    {
        Description = "How many seconds to wait for the meter; Ctrl-C waits no longer.",
        DefaultValueFactory = _ => 10,
        Validators = { AtLeastOne },
    };

    public Command Build()
    {
        var command = options.DatedCommand(
            "bench",
            """
            Walk over the parts of a board with the keyboard alone: each stop shows what to measure and its limit, each reading its verdict.

            Examples:
              ohmstead bench SP-0007 --by RK --instrument bridge-1 --lifted --class C
              ohmstead bench SP-0007 --on 2026-11-20       type in what was noted on paper that day
              ohmstead bench SP-0007                       go on where the last session of the day ended

            At each stop: 391 1.4 and Enter; Enter alone passes on; undo takes back; ? tells the rest. With --from a meter tells what it
            shows: serial:/dev/ttyUSB0,9600,8n1 or tcp:192.0.2.7:5025.
            """,
            classes,
            inCircuit,
            lifted,
            again,
            plain,
            from,
            meter,
            wait
        );
        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) =>
            {
                var visit = options.Visit(parsed, board, run, isMeasured: true);
                var folder = options.FolderOf(parsed);
                using var opened = Opened(parsed, board.Beside, out var instrument, out var refused);
                if (refused is not null)
                {
                    terminal.Error.WriteLine(Printable.Escape(refused));
                    return ExitCode.Usage;
                }

                string[] looking = ["--in", folder, "--as-of", IsoDate.Text(run.Today)];
                var plan = new SessionPlan(folder, board.Board.Board.Path, visit, parsed.GetValue(classes) ?? [], looking)
                {
                    Circuit =
                        parsed.GetValue(inCircuit) ? "in"
                        : parsed.GetValue(lifted) ? "out"
                        : null,
                    Instrument = parsed.GetValue(options.Instrument) ?? instrument ?? visit.Instrument,
                    Meter = opened,
                    Came = parsed.GetValue(options.Came),
                    Day = options.DayOf(parsed, run),
                    IsAgain = parsed.GetValue(again),
                    IsPlain = parsed.GetValue(plain),
                };
                return new Session(terminal, run, plan, other).Walk(board);
            }));
        return command;
    }

    private static void AtLeastOne(OptionResult result)
    {
        if (
            result.Tokens.Count > 0
            && int.TryParse(result.Tokens[0].Value, CultureInfo.InvariantCulture, out var count)
            && count is < 1 or > 3600
        )
        {
            result.AddError("--wait takes 1 to 3600 seconds");
        }
    }

    // Only a port that was named is opened.
    private IMeter? Opened(ParseResult parsed, CollectionFolder folder, out string? instrument, out string? refused)
    {
        (instrument, refused) = (null, null);
        if (parsed.GetValue(from) is not { } place)
        {
            refused = parsed.GetValue(meter) is { } name ? $"--meter {name} says how a meter talks, and --from must say where it is" : null;
            return null;
        }

        terminal.Out.Flush();
        var wish = new MeterWish(place, parsed.GetValue(meter), TimeSpan.FromSeconds(parsed.GetValue(wait)));
        var (opened, known, told) = MeterOpening.Open(wish, folder);
        if (opened is null)
        {
            refused = told;
            return null;
        }

        instrument = known;
        terminal.Out.WriteLine(Printable.Escape(told));
        return opened;
    }
}
