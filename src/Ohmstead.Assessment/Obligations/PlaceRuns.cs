using System.Globalization;

namespace Ohmstead.Assessment.Obligations;

/// <summary>Names of places, with runs of them told by their ends: C5, C6, C7 and C8 are C5 to C8. No name is in a run that was not
/// given.</summary>
public static class PlaceRuns
{
    private const int Shortest = 3;

    /// <summary>The runs, in the order given; a name that is in none is one of its own.</summary>
    public static IReadOnlyList<(string First, string Last)> Join(IReadOnlyList<string> names)
    {
        var runs = new List<(string, string)>();
        var at = 0;
        while (at < names.Count)
        {
            var end = at;
            while (end + 1 < names.Count && Follows(names[end], names[end + 1]))
            {
                end++;
            }

            if (end - at + 1 < Shortest)
            {
                end = at;
            }

            runs.Add((names[at], names[end]));
            at = end + 1;
        }

        return runs;
    }

    /// <summary>The names in one line.</summary>
    public static string Words(IReadOnlyList<string> names) =>
        string.Join(", ", Join(names).Select(run => run.First == run.Last ? run.First : $"{run.First} to {run.Last}"));

    private static bool Follows(string name, string next)
    {
        var figures = Figures(name);
        return figures > 0
            && figures == Figures(next)
            && name.AsSpan(0, figures).SequenceEqual(next.AsSpan(0, figures))
            && int.TryParse(name.AsSpan(figures), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && next.AsSpan(figures).SequenceEqual((number + 1L).ToString(CultureInfo.InvariantCulture));
    }

    // Where the number behind the letters begins; 0 where there are no letters or no number.
    private static int Figures(string name)
    {
        var figures = name.AsSpan().IndexOfAnyInRange('0', '9');
        return figures < 0 ? 0 : figures;
    }
}
