using System.Collections;

namespace Ohmstead.Assessment.Fit;

/// <summary>Lots for a place, the best first. Each is put into words when it is looked at: of hundreds that come near a page tells
/// four.</summary>
internal sealed class RankedLots : IReadOnlyList<FitCandidate>
{
    private readonly (JudgedLots Judged, DrawerLot Lot)[] ranked;

    /// <summary>Puts lots in order.</summary>
    internal RankedLots(IEnumerable<JudgedLots> judged)
    {
        JudgedLots[] sorted = [.. judged.OrderBy(one => one.Rank)];
        ranked = new (JudgedLots, DrawerLot)[sorted.Sum(one => one.Lots.Count)];
        var end = 0;
        for (int at = 0, next; at < sorted.Length; at = next)
        {
            var start = end;
            for (next = at; next < sorted.Length && sorted[next].Rank == sorted[at].Rank; next++)
            {
                foreach (var lot in sorted[next].Lots)
                {
                    ranked[end++] = (sorted[next], lot);
                }
            }

            // Those of one rank by name; lots that are alike are in that order already.
            if (next > at + 1)
            {
                Array.Sort(ranked, start, end - start, ByName.Instance);
            }
        }
    }

    /// <inheritdoc/>
    public int Count => ranked.Length;

    /// <inheritdoc/>
    public FitCandidate this[int index] => ranked[index].Judged.CandidateFor(ranked[index].Lot);

    /// <inheritdoc/>
    public IEnumerator<FitCandidate> GetEnumerator() => ranked.Select(one => one.Judged.CandidateFor(one.Lot)).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private sealed class ByName : IComparer<(JudgedLots Judged, DrawerLot Lot)>
    {
        internal static ByName Instance { get; } = new();

        public int Compare((JudgedLots Judged, DrawerLot Lot) x, (JudgedLots Judged, DrawerLot Lot) y) =>
            string.CompareOrdinal(x.Lot.Lot.Id.Value, y.Lot.Lot.Id.Value);
    }
}
