namespace Ohmstead.Report.Drawings;

/// <summary>Where days go on a drawing: equal steps are equal times.</summary>
/// <param name="First">The day at the start.</param>
/// <param name="Last">The day at the end, later than the first.</param>
/// <param name="From">Where the scale starts.</param>
/// <param name="To">Where it ends.</param>
public sealed record TimeScale(DateOnly First, DateOnly Last, decimal From, decimal To)
{
    private const int MostYears = 6;

    /// <summary>Where a day goes; at the end of the scale where it lies beyond.</summary>
    public decimal At(DateOnly day) =>
        StripScale.Short(
            Last == First
                ? From
                : From + ((To - From) * Math.Clamp((decimal)(day.DayNumber - First.DayNumber) / (Last.DayNumber - First.DayNumber), 0m, 1m))
        );

    /// <summary>The first days of years inside, at most six; none where fewer than two begin in it.</summary>
    public IReadOnlyList<DateOnly> Years()
    {
        var (first, last) = (First.DayOfYear == 1 ? First.Year : First.Year + 1, Last.Year);
        if (last - first < 1)
        {
            return [];
        }

        int[] steps = [1, 2, 5, 10, 20, 50, 100, 1000];
        var step = steps.First(step => (last - first) / step < MostYears);
        var years = new List<DateOnly>(MostYears);
        for (var year = (first + step - 1) / step * step; year <= last; year += step)
        {
            years.Add(new DateOnly(year, 1, 1));
        }

        return years;
    }
}
