using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Notes;

/// <summary>What follows for a supply point from its design and from what was read there. Computed for whoever asks, never for a
/// check.</summary>
public static class PointNotes
{
    // Where a transformer's sheet says nothing: it rises by a fifth without load, and the mains may be a tenth high. No diode is taken off:
    // the safe side.
    private const decimal UsualRegulation = 0.20m;
    private const decimal MainsHigh = 0.10m;
    private const string Estimate = "an estimate, not a promise";

    /// <summary>What follows from the design alone: a load to test with, the peak without a load.</summary>
    public static IReadOnlyList<WorkedNote> OfDesign(BoardAssessment board, TestPoint point)
    {
        var notes = new List<WorkedNote>(2);
        if (
            point is { Measures: PointMeasure.Voltage, Nominal: { } nominal, RatedCurrent: { } rated }
            && DummyLoad.For(nominal.Value.Value, rated.Value.Value).Is(out var load, out _)
        )
        {
            notes.Add(
                WorkedNote.From(
                    $"to run it without its own load, {QuantityText.Format(new Quantity(load.Value.Ohms, Dimension.Resistance), 3)} "
                        + $"draws {QuantityText.FormatPercent(DummyLoad.UsualShare)} of the rated {rated.Text}; defer to local codes "
                        + "and licensed practice",
                    load
                )
            );
        }

        if (point.Winding is { } winding && NoLoadPeak.Volts(winding.Value.Value, UsualRegulation, MainsHigh, 0m).Is(out var peak, out _))
        {
            notes.Add(
                WorkedNote.From(
                    "without load and with high mains it may climb to "
                        + $"{QuantityText.Format(new Quantity(peak.Value, Dimension.Voltage), 3)}{Rated(board, point, peak.Value)}; "
                        + $"{Estimate}",
                    peak
                )
            );
        }

        if (
            point.Reservoir is { } reservoir
            && board.Place(reservoir.Value)?.Values.Capacitance is { } fitted
            && board.Rectifier is { } valve
            && fitted.Value.Value > valve.LargestInputFarads
        )
        {
            notes.Add(
                new(
                    $"{reservoir.Value} is more than the rectifier valve bears as a first capacitor",
                    $"{fitted.Text} on a {valve.Type}, which may feed "
                        + $"{QuantityText.Format(new Quantity(valve.LargestInputFarads, Dimension.Capacitance))}",
                    ValveRectifier.Source.Text
                )
            );
        }

        return notes;
    }

    /// <summary>What follows from one set of readings at the point.</summary>
    /// <param name="board">The board.</param>
    /// <param name="point">The point.</param>
    /// <param name="visit">The place in time of the visit of the readings.</param>
    /// <param name="values">The values read there together.</param>
    /// <param name="frequency">The frequency of the ripple, or null when the record does not give it.</param>
    /// <param name="method">How it was measured, or null.</param>
    public static IReadOnlyList<WorkedNote> OfReadings(
        BoardAssessment board,
        TestPoint point,
        int visit,
        ImmutableArray<ReadValue> values,
        Quantity? frequency,
        string? method
    ) =>
        [
            .. new[]
            {
                Reservoir(board, point, values, frequency),
                Headroom(board, visit, point, values),
                Loading(point, values, method),
            }.OfType<WorkedNote>(),
            .. WaveformNotes.Compute(board, point, values, frequency),
        ];

    /// <summary>What follows from a proof entry.</summary>
    public static IReadOnlyList<WorkedNote> Compute(BoardAssessment board, AssessedProof proof) =>
        proof.Point is { } point
            ? OfReadings(board, point, proof.VisitOrder, proof.Proof.Values, ValueOf(proof.Proof.Values, Measured.Frequency), null)
            : [];

    /// <summary>What follows from a reading at a point.</summary>
    public static IReadOnlyList<WorkedNote> Compute(BoardAssessment board, AssessedReading reading) =>
        reading.Point is { } point
            ? OfReadings(
                board,
                point,
                reading.VisitOrder,
                reading.Reading.Values,
                reading.Reading.Frequency?.Value,
                reading.Reading.Method?.Value
            )
            : [];

    private static string Rated(BoardAssessment board, TestPoint point, decimal peakVolts) =>
        point.Reservoir is { } name && board.Place(name.Value)?.Values.RatedVoltage is { } rated
            ? $", {name.Value} is rated {rated.Text}" + (rated.Value.Value < peakVolts ? ", which is less" : string.Empty)
            : string.Empty;

