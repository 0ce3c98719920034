using System.Collections.Concurrent;
using System.Text;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Boards;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Fit;
using Ohmstead.Collections;
using Ohmstead.Commands;
using Ohmstead.Output;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Schemas;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Script;
using Ohmstead.Report.Search;
using Ohmstead.Report.Style;

namespace Ohmstead.Publishing;

/// <summary>What a report was built from, and how much work its pictures were.</summary>
/// <param name="Result">The run.</param>
/// <param name="PicturesSized">How many pictures were decoded; all others were there already.</param>
internal sealed record BuiltReport(RunResult Result, int PicturesSized);

/// <summary>Builds the pages of a collection into a folder. The result depends on the records and the options alone, not on the number of workers.</summary>
/// <param name="terminal">Where progress is shown.</param>
/// <param name="files">The collection.</param>
/// <param name="target">The folder for the pages.</param>
/// <param name="options">How the run is made.</param>
/// <param name="commit">The commit told on the page about the verdicts, or null.</param>
/// <param name="site">The address at which the pages will be found, for the links of the feed; or null.</param>
internal sealed class ReportBuild(Terminal terminal, CollectionFolder files, ReportFolder target, RunOptions options, string? commit, Uri? site = null)
{
    /// <summary>How much work the pictures were, in words.</summary>
    public static string Sized(BuiltReport built) => FormattableString.Invariant($"{built.PicturesSized} {(built.PicturesSized == 1 ? "picture" : "pictures")} sized");

    /// <summary>Builds.</summary>
    public BuiltReport Write()
    {
        // Links between boards need the numbers before the first page is written; a file is named after its board.
        var numbers = files.Boards.Select(path => Path.GetFileNameWithoutExtension(path)).ToHashSet(StringComparer.Ordinal);
        var version = typeof(ReportBuild).Assembly.GetName().Version?.ToString(3) ?? "0";
        using var pictures = new ReportPictures(files, new FolderPictures(files.Root), target);
        var unreadable = new ConcurrentBag<Finding>();
        var needy = new ConcurrentBag<string>();
        using var data = new DataFiles(target, files.Boards);
        var changes = new LatestChanges(AtomFeed.Most);
        RunResult result;
        using (var progress = new Progress(terminal, files.Boards.Count))
        {
            result = new CollectionRun(files, options).Run(progress.Report, workshop => Pages(new ReportContext(workshop, numbers, options.Today, version) { Pictures = pictures, Beside = Beside.Files }));
        }

        // A board that needs parts is told what would fit, and what is left of a lot is known only when all boards were read.
        string[] again = [.. needy.Order(StringComparer.Ordinal)];
        if (again.Length > 0)
        {
            var drawer = Drawer.Of(result.Workshop, result.Boards, options.Today);
            new CollectionRun(files.Only(again), options).Run(null, workshop => Pages(new ReportContext(workshop, numbers, options.Today, version) { Drawer = drawer, Pictures = pictures, Beside = Beside.Files }));
        }

        // What showed only when a picture was opened belongs to the findings like the rest.
        result = result with { Findings = [.. result.Findings.Concat(unreadable).Order(FindingOrder.Instance)] };
        using (var buffer = new PageBuffer())
        {
            var checks = Checks();
            var context = new ReportContext(result.Workshop, numbers, options.Today, version)
            {
                Checks = checks.Select(check => check.Name).ToHashSet(StringComparer.Ordinal),
                Buying = BuyingList.Of(result.Workshop, result.Boards, options.Today),
                Commit = commit,
                Pictures = pictures,
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
                foreach (var photo in board.Visits.SelectMany(visit => visit.Photos).Where(photo => PictureNames.IsSafe(photo.File.Value)))
                {
                    if (pictures.Fault(photo.File.Value) is { } fault)
                    {
                        unreadable.Add(PhotographUnreadable.Found(board.Board.Path, photo, fault));
                    }
                }
            };
        }

        data.Finish(result, options.Today);
        target.Put(SchemaFiles.FileName(DataFiles.SchemaName), Encoding.UTF8.GetBytes(SchemaFiles.Read(DataFiles.SchemaName)));
        target.Put(AtomFeed.PathName, AtomFeed.Write(result.Workshop.Collection, Site.Of(site, result.Workshop.Collection.Name), changes.All()));
        target.Put(StyleSheet.FileName, StyleSheet.Read());
        target.Put(PageScript.FileName, PageScript.Read());
        target.Finish();
        return new(result, pictures.Sized);
    }

    private static CheckText[] Checks()
    {
        var severities = CheckCatalogue.Descriptions.ToDictionary(check => check.Name, check => check.Severity, StringComparer.Ordinal);
        return [.. ExplainCommand.Pages().OrderBy(page => page.Key, StringComparer.Ordinal).Select(page => CheckText.Read(page.Key, ExplainCommand.Text(page.Value), severities.TryGetValue(page.Key, out var severity) ? severity : null))];
    }
}
