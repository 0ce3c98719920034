using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Writing;

/// <summary>Whether something may have been done to a board on a day. Whether it was away on that day is a check's to say.</summary>
internal static class LateDay
{
    /// <summary>That a day has not come.</summary>
    public static string NotYet(DateOnly day, DateOnly today) => $"{IsoDate.Text(day)} has not come yet: today is {IsoDate.Text(today)}";

    /// <summary>Why nothing can be entered of that day, in words; null when it can.</summary>
    /// <param name="board">The board.</param>
    /// <param name="day">The day.</param>
    /// <param name="today">The day of this run.</param>
    /// <param name="saysOrder">True where it is said where in that day it came.</param>
    public static string? WhyNot(BoardFile board, DateOnly day, DateOnly today, bool saysOrder) =>
        day > today ? NotYet(day, today)
        : day == today ? (saysOrder ? "--came is for an entry of an earlier day; say that day with --on" : null)
        : board.Arrived?.Date is { } came && day < came.Value.Earliest
            ? $"on {IsoDate.Text(day)} {board.Id.Value} was not here: it came on {came.Text}"
        : null;
}
