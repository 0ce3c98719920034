using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>
/// What follows from a verdict beside what it says: parts in a million of a frequency, what lies beside a resistor, the ageing of a
/// ceramic. Computed for whoever asks.
/// </summary>
public static class PartNotes
{
    private const double HoursAYear = 8766;

    // Class 2 capacitances are marked as of 1000 h after the last heat: EIA-198-1-F, 1.1.2.
    private const double ReferenceHours = 1000;

    /// <summary>The notes on one verdict.</summary>
    public static IReadOnlyList<WorkedNote> Compute(BoardAssessment board, AssessedReading reading, Verdict verdict) =>
        (Frequency(verdict) ?? ReadTogether(reading, verdict) ?? Ageing(board, reading, verdict)) is { } note ? [note] : [];

    /// <summary>How far a frequency is off, with what it makes a clock lose or gain a day; null for other verdicts.</summary>
    public static WorkedNote? Frequency(Verdict verdict)
    {
        if (
            verdict is not { Measured: Measured.Frequency, Limit.Nominal: { Value: > 0m } nominal, Exact: { } read }
            || !PartsPerMillion.Compute(read.Value, nominal.Value).Is(out var off, out _)
        )
        {
            return null;
        }

        var perDay = decimal.Round(PartsPerMillion.SecondsADay(off.Value), 2);
        return WorkedNote.From(
            $"a clock from it {(perDay < 0m ? "loses" : "gains")} "
                + $"{QuantityText.Format(new Quantity(Math.Abs(perDay), Dimension.Number))} s a day",
            off
        );
    }

    // What lies beside a resistor that reads low in circuit, if it is as marked.
    private static WorkedNote? ReadTogether(AssessedReading reading, Verdict verdict) =>
        verdict is { Measured: Measured.Resistance, Limit: { Nominal: { } marked, Interval.Lower: { } lower }, Exact: { } read }
        && reading.Reading.Circuit is { Value: Circuit.In }
        && read.Value < lower.Value
        && ParallelPath.RestOhms(marked.Value, read.Value).Is(out var rest, out _)
            ? WorkedNote.From(
                $"with the part as marked, {QuantityText.Format(new Quantity(rest.Value, Dimension.Resistance), 3)} "
                    + $"in parallel reads the same",
                rest
            )
            : null;

    private static WorkedNote? Ageing(BoardAssessment board, AssessedReading reading, Verdict verdict)
    {
        if (
            verdict.Measured != Measured.Capacitance
            || reading.Lot is not null
            || reading.Place?.Values is not { Kind.Value: var kind, Material: { } material }
            || kind != PartKinds.CeramicClass2
            || material.Value.Ageing is not { } known
            || (board.Board.Made ?? board.Design?.Made) is not { } made
        )
        {
            return null;
        }

        var years = reading.Visit.Date.Value.Year - made.Value.Year;
        return
            years > 0
            && CeramicAgeing.ShareLeft((double)known.Usual, Math.Max(1, years * HoursAYear / ReferenceHours)).Is(out var share, out _)
            ? new(
                $"after {years} years without heat {material.Text} has some "
                    + $"{QuantityText.FormatPercent(decimal.Round((decimal)share.Value, 2))} of its marked capacitance left; soldering "
                    + $"starts it again, wait 24 to 48 h; an estimate, not a promise",
                share.Arithmetic.Text,
                share.Source.Text
            )
            : null;
    }
}
