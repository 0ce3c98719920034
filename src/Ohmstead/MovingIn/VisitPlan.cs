using System.Globalization;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;

namespace Ohmstead.MovingIn;

/// <summary>Brings what comes to the bench of one board to its visits: to that of its day, or to one of its own.</summary>
/// <remarks>
/// A visit tells an order: found, readings, work, decided, proof. A table tells none, so what would stand before or after something of
/// the same day only because of where it is put is refused, unless the person says how it was.
/// </remarks>
internal sealed class VisitPlan(Draft draft, BenchSplicer bench, bool proofsLast)
{
    private readonly List<(VisitEntries Visit, List<DraftEntry> Entries)> visits = [];
    private readonly Dictionary<string, DraftEntry> seen = new(StringComparer.Ordinal);

    /// <summary>What comes, by visit.</summary>
    public IReadOnlyList<VisitEntries> Visits => [.. visits.Select(one => one.Visit)];

    /// <summary>The entries in the order in which they stand in <see cref="Visits"/>.</summary>
    public IEnumerable<DraftEntry> Entries => visits.SelectMany(one => one.Entries);

    /// <summary>Entries that stand in the record already, or on an earlier row, word for word.</summary>
    public int There { get; private set; }

    /// <summary>Rows that cannot be placed.</summary>
    public List<RefusedRow> Refused { get; } = [];

    /// <summary>What is told beside it.</summary>
    public List<string> Told { get; } = [];

    /// <summary>Plans.</summary>
    public void Make()
    {
        foreach (
            var group in draft
                .Entries.Where(IsNew)
                .GroupBy(entry => (entry.Date, entry.By))
                .OrderBy(group => group.Key.Date, StringComparer.Ordinal)
        )
        {
            var ofDay = bench.Visits.Where(visit => visit.Values.GetValueOrDefault("date") == group.Key.Date).ToArray();
            var there = ofDay.LastOrDefault(visit =>
                group.Key.By is null || !visit.Values.TryGetValue("by", out var by) || by == group.Key.By
            );
            var entries = group.Where(entry => !Holds(there, entry)).ToArray();
            var left = entries.Where(entry => MayStand(entry, entries, there, ofDay)).ToList();
            if (left.Count > 0)
            {
                Inherit(there, left);
                visits.Add((Visit(group.Key.Date, group.Key.By, there, left), left));
            }
        }
    }

    // A reading that names no instrument is taken for one of its visit's, as wherever readings are entered.
    private void Inherit(KnownVisit? there, List<DraftEntry> entries)
    {
        var bare = entries.Count(entry => entry.List is "readings" or "proof" && entry.Instrument is null);
        if (bare > 0 && there?.Values.GetValueOrDefault("instrument") is { } instrument)
        {
            Told.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{draft.Number}, {there.Values["date"]}: {bare} readings name no instrument, and their visit names "
                        + $"{instrument}; a column 'instrument' says another"
                )
            );
        }
    }

    private bool IsNew(DraftEntry entry)
    {
        if (seen.TryAdd($"{entry.Date}\n{entry.By}\n{entry.List}\n{entry.Item(entry.Instrument)}", entry))
        {
            return true;
        }

        There++;
        return false;
    }

    private bool Holds(KnownVisit? there, DraftEntry entry)
    {
        if (
            there is null
            || !(
                bench.Holds(there.Index, entry.List, entry.Item(entry.Instrument))
                || bench.Holds(there.Index, entry.List, entry.Item(Own(there, entry)))
            )
        )
        {
            return false;
        }

        There++;
        return true;
    }

    // An entry leaves out the instrument that its visit names.
    private static string? Own(KnownVisit? there, DraftEntry entry) =>
        there is not null && there.Values.GetValueOrDefault("instrument") == entry.Instrument ? null : entry.Instrument;

    private bool MayStand(DraftEntry entry, DraftEntry[] group, KnownVisit? there, KnownVisit[] ofDay)
    {
        var (against, next) = Against(entry, group, there, ofDay);
        if (against is null)
        {
            return true;
        }

        Refused.Add(entry.Cells.Refused(null, $"{draft.Number}, {entry.Date}: {against}", next));
        return false;
    }

    private (string? Against, string? NextStep) Against(DraftEntry entry, DraftEntry[] group, KnownVisit? there, KnownVisit[] ofDay)
    {
        const string last = "--proofs-last says that on a day with work and proofs the proofs came last";
        const string byHand = "write it into the record by hand, where it belongs";
        bool Did(string? place) =>
            group.Any(other => other.List == "work" && (place is null || other.Place == place))
            || ofDay.Any(visit => bench.Has(visit.Index, "work", place));
        switch (entry.List)
        {
            case "proof":
                if (ofDay.FirstOrDefault(visit => bench.Has(visit.Index, "proof", entry.Place)) is { } proved)
                {
                    return (
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"the record has another proof of {entry.Place} of that day on line {proved.Line}, and nothing says "
                                + $"which came later"
                        ),
                        byHand
                    );
                }

                return proofsLast || !Did(null) ? (null, null) : ("there is work of the same day, and nothing says which came first", last);
            case "work":
                if (ofDay.Any(visit => bench.Has(visit.Index, "proof")))
                {
                    return ("the record has a proof of that day, and nothing says whether this was done before it", byHand);
                }

                return there is not null && !bench.MayJoin(there.Index, entry.List, entry.Item(null))
                    ? ($"the visit of that day says something of {entry.Place} that came after such work", byHand)
                    : (null, null);
            default:
                if (entry.State is null && entry.Place.Length > 0 && Did(entry.Place))
                {
                    return (
                        $"there is work on {entry.Place} of the same day, and nothing says whether this was read before or after it",
                        "say it in a column 'state': as found or as left"
                    );
                }

                var isAsLeft = Vocabulary.ReadingStates.Means(entry.State ?? string.Empty, out var state) && state == ReadingState.AsLeft;
                return
                    ofDay.Any(visit => bench.Has(visit.Index, "decided", entry.Place))
                    || (isAsLeft && there is not null && !bench.MayJoin(there.Index, entry.List, entry.Item(null)))
                    ? ($"the record has a decision or a proof about {entry.Place} of that day, and nothing says which came first", byHand)
                    : (null, null);
        }
    }

    private static VisitEntries Visit(string date, string? by, KnownVisit? there, List<DraftEntry> entries)
    {
        // The instrument that all readings of a new visit name is named once.
        string?[] used =
        [
            .. entries
                .Where(entry => entry.List is "readings" or "proof")
                .Select(entry => entry.Instrument)
                .Distinct(StringComparer.Ordinal),
        ];
        var shared = there is null && used is [{ } one] ? one : null;
        var order = new[] { "readings", "work", "proof" };
        var sorted = entries.OrderBy(entry => Array.IndexOf(order, entry.List)).ToList();
        entries.Clear();
        entries.AddRange(sorted);
        return new(
            date,
            there?.Index,
            there is null
                ?
                [
                    .. new (string Key, string? Value)[] { ("date", date), ("by", by), ("instrument", shared) }
                        .Where(entry => entry.Value is not null)
                        .Select(entry => (entry.Key, entry.Value!)),
                ]
                : [],
            [.. entries.Select(entry => (entry.List, entry.Item(shared is not null ? null : Own(there, entry))))]
        );
    }
}
