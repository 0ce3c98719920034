using System.CommandLine;
using Ohmstead.Collections;
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
        var history = new Option<bool>("--history")
        {
            Description =
                "Tell on the page of each board which commits changed it, and who first wrote what stands there; the names of authors "
                + "are published with it.",
        };
        var since = new Option<string?>("--since")
        {
            Description = "A revision, or a folder: what changed since then is told on a page of its own.",
            HelpName = "REVISION",
        };
        var years = new Option<bool>("--years")
        {
            Description = "Count a collection of more than 2,000 boards on past days, too: it doubles the work.",
        };
        var shared = new SharedOptions();
        var past = new PastOptions(shared);
        var site = SiteOption.Make();
        var command = new Command(
            "report",
            "Check a collection and write its pages: the collection, each board and design, the year ahead, the drawer, the "
                + "instruments, the families of parts, the findings, the checks explained. Beside them a feed, tables for programs and "
                + """
                badges.

                Examples:
                  ohmstead report records --to pages
                  ohmstead report records --to pages --on 2026-05-01
                  ohmstead report records --to pages --history --since HEAD
                  ohmstead report records --to pages --site https://boards.example/ --commit 1a2b3c4
                """
        )
        {
            folder,
            to,
            commit,
            site,
            history,
            since,
            years,
            shared.AsOf,
            past.On,
            past.Known,
            shared.Thorough,
            shared.Workers,
        };
        command.SetAction(parsed =>
        {
            var collection = parsed.GetValue(folder)!;
            var (opened, refused) = past.Open(parsed, collection, terminal.Error, () =>
                SharedOptions.OpenBoards(collection, terminal.Error)
            );
            if (opened is null)
            {
                return refused;
            }

            using var state = opened;
            using var lying = Lying.From(state);
            var (files, options) = (lying.Files, state.Run);
            if (ReportPlace.Refusal(RealPath.Resolve(parsed.GetValue(to)!), RealPath.Resolve(collection)) is { } refusal)
            {
                terminal.Error.WriteLine(refusal);
                return ExitCode.Usage;
            }

            var wishes = new ReportWishes
            {
                Commit = parsed.GetValue(commit) ?? state.Known?.Commit,
                Site = parsed.GetValue(site),
                IsCounted = parsed.GetValue(years),
            };
            if (
                !ReportFromRepository
                    .Add(wishes, (collection, files), options, state.Known is not null, (parsed.GetValue(history), parsed.GetValue(since)))
                    .Is(out wishes!, out var why)
            )
            {
                terminal.Error.WriteLine(Printable.Escape(why));
                return ExitCode.Usage;
            }

            using var target = ReportFolder.Open(parsed.GetValue(to)!, collection);
            interruption.TakeBackBy(target.Abandon);
            var built = new ReportBuild(terminal, files, target, options, wishes).Write();
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

    // Pages are made of files that lie in a folder, with their pictures.
    private sealed record Lying(CollectionFolder Files, string? Made) : IDisposable
    {
        public static Lying From(PastCollection state)
        {
            if (state.Known is not { } known)
            {
                return new(state.Files, null);
            }

            var folder = Directory.CreateTempSubdirectory("ohmstead-known-").FullName;
            known.Extract(folder);
            return new(CollectionFolder.Open(folder).Having(state.Files.Boards), folder);
        }

        public void Dispose()
        {
            if (Made is not null)
            {
                Directory.Delete(Made, recursive: true);
            }
        }
    }
}
