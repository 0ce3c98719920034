using Ohmstead.Assessment.Boards;

namespace Ohmstead.Publishing;

/// <summary>The latest visits of all boards; of the others nothing is kept. Told from several workers.</summary>
internal sealed class LatestChanges(int most)
{
    private readonly Lock gate = new();
    private List<Change> latest = [];

    /// <summary>Takes the visits of a board.</summary>
    public void Add(BoardAssessment board)
    {
        Change[] changes = [.. Change.Of(board).Order().Take(most)];
        lock (gate)
        {
            latest.AddRange(changes);
            if (latest.Count > 4 * most)
            {
                latest = [.. latest.Order().Take(most)];
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
