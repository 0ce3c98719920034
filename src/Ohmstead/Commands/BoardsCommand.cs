using System.CommandLine;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Lists the boards of a collection: the state of each, why it is so and what to do next.</summary>
internal sealed class BoardsCommand(Terminal terminal)
{
    private const string About = """
        List the boards: the state of each, why, and what to do next. Words narrow the list to boards that are told with all of them;
        they are read as the search of the pages reads them: sp 7 is SP-0007, four letters or more may be the start of a word.

        Examples:
          ohmstead boards --in records                                  what presses most first
          ohmstead boards tide --in records                             boards with that word in number, title, design or reason
          ohmstead boards --state "proof due" --state "work waits" --in records
          ohmstead boards --needs point-proved --sort seen --in records   whose points are not proved, the longest unseen first
          ohmstead boards --where museum --in records                   what stands there, or is lent to there
          ohmstead boards --brief --in records                          a line for each
          ohmstead boards --on 2026-05-01 --in records                  as they stood on that day
          ohmstead boards --form csv --in records                       for a spreadsheet; json for programs
        """;

    public Command Build()
    {
        var words = new Argument<string[]>("WORDS")
        {
            Description = "Words that stand in number, title, design, maker, serial, place, state, reason or next step.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var state = new Option<string[]>("--state") { Description = "Only boards in this state; may be given several times." };
        state.AcceptOnlyFromAmong([.. BoardStates.All.Select(BoardStates.Words)]);
        var needs = new Option<string[]>("--needs")
        {
            Description = "Only boards on which this kind of obligation is open; may be given several times.",
        };
        needs.AcceptOnlyFromAmong([.. ObligationCatalogue.All.Select(rule => rule.Kind)]);
        needs.HelpName = "KIND";
        var where = new Option<string?>("--where")
        {
            Description = "Only boards that are told to be there: words of the place, of the owner, or of whoever has it.",
            HelpName = "PLACE",
        };
        var sort = new Option<string>("--sort")
        {
            Description = "In which order: what presses most first, by board or title, the longest unseen or the soonest inspection first.",
            DefaultValueFactory = _ => BoardOrders.Words.WordFor(BoardOrder.State),
        };
        sort.AcceptOnlyFromAmong([.. BoardOrders.Words]);
        var brief = new Option<bool>("--brief") { Description = "One line for each board." };
        var form = ListForm.Option();
        var shared = new SharedOptions();
        var past = new PastOptions(shared);
        var command = new Command("boards", About)
        {
            words,
            shared.Folder,
            state,
            needs,
            where,
            sort,
            brief,
            form,
            shared.AsOf,
            past.On,
            past.Known,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(shared.Folder)!;
            var (opened, refused) = past.Open(parsed, folder, terminal.Error, () => SharedOptions.OpenBoards(folder, terminal.Error));
            if (opened is null)
            {
                return refused;
            }

            using var asked = opened;
            var (files, options) = (asked.Files, asked.Run);
            var filter = new BoardFilter(
                parsed.GetValue(words) ?? [],
                [.. BoardStates.All.Where(one => parsed.GetValue(state)?.Contains(BoardStates.Words(one), StringComparer.Ordinal) == true)],
                parsed.GetValue(needs) ?? [],
                parsed.GetValue(where)
            );
            _ = BoardOrders.Words.Means(parsed.GetValue(sort)!, out var order);
            var (result, boards) = Listed(files, options, filter, order);
            switch (parsed.GetValue(form))
            {
                case Listing.DataForm:
                    BoardList.Json(terminal.Out, boards, result.Workshop, options.Today);
                    break;
                case Listing.SheetForm:
                    BoardList.Csv(terminal.Out, boards, result.Workshop);
                    break;
                default:
                    new BoardLines(terminal, filter, parsed.GetValue(brief)).Write(boards, result.Boards.Count);
                    break;
            }

            return Told(files, result, boards.Length == 0 ? filter : null);
        });
        return command;
    }

    private (RunResult Result, BoardSummary[] Boards) Listed(
        CollectionFolder files,
        RunOptions options,
        BoardFilter filter,
        BoardOrder order
    )
    {
        RunResult result;
        using (var progress = new Progress(terminal, files.Boards.Count))
        {
            result = new CollectionRun(files, options).Run(progress.Report);
        }

        return (result, [.. BoardOrders.Sorted(result.Boards.Where(filter.Takes), order)]);
    }

    // What a list leaves out without a word is taken for not there.
    private int Told(CollectionFolder files, RunResult result, BoardFilter? none)
    {
        if (none?.Words.FirstOrDefault(Directory.Exists) is { } folder)
        {
            terminal.Error.WriteLine(Printable.Escape($"no board says '{folder}', but there is a folder of that name: --in {folder}"));
        }

        var read = result.Boards.Select(board => board.Path).ToHashSet(StringComparer.Ordinal);
        string[] unread = [.. files.Boards.Where(path => !read.Contains(path))];
        foreach (var path in unread)
        {
            terminal.Error.WriteLine(Printable.Escape($"{path} cannot be read, so it is not listed; ohmstead check tells why"));
        }

        return result.Findings.Any(FileReader.IsPassedOver) ? ExitCode.Incomplete
            : unread.Length > 0 ? ExitCode.Findings
            : ExitCode.Clean;
    }
}
