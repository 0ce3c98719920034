using System.Globalization;
using Ohmstead.Records.Editing;
using Ohmstead.Writing;

namespace Ohmstead.MovingIn;

/// <summary>Brings what comes to the bench of one board to its visits: to that of its day, or to one of its own.</summary>
/// <remarks>
/// A table tells no order of what happened on one day, so what is doubted (<see cref="OldDay"/>) is refused, unless the person says how it
/// was.
/// </remarks>
internal sealed class VisitPlan(RecordDraft draft, BenchSplicer bench, bool proofsLast)
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
            var day = new OldDay(bench, group.Key.Date, group.Key.By);
            var there = day.There;
            var entries = group.Where(entry => !Holds(there, entry)).ToArray();
            DayEntry[] together = [.. entries.Select(Placed)];
            var left = entries.Where(entry => MayStand(entry, together, day)).ToList();
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

    private bool MayStand(DraftEntry entry, DayEntry[] group, OldDay day)
    {
        if (day.Doubt(Placed(entry), group, proofsLast) is not { } doubt)
        {
            return true;
        }

        Refused.Add(
            entry.Cells.Refused(
                null,
                $"{draft.Number}, {entry.Date}: {doubt.Message}",
                doubt.IsOfState ? "say it in a column 'state': as found or as left"
                    : doubt.IsOfProofAndWork ? "--proofs-last says that on a day with work and proofs the proofs came last"
                    : "write it into the record by hand, where it belongs"
            )
        );
        return false;
    }

    private static DayEntry Placed(DraftEntry entry) => new(entry.List, entry.Place, entry.State, entry.Item(null));

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
