using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading is a factor of a thousand or so off its marking: probably a slip of the unit.</summary>
public sealed class ReadingFarFromMarking : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("reading-far-from-marking", Severity.Warning, "a reading is a factor of a thousand or so off its marking: probably a slip of the unit");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var assessed in board.Assessment.Readings.Where(assessed => assessed.Reading.Circuit is not { Value: "in" } && assessed.Point is null))
        {
            foreach (var verdict in assessed.Verdicts)
            {
                if (verdict.Limit?.Nominal is not { Value: > 0m } nominal || verdict.Reading.Value.Value <= 0m)
                {
                    continue;
                }

                var (reading, mark) = (verdict.Reading.Value.Value, nominal.Value);
                if (reading / mark >= Far || mark / reading >= Far)
                {
                    yield return board.Finding(
                        Description,
                        verdict.Reading.Spot,
                        $"{VerdictWords.Of(verdict.Measured)} {verdict.Reading.Text} is {Factor(reading, mark)} the marked {QuantityText.Format(nominal)}",
                        "look at the unit prefix on the meter and in the record");
                }
            }
        }
    }

    // A dead supply reads millivolts where volts belong: that is no slip, so points are left out. A worn part can lose nine tenths of its value; a factor of 300 is a prefix, not wear. Common practice.
    private const decimal Far = 300m;

    private static string Factor(decimal reading, decimal mark) => reading > mark
        ? $"{QuantityText.Format(new Quantity(decimal.Round(reading / mark), Dimension.Number), 3)} times"
        : $"1/{QuantityText.Format(new Quantity(decimal.Round(mark / reading), Dimension.Number), 3)} of";
}
