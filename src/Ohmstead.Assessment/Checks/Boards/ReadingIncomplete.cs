using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading says not what it was taken of, or gives no value.</summary>
public sealed class ReadingIncomplete : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "reading-incomplete",
            Severity.Error,
            "a reading says not what it was taken of, or gives no value",
            CheckEffect.HoldsBack,
            "what was read is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var assessed in board.Assessment.Readings)
        {
            var reading = assessed.Reading;
            if (reading.Part is null && reading.Lot is null && reading.Point is null)
            {
                yield return board.Finding(
                    Description,
                    reading.Spot,
                    "this reading does not say what it was taken of",
                    "add part: C12, or lot: L-031, or point: +15V"
                );
            }
            else if (reading.Values.Length == 0 && reading.Result is null && !IsFrequencyTheValue(assessed))
            {
                yield return board.Finding(
                    Description,
                    reading.Spot,
                    "this reading gives no value",
                    "add the value with its unit, such as capacitance: 391 µF, or result: pass"
                );
            }
        }
    }

    // A frequency is what was read of a crystal and of a point; of any other part it only says how the part was measured.
    private static bool IsFrequencyTheValue(AssessedReading assessed) =>
        assessed.Reading.Frequency is not null
        && (
            (assessed.Lot?.Values ?? assessed.Place?.Values) is not { } values
            || values.Kind.Value.Family is PartFamily.Crystal or PartFamily.Other or PartFamily.Coil or PartFamily.Transistor
        );
}
