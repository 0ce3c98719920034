namespace Ohmstead.Records.Text;

/// <summary>Counts code points between places of a text that has surrogate pairs, at the same cost however long its lines are.</summary>
internal sealed class SurrogateCount
{
    private const int Block = 1024;

    private readonly string text;

    // How many low surrogates stand before the block of each number.
    private readonly int[] before;

    internal SurrogateCount(string text)
    {
        this.text = text;
        before = new int[(text.Length / Block) + 1];
        for (var block = 1; block < before.Length; block++)
        {
            before[block] = before[block - 1] + Low((block - 1) * Block, block * Block);
        }
    }

    /// <summary>How many code points stand between two offsets.</summary>
    internal int Between(int from, int to) => Before(to) - Before(from);

    /// <summary>The offset that lies some code points behind another, or the end of the text.</summary>
    internal int Behind(int from, int codePoints)
    {
        if (codePoints <= 0)
        {
            return from;
        }

        // The last block that begins no later than the place that is looked for.
        var wanted = Before(from) + codePoints;
        var (low, high) = (from / Block, before.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = (middle * Block) - before[middle] <= wanted ? (middle, high) : (low, middle - 1);
        }

        var at = Math.Max(from, low * Block);
        for (var count = Before(at); at < text.Length && (count < wanted || char.IsLowSurrogate(text[at])); at++)
        {
            count += char.IsLowSurrogate(text[at]) ? 0 : 1;
        }

        return at;
    }

    private int Before(int offset) => offset - before[offset / Block] - Low(offset / Block * Block, offset);

    private int Low(int from, int to)
    {
        var count = 0;
        foreach (var unit in text.AsSpan(from, to - from))
        {
            count += char.IsLowSurrogate(unit) ? 1 : 0;
        }

        return count;
    }
}
