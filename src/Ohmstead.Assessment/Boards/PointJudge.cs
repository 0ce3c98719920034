using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Holds what was read at a test point against its limits: a reading on the way and a proof alike.</summary>
public static class PointJudge
{
    /// <summary>One verdict for each value.</summary>
    /// <param name="values">The values read.</param>
    /// <param name="point">The point, or null when neither the board nor its design has it: then no limit is known.</param>
    /// <param name="uncertainty">The uncertainty of a value, or null when the instrument says nothing about it.</param>
    /// <param name="isGuarded">True when a value whose uncertainty straddles the limit is undecided.</param>
    public static IReadOnlyList<Verdict> Decide(IEnumerable<ReadValue> values, TestPoint? point, Func<ReadValue, ReadingUncertainty?> uncertainty, bool isGuarded) =>
        [.. values.Select(value => Judge.Decide(value.Measured, value.Value, point is null ? [] : PointLimits.For(point, value.Measured), inCircuit: false, uncertainty(value), isGuarded))];
}
