using System.CommandLine;
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
        var exit = new Option<bool>("--exit") { Description = "End with 1 when anything differs in meaning." };
        var shared = new SharedOptions();
        var command = new Command("changes", About) { from, to, form, wasOn, exit, shared.Folder, shared.AsOf, shared.Workers };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error) is not { } options)
            {
                return ExitCode.Usage;
            }

            var opener = new SideOpener(parsed.GetValue(shared.Folder)!);
            if (!opener.Open(parsed.GetValue(from), parsed.GetValue(to)).Is(out var sides, out var why))
            {
                terminal.Error.WriteLine(Printable.Escape(why));
                return ExitCode.Usage;
            }

            using (sides.Was)
            using (sides.Now)
            {
                var (was, today) = (parsed.GetValue(wasOn) ?? options.Today, options.Today);
                var changes = new ChangesRun(sides.Was, sides.Now, options, was).Run();
                switch (parsed.GetValue(form))
                {
                    case "json":
                        ChangesJson.Write(terminal.Out, changes, new(sides.Was.Label, was, sides.Now.Label, today));
                        break;
                    case "markdown":
                        ChangesMarkdown.Write(terminal.Out, changes);
                        break;
                    default:
                        ChangesText.Write(terminal.Out, changes);
                        break;
                }

                return parsed.GetValue(exit) && changes.IsAny ? ExitCode.Findings : ExitCode.Clean;
            }
        });
        return command;
    }
}
