using Ohmstead.Electronics.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Families;

/// <summary>The day from which the age of an original part counts: its own date code, else the year of its board, else the date code or the year of the design.</summary>
/// <param name="Day">The middle of the time that is known, or null when nothing is.</param>
/// <param name="IsToTheYear">True when no more than the year is known.</param>
internal readonly record struct PartStart(DateOnly? Day, bool IsToTheYear)
{
    // Date codes repeat; older parts than these carry none.
    private const int FirstYear = 1920;

    // Parts lie in a maker's store before they are fitted. Common practice.
    private const int YearsInStore = 3;

    private static readonly PartStart Unknown = new(null, false);

    internal static PartStart Of(Part part, BoardFile board, DesignFile? design, DateOnly seen)
    {
        if (part is { FromDesign: null, Values.DateCode: { } own } && FromCode(own.Value, board.Made?.Value.Year, seen.Year) is { } coded)
        {
            return coded;
        }

        if (board.Made is { } made)
        {
            return Middle(made.Value);
        }

        return part.Values.DateCode is { } usual && FromCode(usual.Value, design?.Made?.Value.Year, seen.Year) is { } ofDesign ? ofDesign
            : design?.Made is { } year ? Middle(year.Value)
            : Unknown;
    }

    // Null when the text is no date code at all; unknown when it can mean several years and the year of the board does not tell which.
    private static PartStart? FromCode(string code, int? made, int seen)
    {
        if (!DateCode.Parse(code.Trim(), new YearRange(FirstYear, seen)).Is(out var marking, out _))
        {
            return null;
        }

        ManufactureDate[] dates = [.. marking.Readings.Select(reading => reading.Value)];
        if (made is { } year && dates.Select(date => date.Year).Distinct().Count() > 1)
        {
            dates = [.. dates.Where(date => date.Year >= year - YearsInStore && date.Year <= year)];
        }

        return dates.Select(date => date.Year).Distinct().Count() != 1 ? Unknown
            : dates is [var only] ? new(Between(only.First, only.Last), only is { Month: null, Week: null })
            : Middle(new RoughDate(dates[0].Year, null, null));
    }

    private static PartStart Middle(RoughDate date) => new(Between(date.Earliest, date.Latest), date.Month is null);

    private static DateOnly Between(DateOnly first, DateOnly last) => first.AddDays((last.DayNumber - first.DayNumber) / 2);
}
