using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Changes;

/// <summary>A board of which one kind of statement is of today and all others are as they were: what would it be if only that had
/// changed?</summary>
internal sealed class BoardMix
{
    private readonly BoardFile was;
    private readonly BoardFile now;
    private readonly EntryComparison entries;

    // Where what is new stands, and where what is changed stands now with where it stood.
    private readonly FrozenSet<Spot> added;
    private readonly FrozenDictionary<Spot, Spot> changed;
    private readonly FrozenSet<Spot> gone;

    /// <summary>Prepares.</summary>
    /// <param name="was">The earlier record.</param>
    /// <param name="now">The later one.</param>
    /// <param name="entries">What differs between them.</param>
    public BoardMix(BoardFile was, BoardFile now, EntryComparison entries)
    {
        (this.was, this.now, this.entries) = (was, now, entries);
        added = entries.Differences.Where(one => one.Was is null).Select(one => one.Now!.Spot).ToFrozenSet();
        gone = entries.Differences.Where(one => one.Now is null).Select(one => one.Was!.Spot).ToFrozenSet();
        changed = entries
            .Differences.Where(one => one.Status == EntryStatus.Changed)
            .DistinctBy(one => one.Now!.Spot)
            .ToFrozenDictionary(one => one.Now!.Spot, one => one.Was!.Spot);
    }

    /// <summary>The board with that kind of statement new, and where each of its entries stood in the earlier record by where it stands in
    /// this one.</summary>
    /// <param name="kind">Reading, work or marking.</param>
    public BoardFile Make(InputKind kind) =>
        kind switch
        {
            InputKind.Marking => Head(now, was) with { Path = now.Path },
            InputKind.Reading => Head(was, now) with
            {
                Path = now.Path,
                Bench = Bench(isWorkNew: false),
                Waiting = was.Waiting,
                Whereabouts = was.Whereabouts,
                Arrived = was.Arrived,
            },
            _ => Head(was, now) with { Path = now.Path, Bench = Bench(isWorkNew: true) },
        };

    // One record with what the other says of the thing itself.
    private static BoardFile Head(BoardFile head, BoardFile rest) =>
        rest with
        {
            Id = head.Id,
            Title = head.Title,
            Design = head.Design,
            Serial = head.Serial,
            Revision = head.Revision,
            Maker = head.Maker,
            Made = head.Made,
            ToldBefore = head.ToldBefore,
            Duty = head.Duty,
            Parts = head.Parts,
            Points = head.Points,
            UnreadParts = head.UnreadParts,
            UnreadPoints = head.UnreadPoints,
            Hazards = head.Hazards,
            Formerly = head.Formerly,
        };

    // The later visits, of which either what was measured or all else is as it was.
    private ImmutableArray<BenchVisit> Bench(bool isWorkNew)
    {
        var old = was.Bench.GroupBy(visit => visit.Date.Value).ToDictionary(group => group.Key, group => group.ToList());
        var visits = ImmutableArray.CreateBuilder<BenchVisit>();
        foreach (var visit in now.Bench)
        {
            var before = old.GetValueOrDefault(visit.Date.Value);
            var twin = before?.Find(one => one.By?.Value == visit.By?.Value) ?? before?.FirstOrDefault();
            if (twin is not null)
            {
                before!.Remove(twin);
            }

            visits.Add(isWorkNew ? WithOldReadings(visit, twin) : WithOldWork(visit, twin));
        }

        foreach (var left in old.Values.SelectMany(visits => visits))
        {
            visits.Add(
                isWorkNew
                    ? new(left.Date, left.Spot)
                    {
                        By = left.By,
                        Readings = left.Readings,
                        Proofs = left.Proofs,
                    }
                    : left with
                    {
                        Readings = [],
                        Proofs = [],
                    }
            );
        }

        return [.. visits.OrderBy(visit => visit.Date.Value)];
    }

    private BenchVisit WithOldReadings(BenchVisit visit, BenchVisit? twin) =>
        visit with
        {
            Instrument = twin is null ? visit.Instrument : twin.Instrument,
            RoomTemperature = twin is null ? visit.RoomTemperature : twin.RoomTemperature,
            Readings = Mixed(
                visit.Readings,
                was.Bench.SelectMany(one => one.Readings),
                twin?.Readings ?? [],
                one => one.Spot,
                (one, at) => one with { Spot = at }
            ),
            Proofs = Mixed(
                visit.Proofs,
                was.Bench.SelectMany(one => one.Proofs),
                twin?.Proofs ?? [],
                one => one.Spot,
                (one, at) => one with { Spot = at }
            ),
        };

    private BenchVisit WithOldWork(BenchVisit visit, BenchVisit? twin) =>
        visit with
        {
            Powered = twin?.Powered,
            Found = Mixed(
                visit.Found,
                was.Bench.SelectMany(one => one.Found),
                twin?.Found ?? [],
                one => one.Spot,
                (one, at) => one with { Spot = at }
            ),
            Work = Mixed(
                visit.Work,
                was.Bench.SelectMany(one => one.Work),
                twin?.Work ?? [],
                one => one.Spot,
                (one, at) => one with { Spot = at }
            ),
            Decided = Mixed(
                visit.Decided,
                was.Bench.SelectMany(one => one.Decided),
                twin?.Decided ?? [],
                one => one.Spot,
                (one, at) => one with { Spot = at }
            ),
            Photos = Mixed(
                visit.Photos,
                was.Bench.SelectMany(one => one.Photos),
                twin?.Photos ?? [],
                one => one.Spot,
                (one, at) => one with { Spot = at }
            ),
        };

    // What is new is left out, what says something else says what it said, and what is gone stands where it stood. An entry keeps the place
    // that it has now, so that its neighbours stay in order of time.
    private ImmutableArray<T> Mixed<T>(
        ImmutableArray<T> items,
        IEnumerable<T> before,
        ImmutableArray<T> ofTwin,
        Func<T, Spot> spot,
        Func<T, Spot, T> at
    )
    {
        if (
            !items.Any(item => added.Contains(spot(item)) || changed.ContainsKey(spot(item)))
            && !ofTwin.Any(item => gone.Contains(spot(item)))
        )
        {
            return items;
        }

        var old = before.GroupBy(spot).ToDictionary(group => group.Key, group => group.First());
        return
        [
            .. items
                .Where(item => !added.Contains(spot(item)))
                .Select(item =>
                    changed.TryGetValue(spot(item), out var earlier) && old.TryGetValue(earlier, out var said) ? at(said, spot(item)) : item
                ),
            .. ofTwin.Where(item => gone.Contains(spot(item))),
        ];
    }

    /// <summary>Where an entry of the later record stands in a mix.</summary>
    /// <param name="kind">The kind of statement that is new in the mix.</param>
    public Func<Spot, Spot?> Earlier(InputKind kind) =>
        kind == InputKind.Marking ? now => entries.Earlier.TryGetValue(now, out var spot) ? spot : null : now => now;
}
