using System.Globalization;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Model;

namespace Ohmstead.Writing;

/// <summary>What stands of one day in a record, and whether something that is entered later can be put there without saying an order that
/// nobody told.</summary>
/// <remarks>
/// A visit tells an order: found, readings, work, decided, proof. A late entry and a row of a table tell none, so what would stand before
/// or after something of the same day only because of where it is put is doubted.
/// </remarks>
/// <param name="bench">The record.</param>
/// <param name="date">The day, as it is written.</param>
/// <param name="by">Who worked, or null.</param>
internal sealed class OldDay(BenchSplicer bench, string date, string? by)
{
    /// <summary>The visits of that day, in order.</summary>
    public IReadOnlyList<KnownVisit> Visits { get; } = [.. bench.Visits.Where(visit => visit.Values.GetValueOrDefault("date") == date)];

    /// <summary>The first visit of that day that is not of somebody else; null where there is none.</summary>
    public KnownVisit? First => Visits.FirstOrDefault(IsOfWho);

    /// <summary>The last visit of that day that is not of somebody else; null where there is none.</summary>
    public KnownVisit? There => Visits.LastOrDefault(IsOfWho);

    /// <summary>Whether the day holds an entry already, word for word.</summary>
    /// <param name="list">The list of the visit.</param>
    /// <param name="item">The entry as one line of YAML, given the visit.</param>
    public bool Holds(string list, Func<KnownVisit, string> item) =>
        Visits.Any(visit => IsOfWho(visit) && bench.Holds(visit.Index, list, item(visit)));

    /// <summary>Why it is not known where an entry belongs; null when it may join the visit that is there, or make a new one behind all of
    /// its day.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="together">All that comes to that visit together, the entry among it.</param>
    /// <param name="proofsLast">True where the person says that proofs came after the work of their day.</param>
    public OrderDoubt? Doubt(DayEntry entry, IReadOnlyCollection<DayEntry> together, bool proofsLast) =>
        entry.List switch
        {
            "proof" => OfProof(entry, together, proofsLast),
            "work" => OfWork(entry),
            "decided" => OfDecision(entry),
            _ => OfWhatWasSeen(entry, together),
        };

    private OrderDoubt? OfProof(DayEntry entry, IReadOnlyCollection<DayEntry> together, bool proofsLast)
    {
        if (Visits.FirstOrDefault(visit => bench.Has(visit.Index, "proof", entry.Place)) is { } proved)
        {
            return new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the record has another proof of {entry.Place} of that day on line {proved.Line}, and nothing says which came later"
                )
            );
        }

        if (!proofsLast && Did(null, together))
        {
            return new("there is work of the same day, and nothing says which came first") { IsOfProofAndWork = true };
        }

        return Others("work", null).FirstOrDefault(visit => visit.Index > There?.Index) is { } later
            ? new(
                string.Create(CultureInfo.InvariantCulture, $"the visit on line {later.Line} has work of that day and would stand after it")
            )
            : Elsewhere(entry.Place, "readings", "decided");
    }

    private OrderDoubt? OfWork(DayEntry entry) =>
        Visits.Any(visit => bench.Has(visit.Index, "proof"))
            ? new("the record has a proof of that day, and nothing says whether this was done before it")
        : There is { } there && !bench.MayJoin(there.Index, entry.List, entry.Item)
            ? new($"the visit of that day says something of {entry.Place} that came after such work")
        : Elsewhere(entry.Place, "found", "readings", "work", "decided");

    private OrderDoubt? OfDecision(DayEntry entry) =>
        Did(entry.Place, []) ? new($"there is work on {entry.Place} of the same day, and nothing says which came first")
        : Visits.Any(visit => bench.Has(visit.Index, "proof", entry.Place) || bench.Has(visit.Index, "decided", entry.Place))
            ? new($"the record has a decision or a proof about {entry.Place} of that day, and nothing says which came first")
        : Elsewhere(entry.Place, "found", "readings");

    private OrderDoubt? OfWhatWasSeen(DayEntry entry, IReadOnlyCollection<DayEntry> together)
    {
        if (entry.State is null && entry.Place.Length > 0 && Did(entry.Place, together))
        {
            var seen = entry.List == "found" ? "seen" : "read";
            return new($"there is work on {entry.Place} of the same day, and nothing says whether this was {seen} before or after it")
            {
                IsOfState = entry.List != "found",
            };
        }

        var isAsLeft = Vocabulary.ReadingStates.Means(entry.State ?? string.Empty, out var state) && state == ReadingState.AsLeft;
        return
            Visits.Any(visit => bench.Has(visit.Index, "decided", entry.Place))
            || (isAsLeft && There is { } there && !bench.MayJoin(there.Index, entry.List, entry.Item))
            ? new($"the record has a decision or a proof about {entry.Place} of that day, and nothing says which came first")
            : Elsewhere(entry.Place, "work");
    }

    // What somebody else, or another visit, says of the place: it would stand before or after this only because of where this is put.
    private OrderDoubt? Elsewhere(string place, params IEnumerable<string> lists) =>
        place.Length > 0 && lists.SelectMany(list => Others(list, place)).FirstOrDefault() is { } other
            ? new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"another visit of that day, on line {other.Line}, has something about {place}, and nothing says which came first"
                )
            )
            : null;

    private IEnumerable<KnownVisit> Others(string list, string? place) =>
        Visits.Where(visit => visit.Index != There?.Index && bench.Has(visit.Index, list, place));

    private bool Did(string? place, IReadOnlyCollection<DayEntry> together) =>
        together.Any(other => other.List == "work" && (place is null || other.Place == place))
        || Visits.Any(visit => bench.Has(visit.Index, "work", place));

    private bool IsOfWho(KnownVisit visit) => by is null || !visit.Values.TryGetValue("by", out var who) || who == by;
}

/// <summary>Something that comes to a day.</summary>
/// <param name="List">The list of the visit.</param>
/// <param name="Place">The part, the place or the point; empty for the whole board.</param>
/// <param name="State">When in the part's life a reading was taken, where it is said.</param>
/// <param name="Item">The entry as one line of YAML.</param>
internal sealed record DayEntry(string List, string Place, string? State, string Item);

/// <summary>Why it is not known where in its day an entry belongs.</summary>
/// <param name="Message">In words.</param>
internal sealed record OrderDoubt(string Message)
{
    /// <summary>True where it is a proof beside work: whether proofs came last answers it.</summary>
    public bool IsOfProofAndWork { get; init; }

    /// <summary>True where it is a reading beside work: its state answers it.</summary>
    public bool IsOfState { get; init; }
}
