using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading is ten or a thousand times off what it is read against: probably a slip of the unit or of a zero.</summary>
public sealed class ReadingFarFromMarking : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "reading-far-from-marking",
            Severity.Warning,
            "a reading is ten or a thousand times off what it is read against: probably a slip of the unit or of a zero",
            CheckEffect.HoldsBackWhileItCounts,
            "the reading is in doubt"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board) =>
        FarReadings
            .Find(board.Assessment.Readings.Where(assessed => assessed.Reading.Circuit is not { Value: Circuit.In }))
            .Concat(FarReadings.Find(board.Assessment.Proofs))
            .Select(far => board.Finding(Description, far.Verdict.Reading.Spot, far.Message, FarReadings.NextStep(far.Verdict)));
}
