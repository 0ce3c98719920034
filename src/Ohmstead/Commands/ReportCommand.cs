using System.Collections.Concurrent;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Fit;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Publishing;
using Ohmstead.Records.Schemas;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Script;
using Ohmstead.Report.Search;
using Ohmstead.Report.Style;

namespace Ohmstead.Commands;

/// <summary>Checks a collection and writes its pages.</summary>
internal sealed class ReportCommand(Terminal terminal, Interruption interruption)
{
    public Command Build()
    {
        var folder = new Argument<string>("FOLDER") { Description = "The collection's folder; this folder when not given.", DefaultValueFactory = _ => "." };
        var to = new Option<string>("--to") { Description = "The folder for the pages.", DefaultValueFactory = _ => "report", HelpName = "FOLDER" };
        var commit = new Option<string?>("--commit") { Description = "The commit that the records were read from, told on the page about the verdicts.", HelpName = "NAME" };
        var site = new Option<Uri?>("--site") { Description = "The address at which the pages will be found, for the links of the feed.", HelpName = "ADDRESS", CustomParser = Address };
        var shared = new SharedOptions();
        var command = new Command("report", "Check a collection and write its pages: the collection, each board and design, the year ahead, the drawer, the instruments, the families of parts, the findings, the checks explained. Beside them a feed, tables for programs and badges.") { folder, to, commit, site, shared.AsOf, shared.Thorough, shared.Workers };
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
            return Write(files, target, options, parsed.GetValue(commit), parsed.GetValue(site));
        });
        return command;
    }

    private int Write(CollectionFolder files, ReportFolder target, RunOptions options, string? commit, Uri? site)
    {
        // Links between boards need the numbers before the first page is written; a file is named after its board.
        var numbers = files.Boards.Select(path => Path.GetFileNameWithoutExtension(path)).ToHashSet(StringComparer.Ordinal);
        var version = typeof(ReportCommand).Assembly.GetName().Version?.ToString(3) ?? "0";
        var pictures = new FolderPictures(files.Root);
        var needy = new ConcurrentBag<string>();
        using var data = new DataFiles(target, files.Boards);
        var changes = new LatestChanges(AtomFeed.Most);
        RunResult result;
        using (var progress = new Progress(terminal, files.Boards.Count))
        {
            result = new CollectionRun(files, options).Run(progress.Report, workshop => Pages(new ReportContext(workshop, numbers, options.Today, version) { Beside = Beside.Files }));
        }

        // A board that needs parts is told what would fit, and what is left of a lot is known only when all boards were read.
        string[] again = [.. needy.Order(StringComparer.Ordinal)];
        if (again.Length > 0)
        {
            var drawer = Drawer.Of(result.Workshop, result.Boards, options.Today);
            new CollectionRun(files.Only(again), options).Run(null, workshop => Pages(new ReportContext(workshop, numbers, options.Today, version) { Drawer = drawer, Beside = Beside.Files }));
        }

        using (var buffer = new PageBuffer())
        {
            var checks = Checks();
            var context = new ReportContext(result.Workshop, numbers, options.Today, version)
            {
                Checks = checks.Select(check => check.Name).ToHashSet(StringComparer.Ordinal),
                Buying = BuyingList.Of(result.Workshop, result.Boards, options.Today),
                Commit = commit,
                Beside = Beside.Files,
            };
            CollectionPage.Write(buffer, context, result.Boards);
            target.Put(CollectionPage.PathName, buffer.Written);
            DrawerPage.Write(buffer, context, result.Boards);
            target.Put(DrawerPage.PathName, buffer.Written);
            InstrumentsPage.Write(buffer, context, result.Boards);
            target.Put(InstrumentsPage.PathName, buffer.Written);
            FindingsPage.Write(buffer, context, result.Findings, result.Boards);
            target.Put(FindingsPage.PathName, buffer.Written);
            ChecksPage.Write(buffer, context, checks);
            target.Put(ChecksPage.PathName, buffer.Written);
            foreach (var check in checks)
            {
                CheckPage.Write(buffer, context, check);
                target.Put(CheckPage.PathOf(check.Name), buffer.Written);
            }

            SearchIndex.Write(buffer, context, result.Boards, result.Findings);
            target.Put(SearchIndex.FileName, buffer.Written);
            AboutPage.Write(buffer, context);
            target.Put(AboutPage.PathName, buffer.Written);
            FamiliesPage.Write(buffer, context, CollectionFamilies.Of(result.Boards));
            target.Put(FamiliesPage.PathName, buffer.Written);
            var until = options.Today.AddYears(1);
            var ahead = YearAhead.Of(result.Workshop, result.Boards, options.Today, until);
            AheadPage.Write(buffer, context, ahead, until);
            target.Put(AheadPage.PathName, buffer.Written);
            target.Put(AheadPage.CalendarName, AheadCalendar.Write(result.Workshop.Collection.Name, ahead, options.Today));
            Badges.Write(target, buffer, result.Workshop.Collection.Name, result.Boards);
            foreach (var design in DesignUnits.Of(result.Workshop.Designs.Values, result.Boards))
            {
                DesignPage.Write(buffer, context, design);
                target.Put(DesignPage.PathOf(design.Design.Id.Value), buffer.Written);
            }
        }

        Action<BoardAssessment> Pages(ReportContext context)
        {
            var buffer = new PageBuffer();
            return board =>
            {
                // A number that two files claim is an error; its page is that of the file named after it, whichever is read first.
                if (Path.GetFileNameWithoutExtension(board.Board.Path) != board.Board.Id.Value && numbers.Contains(board.Board.Id.Value))
                {
                    return;
                }

                if (context.Drawer is null)
                {
                    data.Add(board);
                    changes.Add(board);
                }

                if (context.Drawer is null && PartNeed.Of(board).Count > 0)
                {
                    needy.Add(board.Board.Path);
                    return;
                }

                BoardPage.Write(buffer, context, board);
                target.Put(BoardPage.PathOf(board.Board.Id.Value), buffer.Written);
                CopyPictures(files, pictures, target, board);
            };
        }

        data.Finish(result, options.Today);
        target.Put(SchemaFiles.FileName(DataFiles.SchemaName), Encoding.UTF8.GetBytes(SchemaFiles.Read(DataFiles.SchemaName)));
        target.Put(AtomFeed.PathName, AtomFeed.Write(result.Workshop.Collection, Site.Of(site, result.Workshop.Collection.Name), changes.All()));
        target.Put(StyleSheet.FileName, StyleSheet.Read());
        target.Put(PageScript.FileName, PageScript.Read());
        target.Finish();
        var exit = CheckCommand.Exit(result, isStrict: false);
        new TextFindings(5, 20).Write(terminal.Out, result, files, exit);
        terminal.Out.WriteLine($"{target.Written} files written, {target.Unchanged} unchanged; open {Printable.Of(Path.Combine(target.Root, CollectionPage.PathName))}");
        return exit;
    }

    private static Uri? Address(ArgumentResult result)
    {
        var text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        if (Site.Parse(text) is { } site)
        {
            return site;
        }

        result.AddError($"'{Printable.Of(text)}' is no address of a site: give one such as https://example.org/boards/");
        return null;
    }

    private static CheckText[] Checks()
    {
        var severities = CheckCatalogue.Descriptions.ToDictionary(check => check.Name, check => check.Severity, StringComparer.Ordinal);
        return [.. ExplainCommand.Pages().OrderBy(page => page.Key, StringComparer.Ordinal).Select(page => CheckText.Read(page.Key, ExplainCommand.Text(page.Value), severities.TryGetValue(page.Key, out var severity) ? severity : null))];
    }

    private static void CopyPictures(CollectionFolder files, FolderPictures pictures, ReportFolder target, BoardAssessment board)
    {
        foreach (var path in board.Visits.SelectMany(visit => visit.Photos).Select(photo => photo.File.Value))
        {
            if (PictureNames.IsSafe(path) && pictures.At(path) == Assessment.Checks.PictureState.Present)
            {
                target.Put(path, File.ReadAllBytes(files.Full(path)));
            }
        }
    }
}
