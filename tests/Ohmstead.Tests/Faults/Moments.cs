namespace Ohmstead.Tests.Faults;

/// <summary>
/// At which of many moments something is tried: a few in a usual run, some more when all tests are asked for, every one in a whole run.
/// </summary>
internal static class Moments
{
    /// <summary>Numbers from 1 to a count: all in a whole run, else some of them evenly, the first and the last among them.</summary>
    /// <param name="count">How many calls there are.</param>
    /// <param name="usual">How many are enough in a usual run.</param>
    /// <param name="all">How many are when all tests are asked for.</param>
    public static IEnumerable<int> Of(int count, int usual, int all) =>
        TestExtent.Spread(count, TestExtent.Times(usual, all, int.MaxValue));
}
