using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Whether a board is taken as told: its keeper says that what was done before a day stands as it was written down then, and
/// nobody has had it at the bench since.</summary>
public static class ToldBefore
{
    /// <summary>The day before which a board is taken as told; null when it is judged in full.</summary>
    /// <remarks>It is judged in full from its first visit on or after that day, when it came or began to wait since, and while that day
    /// lies ahead: what has not begun excuses nothing.</remarks>
    /// <param name="board">The record.</param>
    /// <param name="collection">What the collection says where the record does not.</param>
    /// <param name="today">The day of the run.</param>
    public static DateOnly? Day(BoardFile board, CollectionFile collection, DateOnly today)
    {
        if ((board.ToldBefore ?? collection.ToldBefore) is not { Value: var day } || day > today)
        {
            return null;
        }

        foreach (var visit in board.Bench)
        {
            if (visit.Date.Value >= day)
            {
                return null;
            }
        }

        foreach (var wait in board.Waiting)
        {
            if (wait.Since.Value >= day || wait.Until?.Value >= day)
            {
                return null;
            }
        }

        return board.Arrived?.Date is { } came && came.Value.Earliest >= day ? null : day;
    }
}
