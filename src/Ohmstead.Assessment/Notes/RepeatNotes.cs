using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>What readings of the same thing, repeated in the same way on one day, say together: their mean and how far it can be trusted by
/// their scatter alone.</summary>
/// <remarks>In the same way: in the same state and circuit, by the same instrument and method, at the same frequency, voltage, minute and
/// temperature.</remarks>
public static class RepeatNotes
{
    private const int Fewest = 3;
    private const string Source = "JCGM 100:2008, 4.2.3 (from memory)";

    /// <summary>The note on the last of the repeated readings; none for the others.</summary>
    public static IReadOnlyList<WorkedNote> Compute(BoardAssessment board, AssessedReading reading, Verdict verdict)
    {
        var all = board.ReadTogether.RepeatsUpTo(reading, verdict.Measured);

        // A bound belongs into no mean.
        AssessedReading[] alike = [.. all.Where(other => FigureOf(other, verdict.Measured) is not null)];
        if (alike.Length < Fewest)
        {
            return [];
        }

        decimal[] values = [.. alike.Select(other => FigureOf(other, verdict.Measured)!.Value)];
        return RepeatedReadings
            .Evaluate([
                [.. values.Select(value => (double)value)],
            ])
            .Is(out var repeated, out _)
            ?
            [
                new(
                    $"{Say(repeated.Mean(0), verdict)} is the mean of {values.Length.ToString(CultureInfo.InvariantCulture)} readings, "
                        + $"with a standard uncertainty of {Say(repeated.UncertaintyOfMean(0), verdict)} by their scatter alone"
                        + (all.Count > alike.Length ? "; " + BoardDrifts.LeftOut(all.Count - alike.Length) : string.Empty),
                    string.Join(", ", values.Select(value => QuantityText.Format(new Quantity(value, verdict.Reading.Value.Dimension), 6))),
                    Source
                ),
            ]
            : [];
    }

    private static decimal? FigureOf(AssessedReading reading, Measured measured) =>
        reading.Verdicts.FirstOrDefault(known => known.Measured == measured && known.Exact is not null)?.Exact?.Value;

    private static string Say(double value, Verdict verdict) =>
        QuantityText.Format(new Quantity((decimal)value, verdict.Reading.Value.Dimension), 4);
}
