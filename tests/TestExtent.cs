namespace Ohmstead;

/// <summary>How much of the tests runs. It is said once, where they are started, by the property Tests.</summary>
/// <remarks>
/// <c>dotnet test</c> runs what needs nothing but the SDK, with few samples of each kind; <c>dotnet test -p:Tests=all</c> runs every
/// test, as each change is held against; <c>-p:Tests=whole</c> tries besides each single moment of those that try moments, which takes
/// hours. <c>dotnet run --project tests/Ohmstead.Machine.Tests -p:Tests=all -- -class "*FaultTests"</c> says the same to one project.
/// </remarks>
internal static class TestExtent
{
    /// <summary>What a test says that is left out.</summary>
    public const string LeftOut = "left out of a usual run: dotnet test -p:Tests=all";

    // Directory.Build.targets writes it beside the tests.
    private static readonly string? Asked = AppContext.GetData("Ohmstead.Tests") as string;

    /// <summary>Whether every test is asked for.</summary>
    public static bool IsAll { get; } = Asked is "all" or "whole";

    /// <summary>Whether every moment of every test is asked for.</summary>
    public static bool IsWhole { get; } = Asked is "whole";

    /// <summary>How often something is tried that is never tried out.</summary>
    /// <param name="usual">In a usual run.</param>
    /// <param name="all">When all tests are asked for.</param>
    /// <param name="whole">When every moment is; as often as in all where it is not given.</param>
    public static int Times(int usual, int all, int? whole = null) =>
        IsWhole ? whole ?? all
        : IsAll ? all
        : usual;

    /// <summary>
    /// Of many that are alike, those that are tried in this run: all, or some of them evenly, the first and the last among them.
    /// </summary>
    /// <param name="many">All of them.</param>
    /// <param name="usual">How many are enough in a usual run.</param>
    public static IEnumerable<T> Of<T>(IReadOnlyList<T> many, int usual) =>
        IsAll ? many : Spread(many.Count, usual).Select(number => many[number - 1]);

    /// <summary>
    /// Numbers from 1 to a count: all where there are no more than some, else some of them evenly, the first and the last among them;
    /// where one is enough, the one in the middle.
    /// </summary>
    public static IEnumerable<int> Spread(int count, int some) =>
        count <= some ? Enumerable.Range(1, count)
        : some == 1 ? [(count + 1) / 2]
        : Enumerable.Range(0, some).Select(i => 1 + (int)(i * (long)(count - 1) / (some - 1)));
}
