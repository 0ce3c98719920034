using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Collections;

/// <summary>How a run over a collection is made.</summary>
/// <param name="Today">The day of the run; the only clock there is.</param>
/// <param name="IsThorough">True to ask the JSON schemas about every record.</param>
/// <param name="Workers">How many workers read and judge side by side; the result does not depend on it.</param>
/// <param name="Limits">How much of a file is read.</param>
internal sealed record RunOptions(DateOnly Today, bool IsThorough, int Workers, ReadingLimits Limits)
{
    /// <summary>Whether families and lives are kept of each board; a check alone does not ask for them.</summary>
    public bool ForStatistics { get; init; } = true;

    /// <summary>What an earlier pass found about all boards together: each board is judged with what is said of it.</summary>
    public ImmutableArray<Finding> Together { get; init; } = [];

    /// <summary>Files that are taken to hold another text than they do on disk, or to be there at all, to see what would follow from a change; by path.</summary>
    public IReadOnlyDictionary<string, string> Instead { get; init; } = FrozenDictionary<string, string>.Empty;
}
