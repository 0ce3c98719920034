using System.CommandLine;
using Ohmstead.Git;
using Ohmstead.Merging;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Merges what two people made of one record, by its entries.</summary>
internal sealed class SettleCommand(Terminal terminal)
{
    private readonly Argument<string[]> files = new("FILE")
    {
        Description = "What Git hands over: the file that both began from, that of the first, which is replaced, and that of the second.",
        Arity = new ArgumentArity(0, 3),
    };
    private readonly Option<string?> path = new("--path")
    {
        Description = "The path of the file in the repository, by which its kind is known.",
        HelpName = "PATH",
    };
    private readonly Option<int> size = new("--size")
    {
        Description = "How many signs a mark of a conflict has.",
        HelpName = "COUNT",
        DefaultValueFactory = _ => SettledFile.UsualSize,
    };
    private readonly Option<bool> setUp = new("--set-up") { Description = "Let Git merge records so in this clone, from now on." };
    private readonly Option<bool> check = new("--check") { Description = "Only tell whether that is set up; ends with 1 where it is not." };
    private readonly Option<bool> undo = new("--undo") { Description = "Take it out of the settings of this clone again." };

    public Command Build()
    {
        var command = new Command(
            "settle",
            """
            Merge what two people entered into one record: by its entries, where Git knows lines.
            Visits of both stay, in order of day. What both changed in different ways is left between marks, with the reason on the error
            stream. Without words it settles the records that a merge, a rebase or a cherry-pick has just left in conflict; nothing need
            have been set up for that.

            Examples:
              ohmstead settle                     what is in conflict in this work tree
              ohmstead settle --set-up            let Git merge records so in this clone
              ohmstead settle --set-up --check    tell whether it is set up
              ohmstead settle --set-up --undo     take it out again
            """
        )
        {
            files,
            path,
            size,
            setUp,
            check,
            undo,
        };
        command.SetAction(parsed =>
        {
            var three = parsed.GetValue(files) ?? [];
            var (sets, asks, undoes) = (parsed.GetValue(setUp), parsed.GetValue(check), parsed.GetValue(undo));
            if (three.Length > 0 || parsed.GetValue(path) is not null)
            {
                return (sets || asks || undoes) ? Wrong("--set-up stands alone, without files") : Driver(parsed, three);
            }

            if (asks && undoes)
            {
                return Wrong("--check only tells, and --undo takes out; give one of them");
            }

            if (!GitRepository.TopOf(Environment.CurrentDirectory).Is(out var top, out var why))
            {
                return Wrong(Printable.Escape($"records are settled in the files of a repository, and there are none here: {why}"));
            }

            var own = new DriverSetUp(terminal, top);
            return undoes ? own.Undo()
                : asks ? own.Tell()
                : sets ? own.Make()
                : new ConflictedFiles(terminal, top).Settle();
        });
        return command;
    }

    private int Driver(ParseResult parsed, string[] three)
    {
        var signs = parsed.GetValue(size);
        return three.Length != 3 ? Wrong("three files are merged: that of before, that of the first, that of the second")
            : parsed.GetValue(path) is not { Length: > 0 } named ? Wrong("which file it is says --path, such as --path boards/SP-0007.md")
            : signs is < 1 or > 1000 ? Wrong("--size is a count of signs, from 1 to 1000; 7 is usual")
            : new MergeDriver(terminal).Merge(three[0], three[1], three[2], named, signs);
    }

    private int Wrong(string words)
    {
        terminal.Error.WriteLine(words);
        return ExitCode.Usage;
    }
}
