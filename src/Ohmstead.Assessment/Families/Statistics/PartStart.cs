using Ohmstead.Electronics.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>
/// The day from which the age of an original part counts, the middle of the time that is known: of its own date code, else of the year of
/// its board, else of the date code or the year of the design.
/// </summary>
internal static class PartStart
{
    // Date codes repeat; older parts than these carry none.
    private const int FirstYear = 1920;

    // Parts lie in a maker's store before they are fitted. Common practice.
    private const int YearsInStore = 3;

    /// <summary>The day, or null when nothing tells it.</summary>
    internal static DateOnly? Find(Part part, BoardFile board, DesignFile? design, DateOnly seen)
    {
        if (part is { FromDesign: null, Values.DateCode: { } own } && IsCode(own.Value, board.Made?.Value.Year, seen.Year, out var coded))
        {
            return coded;
        }

        if (board.Made is { } made)
        {
            return Middle(made.Value);
        }

        return part.Values.DateCode is { } usual && IsCode(usual.Value, design?.Made?.Value.Year, seen.Year, out var ofDesign) ? ofDesign
            : design?.Made is { } year ? Middle(year.Value)
            : null;
    }

    // The day is null when the code can mean several years and the year of the board does not tell which.
    private static bool IsCode(string code, int? made, int seen, out DateOnly? day)
    {
        IReadOnlyList<ManufactureDate> dates = DateCode.Dates(code.AsSpan().Trim(), new YearRange(FirstYear, seen));
        if (dates.Count == 0)
        {
            day = null;
            return false;
        }

        if (made is { } year && !AreOfOneYear(dates))
        {
            dates = [.. dates.Where(date => date.Year >= year - YearsInStore && date.Year <= year)];
        }

        day =
            !AreOfOneYear(dates) ? null
            : dates.Count == 1 ? Between(dates[0].First, dates[0].Last)
            : Middle(new RoughDate(dates[0].Year, null, null));
        return true;
    }

    private static bool AreOfOneYear(IReadOnlyList<ManufactureDate> dates)
    {
        for (var at = 1; at < dates.Count; at++)
        {
            if (dates[at].Year != dates[0].Year)
            {
                return false;
            }
        }

        return dates.Count > 0;
    }

    private static DateOnly Middle(RoughDate date) => Between(date.Earliest, date.Latest);

    private static DateOnly Between(DateOnly first, DateOnly last) => first.AddDays((last.DayNumber - first.DayNumber) / 2);
}
