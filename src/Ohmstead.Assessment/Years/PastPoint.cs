using System.Collections.Frozen;
using Ohmstead.Assessment.History;

namespace Ohmstead.Assessment.Years;

/// <summary>The collection as the bench had it at the end of a day, and what was done since the point before.</summary>
/// <param name="Day">The day.</param>
/// <param name="Boards">How many boards were there.</param>
/// <param name="Fit">How many of them were fit to run.</param>
/// <param name="Work">What was done since the point before; since the beginning for the first.</param>
public sealed record PastPoint(DateOnly Day, int Boards, int Fit, BenchCount Work)
{
    /// <summary>How many boards were in each state.</summary>
    public IReadOnlyDictionary<BoardState, int> States { get; init; } = FrozenDictionary<BoardState, int>.Empty;
}

/// <summary>How much was done at the bench.</summary>
/// <param name="Visits">Visits of boards.</param>
/// <param name="Readings">Readings and proofs.</param>
/// <param name="Done">Pieces of work.</param>
public readonly record struct BenchCount(int Visits, int Readings, int Done)
{
    /// <summary>Both together.</summary>
    public static BenchCount operator +(BenchCount one, BenchCount other) =>
        new(one.Visits + other.Visits, one.Readings + other.Readings, one.Done + other.Done);
}
