namespace Ohmstead.Yaml;

/// <summary>The tabs in the indentation of a file, less those that turn out to belong to the lines of a block of text.</summary>
/// <param name="offsets">The offset of the first tab of each line that has one, in order.</param>
internal sealed class IndentationTabs(List<int> offsets)
{
    private readonly List<int> left = [];
    private int next;

    /// <summary>All of them, whatever they belong to.</summary>
    internal IReadOnlyList<int> All => offsets;

    /// <summary>Takes note of a block of text. Blocks come in order, so each tab is looked at once.</summary>
    internal void PassBlock(int from, int to)
    {
        KeepBefore(from);
        while (next < offsets.Count && offsets[next] < to)
        {
            next++;
        }
    }

    /// <summary>Those that belong to no block, once all blocks are known.</summary>
    internal IReadOnlyList<int> Left()
    {
        KeepBefore(int.MaxValue);
        return left;
    }

    private void KeepBefore(int end)
    {
        while (next < offsets.Count && offsets[next] < end)
        {
            left.Add(offsets[next++]);
        }
    }
}
