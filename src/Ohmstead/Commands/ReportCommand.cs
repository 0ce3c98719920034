using System.CommandLine;
using System.CommandLine.Parsing;
using Ohmstead.Disk;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Report.Addresses;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Checks a collection and writes its pages.</summary>
internal sealed class ReportCommand(Terminal terminal, Interruption interruption)
{
    public Command Build()
    {
        var folder = new Argument<string>("FOLDER")
        {
            Description = "The collection's folder; this folder or records when not given.",
            DefaultValueFactory = _ => SharedOptions.UsualFolder(),
        };
        var to = new Option<string>("--to")
        {
            Description = "The folder for the pages.",
            DefaultValueFactory = _ => "report",
            HelpName = "FOLDER",
        };
        var commit = new Option<string?>("--commit")
        {
            Description = "The commit that the records were read from, told on the page about the verdicts.",
            HelpName = "NAME",
        };
        var shared = new SharedOptions();
        var site = new Option<Uri?>("--site")
        {
            Description = "The address at which the pages will be found, for the links of the feed.",
            HelpName = "ADDRESS",
            CustomParser = Address,
        };
        var command = new Command(
            "report",
            "Check a collection and write its pages: the collection, each board and design, the year ahead, the drawer, the "
                + "instruments, the families of parts, the findings, the checks explained. Beside them a feed, tables for programs and "
                + """
                badges.

                Examples:
                  ohmstead report records --to pages
                  ohmstead report records --to pages --site https://boards.example/ --commit 1a2b3c4
                """
        )
        {
            folder,
            to,
            commit,
            site,
            shared.AsOf,
            shared.Thorough,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            if (
                shared.Read(parsed, terminal.Error, parsed.GetValue(folder)) is not { } options
                || SharedOptions.OpenBoards(parsed.GetValue(folder)!, terminal.Error) is not { } files
            )
            {
                return ExitCode.Usage;
            }

            if (ReportPlace.Refusal(RealPath.Resolve(parsed.GetValue(to)!), RealPath.Resolve(files.Root)) is { } refusal)
            {
                terminal.Error.WriteLine(refusal);
                return ExitCode.Usage;
            }

            using var target = ReportFolder.Open(parsed.GetValue(to)!, files.Root);
            interruption.TakeBackBy(target.Abandon);
            var built = new ReportBuild(terminal, files, target, options, parsed.GetValue(commit), parsed.GetValue(site)).Write();
            var exit = built.Exit;
            new TextFindings(5, 20, terminal.Colours).Write(terminal.Out, built.Result, files, exit);
            foreach (var note in built.Notes)
            {
                terminal.Out.WriteLine(Printable.Escape(note));
            }

            terminal.Out.WriteLine(
                $"{target.Written} files written, {target.Unchanged} unchanged, {ReportBuild.Sized(built)}; open "
                    + $"{Printable.Escape(Path.Combine(target.Root, SiteAddress.Collection))}"
            );
            return exit;
        });
        return command;
    }

    private static Uri? Address(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        if (Site.Parse(text) is { } site)
        {
            return site;
        }

        result.AddError($"'{Printable.Escape(text)}' is no address of a site: give one such as https://example.org/boards/");
        return null;
    }
}
