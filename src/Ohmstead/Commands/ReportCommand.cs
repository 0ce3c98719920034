using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Report.Pages;

namespace Ohmstead.Commands;

/// <summary>Checks a collection and writes its pages.</summary>
internal sealed class ReportCommand(Terminal terminal, Interruption interruption)
{
    public Command Build()
    {
        var folder = new Argument<string>("FOLDER") { Description = "The collection's folder; this folder when not given.", DefaultValueFactory = _ => "." };
        var to = new Option<string>("--to") { Description = "The folder for the pages.", DefaultValueFactory = _ => "report", HelpName = "FOLDER" };
        var commit = new Option<string?>("--commit") { Description = "The commit that the records were read from, told on the page about the verdicts.", HelpName = "NAME" };
        var shared = new SharedOptions();
        var command = new Command("report", "Check a collection and write its pages: the collection, each board and design, the year ahead, the drawer, the instruments, the families of parts, the findings, the checks explained.") { folder, to, commit, shared.AsOf, shared.Thorough, shared.Workers };
        command.SetAction(parsed =>
        {
            if (shared.Read(parsed, terminal.Error) is not { } options || SharedOptions.OpenBoards(parsed.GetValue(folder)!, terminal.Error) is not { } files)
            {
                return ExitCode.Usage;
            }

            var root = RealPath.Of(parsed.GetValue(to)!);
            if (ReportFolder.Refusal(root, RealPath.Of(files.Root)) is { } refusal)
            {
                terminal.Error.WriteLine(refusal);
                return ExitCode.Usage;
            }

            using var target = ReportFolder.Open(root);
            interruption.TakeBackBy(target.Abandon);
            var built = new ReportBuild(terminal, files, target, options, parsed.GetValue(commit)).Write();
            var exit = CheckCommand.Exit(built.Result, isStrict: false);
            new TextFindings(5, 20).Write(terminal.Out, built.Result, files, exit);
            terminal.Out.WriteLine($"{target.Written} files written, {target.Unchanged} unchanged, {ReportBuild.Sized(built)}; open {Printable.Of(Path.Combine(target.Root, CollectionPage.PathName))}");
            return exit;
        });
        return command;
    }
}
