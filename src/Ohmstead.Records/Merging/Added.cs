using System.Collections.Immutable;

namespace Ohmstead.Records.Merging;

/// <summary>What two people added to one list, and how that stands together.</summary>
/// <param name="rule">The list.</param>
/// <param name="first">All items of the first, and the places of those that are new.</param>
/// <param name="second">All items of the second, and the places of those that are new.</param>
internal sealed class Added(ListRule rule, (ImmutableArray<Piece> Items, int[] New) first, (ImmutableArray<Piece> Items, int[] New) second)
{
    private readonly ImmutableArray<Piece> one = first.Items;
    private readonly ImmutableArray<Piece> other = second.Items;
    private readonly int[] newOfOne = first.New;
    private readonly int[] newOfOther = second.New;
    private readonly Dictionary<int, Piece> paired = [];
    private readonly HashSet<int> taken = [];
    private readonly HashSet<string> told = new(StringComparer.Ordinal);

    /// <summary>The list.</summary>
    internal ListRule Rule => rule;

    /// <summary>All items of the first.</summary>
    internal ImmutableArray<Piece> One => one;

    /// <summary>All items of the second.</summary>
    internal ImmutableArray<Piece> Other => other;

    /// <summary>Makes one item of two.</summary>
    internal void Pair(int mine, int theirs, Piece both)
    {
        paired[mine] = both;
        taken.Add(theirs);
    }

    /// <summary>Whether an item of the second was made one with an item of the first.</summary>
    internal bool IsTaken(int at) => taken.Contains(at);

    /// <summary>Whether a day was told already; it is from now on.</summary>
    internal bool IsTold(string day) => !told.Add(day);

    /// <summary>The visits of a side on a day that are new and its own.</summary>
    internal ImmutableArray<Piece> OfDay(string day, bool isOther) =>
        [
            .. (isOther ? newOfOther : newOfOne)
                .Where(at => !(isOther ? taken.Contains(at) : paired.ContainsKey(at)))
                .Select(at => (isOther ? other : one)[at])
                .Where(visit => visit.TextAt("date") == day),
        ];

    /// <summary>New items that stand behind the same one, in the order of their days, else those of one side behind those of the other;
    /// whichever side is the first, it is the same order.</summary>
    internal IEnumerable<NewItem> InOrder(int[] ofFirst, int[] ofSecond)
    {
        var mine = new Queue<NewItem>(
            ofFirst.Select(at =>
                paired.TryGetValue(at, out var both) ? new NewItem(both, IsOfBoth: true) : new NewItem(one[at], IsOfBoth: false)
            )
        );
        var theirs = new Queue<NewItem>(ofSecond.Select(at => new NewItem(other[at], IsOfBoth: false)));
        while (mine.Count > 0 && theirs.Count > 0)
        {
            if (rule.Day is not null)
            {
                yield return (Compare(mine.Peek().Piece, theirs.Peek().Piece) <= 0 ? mine : theirs).Dequeue();
                continue;
            }

            var before = string.CompareOrdinal(mine.Peek().Piece.Meaning, theirs.Peek().Piece.Meaning) <= 0 ? mine : theirs;
            while (before.TryDequeue(out var item))
            {
                yield return item;
            }
        }

        foreach (var item in mine.Concat(theirs))
        {
            yield return item;
        }
    }

    private int Compare(Piece piece, Piece another)
    {
        var byDay = string.CompareOrdinal(piece.TextAt(rule.Day!), another.TextAt(rule.Day!));
        var byPerson = string.CompareOrdinal(piece.TextAt("by"), another.TextAt("by"));
        return byDay != 0 ? byDay
            : byPerson != 0 ? byPerson
            : string.CompareOrdinal(piece.Meaning, another.Meaning);
    }
}

/// <summary>An item that is new in a list.</summary>
/// <param name="Piece">The item.</param>
/// <param name="IsOfBoth">Whether both sides have it.</param>
internal sealed record NewItem(Piece Piece, bool IsOfBoth);
