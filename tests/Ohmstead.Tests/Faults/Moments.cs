namespace Ohmstead.Tests.Faults;

/// <summary>How much is tried: some calls and a few kills in every run of the tests, all where OHMSTEAD_WHOLE is set.</summary>
internal static class Moments
{
    /// <summary>Whether the whole run is asked for.</summary>
    public static bool AreAll { get; } = Environment.GetEnvironmentVariable("OHMSTEAD_WHOLE") is { Length: > 0 };

    /// <summary>Numbers from 1 to a count: all, or some of them evenly, the first and the last among them.</summary>
    /// <param name="count">How many calls there are.</param>
    /// <param name="some">How many are enough in every run.</param>
    public static IEnumerable<int> Of(int count, int some) =>
        AreAll || count <= some
            ? Enumerable.Range(1, count)
            : Enumerable.Range(0, some).Select(i => 1 + (int)(i * (long)(count - 1) / Math.Max(some - 1, 1)));

    /// <summary>How often something is tried that is never tried out.</summary>
    /// <param name="usual">In every run.</param>
    /// <param name="whole">In the whole run.</param>
    public static int Times(int usual, int whole) => AreAll ? whole : usual;
}
