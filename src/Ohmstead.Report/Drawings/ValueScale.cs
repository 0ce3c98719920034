namespace Ohmstead.Report.Drawings;

/// <summary>
/// Where values of one quantity go on a drawing. Equal steps are equal amounts, from zero where that shows no less; values that span more
/// than a factor of thirty and are all above zero take a scale of decades instead, where equal steps are equal factors.
/// </summary>
public sealed class ValueScale
{
    private const decimal Span = 30m;
    private const int MostTicks = 5;
    private const decimal Smallest = 1e-20m;
    private const decimal Largest = 1e20m;

    private readonly decimal first;
    private readonly decimal pixels;

    private ValueScale(decimal low, decimal high, bool isDecades, IReadOnlyList<decimal> ticks, decimal first, decimal last)
    {
        (Low, High, IsDecades, Ticks) = (low, high, isDecades, ticks);
        (this.first, pixels) = (first, last - first);
    }

    /// <summary>The value at the start.</summary>
    public decimal Low { get; }

    /// <summary>The value at the end.</summary>
    public decimal High { get; }

    /// <summary>True when equal steps are equal factors.</summary>
    public bool IsDecades { get; }

    /// <summary>Round values inside, at most five, to be written beside the scale.</summary>
    public IReadOnlyList<decimal> Ticks { get; }

    /// <summary>Whether all values can be drawn: there are some, and none is of a size that no bench knows.</summary>
    public static bool Holds(IReadOnlyList<decimal> values) =>
        values.Count > 0 && values.All(value => value == 0m || Math.Abs(value) is >= Smallest and <= Largest);

    /// <summary>A scale that holds all values.</summary>
    /// <param name="values">The values, such that <see cref="Holds"/> is true.</param>
    /// <param name="first">Where the scale starts on the drawing.</param>
    /// <param name="last">Where it ends; less than <paramref name="first"/> for one that goes up the page.</param>
    public static ValueScale For(IReadOnlyList<decimal> values, decimal first, decimal last)
    {
        var (least, most) = (values.Min(), values.Max());
        if (least > 0m && most / Span >= least)
        {
            var (low, high) = (
                PowerOfTen((int)Math.Floor(Math.Log10((double)least))),
                PowerOfTen((int)Math.Ceiling(Math.Log10((double)most)))
            );
            return new(low, high, true, Decades(low, high), first, last);
        }

        // Values that differ by less than a millionth are drawn as one.
        var room = (most - least) / 10m;
        var size = Math.Max(Math.Abs(least), Math.Abs(most));
        var (from, to) =
            room <= size / 10_000_000m ? (least - Math.Max(size / 10m, Smallest), most + Math.Max(size / 10m, Smallest))
            : least >= 0m && least < most / 3m ? (0m, most + room)
            : (least - room, most + room);
        return new(from, to, false, Round(from, to), first, last);
    }

    /// <summary>Where a value goes; at the end of the scale where it lies beyond.</summary>
    public decimal At(decimal value) =>
        value <= Low ? first
        : value >= High ? first + pixels
        : StripScale.Short(
            first
                + (
                    pixels
                    * (
                        IsDecades
                            ? (decimal)(
                                (Math.Log10((double)value) - Math.Log10((double)Low)) / (Math.Log10((double)High) - Math.Log10((double)Low))
                            )
                            : (value - Low) / (High - Low)
                    )
                )
        );

    private static decimal PowerOfTen(int power)
    {
        var value = 1m;
        for (var step = 0; step < Math.Abs(power); step++)
        {
            value = power > 0 ? value * 10m : value / 10m;
        }

        return value;
    }

    private static List<decimal> Decades(decimal low, decimal high)
    {
        var ticks = new List<decimal>();
        for (var tick = low; tick <= high; tick *= 10m)
        {
            ticks.Add(tick);
        }

        // Of many decades every second or third is written.
        var step = (ticks.Count + MostTicks - 1) / MostTicks;
        return [.. ticks.Where((_, index) => index % step == 0)];
    }

    // Steps of 1, 2 or 5 times a power of ten, the smallest that gives five or fewer.
    private static List<decimal> Round(decimal from, decimal to)
    {
        var power = PowerOfTen((int)Math.Floor(Math.Log10((double)(to - from))) - 1);
        foreach (var step in new[] { power, 2m * power, 5m * power, 10m * power, 20m * power })
        {
            var start = Math.Ceiling(from / step) * step;
            if (start + (MostTicks * step) > to)
            {
                var ticks = new List<decimal>(MostTicks);
                for (var tick = start; tick <= to; tick += step)
                {
                    ticks.Add(tick);
                }

                return ticks;
            }
        }

        return [from, to];
    }
}
