using System.Collections.Concurrent;
using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Running;

namespace Ohmstead.Comparing;

/// <summary>Keeps what a run judges of a whole collection.</summary>
/// <param name="folder">The collection.</param>
/// <param name="options">How it is read and judged.</param>
internal sealed class JudgementKeeper(CollectionFolder folder, RunOptions options)
{
    private readonly ConcurrentDictionary<string, KeptBoard> boards = new(StringComparer.Ordinal);
    private readonly IReadOnlyDictionary<string, string> names = ContentNames.For(
        new(folder.Root, folder, null),
        isSha256: false,
        options.Workers
    );

    private readonly PhotographNames photographs = new(folder.Root);

    /// <summary>Takes up a board, from any worker; once more when it was judged again.</summary>
    public void Add(JudgedBoard board) =>
        boards[board.Board.Path] = KeptBoard.From(board, names.GetValueOrDefault(board.Board.Path, string.Empty), photographs.For);

    /// <summary>What was judged. The version of this program is told with it.</summary>
    public KeptJudgement Finish()
    {
        var paths = folder.Boards.ToHashSet(StringComparer.Ordinal);
        return new(
            ProgramVersion.Number,
            options.Today,
            names.Where(pair => !paths.Contains(pair.Key)).ToImmutableSortedDictionary(StringComparer.Ordinal),
            [.. boards.Values.OrderBy(board => board.Path, StringComparer.Ordinal)]
        );
    }

    /// <summary>Judges a collection and keeps that.</summary>
    public static KeptJudgement Judge(CollectionFolder folder, RunOptions options)
    {
        var keeper = new JudgementKeeper(folder, options);
        _ = new CollectionRun(folder, options with { ForPages = false }).Run(seen: keeper.Add);
        return keeper.Finish();
    }
}
