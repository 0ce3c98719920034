using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>
/// What a reading of a capacitor says beside its verdict: how much of the allowed wear is used, what a new part would read, what its
/// leakage does. Computed for whoever asks.
/// </summary>
public static class WearNotes
{
    // A grid leak that is met everywhere; the record does not say which resistor the grid has. Common practice.
    private const decimal UsualGridLeakOhms = 1_000_000m;
    private const decimal HighFrequencyHertz = 50_000m;
    private const decimal LowFrequencyHertz = 1_000m;

    /// <summary>The notes on one verdict.</summary>
    public static IReadOnlyList<WorkedNote> Compute(AssessedReading reading, Verdict verdict)
    {
        if (
            (reading.Lot?.Values ?? reading.Place?.Values) is not { } part
            || part.Kind.Value.Family != PartFamily.Capacitor
            || reading.Reading.Circuit is { Value: Circuit.In }
        )
        {
            return [];
        }

        return verdict.Measured switch
        {
            Measured.Capacitance when part.Kind.Value.IsElectrolytic => [.. Used(verdict), .. Surge(part)],
            Measured.Esr when part.Kind.Value.IsElectrolytic => [.. New(part, reading)],
            Measured.Leakage when part.Role?.Value is PartRole.Coupling =>
            [
                .. Grid(
                    reading.Reading.AtVoltage,
                    verdict.Exact?.Value is { } amperes and > 0m ? reading.Reading.AtVoltage?.Value.Value / amperes : null
                ),
            ],
            Measured.Insulation when part.Role?.Value is PartRole.Coupling =>
            [
                .. Grid(part.WorkingVoltage ?? reading.Reading.AtVoltage, verdict.Exact?.Value),
            ],
            _ => [],
        };
    }

    private static IEnumerable<WorkedNote> Used(Verdict verdict)
    {
        var criteria = EndOfLifeCriteria.RestorersDefault;
        foreach (var wear in verdict.Deviation is { } off ? criteria.Judge(off) : [])
        {
            var watch = wear.ShareUsed is >= EndOfLife.WatchShare and <= 1m ? ", worth watching" : string.Empty;
            yield return new(
                $"{QuantityText.FormatPercent(decimal.Round(wear.ShareUsed, 2))} of the change of {wear.What} that is allowed to a "
                    + $"worn part is used{watch}",
                wear.Arithmetic,
                criteria.Source.Text
            );
        }
    }

    private static IEnumerable<WorkedNote> Surge(PartValues part)
    {
        if (
            part is { WorkingVoltage: { } works, RatedVoltage: { } rated }
            && SurgeVoltage.Volts(rated.Value.Value).Is(out var surge, out _)
        )
        {
            yield return WorkedNote.From(
                $"for {works.Text} in its place it is rated {rated.Text} and bears short surges to "
                    + $"{QuantityText.Format(new Quantity(surge.Value, Dimension.Voltage))}",
                surge
            );
        }
    }

    private static IEnumerable<WorkedNote> New(PartValues part, AssessedReading reading)
    {
        if (part.Capacitance is not { } marked || reading.Reading.Frequency is not { } frequency)
        {
            yield break;
        }

        if (frequency.Value.Value >= HighFrequencyHertz && TypicalEsr.TypicalAt100KiloHertz(marked.Value.Value).Is(out var typical, out _))
        {
            yield return WorkedNote.From("typical of a new part at 100 kHz, for orientation and no limit", typical);
        }

        if (
            frequency.Value.Value <= LowFrequencyHertz
            && part.RatedVoltage is { } rated
            && TypicalEsr.UpperBoundAt120Hertz(marked.Value.Value, rated.Value.Value).Is(out var most, out _)
        )
        {
            yield return WorkedNote.From(
                $"a new general-purpose part has at most "
                    + $"{QuantityText.Format(new Quantity(most.Value, Dimension.Resistance), 3)} at 120 Hz",
                most
            );
        }
    }

    private static IEnumerable<WorkedNote> Grid(Written<Quantity>? across, decimal? insulationOhms)
    {
        if (
            across is not null
            && insulationOhms is { } ohms
            && GridLeak.ShiftVolts(across.Value.Value, ohms, UsualGridLeakOhms).Is(out var shift, out _)
        )
        {
            yield return WorkedNote.From(
                $"into a grid leak of 1 MΩ it would lift the grid by "
                    + $"{QuantityText.Format(new Quantity(shift.Value, Dimension.Voltage), 3)}; "
                    + $"{QuantityText.Format(new Quantity(GridLeak.AcceptedVolts, Dimension.Voltage))} is usually accepted",
                shift
            );
        }
    }
}
