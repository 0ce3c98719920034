using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Reckoning.Basis;

/// <summary>The answer of a rule.</summary>
/// <param name="Lines">What was found, the figure asked for first.</param>
public sealed record Reckoned(IReadOnlyList<ReckonedLine> Lines)
{
    /// <summary>The usual cautions where the figures can lead to harm; empty elsewhere. The last defers to local codes and licensed
    /// practice.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}

/// <summary>One figure of an answer.</summary>
/// <param name="What">What it is.</param>
/// <param name="Value">The figure in the trade's units, or words.</param>
/// <param name="Arithmetic">The working with the figures put in; empty where a table was read.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record ReckonedLine(string What, string Value, string Arithmetic, Source Source)
{
    /// <summary>The figure unrounded, or null for words.</summary>
    public decimal? Number { get; init; }

    /// <summary>The unit of <see cref="Number"/>: a base unit of the SI where there is one; empty for a plain number.</summary>
    public string Unit { get; init; } = string.Empty;

    /// <summary>What a reader must know beside it.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
