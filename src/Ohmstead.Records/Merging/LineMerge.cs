using System.Collections.Immutable;

namespace Ohmstead.Records.Merging;

/// <summary>Merges two changes of one text line by line, as is usual for prose: what one side changed is taken, what both changed in
/// different ways is a conflict.</summary>
internal static class LineMerge
{
    /// <summary>Merges.</summary>
    /// <param name="before">The text that both began from.</param>
    /// <param name="one">The text of the first.</param>
    /// <param name="other">That of the second.</param>
    internal static ImmutableArray<Stretch> Merge(string before, string one, string other)
    {
        if (one == other || other == before)
        {
            return [new(one)];
        }

        if (one == before)
        {
            return [new(other)];
        }

        var (old, first, second) = (Lines.Of(before), Lines.Of(one), Lines.Of(other));
        var (ofFirst, ofSecond) = (Lines.Match(old, first), Lines.Match(old, second));
        var merged = ImmutableArray.CreateBuilder<Stretch>();
        var (at, here, there) = (0, 0, 0);
        while (at < old.Length || here < first.Length || there < second.Length)
        {
            var next = at;
            while (next < old.Length && (ofFirst[next] < 0 || ofSecond[next] < 0))
            {
                next++;
            }

            var (toHere, toThere) = next < old.Length ? (ofFirst[next], ofSecond[next]) : (first.Length, second.Length);
            Settle(merged, string.Concat(old[at..next]), first[here..toHere], second[there..toThere]);
            if (next < old.Length)
            {
                merged.Add(new(first[toHere]));
                (toHere, toThere, next) = (toHere + 1, toThere + 1, next + 1);
            }

            (at, here, there) = (next, toHere, toThere);
        }

        return merged.ToImmutable();
    }

    private static void Settle(ImmutableArray<Stretch>.Builder merged, string before, string[] first, string[] second)
    {
        var (one, other) = (string.Concat(first), string.Concat(second));
        if (one == other || other == before)
        {
            Add(merged, new(one));
            return;
        }

        if (one == before)
        {
            Add(merged, new(other));
            return;
        }

        // Lines at both ends that both have alike are no conflict.
        var (start, end) = (0, 0);
        while (start < first.Length && start < second.Length && first[start] == second[start])
        {
            start++;
        }

        while (end < first.Length - start && end < second.Length - start && first[^(end + 1)] == second[^(end + 1)])
        {
            end++;
        }

        Add(merged, new(string.Concat(first[..start])));
        merged.Add(new(string.Concat(first[start..^end])) { Other = string.Concat(second[start..^end]) });
        Add(merged, new(string.Concat(first[^end..])));
    }

    private static void Add(ImmutableArray<Stretch>.Builder merged, Stretch stretch)
    {
        if (stretch.Text.Length > 0)
        {
            merged.Add(stretch);
        }
    }
}

/// <summary>A stretch of a merged text.</summary>
/// <param name="Text">What stands there; where two contradict each other, what the first says.</param>
internal sealed record Stretch(string Text)
{
    /// <summary>What the second says where the two contradict each other, else null.</summary>
    internal string? Other { get; init; }
}
