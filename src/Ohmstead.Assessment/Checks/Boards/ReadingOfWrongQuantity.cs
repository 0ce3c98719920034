using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading gives a quantity that its kind of part does not have.</summary>
public sealed class ReadingOfWrongQuantity : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("reading-of-wrong-quantity", Severity.Error, "a reading gives a quantity that its kind of part does not have");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var assessed in board.Assessment.Readings)
        {
            if ((assessed.Lot?.Values ?? assessed.Place?.Values) is not { } values)
            {
                continue;
            }

            var family = PartKind.Family(values.Kind.Value);
            for (var at = 0; at < assessed.Reading.Values.Length; at++)
            {
                var value = assessed.Reading.Values[at];
                if (Fits(value.Measured, family))
                {
                    continue;
                }

                yield return board.Finding(
                    Description,
                    value.Value.Spot,
                    $"{VerdictWords.Of(value.Measured)} was read of {assessed.Reading.Part?.Value ?? assessed.Reading.Lot?.Value}, which is of kind '{values.Kind.Value}'",
                    "mend the part, or the name of the quantity");
            }
        }
    }

    private static bool Fits(Measured measured, PartFamily family) => family switch
    {
        PartFamily.Capacitor => measured is Measured.Capacitance or Measured.Esr or Measured.LossFactor or Measured.Leakage or Measured.Insulation or Measured.VoltageLoss or Measured.Voltage or Measured.Ripple or Measured.Resistance,
        PartFamily.Resistor => measured is Measured.Resistance or Measured.Voltage or Measured.Current,
        PartFamily.Inductor => measured is Measured.Inductance or Measured.Resistance or Measured.Voltage or Measured.Current,
        PartFamily.Fuse => measured is Measured.Resistance or Measured.Current or Measured.Voltage,
        PartFamily.Crystal => measured is Measured.Resistance or Measured.Capacitance,
        _ => true,
    };
}
