using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Markings;

/// <summary>When a part can have been made, as far as the record tells.</summary>
/// <param name="FirstYear">The first year.</param>
/// <param name="Last">The last day.</param>
/// <param name="Why">Why not later, in words that follow 'since'.</param>
public sealed record DateWindow(int FirstYear, DateOnly Last, string Why)
{
    // Before this year parts carried no codes of the kinds that are read here. Common practice.
    private const int FirstCodes = 1930;

    // A board can be built with parts that lay on the shelf; this long is generous. Common practice.
    private const int YearsOnTheShelf = 20;

    /// <summary>The day from which a part is later than its board; null when nothing tells when the board was made.</summary>
    public DateOnly? MadeBy { get; init; }

    /// <summary>A part that sat on a board when it came: not later than that.</summary>
    public static DateWindow OfBoard(BoardAssessment board, DateOnly today)
    {
        var made = (board.Board.Made ?? board.Design?.Made)?.Value;
        var (last, why) =
            board.Board.Arrived?.Date is { } came ? (came.Value.Latest, $"the board came {When(came)}")
            : board.Visits.Length > 0 ? (board.Visits[0].Date.Value, $"the board was on the bench on {board.Visits[0].Date.Text}")
            : (today, Today(today));
        return new(First(made), last, why) { MadeBy = board.Board.Made?.Value.Latest };
    }

    /// <summary>A part of a design: any unit can have been made until today.</summary>
    public static DateWindow OfDesign(DesignFile design, DateOnly today) =>
        new(
            First(design.Made?.Value),
            today,
            (design.Made is { } made ? $"the design was made {When(made)} and " : string.Empty) + Today(today)
        );

    /// <summary>A lot: not later than it came.</summary>
    public static DateWindow OfLot(Lot lot, DateOnly today) =>
        lot.Received is { } came ? new(FirstCodes, came.Value.Latest, $"the lot came {When(came)}") : new(FirstCodes, today, Today(today));

    /// <summary>Whether a date lies inside.</summary>
    public bool Holds(ManufactureDate date) => date.Year >= FirstYear && date.First <= Last;

    private static int First(RoughDate? made) => made is { } known ? Math.Max(FirstCodes, known.Year - YearsOnTheShelf) : FirstCodes;

    private static string When(Written<RoughDate> date) => (date.Value.Day is null ? "in " : "on ") + date.Text;

    /// <summary>What day it is, in words that follow 'since'.</summary>
    internal static string Today(DateOnly today) => $"today is {IsoDate.Text(today)}";
}
