using System.Globalization;
using CsCheck;

namespace Ohmstead;

/// <summary>Samples that are the same at each run. They stand nearer to the tests than those of the library, so <c>Sample</c> in a test
/// means these.</summary>
/// <remarks>
/// The library takes a seed for its first sample only and draws all others from the clock. Here each sample has a seed of its own, and all
/// these seeds follow from one number. OHMSTEAD_SEED sets another number, OHMSTEAD_SAMPLES that many times as many samples, CsCheck_Seed
/// repeats the one sample that a failure tells. Where a test asks for hundreds, a usual run takes a thirtieth of them, and at
/// least three hundred.
/// </remarks>
internal static class FixedSamples
{
    private const long Usual = 100;
    private const long ShareOfMany = 30;
    private const long EnoughOfMany = 300;
    private const int SmallerOnes = 20_000;
    private static readonly ulong Seed = Number("OHMSTEAD_SEED") ?? 20260314;
    private static readonly long Times = (long)(Number("OHMSTEAD_SAMPLES") ?? 1);

    internal static void Sample<T>(this Gen<T> gen, Action<T> assert, long iter = Usual) =>
        Each(iter, (seed, count) => Check.Sample(gen, assert, seed: seed, iter: count, threads: 1));

    internal static void Sample<T>(this Gen<T> gen, Func<T, bool> holds, long iter = Usual) =>
        Each(iter, (seed, count) => Check.Sample(gen, holds, seed: seed, iter: count, threads: 1));

    internal static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> assert, long iter = Usual) =>
        gen.Sample(both => assert(both.Item1, both.Item2), iter);

    internal static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, long iter = Usual) =>
        gen.Sample(both => holds(both.Item1, both.Item2), iter);

    internal static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> assert, long iter = Usual) =>
        gen.Sample(all => assert(all.Item1, all.Item2, all.Item3), iter);

    internal static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, long iter = Usual) =>
        gen.Sample(all => holds(all.Item1, all.Item2, all.Item3), iter);

    internal static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> assert, long iter = Usual) =>
        gen.Sample(all => assert(all.Item1, all.Item2, all.Item3, all.Item4), iter);

    internal static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, long iter = Usual) =>
        gen.Sample(all => holds(all.Item1, all.Item2, all.Item3, all.Item4), iter);

    private static void Each(long count, Action<string, long> sample)
    {
        if (Check.Seed is { } one)
        {
            sample(one, 1);
            return;
        }

        var asked = TestExtent.IsAll ? count : Math.Min(count, Math.Max(EnoughOfMany, count / ShareOfMany));
        var seeds = new PCG(1, Seed);
        for (var left = asked * Times; left > 0; left--)
        {
            var seed = new PCG(1, seeds.Next64()).ToString();
            try
            {
                sample(seed, 1);
            }
            catch (CsCheckException)
            {
                // What is told is the smallest sample that fails; where none smaller is found, this one.
                sample(seed, SmallerOnes);
                throw;
            }
        }
    }

    private static ulong? Number(string name) =>
        ulong.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
