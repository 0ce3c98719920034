using Ohmstead.Assessment.Boards;

namespace Ohmstead.Writing;

/// <summary>A rail that the record has not: the nearest by its letters is another rail, with another voltage.</summary>
internal static class OtherRail
{
    // More names in one line are not read to their end.
    private const int MostListed = 8;

    /// <summary>What to tell of it; null where the name is no rail, or the nearest is the same rail spelt otherwise.</summary>
    /// <param name="board">The board.</param>
    /// <param name="name">The name that it has not.</param>
    /// <param name="near">The nearest that it has.</param>
    public static string? Told(BoardAssessment board, string name, string? near)
    {
        string[] points = [.. board.Points.Select(point => point.Name.Value)];
        if (near is null || !points.Contains(near, StringComparer.Ordinal) || Figures(name).Length == 0 || IsSame(name, near))
        {
            return null;
        }

        var listed = string.Join(", ", points.Take(MostListed)) + (points.Length > MostListed ? " and others" : string.Empty);
        var id = board.Board.Id.Value;
        return $"{id} has no point '{name}'; its points are {listed}; write the one that was measured, or add it first: "
            + $"ohmstead add point {id} {name}";
    }

    // 15V for +15V is the same rail, and -15V is not.
    private static bool IsSame(string name, string near) =>
        Figures(name) == Figures(near) && (name[0] == near[0] || !IsSign(name[0]) || !IsSign(near[0]));

    private static bool IsSign(char first) => first is '+' or '-';

    private static string Figures(string name) => string.Concat(name.Where(letter => char.IsAsciiDigit(letter) || letter == '.'));
}
