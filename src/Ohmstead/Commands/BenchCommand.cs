using System.CommandLine;
using Ohmstead.Bench;
using Ohmstead.Electronics;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Walks over a board at the bench, reading after reading.</summary>
/// <param name="terminal">Where it is typed and told.</param>
/// <param name="other">Runs any other command.</param>
internal sealed class BenchCommand(Terminal terminal, Func<IReadOnlyList<string>, int> other)
{
    private readonly EntryOptions options = new();
    private readonly Option<string[]> classes = new("--class")
    {
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

            At each stop: 391 1.4 and Enter; Enter alone passes on; undo takes back; ? tells the rest.
            """,
            classes,
            inCircuit,
            lifted,
            again,
            plain
        );
        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) =>
            {
                var visit = options.Visit(parsed, board, run, isMeasured: true);
                var folder = options.FolderOf(parsed);
                string[] looking = ["--in", folder, "--as-of", IsoDate.Text(run.Today)];
                var plan = new SessionPlan(folder, board.Assessment.Board.Path, visit, parsed.GetValue(classes) ?? [], looking)
                {
                    Circuit =
                        parsed.GetValue(inCircuit) ? "in"
                        : parsed.GetValue(lifted) ? "out"
                        : null,
                    Instrument = visit.Instrument,
                    Came = parsed.GetValue(options.Came),
                    Day = options.DayOf(parsed, run),
                    IsAgain = parsed.GetValue(again),
                    IsPlain = parsed.GetValue(plain),
                };
                return new Session(terminal, run, plan, other).Walk(board);
            }));
        return command;
    }
}
