using System.CommandLine;
using Ohmstead.Assessment.Changes;
using Ohmstead.Assessment.Years;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Electronics;
using Ohmstead.Git;
using Ohmstead.Output.Changes;
using Ohmstead.Records.Findings;
using Ohmstead.Running;
using Ohmstead.Writing;

namespace Ohmstead.Commands;

/// <summary>Tells which commits changed what is said or judged of a board, and who first wrote what stands there.</summary>
internal sealed class HistoryCommand(Terminal terminal)
{
    private const string About = """
        Tell which commits changed what is said or judged of a board, one line each: the day, who, and because of what.
        Without a board it tells of the whole collection through the years, by the days in the records: that needs no git.
        Of a part, a point or a place it tells each change, and who first wrote each entry about it.
        A commit that changes words alone, or lays a file out anew, is no line.

        Examples:
          ohmstead history --in records                     how many boards were fit to run, and what was worked
          ohmstead history SP-0007 --in records             the board
          ohmstead history SP-0007 C3 --in records          a part, and who first wrote its readings
          ohmstead history SP-0007 --entries --in records   who first wrote each entry of the board
        """;

    public Command Build()
    {
        var board = new Argument<string?>("BOARD")
        {
            CompletionSources = { Completions.Boards },
            Description = "The number of the board, such as SP-0007; the whole collection when not given.",
            DefaultValueFactory = _ => null,
        };
        var place = new Argument<string?>("PLACE")
        {
            CompletionSources = { Completions.Places },
            Description = "A part or test point, such as C12; the whole board when not given.",
            DefaultValueFactory = _ => null,
        };
        var entries = new Option<bool>("--entries") { Description = "Tell who first wrote each entry of the board, too." };
        var form = TextOrJson.Make();
        var shared = new SharedOptions();
        var command = new Command("history", About) { board, place, entries, shared.Folder, form, shared.AsOf, shared.Workers };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(shared.Folder)!;
            if (shared.Read(parsed, terminal.Error) is not { } options || SharedOptions.Open(folder, terminal.Error) is not { } files)
            {
                return ExitCode.Usage;
            }

            if (parsed.GetValue(board) is not { } wanted)
            {
                return Years(files, options, parsed.IsJson(form));
            }

            var (found, result, _) = BoardFinder.Look(files, wanted, options);
            if (found is null)
            {
                if (!BoardFinder.TellUnread(files, wanted, result, terminal.Error))
                {
                    terminal.Error.WriteLine(Printable.Escape(BoardFinder.Missing(wanted, result.Boards)));
                }

                return ExitCode.Usage;
            }

            if (!Find(folder, files, found.Board.Path, options).Is(out var history, out var why))
            {
                terminal.Error.WriteLine(Printable.Escape(why));
                return ExitCode.Incomplete;
            }

            var at = parsed.GetValue(place);
            string[] places = [.. found.Places.Select(one => one.Part.Ref.Value), .. found.Points.Select(point => point.Name.Value)];
            if (at is not null && !IsKnown(history, at) && !places.Contains(at))
            {
                terminal.Error.WriteLine(
                    Nearest.Told($"{history.Number} has no part and no point '{Printable.Escape(at)}'", Nearest.To(at, places))
                );
                return ExitCode.Usage;
            }

            if (parsed.IsJson(form))
            {
                HistoryJson.Write(terminal.Out, history, found.Board.Path);
            }
            else
            {
                HistoryText.Write(terminal.Out, history, folder, at, at is not null || parsed.GetValue(entries));
            }

            return history.Begins is null ? ExitCode.Clean : ExitCode.Incomplete;
        });
        return command;
    }

    private int Years(CollectionFolder files, RunOptions options, bool isJson)
    {
        var past = new PastStates(files, options, PastDays.Until(options.Today));
        var result = new CollectionRun(files, options with { ForPages = false }).Run(recordFor: past.ForWorker);
        if (isJson)
        {
            YearsText.WriteJson(terminal.Out, past.Count());
        }
        else
        {
            YearsText.Write(terminal.Out, past.Count());
        }

        return result.Exit(isStrict: false) == ExitCode.Incomplete ? ExitCode.Incomplete : ExitCode.Clean;
    }

    // A place that is gone has a history still.
    private static bool IsKnown(CommitHistory history, string place) =>
        history.Steps.Any(step => HistoryLines.Told(step.Changes, place).Length > 0);

    private static Outcome<CommitHistory> Find(string folder, CollectionFolder files, string path, RunOptions options)
    {
        if (!GitRepository.Open(folder).Is(out var git, out var why) || !git.Objects().Is(out var objects, out why))
        {
            return Outcome<CommitHistory>.Refused(why);
        }

        using (objects)
        {
            using var lying = new ComparedSide(folder, files, null);
            return new HistoryRun(git, objects, lying, options).Run([path], isAll: false).Is(out var histories, out why)
                ? Outcome<CommitHistory>.From(histories[path])
                : Outcome<CommitHistory>.Refused(why);
        }
    }
}
