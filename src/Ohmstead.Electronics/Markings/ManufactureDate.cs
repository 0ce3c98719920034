using System.Globalization;

namespace Ohmstead.Electronics.Markings;

/// <summary>When a part was made, to the month, the week or the year. It is no evidence of when the part was fitted.</summary>
/// <param name="Year">The year.</param>
/// <param name="Month">The month, 1 to 12, or null.</param>
/// <param name="Week">The week, 1 to 53, or null.</param>
public readonly record struct ManufactureDate(int Year, int? Month = null, int? Week = null)
{
    /// <summary>The first day it can be. Weeks are counted as in ISO 8601; makers' own weeks can differ by some days (common
    /// practice).</summary>
    public DateOnly First =>
        (Month, Week) switch
        {
            ({ } month, _) => new DateOnly(Year, month, 1),
            (_, { } week) => Monday(week),
            _ => new DateOnly(Year, 1, 1),
        };

    /// <summary>The last day it can be.</summary>
    public DateOnly Last =>
        (Month, Week) switch
        {
            ({ } month, _) => new DateOnly(Year, month, DateTime.DaysInMonth(Year, month)),
            (_, { } week) => Monday(week).AddDays(6),
            _ => new DateOnly(Year, 12, 31),
        };

    /// <summary>The date in ISO 8601 form: 1985-05, 1979-W28 or 1985.</summary>
    public override string ToString() =>
        (Month, Week) switch
        {
            ({ } month, _) => string.Create(CultureInfo.InvariantCulture, $"{Year:D4}-{month:D2}"),
            (_, { } week) => string.Create(CultureInfo.InvariantCulture, $"{Year:D4}-W{week:D2}"),
            _ => Year.ToString("D4", CultureInfo.InvariantCulture),
        };

    private DateOnly Monday(int week) =>
        DateOnly.FromDateTime(ISOWeek.ToDateTime(Year, Math.Min(week, ISOWeek.GetWeeksInYear(Year)), DayOfWeek.Monday));
}
