using System.Globalization;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>
/// At which of many moments something is tried: a few in a usual run, some more when all tests are asked for, every one in a whole run.
/// </summary>
/// <remarks>A whole run takes an hour on a quiet machine. <c>OHMSTEAD_PART=2/4</c> makes it the second of four parts that run beside each
/// other or one night after the other; together they try every moment once.</remarks>
internal static class Moments
{
    /// <summary>Numbers from 1 to a count: all in a whole run, else some of them evenly, the first and the last among them.</summary>
    /// <param name="count">How many calls there are.</param>
    /// <param name="usual">How many are enough in a usual run.</param>
    /// <param name="all">How many are when all tests are asked for.</param>
    public static IEnumerable<int> Of(int count, int usual, int all) =>
        TestExtent.IsWhole
            ? Share(count, Environment.GetEnvironmentVariable("OHMSTEAD_PART") ?? "1/1")
            : TestExtent.Spread(count, TestExtent.Times(usual, all));

    /// <summary>Those numbers from 1 to a count that belong to a part, such as <c>2/4</c>.</summary>
    internal static IEnumerable<int> Share(int count, string part)
    {
        var numbers = Array.ConvertAll(part.Split('/'), text => int.Parse(text, CultureInfo.InvariantCulture));
        var (mine, parts) = (numbers[0], numbers[1]);
        Assert.InRange(mine, 1, parts);
        return Enumerable.Range(1, count).Where(number => number % parts == mine % parts);
    }
}
