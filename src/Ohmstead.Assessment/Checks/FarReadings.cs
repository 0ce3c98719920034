using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Checks;

/// <summary>Readings that are a factor of a thousand or so off what they are read against, of boards and of lots alike.</summary>
internal static class FarReadings
{
    /// <summary>What to do about one.</summary>
    internal const string NextStep = "look at the unit prefix on the meter and in the record";

    // A worn part can lose nine tenths of its value; a factor of 300 is a prefix, not wear. Common practice.
    private const decimal Far = 300m;

    /// <summary>The verdicts that are so far off, each with the message.</summary>
    internal static IEnumerable<(Verdict Verdict, string Message)> Of(IEnumerable<AssessedReading> readings)
    {
        foreach (var assessed in readings)
        {
            for (var at = 0; at < assessed.Verdicts.Length; at++)
            {
                if (Message(assessed.Verdicts[at]) is { } message)
                {
                    yield return (assessed.Verdicts[at], message);
                }
            }
        }
    }

    private static string? Message(Verdict verdict)
    {
        if (verdict.Limit?.Nominal is not { Value: > 0m } nominal || verdict.Reading.Value.Value <= 0m)
        {
            return null;
        }

        var (reading, mark) = (verdict.Reading.Value.Value, nominal.Value);
        return reading >= Far * mark || mark >= Far * reading
            ? $"{VerdictWords.Of(verdict.Measured)} {verdict.Reading.Text} is {Factor(reading, mark)} the marked {QuantityText.Format(nominal)}"
            : null;
    }

    private static string Factor(decimal reading, decimal mark) => reading > mark
        ? $"{QuantityText.Format(new Quantity(decimal.Round(reading / mark), Dimension.Number), 3)} times"
        : $"1/{QuantityText.Format(new Quantity(decimal.Round(mark / reading), Dimension.Number), 3)} of";
}
