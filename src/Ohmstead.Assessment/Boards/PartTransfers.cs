using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>A part that came from another board, as the board says that has it.</summary>
/// <param name="Place">The place that it went to.</param>
/// <param name="Day">The day.</param>
/// <param name="From">The board and the place that it came from.</param>
/// <param name="PutsIn">Whether the work puts a part in at all.</param>
public sealed record TakenPart(string Place, DateOnly Day, Written<string> From, bool PutsIn);

/// <summary>A part that was taken off a board.</summary>
/// <param name="Place">The place that it left.</param>
/// <param name="Day">The day.</param>
/// <param name="To">The board and the place that it went to, where that is said.</param>
/// <param name="TakesOut">Whether the work takes a part out at all.</param>
/// <param name="IsBack">Whether the very piece was put back afterwards.</param>
public sealed record GivenPart(string Place, DateOnly Day, Written<string>? To, bool TakesOut, bool IsBack);

/// <summary>What a board took from others and what left its places, for all boards to be compared.</summary>
/// <param name="Taken">Parts that came from other boards, in order of time.</param>
/// <param name="Given">Parts that left their places, in order of time.</param>
public sealed record PartTransfers(ImmutableArray<TakenPart> Taken, ImmutableArray<GivenPart> Given)
{
    /// <summary>Nothing came and nothing left.</summary>
    public static PartTransfers None { get; } = new([], []);

    /// <summary>What a board says.</summary>
    public static PartTransfers Collect(ImmutableArray<BenchVisit> visits)
    {
        var taken = ImmutableArray.CreateBuilder<TakenPart>();
        var given = new List<GivenPart>();
        foreach (var visit in visits)
        {
            foreach (var work in visit.Work)
            {
                var place = (work.Part ?? work.At)?.Value ?? string.Empty;
                if (work.TakenFrom is { } from)
                {
                    taken.Add(new(place, visit.Date.Value, from, work.PutsAPartIn));
                }

                if (work.TakesAPartOut || work.WentTo is not null)
                {
                    given.Add(new(place, visit.Date.Value, work.WentTo, work.TakesAPartOut, IsBack: false));
                }
                else if (work.Did.Value == WorkKind.PutBack && given.FindLastIndex(one => one.Place == place) is var last and >= 0)
                {
                    given[last] = given[last] with { IsBack = true };
                }
            }
        }

        return taken.Count + given.Count == 0 ? None : new(taken.DrainToImmutable(), [.. given]);
    }
}
