using System.Collections.Immutable;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.History;

/// <summary>A correction that takes nothing back: what it was to correct counts as it did, and it counts as nothing.</summary>
/// <param name="Spot">Where it is written.</param>
/// <param name="Why">Why.</param>
/// <param name="NextStep">What to do.</param>
public sealed record DoubtfulCorrection(Spot Spot, string Why, string NextStep);

/// <summary>The visits to the bench with each correction in the place of the entry that it corrects, as of the day of that entry.</summary>
/// <remarks>
/// A correction says what was so then, not what is so now: the part may have gone since. A visit that holds nothing but corrections was no
/// look at the board, and is left out.
/// </remarks>
internal sealed class CorrectedBench
{
    private readonly Dictionary<Reading, Moment> known = new(ReferenceEqualityComparer.Instance);

    private CorrectedBench(ImmutableArray<BenchVisit> visits) => Visits = visits;

    /// <summary>The visits, in order of time.</summary>
    internal ImmutableArray<BenchVisit> Visits { get; private set; }

    /// <summary>Corrections that correct nothing.</summary>
    internal ImmutableArray<DoubtfulCorrection> Doubtful { get; private set; } = [];

    /// <summary>When a correction was written.</summary>
    internal Moment? KnownAt(Reading reading) => known.TryGetValue(reading, out var at) ? at : null;

    /// <summary>Puts each correction where it belongs.</summary>
    internal static CorrectedBench From(
        ImmutableArray<BenchVisit> visits,
        IReadOnlyDictionary<string, Part> parts,
        IReadOnlyDictionary<string, Lot> lots
    )
    {
        var bench = new CorrectedBench(visits);
        if (visits.Any(static visit => visit.Readings.Any(IsCorrection) || visit.Proofs.Any(IsCorrection)))
        {
            bench.Correct(new SafetyPlaces(visits, parts, lots));
        }

        return bench;
    }

    private static bool IsCorrection(Reading reading) => reading.Corrects is not null || reading.Because is not null;

    private static bool IsCorrection(Proof proof) => proof.Corrects is not null || proof.Because is not null;

    private void Correct(SafetyPlaces safety)
    {
        List<Reading>[] readings = [.. Visits.Select(static visit => visit.Readings.Where(static one => !IsCorrection(one)).ToList())];
        List<Proof>[] proofs = [.. Visits.Select(static visit => visit.Proofs.Where(static one => !IsCorrection(one)).ToList())];
        var doubtful = ImmutableArray.CreateBuilder<DoubtfulCorrection>();
        var written = new List<(Reading Reading, int Visit)>();
        for (var order = 0; order < Visits.Length; order++)
        {
            foreach (var correction in Visits[order].Readings.Where(IsCorrection))
            {
                var meant = new Correction<Reading>(correction, Describe(correction), Describe).Find(Visits, readings, order);
                if (meant.Why is null && safety.Has(correction))
                {
                    meant = new(
                        -1,
                        -1,
                        $"{Describe(correction).Name} is or was a part that people rely on not to be hurt, and what was read of one stands",
                        "measure it again and enter that; where it had failed, replace it"
                    );
                }

                if (meant.Why is { } why)
                {
                    doubtful.Add(new(correction.Spot, why, meant.NextStep));
                    continue;
                }

                var made = correction with { InsteadOf = readings[meant.Visit][meant.At] };
                readings[meant.Visit][meant.At] = made;
                written.Add((made, order));
            }

            foreach (var correction in Visits[order].Proofs.Where(IsCorrection))
            {
                var meant = new Correction<Proof>(correction, Describe(correction), Describe).Find(Visits, proofs, order);
                if (meant.Why is { } why)
                {
                    doubtful.Add(new(correction.Spot, why, meant.NextStep));
                    continue;
                }

                proofs[meant.Visit][meant.At] = correction with { InsteadOf = proofs[meant.Visit][meant.At] };
            }
        }

        Put(readings, proofs, written);
        Doubtful = doubtful.DrainToImmutable();
    }

    private void Put(List<Reading>[] readings, List<Proof>[] proofs, List<(Reading Reading, int Visit)> written)
    {
        var kept = ImmutableArray.CreateBuilder<BenchVisit>(Visits.Length);
        var places = new (int Order, bool IsKept)[Visits.Length];
        for (var order = 0; order < Visits.Length; order++)
        {
            var visit = Visits[order] with { Readings = [.. readings[order]], Proofs = [.. proofs[order]] };
            var wasCorrecting = Visits[order].Readings.Any(IsCorrection) || Visits[order].Proofs.Any(IsCorrection);
            places[order] = (kept.Count, !wasCorrecting || SaysMore(visit));
            if (places[order].IsKept)
            {
                kept.Add(visit);
            }
        }

        Visits = kept.DrainToImmutable();
        foreach (var (reading, order) in written)
        {
            known[reading] = places[order].IsKept
                ? Moment.At(places[order].Order, reading.Spot)
                : new(places[order].Order - 1, int.MaxValue, int.MaxValue);
        }
    }

    private static bool SaysMore(BenchVisit visit) =>
        visit.Found.Length + visit.Readings.Length + visit.Work.Length + visit.Decided.Length + visit.Proofs.Length + visit.Photos.Length
            > 0
        || visit.Powered is not null
        || visit.Note is not null;

    private static CorrectedEntry Describe(Reading reading) =>
        new(
            (reading.Part ?? reading.Point ?? reading.Lot)?.Value ?? string.Empty,
            (reading.Part?.Value, reading.Point?.Value, reading.Lot?.Value, reading.Piece?.Value),
            [
                .. reading.Values.Select(static value => value.Measured),
                .. reading is { Part: null, Lot: null, Frequency: not null } ? [Measured.Frequency] : Array.Empty<Measured>(),
                .. reading is { Part: null, Lot: null, Temperature: not null } ? [Measured.Temperature] : Array.Empty<Measured>(),
            ],
            reading.Result is not null,
            (reading.StateWord, reading.Circuit?.Value),
            reading.Corrects,
            reading.Because
        );

    private static CorrectedEntry Describe(Proof proof) =>
        new(
            proof.Point.Value,
            (null, proof.Point.Value, null, null),
            [.. proof.Values.Select(static value => value.Measured)],
            proof.Result is not null,
            (string.Empty, null),
            proof.Corrects,
            proof.Because
        );
}
