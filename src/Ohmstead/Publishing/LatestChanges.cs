using Ohmstead.Assessment.Boards;

namespace Ohmstead.Publishing;

/// <summary>The latest visits of all boards; of the others nothing is kept. Told from several workers.</summary>
internal sealed class LatestChanges(int most)
{
    private readonly Lock gate = new();
    private List<Change> latest = [];

    // The day before which no visit can be among the latest any more.
    private int since = DateOnly.MinValue.DayNumber;

    /// <summary>Takes the visits of a board.</summary>
    public void Add(BoardAssessment board)
    {
        // Visits are in order of time, and most boards were seen last too long ago.
        if (board.Visits.Length == 0 || board.Visits[^1].Date.Value.DayNumber < Volatile.Read(ref since))
        {
            return;
        }

        Change[] changes = [.. Change.LastOf(board, most)];
        lock (gate)
        {
            latest.AddRange(changes);
            if (latest.Count > 4 * most)
            {
                latest = [.. latest.Order().Take(most)];
                Volatile.Write(ref since, latest[^1].Date.DayNumber);
            }
        }
    }

    /// <summary>The latest first.</summary>
    public IReadOnlyList<Change> All()
    {
        lock (gate)
        {
            return [.. latest.Order().Take(most)];
        }
    }
}
