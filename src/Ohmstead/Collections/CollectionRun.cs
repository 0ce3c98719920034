using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Collections;

/// <summary>What a run over a collection gave.</summary>
/// <param name="Workshop">What boards refer to.</param>
/// <param name="Boards">The boards that could be read, in order of path.</param>
/// <param name="Findings">All findings, in order of path, line, column and check.</param>
/// <param name="FilesRead">How many files were looked at.</param>
internal sealed record RunResult(Workshop Workshop, IReadOnlyList<BoardSummary> Boards, ImmutableArray<Finding> Findings, int FilesRead)
{
    /// <summary>What was found about all boards together, which boards were judged without since their pages were wanted; empty when there is no such thing.</summary>
    public ImmutableArray<Finding> Late { get; init; } = [];
}

/// <summary>Reads, judges and checks a collection, board by board: of each board only a summary is kept, so memory does not grow with its records.</summary>
internal sealed class CollectionRun(CollectionFolder folder, RunOptions options)
{
    private static readonly string[] SharedFiles = ["collection.yaml", "instruments.yaml", "stock.yaml"];

    /// <summary>Runs.</summary>
    /// <param name="progress">Told the number of boards done, from any worker.</param>
    /// <param name="pageFor">Makes what else is wanted of each board and the findings in its record (its page), for each worker anew; or null.</param>
    public RunResult Run(Action<int>? progress = null, Func<Workshop, Action<BoardAssessment, ImmutableArray<Finding>>>? pageFor = null)
    {
        var findings = new List<Finding>();
        var first = NodeReaders.ForWorker(0);
        var workshop = WorkshopLoader.Load(folder, new FileReader(folder, first, options), new SchemaOpinion(options.IsThorough), findings);
        findings.AddRange(Look(CheckCatalogue.Shared, workshop, []));
        var shared = SharedFaults.Of(workshop, findings.Concat(options.Together));
        var boards = folder.Boards;
        var results = new BoardResult[boards.Count];
        var (next, done) = (-1, 0);
        var pictures = new FolderPictures(folder.Root);
        void Work(INodeReader nodes)
        {
            var reader = new FileReader(folder, nodes, options);
            var schemas = new SchemaOpinion(options.IsThorough);
            var judge = new BoardJudge(workshop, shared, options.Today, pictures);
            var page = pageFor?.Invoke(workshop);
            for (var i = Interlocked.Increment(ref next); i < boards.Count; i = Interlocked.Increment(ref next))
            {
                results[i] = One(boards[i], reader, schemas, judge, page);
                progress?.Invoke(Interlocked.Increment(ref done));
            }
        }

        // A worker of its own pays only when there is enough to share.
        var helpers = Math.Min(options.Workers - 1, boards.Count / 32);
        Exception? failure = null;
        var threads = Enumerable.Range(1, Math.Max(helpers, 0)).Select(worker => new Thread(() =>
        {
            try
            {
                Work(NodeReaders.ForWorker(worker));
            }
#pragma warning disable CA1031 // Carried to the thread that started the run, which lets it go on.
            catch (Exception problem)
#pragma warning restore CA1031
            {
                Interlocked.CompareExchange(ref failure, problem, null);
            }
        }, 4 << 20) { IsBackground = true }).ToArray();
        foreach (var thread in threads)
        {
            thread.Start();
        }

        Work(first);
        foreach (var thread in threads)
        {
            thread.Join();
        }

        if (failure is not null)
        {
            ExceptionDispatchInfo.Throw(failure);
        }

        foreach (var result in results)
        {
            findings.AddRange(result.Findings);
        }

        var summaries = results.Select(result => result.Summary).OfType<BoardSummary>().ToArray();
        ImmutableArray<Finding> together = [.. Look(CheckCatalogue.Together, workshop, summaries)];
        ImmutableArray<Finding> late = options.Together.Length > 0 ? [] : [.. together.Where(CheckEffects.HoldsBack)];
        if (late.Length > 0 && pageFor is null)
        {
            // Boards were judged before all were compared: now they are judged with it.
            return new CollectionRun(folder, options with { Together = late }).Run(progress);
        }

        findings.AddRange(together);
        findings.Sort(FindingOrder.Instance);
        return new(workshop, summaries, [.. findings], boards.Count + folder.Designs.Count + SharedFiles.Count(name => folder.Named(name) is not null)) { Late = late };
    }

    private BoardResult One(string path, FileReader reader, SchemaOpinion schemas, BoardJudge judge, Action<BoardAssessment, ImmutableArray<Finding>>? page)
    {
        var text = reader.Read(path, FileForm.Markdown);
        var read = FileBinding.Board(path, text);
        var findings = schemas.Add(path, text, FileShapes.Board, read.Findings);
        if (read.File is null)
        {
            return new(null, findings);
        }

        var judged = judge.Judge(read.File, findings);
        page?.Invoke(judged.Assessment, judged.Findings);
        return new(BoardSummary.Of(judged.Assessment, options.ForStatistics), judged.Findings);
    }

    private IEnumerable<Finding> Look(IEnumerable<ICollectionCheck> checks, Workshop workshop, IReadOnlyList<BoardSummary> boards)
    {
        var under = new CollectionUnderCheck(workshop, [.. boards.Select(board => new BoardNumber(board.Path, board.Id))], BoardSummary.FittedByLot(boards), options.Today);
        return checks.SelectMany(check => check.Look(under));
    }

    private readonly record struct BoardResult(BoardSummary? Summary, ImmutableArray<Finding> Findings);
}
