namespace Ohmstead.Electronics.Markings;

/// <summary>The years in which a part can have been made, first and last included. A date code repeats every 4, 10, 20 or 100 years; this
/// decides.</summary>
/// <param name="First">The first year.</param>
/// <param name="Last">The last year.</param>
public readonly record struct YearRange(int First, int Last)
{
    /// <summary>Whether the year is in the range.</summary>
    public bool Contains(int year) => year >= First && year <= Last;

    /// <summary>The years of the range that leave a remainder when divided by a period, the earliest first.</summary>
    internal IEnumerable<int> Every(int period, int remainder)
    {
        var first = Math.Max(First, 1);
        for (var year = first + ((remainder - (first % period) + period) % period); year <= Math.Min(Last, 9999); year += period)
        {
            yield return year;
        }
    }
}
