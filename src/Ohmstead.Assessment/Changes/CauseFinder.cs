using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Changes;

/// <summary>A board in two states of its collection.</summary>
/// <param name="Was">Its earlier record, with what reading it found.</param>
/// <param name="Now">Its later record, with what reading it found.</param>
/// <param name="Entries">What differs between the records.</param>
public sealed record BoardTwice(ReadBoard Was, ReadBoard Now, EntryComparison Entries)
{
    /// <summary>Where an entry of the later record stood in the earlier one; null for a new one.</summary>
    public Spot? Earlier(Spot now) =>
        ReferenceEquals(Entries, EntryComparison.Same) ? now
        : Entries.Earlier.TryGetValue(now, out var spot) ? spot
        : null;
}

/// <summary>A record of a board as it was read.</summary>
/// <param name="Board">The record.</param>
/// <param name="Found">What reading it found.</param>
public sealed record ReadBoard(BoardFile Board, ImmutableArray<Finding> Found);

/// <summary>
/// Finds what a change follows from, by substitution: the board is judged again as it was with one kind of input as it is now. The first
/// kind that alone gives what is judged now is the cause; where none does, all that differ are it together.
/// </summary>
/// <remarks>An instance is used by one thread at a time.</remarks>
/// <param name="was">The earlier state of the collection.</param>
/// <param name="now">The later state.</param>
/// <param name="shared">What differs in the files that boards share.</param>
/// <param name="memo">What is known already.</param>
public sealed class CauseFinder(CollectionSide was, CollectionSide now, IReadOnlyList<InputDifference> shared, JudgeMemo memo)
{
    private readonly Dictionary<InputKind, BoardJudge> judges = [];
    private readonly BoardJudge asItWas = was.Judge(memo);

    /// <summary>The changes of a board, each with its cause.</summary>
    /// <param name="board">The board.</param>
    /// <param name="judged">The board as it is judged now.</param>
    /// <param name="changes">The changes.</param>
    /// <param name="own">What differs in its own record.</param>
    public ImmutableArray<Change> Explain(
        BoardTwice board,
        JudgedBoard judged,
        ImmutableArray<Change> changes,
        IReadOnlyList<InputDifference> own
    )
    {
        if (changes.Length == 0)
        {
            return changes;
        }

        var kinds = Candidates(board, own);
        if (kinds is [var only])
        {
            return [.. changes.Select(change => change with { Cause = new([only], Nearest(change, own, [only])) })];
        }

        var causes = new InputKind?[changes.Length];
        foreach (var kind in kinds)
        {
            if (Array.TrueForAll(causes, cause => cause is not null))
            {
                break;
            }

            var left = BoardComparer.Compare(Judge(board, kind), judged, Earlier(board, kind));
            for (var at = 0; at < changes.Length; at++)
            {
                causes[at] ??= left.Any(changes[at].IsAbout) ? null : kind;
            }
        }

        return
        [
            .. changes.Select(
                (change, at) =>
                {
                    ImmutableArray<InputKind> because = causes[at] is { } cause ? [cause] : kinds;
                    return change with { Cause = new(because, Nearest(change, own, because)) };
                }
            ),
        ];
    }

    // What differs at all for this board. Where nothing seems to, what other boards took of the drawer is left.
    private ImmutableArray<InputKind> Candidates(BoardTwice board, IReadOnlyList<InputDifference> own)
    {
        var designs = new[] { board.Was.Board.Design?.Value, board.Now.Board.Design?.Value };
        var isWrittenOtherwise = !board
            .Was.Found.Select(BoardComparer.Told)
            .Order()
            .SequenceEqual(board.Now.Found.Select(BoardComparer.Told).Order());
        var kinds = own.Select(one => one.Kind)
            .Concat(isWrittenOtherwise ? [InputKind.Record] : [])
            .Concat(shared.Where(one => one.Kind != InputKind.Design || Concerns(one, designs)).Select(one => one.Kind))
            .Concat(was.Today == now.Today ? [] : [InputKind.Day])
            .ToFrozenSet();
        return kinds.Count == 0 ? [InputKind.Stock] : [.. InputKinds.All.Where(kinds.Contains)];
    }

    // The name of a design is that of its file, which a check holds.
    private static bool Concerns(InputDifference one, IEnumerable<string?> designs) =>
        designs.Any(design =>
            design is not null
            && (Path.GetFileNameWithoutExtension(one.Was) == design || Path.GetFileNameWithoutExtension(one.Now) == design)
        );

    private JudgedBoard Judge(BoardTwice board, InputKind kind)
    {
        if (kind == InputKind.Record)
        {
            return asItWas.Judge(board.Was.Board, board.Now.Found);
        }

        if (kind is InputKind.Reading or InputKind.Work or InputKind.Marking)
        {
            return asItWas.Judge(new BoardMix(board.Was.Board, board.Now.Board, board.Entries).Make(kind), board.Was.Found);
        }

        if (!judges.TryGetValue(kind, out var judge))
        {
            judges.Add(kind, judge = was.With(now, kind).Judge(memo));
        }

        return judge.Judge(board.Was.Board, board.Was.Found);
    }

    private static Func<Spot, Spot?> Earlier(BoardTwice board, InputKind kind) =>
        kind is InputKind.Reading or InputKind.Work
            ? new BoardMix(board.Was.Board, board.Now.Board, board.Entries).Earlier(kind)
            : board.Earlier;

    // What is about the same place comes first; what is told of all are the nearest few.
    private ImmutableArray<InputDifference> Nearest(Change change, IReadOnlyList<InputDifference> own, ImmutableArray<InputKind> kinds)
    {
        var all = own.Concat(shared).Where(one => kinds.Contains(one.Kind)).ToArray();
        var near = change.Place is { } place
            ? Array.FindAll(all, one => one.Entry.Entry.Of.Split(' ').Contains(place, StringComparer.Ordinal))
            : [];
        return [.. near.Length > 0 ? near : all];
    }
}
