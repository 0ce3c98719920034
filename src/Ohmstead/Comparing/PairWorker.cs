using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Collections;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Comparing;

/// <summary>Compares the two records of one board after the other, for one thread.</summary>
/// <param name="was">The earlier state with its files.</param>
/// <param name="now">The later state with its files.</param>
/// <param name="shared">What differs in the files that boards share.</param>
/// <param name="how">How records are read.</param>
/// <param name="memo">What is known already: both judges and who looks for causes ask the same of the same marks and readings.</param>
internal sealed class PairWorker(
    (CollectionFolder Folder, CollectionSide Side) was,
    (CollectionFolder Folder, CollectionSide Side) now,
    IReadOnlyList<InputDifference> shared,
    (INodeReader Nodes, RunOptions Options) how,
    JudgeMemo memo
)
{
    private readonly FileReader before = new(was.Folder, how.Nodes, how.Options);
    private readonly FileReader after = new(now.Folder, how.Nodes, how.Options);
    private readonly BoardJudge asItWas = was.Side.Judge(memo);
    private readonly BoardJudge asItIs = now.Side.Judge(memo);
    private readonly ReadItems items = new();
    private readonly CauseFinder causes = new(was.Side, now.Side, shared, memo);

    public PairResult Compare(BoardPair pair)
    {
        memo.Begin();
        items.Begin();
        var (earlier, later, entries) = Read(pair);
        var (judgedWas, judgedNow) = (Judge(asItWas, earlier), Judge(asItIs, later));
        ImmutableArray<InputDifference> own =
        [
            .. entries.Differences.Select(one => new InputDifference(InputFile.Board, pair.Was, pair.Now, one)),
        ];
        var changes =
            earlier is { File: { } oldBoard } && later is { File: { } newBoard } && judgedWas is not null && judgedNow is not null
                ? Changed(new(new(oldBoard, earlier.Found), new(newBoard, later.Found), entries), (judgedWas, judgedNow), own)
                : OneSided((earlier, judgedWas), (later, judgedNow));
        return new(
            judgedWas is null ? null : BoardSummary.From(judgedWas, how.Options.ForPages),
            judgedNow is null ? null : BoardSummary.From(judgedNow, how.Options.ForPages),
            new(
                Number(later) ?? Number(earlier) ?? Path.GetFileNameWithoutExtension(pair.Now ?? pair.Was)!,
                pair.Was,
                pair.Now,
                judgedNow is null ? null : BoardStates.Told(judgedNow.State, judgedNow.OverdueSince),
                changes,
                pair.Was is null || pair.Now is null ? [] : own
            )
            {
                Readings = judgedNow is null || pair.Was is null ? [] : NewReadings(judgedNow, own),
            }
        );
    }

    private ImmutableArray<Change> Changed(
        BoardTwice board,
        (JudgedBoard Was, JudgedBoard Now) judged,
        ImmutableArray<InputDifference> own
    ) => causes.Explain(board, judged.Now, BoardComparer.Compare(judged.Was, judged.Now, board.Earlier), own);

    // A board that is new, gone, or of which one record cannot be read.
    private static ImmutableArray<Change> OneSided((ReadFile? File, JudgedBoard? Board) was, (ReadFile? File, JudgedBoard? Board) now)
    {
        var cause = new Cause([InputKind.Marking], []);
        return [new(ChangeKind.State, string.Empty, State(was), State(now)) { Cause = cause }];
    }

    private static string? State((ReadFile? File, JudgedBoard? Board) side) =>
        side.File is null ? null
        : side.Board is { } board ? BoardStates.Told(board.State, board.OverdueSince)
        : "cannot be read";

    private static JudgedBoard? Judge(BoardJudge judge, ReadFile? read) => read?.File is { } board ? judge.Judge(board, read.Found) : null;

    private static string? Number(ReadFile? read) => read?.File?.Id.Value;

    private static ImmutableArray<NewReading> NewReadings(JudgedBoard board, ImmutableArray<InputDifference> own)
    {
        var added = own.Where(one => one.Entry.Was is null).Select(one => one.Entry.Now!.Spot).ToHashSet();
        if (added.Count == 0)
        {
            return [];
        }

        return
        [
            .. board
                .Readings.Where(reading => added.Contains(reading.Reading.Spot))
                .Select(reading => new NewReading(reading.Reading.Spot.Line, Told(reading.Verdicts))),
            .. board
                .Proofs.Where(proof => added.Contains(proof.Proof.Spot))
                .Select(proof => new NewReading(proof.Proof.Spot.Line, Told(proof.Verdicts))),
        ];
    }

    private static string Told(ImmutableArray<Verdict> verdicts) =>
        string.Join(", ", verdicts.Select(one => VerdictWords.Describe(one.Outcome)).Distinct());

    // By itself, so that nothing holds the nodes once it has returned.
    private (ReadFile? Was, ReadFile? Now, EntryComparison Entries) Read(BoardPair pair)
    {
        // The path is part of what findings say, so a renamed file of equal bytes is read anew.
        if (pair.IsSame && pair.Was is { } same && pair.Was == pair.Now)
        {
            var (both, _) = Read(after, same);
            return (both, both, EntryComparison.Same);
        }

        var (earlier, oldRoot) = pair.Was is { } old ? Read(before, old) : default;
        var (later, root) = pair.Now is { } path ? Read(after, path) : default;
        return (earlier, later, pair.IsSame ? EntryComparison.Same : EntryComparer.Compare(oldRoot, root, FileShapes.Board));
    }

    private (ReadFile File, MappingNode? Root) Read(FileReader reader, string path)
    {
        var text = reader.Read(path, FileForm.Markdown);
        var read = FileBinding.Board(path, text, items);
        return (new(read.File, read.Findings), text.Root);
    }

    private sealed record ReadFile(BoardFile? File, ImmutableArray<Finding> Found);
}
