using System.CommandLine;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Enters that work waits, or that a wait is over.</summary>
internal sealed class WaitCommand(Terminal terminal)
{
    private readonly EntryOptions options = new();
    private readonly Argument<string> what = new("FOR") { Description = "What is waited for." };
    private readonly Option<string?> order = new("--order")
    {
        CompletionSources = { Completions.Orders },
        Description = "The order it comes under, from stock.yaml.",
    };
    private readonly Option<string?> line = new("--line")
    {
        CompletionSources = { Completions.OrderLines },
        Description = "The line of that order which brings it, where it has lines.",
    };
    private readonly Option<string?> blocks = new("--blocks") { Description = "What cannot go on." };
    private readonly Option<bool> over = new("--over") { Description = "The wait for this is over: it came, or is not needed any more." };

    public Command Build()
    {
        var command = options.Command(
            "wait",
            """
            Enter that work waits for something, or that the wait is over.

            Examples:
              ohmstead wait SP-0004 "new pen motor belt" --order PO-08 --blocks "drift test"
              ohmstead wait SP-0004 "output valve" --order PO-07 --line 1
              ohmstead wait SP-0004 "new pen motor belt" --over
            """,
            what,
            order,
            line,
            blocks,
            over,
            options.On
        );
        command.SetAction(parsed => options.RunDated(parsed, terminal, (board, run) =>
            {
                var (text, day) = (parsed.GetValue(what)!, IsoDate.Text(options.DayOf(parsed, run)));
                var entry = new BenchEntry(terminal, run);
                if (!parsed.GetValue(over))
                {
                    var item = FlowText.Mapping([
                        ("since", day),
                        ("for", text),
                        ("order", parsed.GetValue(order)),
                        ("line", parsed.GetValue(line)),
                        ("blocks", parsed.GetValue(blocks)),
                    ]);
                    return entry.Change(board, parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
                        (
                            parsed.GetValue(options.Sure) || !editor.Holds("waiting", item)
                                ? editor.Append(FileShapes.Board, "waiting", item)
                                : entry.Twice("the list of waits", item),
                            item
                        )
                    );
                }

                var waits = board.Board.Board.Waiting;
                var index = Enumerable.Range(0, waits.Length).LastOrDefault(i => waits[i].Until is null && waits[i].For.Value == text, -1);
                if (index < 0)
                {
                    var open = string.Join(", ", waits.Where(wait => wait.Until is null).Select(wait => $"'{wait.For.Value}'"));
                    terminal.Error.WriteLine(
                        Printable.Escape($"nothing waits for '{text}'" + (open.Length > 0 ? $"; open: {open}" : string.Empty))
                    );
                    return ExitCode.Usage;
                }

                if (waits[index].Since is var since && options.DayOf(parsed, run) < since.Value)
                {
                    terminal.Error.WriteLine(Printable.Escape($"this wait began on {since.Text}; it cannot have ended on {day}"));
                    return ExitCode.Usage;
                }

                return entry.Change(board, parsed.GetValue(options.Sure), parsed.GetValue(options.Trial), editor =>
                    (editor.Add("waiting", index, "until", day), $"until: {day}")
                );
            }));
        return command;
    }
}
