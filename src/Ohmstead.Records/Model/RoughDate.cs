using System.Globalization;
using Ohmstead.Electronics;

namespace Ohmstead.Records.Model;

/// <summary>A day, a month or a year: as much as people know.</summary>
/// <param name="Year">The year.</param>
/// <param name="Month">The month, or null when only the year is known.</param>
/// <param name="Day">The day, or null when only the month is known.</param>
public readonly record struct RoughDate(int Year, int? Month, int? Day)
{
    /// <summary>The first day it can mean.</summary>
    public DateOnly Earliest => new(Year, Month ?? 1, Day ?? 1);

    /// <summary>The last day it can mean.</summary>
    public DateOnly Latest => Day is { } day ? new(Year, Month!.Value, day) : new DateOnly(Year, Month ?? 12, 1).AddMonths(1).AddDays(-1);

    /// <summary>ISO 8601, as far as known.</summary>
    public override string ToString() =>
        Day is not null ? IsoDate.Text(Earliest)
        : Month is not null ? Earliest.ToString("yyyy-MM", CultureInfo.InvariantCulture)
        : Year.ToString("0000", CultureInfo.InvariantCulture);
}
