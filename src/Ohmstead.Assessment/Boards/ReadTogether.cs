using System.Collections.Immutable;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>What was read on one day beside a reading: the same thing again in the same way, the same place before, the voltage of another
/// point.</summary>
/// <remarks>A record may have a hundred thousand readings of one day, and each is asked about: all are looked through once.</remarks>
internal sealed class ReadTogether
{
    private readonly record struct Way(int Visit, string Part, string? Lot, ReadingState State, DriftConditions How, decimal? Temperature);

    private readonly Dictionary<Way, Repeats> repeats = [];
    private readonly Dictionary<AssessedReading, AssessedReading> before = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(int Visit, string Point), ImmutableArray<ReadValue>> voltages = [];

    /// <summary>Looks through what was read.</summary>
    public ReadTogether(ImmutableArray<AssessedReading> readings, ImmutableArray<AssessedProof> proofs)
    {
        var last = new Dictionary<(int Visit, string Place), AssessedReading>();
        foreach (var proof in proofs)
        {
            AddVoltage(proof.VisitOrder, proof.Proof.Point.Value, proof.Proof.Values);
        }

        // Behind the proofs: what was read of a day counts before what was proved on it.
        foreach (var reading in readings)
        {
            if (reading.Reading.Point is { } point)
            {
                AddVoltage(reading.VisitOrder, point.Value, reading.Reading.Values);
            }

            if (reading.Place is { } place)
            {
                var key = (reading.VisitOrder, place.Ref.Value);
                if (last.TryGetValue(key, out var earlier))
                {
                    before.TryAdd(reading, earlier);
                }

                last[key] = reading;
            }

            foreach (var measured in reading.Verdicts.Select(verdict => verdict.Measured).Distinct())
            {
                if (WayOf(reading, measured) is { } way)
                {
                    if (!repeats.TryGetValue(way, out var alike))
                    {
                        repeats.Add(way, alike = new());
                    }

                    alike.Add(reading, measured);
                }
            }
        }
    }

    /// <summary>The readings of the same thing in the same way on the day of a reading, where it is the last of them with a figure; else
    /// none.</summary>
    public IReadOnlyList<AssessedReading> RepeatsUpTo(AssessedReading reading, Measured measured) =>
        WayOf(reading, measured) is { } way && repeats.TryGetValue(way, out var alike) && ReferenceEquals(alike.LastWithFigure, reading)
            ? alike.All
            : [];

    /// <summary>The reading of the same place on the same day just before a reading, or null.</summary>
    public AssessedReading? Before(AssessedReading reading) => before.GetValueOrDefault(reading);

    /// <summary>The last values of a point on a day with a voltage among them; default where there are none.</summary>
    public ImmutableArray<ReadValue> VoltageAt(int visit, string point) => voltages.GetValueOrDefault((visit, point));

    private void AddVoltage(int visit, string point, ImmutableArray<ReadValue> values)
    {
        if (values.FirstOrDefault(static value => value.Measured == Measured.Voltage)?.Exact is not null)
        {
            voltages[(visit, point)] = values;
        }
    }

    private static Way? WayOf(AssessedReading reading, Measured measured) =>
        reading.Reading.Part is { } part
            ? new(
                reading.VisitOrder,
                part.Value,
                reading.Reading.Lot?.Value,
                reading.Reading.State?.Value ?? ReadingState.AsFound,
                DriftConditions.From(reading, measured),
                DriftConditions.TemperatureOf(reading)
            )
            : null;

    private sealed class Repeats
    {
        private readonly List<AssessedReading> all = [];

        public IReadOnlyList<AssessedReading> All => all;

        public AssessedReading? LastWithFigure { get; private set; }

        public void Add(AssessedReading reading, Measured measured)
        {
            all.Add(reading);
            if (reading.Verdicts.Any(verdict => verdict.Measured == measured && verdict.Exact is not null))
            {
                LastWithFigure = reading;
            }
        }
    }
}
