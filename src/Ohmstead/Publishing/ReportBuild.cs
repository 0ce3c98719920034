using System.Collections.Concurrent;
using System.Collections.Immutable;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Checks.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Assessment.Years;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Search;
using Ohmstead.Report.Sheets;
using Ohmstead.Report.Tables;
using Ohmstead.Running;

namespace Ohmstead.Publishing;

/// <summary>What a report was built from, and how much work its pictures were.</summary>
/// <param name="Result">The run.</param>
/// <param name="PicturesSized">How many pictures were decoded; all others were there already.</param>
internal sealed record BuiltReport(RunResult Result, int PicturesSized)
{
    /// <summary>Whether pictures are missing because nothing on this machine opens any.</summary>
    public bool LacksPictures { get; init; }

    /// <summary>The records that cannot be read and whose pages are still those of an earlier report.</summary>
    public IReadOnlyList<string> Older { get; init; } = [];

    /// <summary>How the run ends.</summary>
    public int Exit => LacksPictures ? ExitCode.Incomplete : Result.Exit(isStrict: false);

    /// <summary>What is not as it should be with the pages, line by line.</summary>
    public IEnumerable<string> Notes =>
        [
            .. Older.Select(path => $"{path} cannot be read: its page stays that of an earlier report, which it says"),
            .. LacksPictures
                ? ["pictures are missing: the library that opens them does not run on this machine; those made before are there"]
                : Array.Empty<string>(),
        ];
}

/// <summary>Builds the pages of a collection into a folder. The result depends on the records and the options alone, not on the number of
/// workers.</summary>
/// <param name="terminal">Where progress is shown.</param>
/// <param name="files">The collection.</param>
/// <param name="target">The folder for the pages.</param>
/// <param name="options">How the run is made.</param>
/// <param name="wishes">What else it is to tell.</param>
internal sealed class ReportBuild(Terminal terminal, CollectionFolder files, ReportFolder target, RunOptions options, ReportWishes wishes)
{
    // Each board is judged once more for each past day on which it was there: that doubles the work.
    private const int MostCounted = 2_000;

    // A page that waits for the drawer.
    private readonly record struct Unfinished(string Path, Drafted Kept, IReadOnlyList<OpenPlace> Places);

    /// <summary>How much work the pictures were, in words.</summary>
    public static string Sized(BuiltReport built) =>
        FormattableString.Invariant($"{built.PicturesSized} {(built.PicturesSized == 1 ? "picture" : "pictures")} sized");

    /// <summary>Builds. What is found about all boards together (a number twice, a lot overdrawn) is known when all were judged: then they
    /// are judged again with it.</summary>
    public BuiltReport Write()
    {
        var built = Write(options);
        if (built.Result.Late is not { } late)
        {
            return built;
        }

        target.Restart();
        return Write(options with { Together = late });
    }

