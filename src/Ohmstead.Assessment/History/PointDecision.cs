namespace Ohmstead.Assessment.History;

/// <summary>Decisions about test points. A part may be kept against its reading, with a reason; what a point shows is shown or not, and
/// nobody decides that. A finding at a point is answered by a decision like any other.</summary>
public static class PointDecision
{
    /// <summary>Whether a decision about a place would change nothing, since it is a test point at which nothing was found.</summary>
    public static bool IsIdle(BoardHistory board, string place)
    {
        if (board.Place(place) is not null)
        {
            return false;
        }

        foreach (var point in board.Points)
        {
            if (point.Name.Value == place)
            {
                return board.Findings.All(finding => finding.Finding.At.Value != place);
            }
        }

        return false;
    }

    /// <summary>Why it changes nothing.</summary>
    public static string Why(string point) =>
        $"{point} is a test point: what it must show is proved or not, and a decision changes nothing of it";

    /// <summary>What to do instead.</summary>
    public static string NextStep(string point) =>
        $"decide about the part that is to blame; where the limit of {point} is wrong for this board, write the right one under points";
}
