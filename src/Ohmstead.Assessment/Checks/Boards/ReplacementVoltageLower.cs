using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Fit;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A replacement has a lower rated voltage than what belongs in the place.</summary>
public sealed class ReplacementVoltageLower : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "replacement-voltage-lower",
            Severity.Error,
            "a replacement has a lower rated voltage than what belongs in the place",
            CheckEffect.SaidElsewhere,
            "the obligation that what was fitted fits its place"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board) =>
        LowerRating.Look(board, Description, FitAspects.Voltage, values => values.RatedVoltage);
}
