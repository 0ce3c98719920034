using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Where a part sits, or sat, that people rely on not to be hurt.</summary>
internal sealed class SafetyPlaces
{
    private readonly HashSet<string> places = new(StringComparer.Ordinal);
    private readonly IReadOnlyDictionary<string, Lot> lots;

    internal SafetyPlaces(ImmutableArray<BenchVisit> visits, IReadOnlyDictionary<string, Part> parts, IReadOnlyDictionary<string, Lot> lots)
    {
        this.lots = lots;
        places.UnionWith(parts.Values.Where(static part => PartKind.IsSafetyRelevant(part.Values)).Select(static part => part.Ref.Value));
        foreach (var work in visits.SelectMany(static visit => visit.Work))
        {
            if (
                (work.Part ?? work.At) is { } at
                && ((work.NewPart is { } put && PartKind.IsSafetyRelevant(put)) || IsSafetyRelevant(work.Lot))
            )
            {
                places.Add(at.Value);
            }
        }
    }

    /// <summary>Whether a reading was taken of such a part, or at such a place.</summary>
    internal bool Has(Reading reading) => (reading.Part is { } part && places.Contains(part.Value)) || IsSafetyRelevant(reading.Lot);

    private bool IsSafetyRelevant(Written<string>? lot) =>
        lot is not null && lots.TryGetValue(lot.Value, out var known) && PartKind.IsSafetyRelevant(known.Values);
}
