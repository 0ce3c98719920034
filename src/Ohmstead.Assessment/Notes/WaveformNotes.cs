using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>What the marked reservoir would do at the load that was read, computed through the whole cycle: where the rule of thumb is at
/// most.</summary>
public static class WaveformNotes
{
    private const double PeakOfRms = 1.4142135623730951;
    private const decimal HighestMainsHertz = 65m;

    /// <summary>The note on values read together at a point; none where the winding, the load or the frequency of the ripple is not
    /// known.</summary>
    public static IReadOnlyList<WorkedNote> Compute(
        BoardAssessment board,
        TestPoint point,
        ImmutableArray<ReadValue> values,
        Quantity? frequency
    )
    {
        if (
            point is not { Winding: { } winding, Reservoir: { } name }
            || board.Place(name.Value)?.Values.Capacitance is not { } marked
            || frequency is not { } pulses
            || PointNotes.ValueOf(values, Measured.Voltage) is not { Value: > 0m } voltage
            || PointNotes.ValueOf(values, Measured.Current) is not { Value: > 0m } current
        )
        {
            return [];
        }

        // Ripple at twice the mains' frequency comes from a full-wave rectifier, taken for a bridge; at the mains' own, from one diode.
        var isFullWave = pulses.Value > HighestMainsHertz;
        var mains = (double)pulses.Value / (isFullWave ? 2 : 1);
        var load = (double)(voltage.Value / current.Value);
        return ReservoirWaveform
            .Compute(
                (double)winding.Value.Value * PeakOfRms,
                mains,
                (double)marked.Value.Value,
                load,
                isFullWave ? Rectifier.Bridge : Rectifier.HalfWave
            )
            .Is(out var wave, out _)
            ?
            [
                new(
                    $"{name.Value} as marked would ripple {Volts(wave.RippleVolts)}, from {Volts(wave.MinimumVolts)} to "
                        + $"{Volts(wave.MaximumVolts)}, and conduct "
                        + $"{wave.ConductionDegrees.ToString("0", CultureInfo.InvariantCulture)} degrees of the mains cycle at a time; "
                        + "an estimate, not a promise",
                    $"{winding.Text} x sqrt(2), {marked.Text}, "
                        + $"{QuantityText.Format(new Quantity((decimal)load, Dimension.Resistance), 3)}, ripple at "
                        + $"{QuantityText.Format(pulses)}, {(isFullWave ? "a bridge" : "one diode")}, no winding resistance",
                    "charge balance through one period, common practice"
                ),
            ]
            : [];
    }

    private static string Volts(double volts) => QuantityText.Format(new Quantity((decimal)volts, Dimension.Voltage), 3);
}
