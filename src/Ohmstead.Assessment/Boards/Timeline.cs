using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>What sat in each place of a board at each visit. Readings of a visit come before its work unless they were taken as left.</summary>
public sealed class Timeline
{
    private readonly Dictionary<string, List<(int Order, BenchVisit Visit, WorkEntry Work)>> changes = new(StringComparer.Ordinal);

    private readonly Dictionary<string, (int Order, Decision Decision)> decisions = new(StringComparer.Ordinal);

    internal Timeline(ImmutableArray<BenchVisit> visits, IReadOnlyDictionary<string, Part> parts)
    {
        for (var order = 0; order < visits.Length; order++)
        {
            foreach (var decision in visits[order].Decided)
            {
                foreach (var named in new[] { decision.At, decision.Part }.OfType<Written<string>>())
                {
                    decisions[named.Value] = (order, decision);
                }
            }

            foreach (var work in visits[order].Work)
            {
                if (work.Did.Value != WorkKind.LeftAlone)
                {
                    LastWorkOrder = order;
                }

                if (work.Part is { } part && parts.ContainsKey(part.Value) && (work.PutsAPartIn || work.Did.Value == WorkKind.Removed))
                {
                    if (!changes.TryGetValue(part.Value, out var list))
                    {
                        changes[part.Value] = list = [];
                    }

                    list.Add((order, visits[order], work));
                }
            }
        }
    }

    /// <summary>The visit of the last work, or -1 when nothing was done.</summary>
    public int LastWorkOrder { get; } = -1;

    /// <summary>The lot that sat in a place when a visit began, or ended; null for the original part.</summary>
    public string? LotAt(string reference, int order, bool afterWork) => ChangeBefore(reference, order, afterWork)?.Work.Lot?.Value;

    /// <summary>The visit that emptied a place when it was empty as a visit began, or ended; null when something sat there.</summary>
    public BenchVisit? EmptiedAt(string reference, int order, bool afterWork) =>
        ChangeBefore(reference, order, afterWork) is { Work.PutsAPartIn: false } removal ? removal.Visit : null;

    /// <summary>The last change of a place, or null when the original sits there.</summary>
    public (int Order, BenchVisit Visit, WorkEntry Work)? LastChange(string reference) =>
        changes.TryGetValue(reference, out var list) ? list[^1] : null;

    /// <summary>The latest decision about a place, or null.</summary>
    public (int Order, Decision Decision)? DecisionOn(string place) => decisions.TryGetValue(place, out var found) ? found : null;

    private (int Order, BenchVisit Visit, WorkEntry Work)? ChangeBefore(string reference, int order, bool afterWork)
    {
        if (changes.TryGetValue(reference, out var list))
        {
            for (var at = list.Count - 1; at >= 0; at--)
            {
                if (list[at].Order < order || (afterWork && list[at].Order == order))
                {
                    return list[at];
                }
            }
        }

        return null;
    }
}
