using System.CommandLine;
using Ohmstead.Output;
using Ohmstead.Running;
using Ohmstead.Starting;

namespace Ohmstead.Commands;

/// <summary>Gives a board another number, everywhere.</summary>
internal sealed class RenumberCommand(Terminal terminal)
{
    private readonly Argument<string> number = new("BOARD")
    {
        CompletionSources = { Completions.Boards },
        Description = "The number that the board has, such as SP-0007.",
    };
    private readonly Argument<string> becomes = new("NUMBER") { Description = "The number that it gets, which no board has or ever had." };
    private readonly Option<bool> trial = new("--trial", "--dry") { Description = "Show what would change, and write nothing." };
    private readonly SharedOptions shared = new();

    public Command Build()
    {
        var command = new Command(
            "renumber",
            """
            Give a board another number: in its record, in all that name it, and in the names of its photographs.
            The record remembers the former number, and its page leads to the new one. What is printed on things stays: labels of bags,
            serial numbers. Every verdict stays what it was, or nothing is written.

            Examples:
              ohmstead renumber SP-0009 SP-0109 --trial
              ohmstead renumber SP-0009 SP-0109
            """
        )
        {
            number,
            becomes,
            trial,
            shared.Folder,
            shared.AsOf,
        };
        command.SetAction(parsed =>
            shared.Read(parsed, terminal.Error, writes: true) is { } run
            && SharedOptions.OpenBoards(parsed.GetValue(shared.Folder)!, terminal.Error) is { } files
                ? Renumber(parsed, new Renumbering(terminal, files, run))
                : ExitCode.Usage
        );
        return command;
    }

    private int Renumber(ParseResult parsed, Renumbering renumbering)
    {
        var (plan, exit) = renumbering.Prepare(parsed.GetValue(number)!, parsed.GetValue(becomes)!);
        if (plan is null)
        {
            return exit;
        }

        if (parsed.GetValue(trial))
        {
            foreach (var change in plan.Changes)
            {
                UnifiedDiff.Write(terminal.Out, change.Path, change.Before!, change.After);
            }

            Tell(plan, "would move to");
            return ExitCode.Clean;
        }

        renumbering.Do(plan, () =>
        {
            Tell(plan, "moved to");
            terminal.Out.Flush();
        });
        return ExitCode.Clean;
    }

    private void Tell(RenumberingPlan plan, string moved)
    {
        foreach (var move in plan.Moves.Append(plan.Record).Where(move => move.From != move.To))
        {
            Line($"{move.From.TrimEnd('/')}: {moved} {move.To.TrimEnd('/')}");
        }

        foreach (var (path, count) in plan.Told)
        {
            Line(FormattableString.Invariant($"{path}: {plan.Names.To} for {plan.Names.From} {count} {(count == 1 ? "time" : "times")}"));
        }

        Line("  every verdict stays what it was; the former number leads to the new one");
        foreach (var line in plan.Left)
        {
            Line($"  left as it stands: {line}");
        }

        Line("  write the new number on the board itself, beside the former one");
    }

    private void Line(string text) => terminal.Out.WriteLine(Printable.Escape(text));
}
