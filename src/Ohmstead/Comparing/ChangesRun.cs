using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Markdown;
using Ohmstead.Yaml;

namespace Ohmstead.Comparing;

/// <summary>
/// Compares two states of a collection by what they mean. Boards of which nothing can differ are not read: their bytes are the same, and
/// nothing that they refer to differs; a test holds this to judging all.
/// </summary>
/// <param name="was">The earlier state.</param>
/// <param name="now">The later state.</param>
/// <param name="options">How the later one is read and judged.</param>
/// <param name="wasToday">The day on which the earlier one is judged.</param>
internal sealed class ChangesRun(ComparedSide was, ComparedSide now, RunOptions options, DateOnly wasToday)
{
    // So many boards are judged within a third of a second, for what all of them together ask to be bought.
    private const int MostForBuying = 500;

    private readonly INodeReader nodes = NodeReaders.ForWorker(0);

    /// <summary>True to judge every board, whether or not anything of it can differ.</summary>
    public bool IsWhole { get; init; }

    /// <summary>The boards that are asked about; null for all. Of others only those are judged that differ and those that share a lot or a
    /// number with them.</summary>
    public Func<BoardPair, bool>? Only { get; init; }

    /// <summary>True to compare the buying list of any number of boards: all of them are judged for it. Up to 500 it always is.</summary>
    public bool WithBuying { get; init; }

    private bool IsBuying => Only is null && (WithBuying || now.Folder.Boards.Count <= MostForBuying);

    /// <summary>Compares.</summary>
    public CollectionChanges Run() => RunWithPairs().Changes;

    /// <summary>Compares, and tells which records were held against which.</summary>
    public (CollectionChanges Changes, IReadOnlyList<BoardPair> Pairs) RunWithPairs()
    {
        var (before, after) = ContentNames.Of(was, now, options.Workers);
        Share(was, now, after);
        Share(now, was, before);
        var (sideWas, sideNow) = (Side(was, wasToday), Side(now, options.Today));
        var shared = new SharedDifferences(Reader(was), Reader(now)).Find((was.Folder, before), (now.Folder, after));
        var pairs = BoardPairs.Find((was.Folder.Boards, before), (now.Folder.Boards, after), (path, isEarlier) =>
            BoardPairs.NumbersIn(Reader(isEarlier ? was : now), path)
        );
        var ties = new LotsThatMatter([sideWas.Workshop, sideNow.Workshop], now.Folder, options);
        var scope = new ComparedScope((was, now), pairs, shared.Entries, ties);
        var isAll = Only is null && (IsWhole || wasToday != options.Today || shared.TouchesAll);

        BoardPair[] looked = isAll
            ? [.. pairs]
            : [.. pairs.Where(pair => !pair.IsSame || pair.Was != pair.Now || Only?.Invoke(pair) == true)];
        var results = Pass(sideWas, sideNow, shared.Entries).Compare(looked);
        if (!isAll && Only is null)
        {
            // Whoever shares a lot or a number with them may be judged otherwise, too.
            BoardPair[] more = scope.Beside(looked, results, Reader(now));
            looked = [.. looked, .. more];
            results = [.. results, .. Pass(sideWas, sideNow, shared.Entries).Compare(more)];
        }

        var (boardsWas, boardsNow) = (
            scope.All(results, isEarlier: true, looked, paths => Summaries(was, sideWas, paths)),
            scope.All(results, isEarlier: false, looked, paths => Summaries(now, sideNow, paths))
        );
        sideWas = sideWas with { Together = BoardsTogether.Compare(sideWas.Workshop, boardsWas, wasToday) };
        sideNow = sideNow with { Together = BoardsTogether.Compare(sideNow.Workshop, boardsNow, options.Today) };
        JudgeAgain(looked, results, sideWas, sideNow, shared.Entries);

        var lots = isAll ? null : scope.Lots(results);
        InputDifference[] inputs = [.. shared.Entries, .. results.SelectMany(result => result.Changes.Entries)];
        var changes = SharedComparer.Compare(new(sideWas, boardsWas), new(sideNow, boardsNow), inputs, lots);
        if (IsBuying)
        {
            changes = [.. changes, .. Buying(looked, results, (sideWas, sideNow), shared.Entries)];
        }

        ImmutableArray<BoardChanges> boards =
        [
            .. results
                .Select(result => result.Changes)
                .Where(board => board.IsAny)
                .OrderBy(board => board.Number, StringComparer.Ordinal)
                .ThenBy(board => board.Now ?? board.Was, StringComparer.Ordinal),
        ];
        return (new(boards, changes, [.. shared.Entries], pairs.Count - boards.Length) { IsBuyingKnown = IsBuying }, pairs);
    }

