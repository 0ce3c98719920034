using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Days;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Markdown;
using Ohmstead.Running;
using Ohmstead.Yaml;

namespace Ohmstead.Collections;

/// <summary>What a pass gave of one board.</summary>
/// <param name="Summary">What is kept of it; null when it could not be read.</param>
/// <param name="Findings">What was found in its file.</param>
internal readonly record struct BoardResult(BoardSummary? Summary, ImmutableArray<Finding> Findings);

/// <summary>Reads and judges boards of a collection, several side by side where there are many; the result does not depend on it.</summary>
/// <param name="folder">The collection.</param>
/// <param name="options">How the run is made.</param>
/// <param name="workshop">What boards refer to.</param>
/// <param name="found">What was found in the files that they share.</param>
/// <param name="together">What all boards together show; null before that is known.</param>
internal sealed class BoardPass(
    CollectionFolder folder,
    RunOptions options,
    Workshop workshop,
    IEnumerable<Finding> found,
    BoardsTogether? together
)
{
    private readonly SharedFaults shared = SharedFaults.From(workshop, together is null ? found : found.Concat(together.Findings));
    private readonly IPictures pictures = folder.Files.Pictures(options);

    /// <summary>Judges.</summary>
    /// <param name="paths">The files of the boards.</param>
    /// <param name="first">Reads for the thread that this is called on.</param>
    /// <param name="progress">Told the number of boards done, from any worker.</param>
    /// <param name="pageFor">Makes what else is wanted of each board, for each worker anew; or null.</param>
    /// <param name="recordFor">Makes what takes up each record with what reading it found, for each worker anew; or null.</param>
    /// <returns>What each gave, in order of the files.</returns>
    public BoardResult[] Judge(
        IReadOnlyList<string> paths,
        INodeReader first,
        Action<int>? progress = null,
        Func<Workshop, Action<JudgedBoard>>? pageFor = null,
        Func<Action<BoardFile, ImmutableArray<Finding>>>? recordFor = null
    )
    {
        var results = new BoardResult[paths.Count];
        var done = 0;
        SideBySide.Run(paths.Count, options.Workers, worker =>
        {
            var nodes = worker == 0 ? first : NodeReaders.ForWorker(worker);
            var reader = new FileReader(folder, nodes, options);
            var schemas = new SchemaOpinion(options.IsThorough);
            var judge = new BoardJudge(workshop, shared, options.Today, pictures)
            {
                Pieces = together?.Pieces ?? PieceShares.None,
                Stories = StoryLinks.Instance,
            };
            var page = pageFor?.Invoke(workshop);
            var record = recordFor?.Invoke();
            var shortage = new MemoryShortage();
            return at =>
            {
                try
                {
                    results[at] = One(paths[at], reader, schemas, judge, (page, record));
                }
                catch (Exception problem) when (MemoryShortage.Is(problem))
                {
                    throw shortage.For(paths[at]);
                }

                progress?.Invoke(Interlocked.Increment(ref done));
            };
        });
        return results;
    }

    private BoardResult One(
        string path,
        FileReader reader,
        SchemaOpinion schemas,
        BoardJudge judge,
        (Action<JudgedBoard>? Page, Action<BoardFile, ImmutableArray<Finding>>? Record) wanted
    )
    {
        var (board, findings) = Read(path, reader, schemas, options.UpTo);
        if (board is null)
        {
            return new(null, findings);
        }

        // The nodes have become the record.
        reader.GiveBack();
        wanted.Record?.Invoke(board, findings);
        var judged = judge.Judge(board, findings);
        if (wanted.Page is { } page)
        {
            reader.GiveBack();
            page(judged);
            reader.GiveBack();
        }

        return new(BoardSummary.From(judged, options.ForPages), judged.Reported);
    }

    // By itself, so that nothing holds the nodes once it has returned.
    private static (BoardFile? Board, ImmutableArray<Finding> Findings) Read(
        string path,
        FileReader reader,
        SchemaOpinion schemas,
        RecordsUpTo? upTo
    )
    {
        var text = reader.Read(path, FileForm.Markdown);
        var read = FileBinding.Board(path, text);
        return (
            read.File is { } board && upTo is not null ? upTo.Board(board) : read.File,
            schemas.Add(path, text, FileShapes.Board, read.Findings)
        );
    }
}
