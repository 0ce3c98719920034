using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading is a factor of a thousand or so off its marking: probably a slip of the unit.</summary>
public sealed class ReadingFarFromMarking : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("reading-far-from-marking", Severity.Warning, "a reading is a factor of a thousand or so off its marking: probably a slip of the unit");

    /// <inheritdoc/>
    // A dead supply reads millivolts where volts belong: that is no slip, so points are left out.
    public IEnumerable<Finding> Look(BoardUnderCheck board) => FarReadings
        .Of(board.Assessment.Readings.Where(assessed => assessed.Reading.Circuit is not { Value: Circuit.In } && assessed.Point is null))
        .Select(far => board.Finding(Description, far.Verdict.Reading.Spot, far.Message, FarReadings.NextStep));
}