    private BuiltReport Write(RunOptions run)
    {
        // Links between boards need the numbers before the first page is written; a file is named after its board.
        var numbers = files.Boards.Select(path => Path.GetFileNameWithoutExtension(path)).ToHashSet(StringComparer.Ordinal);
        var version = ProgramVersion.Number;
        using var pictures = new ReportPictures(new FolderPictures(files.Root), target);
        var unreadable = new ConcurrentBag<Finding>();
        var unfinished = new ConcurrentBag<Unfinished>();
        using var data = new DataFiles(target, files.Boards);
        var changes = new LatestChanges(AtomFeed.Most);
        var compared = new ComparedUnits();
        var search = new SearchCollector(new SearchStore(target));
        var checks = CheckPages.All().Keys.ToHashSet(StringComparer.Ordinal);
        var isCounted = wishes.IsCounted || files.Boards.Count <= MostCounted;
        ImmutableArray<DateOnly> days = isCounted ? PastDays.Until(options.Today) : [];
        var past = new PastStates(files, run, PastYear.With(days));
        RunResult result;
        using (var progress = new Progress(terminal, files.Boards.Count))
        {
            result = new CollectionRun(files, run).Run(
                progress.Report,
                workshop =>
                    Pages(
                        new ReportContext(workshop, numbers, options.Today, version)
                        {
                            Checks = checks,
                            Commit = wishes.Commit,
                            Histories = wishes.Histories,
                            Pictures = pictures,
                            ForPrograms = FilesForPrograms.Files,
                            Published = Root(workshop) is { } root ? new(root) : null,
                        }
                    ),
                recordFor: isCounted ? past.ForWorker : null
            );
        }

        if (result.Late is not null)
        {
            return new(result, 0);
        }

        // What showed only when a picture was opened belongs to the findings like the rest.
        result = result with { Findings = [.. result.Findings.Concat(unreadable).Order(FindingOrder.Instance)] };
        var year = PastYear.Apart(past.Count(), days);
        var context = new ReportContext(result.Workshop, numbers, options.Today, version)
        {
            Checks = checks,
            Buying = BuyingList.Compute(result.Workshop, result.Boards, options.Today),
            Ahead = YearAhead.List(result.Workshop, result.Boards, options.Today, options.Today.AddYears(1)),
            Commit = wishes.Commit,
            Published = Root(result.Workshop) is { } found ? new(found) : null,
            Since = wishes.Since,
            Past = year.Points,
            YearAgo = year.Before,
            Pictures = pictures,
            ForPrograms = FilesForPrograms.Files,
        };
        // What is left of a lot is known only when all boards were read.
        var wanted = new WantedFolds(Drawer.Count(result.Workshop, BoardSummary.UseOfLots(result.Boards), options.Today));
        Jobs.Do(
            options.Workers,
            target,
            [
                draft => data.Finish(result, options.Today, draft),
                .. WidePages.List(
                    target,
                    context,
                    result,
                    Site.For(Root(result.Workshop), result.Workshop.Collection.Name),
                    changes,
                    compared,
                    search
                ),
                .. unfinished.Select(page => new Action<Draft>(draft =>
                {
                    draft.Buffer.Clear();
                    page.Kept.CopyTo(target, new FilledPage(draft.Buffer, page.Places, wanted).Append);
                    draft.Put(page.Path);
                })),
            ]
        );
        var older = new OlderPages(target, options.Today).Keep(files.Boards, result.Boards);
        target.Finish();
        return new(result, pictures.Sized) { LacksPictures = pictures.LacksLibrary, Older = older };

        // What is said on the command line goes before what the collection says.
        Uri? Root(Workshop workshop) => wishes.Site ?? workshop.Collection.Site?.Value;

        Action<JudgedBoard> Pages(ReportContext context)
        {
            var draft = new Draft(target);
            var rows = new BoardRows(target);
            var sentences = new PageBuffer();
            return board =>
            {
                // A number that two files claim is an error; its page is that of the file named after it, whichever is read first.
                if (Path.GetFileNameWithoutExtension(board.Board.Path) != board.Board.Id.Value && numbers.Contains(board.Board.Id.Value))
                {
                    return;
                }

                data.Add(board, rows);
                changes.Add(board);
                compared.Add(board);
                search.Add(context, board, sentences);
                var open = new List<OpenPlace>();
                BoardPage.Write(draft.Buffer, context, board, open);
                var path = SiteAddress.Board(board.Board.Id.Value);
                if (open.Count == 0)
                {
                    draft.Put(path);
                }
                else
                {
                    unfinished.Add(new(path, draft.Whole(), open));
                }

                BoardSheet.Write(draft.Buffer, context, board);
                draft.Put(SiteAddress.BoardSheet(board.Board.Id.Value));
                if (context.Published is { } published)
                {
                    QrCode.Of(published.Board(board.Board.Id.Value)).WriteFile(draft.Buffer);
                    draft.Put(SiteAddress.Code(board.Board.Id.Value));
                }

                foreach (var photo in board.Visits.SelectMany(visit => visit.Photos).Where(photo => PictureNames.IsSafe(photo.File.Value)))
                {
                    if (pictures.Fault(photo.File.Value) is { } fault)
                    {
                        unreadable.Add(PhotographUnreadable.Found(board.Board.Path, photo, fault));
                    }
                }
            };
        }
    }
}
