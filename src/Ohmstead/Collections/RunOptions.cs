using System.Collections.Frozen;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Records.Days;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;

namespace Ohmstead.Collections;

/// <summary>How a run over a collection is made.</summary>
/// <param name="Today">The day of the run; the only clock there is.</param>
/// <param name="IsThorough">True to ask the JSON schemas about every record.</param>
/// <param name="Workers">How many workers read and judge side by side; the result does not depend on it.</param>
/// <param name="Limits">How much of a file is read.</param>
internal sealed record RunOptions(DateOnly Today, bool IsThorough, int Workers, ReadingLimits Limits)
{
    /// <summary>Whether all that pages and lists tell is kept of each board; a check alone asks for its state and its lots.</summary>
    public bool ForPages { get; init; } = true;

    /// <summary>The records as they were at the end of a day, where that is asked for; null for all that stands in them.</summary>
    public RecordsUpTo? UpTo { get; init; }

    /// <summary>What an earlier run learned of all boards together: each board is judged with it. Null when nothing is known yet.</summary>
    public BoardsTogether? Together { get; init; }

    /// <summary>
    /// Whether boards that are looked at alone are compared with the others of their collection; what only wants their names does not ask
    /// for it.
    /// </summary>
    public bool IsCompared { get; init; } = true;

    /// <summary>Pictures that are taken to lie at another path than they do, each with where it is now; null for one that was looked at
    /// already and is taken to be there.</summary>
    public IReadOnlyDictionary<string, string?>? Moved { get; init; }

    /// <summary>How the command that was given takes the keys of a record; null where it takes none.</summary>
    public TypedKeys? Typed { get; init; }

    /// <summary>Files that are taken to hold another text than they do on disk, or to be there at all, to see what would follow from a
    /// change; by path.</summary>
    public IReadOnlyDictionary<string, string> Instead { get; init; } = FrozenDictionary<string, string>.Empty;
}
