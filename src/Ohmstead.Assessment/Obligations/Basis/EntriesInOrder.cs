using System.Collections.Immutable;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Obligations.Basis;

/// <summary>The entries of one file in order of place, to find the one that a finding stands in: the last one that begins no
/// later.</summary>
internal sealed class EntriesInOrder
{
    private readonly ImmutableArray<(Spot Spot, string? Of)> entries;

    /// <summary>Takes the entries.</summary>
    /// <param name="entries">Where each begins, and the name of what it is about; null where it is about nothing that has one.</param>
    internal EntriesInOrder(IEnumerable<(Spot Spot, string? Of)> entries) =>
        this.entries = [.. entries.OrderBy(static entry => entry.Spot.Line).ThenBy(static entry => entry.Spot.Column)];

    /// <summary>The names of all, each once.</summary>
    internal IEnumerable<string> Names => entries.Select(static entry => entry.Of).OfType<string>().Distinct(StringComparer.Ordinal);

    /// <summary>What the entry is about in which something stands; null when it is about nothing, or when no entry begins before.</summary>
    internal string? At(Place place)
    {
        var (low, high) = (0, entries.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            var spot = entries[middle].Spot;
            (low, high) = (spot.Line, spot.Column).CompareTo((place.Line, place.Column)) <= 0 ? (middle + 1, high) : (low, middle);
        }

        return low == 0 ? null : entries[low - 1].Of;
    }
}
