using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families;

/// <summary>The families of parts of a whole collection.</summary>
public static class CollectionFamilies
{
    /// <summary>Every family of which something was measured, the largest share failed first, then by name; those with too few parts for a share last.</summary>
    public static IReadOnlyList<FamilyStatistics> Of(IEnumerable<BoardSummary> boards)
    {
        var counts = new Dictionary<FamilyName, Counting>();
        foreach (var board in boards)
        {
            foreach (var family in board.Families)
            {
                Seen[] lives = [.. family.Lives.Select(Seen.Of)];
                foreach (var level in family.Name.Levels())
                {
                    if (!counts.TryGetValue(level, out var counting))
                    {
                        counts[level] = counting = new Counting();
                    }

                    counting.Add(board, family, lives);
                }
            }
        }

        return
        [
            .. counts.Where(pair => pair.Value.HasSomething)
                .Select(pair => pair.Value.Statistics(pair.Key))
                .OrderByDescending(family => family.Share?.Share ?? -1)
                .ThenBy(family => family.Name.Text, StringComparer.Ordinal),
        ];
    }

    // What one life says, worked out once for all the families that it counts in.
    private readonly record struct Seen(PartLife Life, LifeObservation? Observation, Inspection? FirstLook)
    {
        internal static Seen Of(PartLife life) => new(life, life.Observation(), life.IsOriginal ? life.AtFirstLook() : null);
    }

    private sealed class Counting
    {
        private readonly List<LifeObservation> observations = [];
        private readonly List<Inspection> firstLooks = [];
        private BoardSummary? last;
        private int parts, measured, boards, asFound, later, inCircuit;

        internal bool HasSomething => measured > 0 || inCircuit > 0 || observations.Count > 0;

        internal void Add(BoardSummary board, FamilyOnBoard family, Seen[] lives)
        {
            parts += family.Originals;
            inCircuit += family.FailedInCircuit;
            foreach (var (life, observation, look) in lives)
            {
                if (observation is not null)
                {
                    observations.Add(observation);
                }

                if (!life.IsOriginal)
                {
                    continue;
                }

                measured++;
                if (look is not null)
                {
                    firstLooks.Add(look);
                }

                boards += ReferenceEquals(last, board) ? 0 : 1;
                last = board;
                asFound += life.FailedAsFound ? 1 : 0;
                later += life.Failed is not null && !life.FailedAsFound ? 1 : 0;
            }
        }

        internal FamilyStatistics Statistics(FamilyName name) => new(name, parts, measured, boards, asFound, later, inCircuit, AgesAtFailure.Of(observations)) { FirstLooks = firstLooks };
    }
}
