using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading gives a quantity that its kind of part does not have.</summary>
public sealed class ReadingOfWrongQuantity : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "reading-of-wrong-quantity",
            Severity.Error,
            "a reading gives a quantity that its kind of part does not have",
            CheckEffect.HoldsBack,
            "what was read is not known"
        );

    private static string? Own(PartKind kind) =>
        kind.Family switch
        {
            PartFamily.Capacitor => "capacitance",
            PartFamily.Resistor => "resistance",
            PartFamily.Inductor => "inductance",
            _ => null,
        };

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var assessed in board.Assessment.Readings)
        {
            if ((assessed.Lot?.Values ?? assessed.Place?.Values) is not { } values)
            {
                continue;
            }

            for (var at = 0; at < assessed.Reading.Values.Length; at++)
            {
                var value = assessed.Reading.Values[at];
                if (values.Kind.Value.MayGive(value.Measured))
                {
                    continue;
                }

                yield return board.Finding(
                    Description,
                    value.Value.Spot,
                    $"{VerdictWords.Describe(value.Measured)} was read of {assessed.Reading.Part?.Value ?? assessed.Reading.Lot?.Value}, "
                        + $"which is of kind '{values.Kind.Text}'",
                    Own(values.Kind.Value) is { } own
                        ? $"write the {own} that was read, or the name of the part that was measured"
                        : "write the quantity that was read, or the name of the part that was measured"
                );
            }
        }
    }
}
