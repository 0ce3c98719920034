using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families;

/// <summary>Counts what is known of one family, board after board. The same age comes by the thousand, so what is known is counted and not
/// listed.</summary>
internal sealed class FamilyCount
{
    private readonly OrderedDictionary<LifeObservation, int> known = [];
    private readonly OrderedDictionary<double, (int Bad, int Looked)> firstLooks = [];
    private BoardSummary? last;
    private int parts,
        measured,
        boards,
        asFound,
        later,
        inCircuit;

    /// <summary>True when something was measured.</summary>
    internal bool HasSomething => measured > 0 || inCircuit > 0 || known.Count > 0;

    /// <summary>Counts the parts of a board.</summary>
    internal void Add(int originals, int failedInCircuit)
    {
        parts += originals;
        inCircuit += failedInCircuit;
    }

    /// <summary>Counts the life of one part.</summary>
    /// <param name="board">Where it sits or sat; the lives of one board come one after the other.</param>
    /// <param name="life">The life.</param>
    /// <param name="observation">What it says about the age at failure, or null.</param>
    /// <param name="firstLook">The age of an original at its first look, or null.</param>
    internal void Add(BoardSummary board, ObservedLife life, LifeObservation? observation, double? firstLook)
    {
        if (observation is { } seen)
        {
            if (!known.TryAdd(seen, 1, out var at))
            {
                known.SetAt(at, known.GetAt(at).Value + 1);
            }
        }

        if (!life.IsOriginal)
        {
            return;
        }

        measured++;
        if (firstLook is { } age)
        {
            var bad = life.FailedAsFound ? 1 : 0;
            if (!firstLooks.TryAdd(age, (bad, 1), out var at))
            {
                var before = firstLooks.GetAt(at).Value;
                firstLooks.SetAt(at, (before.Bad + bad, before.Looked + 1));
            }
        }

        boards += ReferenceEquals(last, board) ? 0 : 1;
        last = board;
        asFound += life.FailedAsFound ? 1 : 0;
        later += life.Failed is not null && !life.FailedAsFound ? 1 : 0;
    }

    /// <summary>What was counted.</summary>
    internal FamilyStatistics Statistics(FamilyName name) =>
        new(
            name,
            parts,
            measured,
            boards,
            asFound,
            later,
            inCircuit,
            AgesAtFailure.Compute([.. known.Select(pair => new LikeItems(pair.Key, pair.Value))])
        )
        {
            FirstLooks = [.. firstLooks.Select(pair => new Inspection(pair.Key, pair.Value.Bad, pair.Value.Looked))],
        };
}
