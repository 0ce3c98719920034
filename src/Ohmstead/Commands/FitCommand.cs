using System.CommandLine;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Records.Findings;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Says which lots of the drawer would fit a place, and what to look for.</summary>
internal sealed class FitCommand(Terminal terminal)
{
    private const string About = """
        Say what would fit a place: lots in the drawer with the reasons for and against each, and what to look for.

        Examples:
          ohmstead fit SP-0013 C1 --in records
          ohmstead fit SP-0013 C1 --in records --form json
        """;

    public Command Build()
    {
        var board = new Argument<string>("BOARD")
        {
            CompletionSources = { Completions.Boards },
            Description = "The number of the board, such as SP-0013.",
        };
        var part = new Argument<string>("PART") { CompletionSources = { Completions.Places }, Description = "The place, such as C1." };
        var form = TextOrJson.Make();
        var shared = new SharedOptions();
        var command = new Command("fit", About) { board, part, shared.Folder, form, shared.AsOf, shared.Workers };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error) is not { } options)
            {
                return ExitCode.Usage;
            }

            var (wanted, at) = (parsed.GetValue(board)!, parsed.GetValue(part)!);
            JudgedBoard? found = null;

            // The whole collection is read: what is left of a lot is what no board has taken.
            if (SharedOptions.OpenBoards(parsed.GetValue(shared.Folder)!, terminal.Error) is not { } files)
            {
                return ExitCode.Usage;
            }

            var result = new CollectionRun(files, options).Run(null, _ =>
                assessment => found = assessment.Board.Id.Value == wanted ? assessment : found
            );
            if (found is null && BoardFinder.TellUnread(files, wanted, result, terminal.Error))
            {
                return ExitCode.Usage;
            }

            if (found is null)
            {
                return Unknown(BoardFinder.Missing(wanted, result.Boards, [wanted, at]), near: null);
            }

            if (found.Place(at) is not { } place)
            {
                return Unknown($"{wanted} has no part '{at}'", Nearest.To(at, found.Places.Select(one => one.Part.Ref.Value)));
            }

            var report = FitReport.For(found, place, Drawer.Count(result.Workshop, BoardSummary.UseOfLots(result.Boards), options.Today));
            if (parsed.IsJson(form))
            {
                FitJson.Write(terminal.Out, found.Board.Id.Value, place.Part.Ref.Value, report);
            }
            else
            {
                FitText.Write(terminal.Out, found.Board.Id.Value, place.Part.Ref.Value, report);
            }

            return ExitCode.Clean;
        });
        return command;
    }

    private int Unknown(string problem, string? near)
    {
        terminal.Error.WriteLine(Printable.Escape(Nearest.Told(problem, near)));
        return ExitCode.Usage;
    }
}