    private IEnumerable<Change> Buying(
        IReadOnlyList<BoardPair> looked,
        PairResult[] results,
        (CollectionSide Was, CollectionSide Now) sides,
        IReadOnlyList<InputDifference> shared
    )
    {
        // The others are the same in both states, and judged once, by themselves: what all boards together show asks for work, never for a
        // part.
        var known = looked.Select(pair => pair.Now).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var others = Summaries(now, sides.Now, [.. now.Folder.Boards.Where(path => !known.Contains(path))]);
        SideWithBoards With(CollectionSide side, Func<PairResult, BoardSummary?> board) =>
            new(side, [.. results.Select(board).OfType<BoardSummary>().Concat(others).OrderBy(one => one.Path, StringComparer.Ordinal)]);
        return BuyingComparer.Compare(
            With(sides.Was, result => result.Was),
            With(sides.Now, result => result.Now),
            [.. results.Select(result => result.Changes)],
            shared
        );
    }

    // What is the same in a folder is read from there.
    private static void Share(ComparedSide side, ComparedSide other, IReadOnlyDictionary<string, string> names)
    {
        if (side.Folder.Files is RevisionFiles revision && other.Folder.Files is not RevisionFiles)
        {
            revision.Elsewhere = (
                other.Folder.Files,
                names.DistinctBy(pair => pair.Value).ToFrozenDictionary(pair => pair.Value, pair => pair.Key, StringComparer.Ordinal)
            );
        }
    }

    private PairPass Pass(CollectionSide sideWas, CollectionSide sideNow, IReadOnlyList<InputDifference> shared) =>
        new((was.Folder, sideWas), (now.Folder, sideNow), shared, options with { ForPages = IsBuying });

    private void JudgeAgain(
        BoardPair[] looked,
        PairResult[] results,
        CollectionSide sideWas,
        CollectionSide sideNow,
        IReadOnlyList<InputDifference> shared
    )
    {
        int[] again =
        [
            .. Enumerable
                .Range(0, looked.Length)
                .Where(at =>
                    (results[at].Was is { } old && sideWas.Together!.Changes(old))
                    || (results[at].Now is { } board && sideNow.Together!.Changes(board))
                ),
        ];
        if (again.Length == 0)
        {
            return;
        }

        var judged = Pass(sideWas, sideNow, shared).Compare([.. again.Select(at => looked[at])]);
        for (var at = 0; at < again.Length; at++)
        {
            results[again[at]] = judged[at];
        }
    }

    private CollectionSide Side(ComparedSide side, DateOnly today)
    {
        var found = new List<Finding>();
        var workshop = SharedFilesRun.Load(side.Folder, Reader(side), options with { Today = today }, found);
        return new(workshop, today, [.. found], side.Folder.Files.Pictures(options)) { Stories = StoryLinks.Instance };
    }

    private FileReader Reader(ComparedSide side) => new(side.Folder, nodes, options);

    // Boards that are not compared, by themselves: they are the same in both states, and only what they share with others counts.
    private BoardSummary[] Summaries(ComparedSide side, CollectionSide judge, IReadOnlyList<string> paths) =>
        [
            .. new BoardPass(side.Folder, options with { Today = judge.Today, ForPages = IsBuying }, judge.Workshop, judge.Found, null)
                .Judge(paths, nodes)
                .Select(result => result.Summary)
                .OfType<BoardSummary>(),
        ];
}