    // With the frequency of the ripple itself neither the rectifier nor the mains need be known: one pulse a period.
    private static WorkedNote? Reservoir(BoardAssessment board, TestPoint point, ImmutableArray<ReadValue> values, Quantity? frequency)
    {
        if (
            point.Reservoir is not { } name
            || board.Place(name.Value)?.Values is not { Capacitance: not null } part
            || frequency is not { } pulses
            || ValueOf(values, Measured.Ripple) is not { } ripple
            || ValueOf(values, Measured.Current) is not { } current
        )
        {
            return null;
        }

        var limits = PartLimits.For(part, "the place", Measured.Capacitance, new ReadingConditions(false, null, null, null));
        if (limits.Length > 0 && limits[0].Interval.Lower is { } lower)
        {
            return ReservoirRipple
                .Evidence(ripple.Value, current.Value, pulses.Value, Rectifier.HalfWave, lower.Value)
                .Is(out var evidence, out _)
                ? WorkedNote.From(
                    $"{name.Value} has at most "
                        + $"{QuantityText.Format(new Quantity(evidence.Value.AtMostFarads, Dimension.Capacitance), 3)} by its ripple, "
                        + $"{(evidence.Value.ProvedLow ? "which proves it low" : "which proves nothing")}",
                    evidence
                )
                : null;
        }

        return ReservoirRipple.FaradsFor(ripple.Value, current.Value, pulses.Value, Rectifier.HalfWave).Is(out var bound, out _)
            ? WorkedNote.From(
                $"{name.Value} has at most {QuantityText.Format(new Quantity(bound.Value, Dimension.Capacitance), 3)} by its ripple",
                bound
            )
            : null;
    }

    private static WorkedNote? Headroom(BoardAssessment board, int visit, TestPoint point, ImmutableArray<ReadValue> values)
    {
        if (
            point is not { Input: { } name, Nominal: { Value.Value: var nominal } }
            || ValueOf(values, Measured.Voltage) is not { } output
            || LinearRegulator.LikeFor(nominal) is not { } regulator
        )
        {
            return null;
        }

        var before = board.ReadTogether.VoltageAt(visit, name.Value);
        if (
            before.IsDefault
            || ValueOf(before, Measured.Voltage) is not { } input
            || !regulator.HeadroomVolts(input.Value, ValueOf(before, Measured.Ripple)?.Value ?? 0m).Is(out var headroom, out _)
        )
        {
            return null;
        }

        var left = QuantityText.Format(new Quantity(headroom.Value, Dimension.Voltage), 3);
        var said =
            headroom.Value < 0m
                ? $"the regulator lacks headroom by {left} at the bottom of the ripple"
                : $"the regulator has {left} of headroom";
        return WorkedNote.From(
            $"{said}, input read at {name.Value}, least input as of a usual regulator of this voltage at full load; "
                + $"{Words(regulator.Judge(input.Value, output.Value))}"
                + (ValueOf(before, Measured.Ripple) is null ? ", ripple of the input not read" : string.Empty),
            headroom
        );
    }

    private static string Words(RegulatorState state) =>
        state switch
        {
            RegulatorState.InRange => "its output is in range",
            RegulatorState.HeadroomMissing => "its output is in range at this load, though the input is under the least",
            RegulatorState.InputTooLow => "its output is low because the input is: no fault of the regulator is shown",
            RegulatorState.OutputTooLow => "its output is low with enough input: overload, or a faulty regulator",
            _ => "its output is too high: a faulty regulator, or its ground is open",
        };

    private static WorkedNote? Loading(TestPoint point, ImmutableArray<ReadValue> values, string? method)
    {
        if (
            method is null
            || ValueOf(values, Measured.Voltage) is not { } shown
            || MeterWords.Parse(method) is not { } meter
            || !MeterLoading.MeterOhms(meter.OhmsPerVolt, meter.RangeVolts).Is(out var ohms, out _)
        )
        {
            return null;
        }

        if (point.SourceResistance is not { } source)
        {
            return new(
                "its meter loads the point",
                $"{QuantityText.Format(new Quantity(ohms, Dimension.Resistance))} on its range; how much is shown depends on the "
                    + "resistance of the point, write source_resistance",
                "voltage divider (common practice)"
            );
        }

        return MeterLoading.Share(ohms, source.Value.Value).Is(out var share, out _) && share.Value > 0m
            ? WorkedNote.From(
                $"its meter shows {VerdictShare(share.Value)} of the voltage that is there without it, "
                    + $"{QuantityText.Format(new Quantity(shown.Value / share.Value, Dimension.Voltage), 4)}",
                share
            )
            : null;
    }

    private static string VerdictShare(decimal share) => QuantityText.FormatPercent(decimal.Round(share, 3));

    internal static Quantity? ValueOf(ImmutableArray<ReadValue> values, Measured measured) =>
        values.FirstOrDefault(value => value.Measured == measured)?.Exact;
}
