using System.Collections.Immutable;

namespace Ohmstead.Assessment.Years;

/// <summary>The day a year ago, counted among the days of a drawing and told apart from them.</summary>
/// <param name="Before">The collection a year ago, with what was done since; null when there was none.</param>
/// <param name="Points">The points of the other days; what was done up to a year ago belongs to the one after it.</param>
public sealed record PastYear(PastPoint? Before, ImmutableArray<PastPoint> Points)
{
    /// <summary>The days to count.</summary>
    /// <param name="days">Those of the drawing, the last one today.</param>
    public static ImmutableArray<DateOnly> With(ImmutableArray<DateOnly> days) =>
        days.Length == 0 || days[^1].Year == 1 ? days : [.. days.Append(Ago(days)).Distinct().Order()];

    /// <summary>Tells the points apart.</summary>
    /// <param name="points">What was counted on the days.</param>
    /// <param name="days">Those of the drawing.</param>
    public static PastYear Apart(ImmutableArray<PastPoint> points, ImmutableArray<DateOnly> days)
    {
        if (points.Length == 0)
        {
            return new(null, points);
        }

        var at = points.Select(point => point.Day).ToImmutableArray().IndexOf(Ago(days));
        if (at < 0)
        {
            return new(null, points);
        }

        var since = points[(at + 1)..].Aggregate(default(BenchCount), (sum, point) => sum + point.Work);
        var before = points[at] with { Work = since };
        return new(
            before,
            days.Contains(before.Day)
                ? points
                : points.RemoveAt(at).SetItem(at, points[at + 1] with { Work = points[at].Work + points[at + 1].Work })
        );
    }

    private static DateOnly Ago(ImmutableArray<DateOnly> days) => days[^1].AddYears(-1);
}
