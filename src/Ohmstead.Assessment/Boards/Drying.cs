namespace Ohmstead.Assessment.Boards;

/// <summary>A wash whose drying time is not over yet.</summary>
/// <param name="Place">What was washed.</param>
/// <param name="Since">The day of the wash.</param>
/// <param name="For">The drying time as written.</param>
/// <param name="Until">The first day on which it is certainly over.</param>
public sealed record Drying(string Place, DateOnly Since, string For, DateOnly Until)
{
    // A drying time of more than ten years is a slip of the pen; a day past the calendar's end would be none.
    private const decimal LongestDays = 3_650m;

    /// <summary>Every wash of a board that is still drying on a day, in order of time. Days are all a record knows: what was washed late dries into the next day.</summary>
    public static IReadOnlyList<Drying> Of(BoardAssessment board, DateOnly today) =>
    [
        .. from visit in board.Visits
           from work in visit.Work
           where work.Dry is not null && visit.Date.Value.Year < 9_900
           let until = visit.Date.Value.AddDays((int)Math.Ceiling(Math.Clamp(work.Dry!.Value.Value / 86_400m, 0m, LongestDays)))
           where visit.Date.Value <= today && today < until
           select new Drying((work.Part ?? work.At)?.Value ?? "the board", visit.Date.Value, work.Dry!.Text, until),
    ];
}
