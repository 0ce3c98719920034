using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Running;
using Ohmstead.Yaml;

namespace Ohmstead.Comparing;

/// <summary>What comparing the two records of a board gave.</summary>
/// <param name="Was">What is kept of it as it was; null when there was none, or none that could be read.</param>
/// <param name="Now">What is kept of it as it is; likewise.</param>
/// <param name="Changes">What differs.</param>
internal sealed record PairResult(BoardSummary? Was, BoardSummary? Now, BoardChanges Changes);

/// <summary>Reads the two records of many boards, judges each in its state of the collection, and keeps what differs. Nothing else of a
/// board is kept, so memory does not grow with the records.</summary>
/// <param name="was">The earlier state with its files.</param>
/// <param name="now">The later state with its files.</param>
/// <param name="shared">What differs in the files that boards share.</param>
/// <param name="options">How records are read.</param>
internal sealed class PairPass(
    (CollectionFolder Folder, CollectionSide Side) was,
    (CollectionFolder Folder, CollectionSide Side) now,
    IReadOnlyList<InputDifference> shared,
    RunOptions options
)
{
    /// <summary>Judges and compares, several side by side; the result does not depend on it.</summary>
    public PairResult[] Compare(IReadOnlyList<BoardPair> pairs)
    {
        var results = new PairResult[pairs.Count];
        SideBySide.Run(pairs.Count, options.Workers, number =>
        {
            var worker = new PairWorker(was, now, shared, (NodeReaders.ForStates(number), options), new() { Verdicts = new() });
            return at => results[at] = worker.Compare(pairs[at]);
        });
        return results;
    }
}
