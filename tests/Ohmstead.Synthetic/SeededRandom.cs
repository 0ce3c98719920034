namespace Ohmstead.Synthetic;

/// <summary>Pseudo-random numbers that are the same in every version of the runtime: SplitMix64 (Steele, Lea and Flood, OOPSLA 2014;
/// constants from memory).</summary>
/// <param name="seed">Where the sequence begins.</param>
public sealed class SeededRandom(ulong seed)
{
    private ulong state = seed;

    /// <summary>A sequence of its own for one thing of a collection, so that it does not depend on how many others there are.</summary>
    /// <param name="seed">The seed of the collection.</param>
    /// <param name="stream">Which kind of thing.</param>
    /// <param name="number">Which one of them.</param>
    public static SeededRandom For(ulong seed, int stream, int number) =>
        new(unchecked((seed * 0xD1342543DE82EF95UL) ^ ((ulong)(uint)stream << 40) ^ (uint)number));

    /// <summary>A whole number from <paramref name="least"/> to <paramref name="most"/>, both included.</summary>
    public int Between(int least, int most) => least + (int)(Next() % (ulong)(most - least + 1));

    /// <summary>A factor in thousandths, from <paramref name="least"/> to <paramref name="most"/>: 950 gives 0.950.</summary>
    public decimal Thousandths(int least, int most) => Between(least, most) / 1000m;

    /// <summary>True in so many of a hundred cases.</summary>
    public bool Chance(int percent) => Between(1, 100) <= percent;

    /// <summary>One of several.</summary>
    public T Pick<T>(IReadOnlyList<T> choices) => choices[Between(0, choices.Count - 1)];

    private ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9UL;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
            return mixed ^ (mixed >> 31);
        }
    }
}
