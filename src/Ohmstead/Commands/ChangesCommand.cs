using System.CommandLine;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Output.Changes;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Tells what differs in meaning between two states of a collection, and because of what.</summary>
internal sealed class ChangesCommand(Terminal terminal)
{
    private const string About = """
        Tell what differs between two states of a collection: states, verdicts, limits, dues, drawer, findings, and because of what.
        A revision is what git knows by a name; a folder needs no git. Without any, the last commit is held against the files as they lie.

        Examples:
          ohmstead changes --in records                             what was not committed yet
          ohmstead changes main --in records                        against the branch main
          ohmstead changes main... --in records                     against where this branch left main
          ohmstead changes v1 v2 --form markdown --in records       for a pull request or a release
          ohmstead changes records records --was-on 2027-11-30      what time alone will change
          ohmstead check records --keep judged.json                 before the program is exchanged for a later one, and then
          ohmstead changes --judged judged.json --in records        what that one judges otherwise
        """;

    public Command Build()
    {
        var from = new Argument<string?>("FROM")
        {
            Description = "The earlier state: a revision, or a folder; main... for where its history and that of this branch part.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var to = new Argument<string?>("TO")
        {
            Description = "The later state, likewise; the files as they lie when not given.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var form = new Option<string>("--form")
        {
            Description = "text for people, markdown for a pull request, json for programs.",
            DefaultValueFactory = _ => "text",
        };
        form.AcceptOnlyFromAmong("text", "markdown", "json");
        var wasOn = new Option<DateOnly?>("--was-on")
        {
            Description = "The day on which the earlier state is judged; the same as the later one when not given.",
            HelpName = "DATE",
            CustomParser = SharedOptions.Day,
        };
        var judged = new Option<string?>("--judged")
        {
            Description = "Hold this program against what another one judged of the same records: a file that check --keep wrote.",
            HelpName = "FILE",
        };
        var buying = new Option<bool>("--buying")
        {
            Description = "Compare the buying list where there are more than 500 boards, too: all of them are judged for it.",
        };
        var exit = new Option<bool>("--exit") { Description = "End with 1 when anything differs in meaning." };
        var shared = new SharedOptions();
        var command = new Command("changes", About)
        {
            from,
            to,
            form,
            wasOn,
            judged,
            buying,
            exit,
            shared.Folder,
            shared.AsOf,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error) is not { } options)
            {
                return ExitCode.Usage;
            }

            if (parsed.GetValue(judged) is { } file)
            {
                return parsed.GetValue(from) is not null || parsed.GetValue(wasOn) is not null || parsed.GetValue(shared.AsOf) is not null
                    ? Refuse("--judged says what it is held against and on which day: leave FROM, --was-on and --as-of out")
                    : Judged(file, parsed.GetValue(shared.Folder)!, options, parsed.GetValue(form)!, parsed.GetValue(exit));
            }

            var opener = new SideOpener(parsed.GetValue(shared.Folder)!);
            if (!opener.Open(parsed.GetValue(from), parsed.GetValue(to)).Is(out var sides, out var why))
            {
                return Refuse(why);
            }

            using (sides.Was)
            using (sides.Now)
            {
                var (was, today) = (parsed.GetValue(wasOn) ?? options.Today, options.Today);
                var changes = new ChangesRun(sides.Was, sides.Now, options, was) { WithBuying = parsed.GetValue(buying) }.Run();
                return Tell(changes, new(sides.Was.Label, was, sides.Now.Label, today), parsed.GetValue(form)!, parsed.GetValue(exit));
            }
        });
        return command;
    }

    private int Judged(string file, string folder, RunOptions options, string form, bool isExit)
    {
        if (!File.Exists(file))
        {
            return Refuse(NamedFiles.Missing(file));
        }

        if (!KeptJson.Read(File.ReadAllBytes(file)).Is(out var was, out var why))
        {
            return Refuse($"'{file}': {why}");
        }

        if (SharedOptions.Open(folder, terminal.Error) is not { } files)
        {
            return ExitCode.Usage;
        }

        var now = JudgementKeeper.Judge(files, options with { Today = was.On });
        var others = KeptComparer.Others(was, now);
        if (others.FirstOrDefault(was.Shared.Keys.Concat(now.Shared.Keys).Contains) is { } shared)
        {
            return Refuse(
                $"{shared} is not what it was when that was judged, so nothing can be laid to the program; go back to that state"
            );
        }

        if (others.Length > 0)
        {
            terminal.Error.WriteLine(
                Printable.Escape(
                    $"{others[0]}{(others.Length > 1 ? $" and {others.Length - 1} more" : string.Empty)} "
                        + $"{(others.Length > 1 ? "are not what they were" : "is not what it was")}, and left out"
                )
            );
        }

        var exit = Tell(KeptComparer.Compare(was, now), new($"{file} ({was.Program})", was.On, folder, was.On), form, isExit);
        return others.Length > 0 && exit == ExitCode.Clean ? ExitCode.Incomplete : exit;
    }

    private int Tell(CollectionChanges changes, ComparedStates states, string form, bool isExit)
    {
        switch (form)
        {
            case "json":
                ChangesJson.Write(terminal.Out, changes, states);
                break;
            case "markdown":
                ChangesMarkdown.Write(terminal.Out, changes);
                break;
            default:
                ChangesText.Write(terminal.Out, changes);
                break;
        }

        return isExit && changes.IsAny ? ExitCode.Findings : ExitCode.Clean;
    }

    private int Refuse(string why)
    {
        terminal.Error.WriteLine(Printable.Escape(why));
        return ExitCode.Usage;
    }
}
