using System.Collections.Immutable;

namespace Ohmstead.Assessment.Changes;

/// <summary>Holds what a program judges against what an earlier one judged of the same records on the same day: whatever differs follows
/// from the program.</summary>
public static class KeptComparer
{
    private static readonly Cause Program = new([InputKind.Program], []);

    /// <summary>What differs of the boards whose records are the same.</summary>
    /// <param name="was">What was judged.</param>
    /// <param name="now">What is judged.</param>
    public static CollectionChanges Compare(KeptJudgement was, KeptJudgement now)
    {
        var before = was.Boards.ToDictionary(board => board.Path, StringComparer.Ordinal);
        var boards = now
            .Boards.Where(board => before.TryGetValue(board.Path, out var old) && IsSame(old, board))
            .Select(board => new BoardChanges(
                board.Number,
                board.Path,
                board.Path,
                board.State,
                [.. Compare(before[board.Path], board).Select(change => change with { Cause = Program })],
                []
            ))
            .ToArray();
        ImmutableArray<BoardChanges> differing = [.. boards.Where(board => board.IsAny)];
        return new(differing, [], [], boards.Length - differing.Length);
    }

    // A photograph that is gone or was taken anew is found by checks: of that, too, the program is no cause.
    private static bool IsSame(KeptBoard was, KeptBoard now) =>
        was.Content == now.Content
        && (was.Photographs is null || now.Photographs is null || was.Photographs.SequenceEqual(now.Photographs));

    /// <summary>The paths of records and photographs that are not what they were, or that only one of them knows: nothing is told of
    /// them.</summary>
    public static ImmutableArray<string> Others(KeptJudgement was, KeptJudgement now)
    {
        var isKept = was.Boards.Concat(now.Boards).All(board => board.Photographs is not null);
        var (before, after) = (Names(was, isKept), Names(now, isKept));
        return
        [
            .. before
                .Keys.Union(after.Keys, StringComparer.Ordinal)
                .Where(path => before.GetValueOrDefault(path) != after.GetValueOrDefault(path))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static Dictionary<string, string> Names(KeptJudgement judgement, bool withPhotographs) =>
        judgement
            .Boards.Select(board => (board.Path, board.Content))
            .Concat(judgement.Shared.Select(pair => (Path: pair.Key, Content: pair.Value)))
            .Concat(
                judgement
                    .Boards.Where(_ => withPhotographs)
                    .SelectMany(board => board.Photographs!)
                    .Select(pair => (Path: pair.Key, Content: pair.Value))
            )
            .DistinctBy(pair => pair.Path, StringComparer.Ordinal)
            .ToDictionary(pair => pair.Path, pair => pair.Content, StringComparer.Ordinal);

    private static ImmutableArray<Change> Compare(KeptBoard was, KeptBoard now)
    {
        var changes = ImmutableArray.CreateBuilder<Change>();
        BoardComparer.Add(changes, new(ChangeKind.State, string.Empty, was.State, now.State));
        var before = Numbered(was);
        var after = Numbered(now);
        foreach (var key in before.Keys.Union(after.Keys))
        {
            var (old, verdict) = (before.GetValueOrDefault(key), after.GetValueOrDefault(key));
            var place = (verdict ?? old)!.Place;
            BoardComparer.Add(changes, new(ChangeKind.Verdict, key.Of, old?.Outcome, verdict?.Outcome) { Place = place });
            if (old is not null && verdict is not null)
            {
                BoardComparer.Add(changes, new(ChangeKind.Limit, key.Of, old.Limit, verdict.Limit) { Place = place });
            }
        }

        BoardComparer.Add(changes, new(ChangeKind.LookAgain, string.Empty, was.LookAgain, now.LookAgain));
        BoardComparer.AddListed(changes, ChangeKind.Finding, was.Findings, now.Findings, told => (null, told));
        return changes.DrainToImmutable();
    }

    // The same figure may have been read twice on a day: the record is the same, and so is their order.
    private static OrderedDictionary<(string Of, int Nth), KeptVerdict> Numbered(KeptBoard board)
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        var numbered = new OrderedDictionary<(string, int), KeptVerdict>();
        foreach (var verdict in board.Verdicts)
        {
            var nth = counts[verdict.Of] = counts.GetValueOrDefault(verdict.Of) + 1;
            numbered.Add((verdict.Of, nth), verdict);
        }

        return numbered;
    }
}
