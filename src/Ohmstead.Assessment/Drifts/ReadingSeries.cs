using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Drifts;

/// <summary>Readings of one part that were taken in the same way on two days or more.</summary>
/// <param name="Reference">The place of the part.</param>
/// <param name="Measured">What was read.</param>
/// <param name="Readings">The readings, oldest first.</param>
public sealed record ReadingSeries(string Reference, Measured Measured, IReadOnlyList<ReadOnDay> Readings)
{
    /// <summary>How many more were taken in the same way and gave a bound or a word: no place on a drawing and none in a line belongs to
    /// them.</summary>
    public int WithoutFigure { get; init; }
}

/// <summary>A reading and its day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Verdict">What it says.</param>
public sealed record ReadOnDay(DateOnly Day, Verdict Verdict);
