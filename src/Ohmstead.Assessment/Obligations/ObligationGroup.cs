using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations;

/// <summary>What a board has of one kind of obligation.</summary>
/// <param name="Rule">The kind, and what it asks.</param>
/// <param name="Open">What nothing meets yet.</param>
/// <param name="Met">What is met.</param>
/// <param name="Excused">What does not apply.</param>
public sealed record ObligationGroup(
    IObligationRule Rule,
    ImmutableArray<Obligation> Open,
    ImmutableArray<Obligation> Met,
    ImmutableArray<Obligation> Excused
)
{
    /// <summary>The obligations by kind, in the order of the catalogue; a kind of which there is none is left out.</summary>
    public static IReadOnlyList<ObligationGroup> Group(ImmutableArray<Obligation> obligations)
    {
        var byKind = obligations.ToLookup(one => one.Kind, StringComparer.Ordinal);
        return
        [
            .. ObligationCatalogue
                .All.Where(rule => byKind.Contains(rule.Kind))
                .Select(rule => new ObligationGroup(
                    rule,
                    [.. byKind[rule.Kind].Where(one => one.Standing == ObligationStanding.Open)],
                    [.. byKind[rule.Kind].Where(one => one.Standing == ObligationStanding.Met)],
                    [.. byKind[rule.Kind].Where(one => one.Standing == ObligationStanding.DoesNotApply)]
                )),
        ];
    }
}
