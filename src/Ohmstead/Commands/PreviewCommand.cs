using System.CommandLine;
using Ohmstead.Collections;
using Ohmstead.Disk;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Report.Addresses;
using Ohmstead.Running;

namespace Ohmstead.Commands;

/// <summary>Builds the pages again each time a record is saved, and tells what was found.</summary>
internal sealed class PreviewCommand(Terminal terminal, Interruption interruption)
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
        var serve = new Option<int?>("--serve") { Description = "Serve the pages on this port, to this machine alone.", HelpName = "PORT" };
        var shared = new SharedOptions();
        var command = new Command(
            "preview",
            """
            Write the pages, and write them again each time a record is saved; ends with Ctrl-C.

            Examples:
              ohmstead preview records --to pages
              ohmstead preview records --to pages --serve 8080
            """
        )
        {
            folder,
            to,
            serve,
            shared.AsOf,
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

            var root = FolderPath.Asked(parsed.GetValue(to)!, files.Root);
            var refusal = ReportPlace.Refusal(RealPath.Resolve(root), RealPath.Resolve(files.Root))
                ?? (
                    parsed.GetValue(serve) is { } wanted and (< 1 or > 65_535)
                        ? FormattableString.Invariant($"{wanted} is no port; give one from 1 to 65535, such as 8080")
                        : null
                );
            if (refusal is not null)
            {
                terminal.Error.WriteLine(refusal);
                return ExitCode.Usage;
            }

            using var server = parsed.GetValue(serve) is { } port ? PagesServer.Start(root, port) : null;
            using var watch = new RecordsWatch(files.Root, root);
            interruption.IsWayOut();
            while (true)
            {
                Once(files.Root, root, options, server);
                watch.Wait();
            }
        });
        return command;
    }

    // Each build opens the folders anew: boards come and go, and the list of what is ours is that of the pages as they are.
    private void Once(string folder, string root, RunOptions options, PagesServer? server)
    {
        try
        {
            var files = CollectionFolder.Open(folder);
            using var target = ReportFolder.Open(root, files.Root);
            interruption.TakeBackBy(target.Abandon);
            var built = new ReportBuild(terminal, files, target, options, ReportWishes.None).Write();
            interruption.TakeBackBy(null);
            new TextFindings(5, 20, terminal.Colours).Write(terminal.Out, built.Result, files, built.Exit);
            foreach (var note in built.Notes)
            {
                terminal.Out.WriteLine(Printable.Escape(note));
            }

            terminal.Out.WriteLine(
                $"{target.Written} files written, {target.Unchanged} unchanged; look at "
                    + $"{server?.Address ?? Printable.Escape(Path.Combine(root, SiteAddress.Collection))}; Ctrl-C ends"
            );
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A file that is just being replaced can be gone for a moment; the next save builds again.
            terminal.Error.WriteLine($"could not read or write: {Printable.Escape(problem.Message)}");
        }

        terminal.Out.Flush();
    }
}
