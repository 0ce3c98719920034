using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Methods;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>A wash and its drying time.</summary>
/// <param name="Place">What was washed.</param>
/// <param name="Since">The day of the wash.</param>
/// <param name="For">The drying time as written, or the usual one of the method where none is.</param>
/// <param name="Until">The first day on which it is certainly over.</param>
public sealed record Drying(string Place, DateOnly Since, string For, DateOnly Until)
{
    // A drying time of more than ten years is a slip of the pen; a day past the calendar's end would be none.
    private const decimal LongestDays = 3_650m;
    private const decimal SecondsPerDay = 86_400m;
    private const int LastYear = 9_900;
    private const decimal ShortestSeconds = 3_600m;

    /// <summary>The work.</summary>
    public required WorkEntry Work { get; init; }

    /// <summary>The visit of the wash.</summary>
    public required BenchVisit Visit { get; init; }

    /// <summary>When it was washed.</summary>
    internal Moment At { get; init; }

    /// <summary>The drying time in days.</summary>
    internal decimal Days { get; init; }

    /// <summary>Every wash of a board that is still drying on a day, in order of time. Days are all a record knows: what was washed late
    /// dries into the next day.</summary>
    public static IReadOnlyList<Drying> Find(BoardHistory board, DateOnly today) =>
        [.. All(board).Where(wash => wash.Since <= today && today < wash.Until)];

    /// <summary>
    /// Every wash of a board, in order of time. Where no time is written, the usual one of a washed board at room temperature counts: for
    /// what was washed, and for what was cleaned with something that must dry.
    /// </summary>
    internal static IEnumerable<Drying> All(BoardHistory board)
    {
        for (var order = 0; order < board.Visits.Length; order++)
        {
            var visit = board.Visits[order];
            foreach (var work in visit.Work)
            {
                if (visit.Date.Value.Year < LastYear && Time(work) is var (days, words))
                {
                    var until = visit.Date.Value.AddDays((int)Math.Ceiling(Math.Clamp(days, 0m, LongestDays)));
                    yield return new((work.Part ?? work.At)?.Value ?? "the board", visit.Date.Value, words, until)
                    {
                        Work = work,
                        Visit = visit,
                        At = Moment.At(order, work.Spot),
                        Days = days,
                    };
                }
            }
        }
    }

    /// <summary>Whether it was certainly still wet at a visit: a day at the bench has twelve hours, and 24 h of drying reach into the next
    /// day.</summary>
    internal bool IsWetAt(BenchVisit visit) =>
        ReferenceEquals(visit, Visit) || visit.Date.Value == Since ? Days > 0.5m : visit.Date.Value < Until;

    /// <summary>The first visit at which power was applied while it was wet, or null.</summary>
    internal BenchVisit? PoweredWet(BoardHistory board)
    {
        // Visits are in order of time: wet is what follows the wash until one day, with its own day or without it.
        var all = board.UnderPower;
        var first =
            Days > 0.5m ? First(all.Count, at => all[at] >= At.Visit) : First(all.Count, at => board.Visits[all[at]].Date.Value > Since);
        for (var at = first; at < all.Count; at++)
        {
            var visit = board.Visits[all[at]];
            if (!IsWetAt(visit))
            {
                return null;
            }

            if (visit.Powered is not null || HasProofAfter(visit, all[at]))
            {
                return visit;
            }
        }

        return null;
    }

    /// <summary>The first proof after the wash that was made when it was dry, or null.</summary>
    internal AssessedProof? ProvedDry(BoardHistory board)
    {
        var proofs = board.Proofs;
        var first = First(proofs.Length, at => proofs[at].At > At);

        // Those behind it are wet until one day.
        var dry =
            first < proofs.Length && !IsWetAt(proofs[first].Visit)
                ? first
                : Math.Max(first, First(proofs.Length, at => proofs[at].Visit.Date.Value >= Until && proofs[at].Visit.Date.Value > Since));
        return dry < proofs.Length ? proofs[dry] : null;
    }

    // The first place from which on something holds.
    private static int First(int length, Func<int, bool> holds)
    {
        var (low, high) = (0, length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(middle) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    // What was proved before the wash of the same day was proved dry.
    private bool HasProofAfter(BenchVisit visit, int order) => visit.Proofs.Length > 0 && Moment.At(order, visit.Proofs[^1].TakenAt) > At;

    private static (decimal Days, string Words)? Time(WorkEntry work)
    {
        // Nothing that was washed is dry within the hour, in moving air at 60 to 70 degrees. Common practice.
        if (work.Dry is { } written && (written.Value.Value >= ShortestSeconds || work.Did.Value != WorkKind.Washed))
        {
            return (written.Value.Value / SecondsPerDay, written.Text);
        }

        var method = work.With is { } with ? MethodCatalogue.In(with.Value) : null;
        return work.Did.Value == WorkKind.Washed ? Usual(MethodCatalogue.DryAtRoomHours)
            : work.Did.Value == WorkKind.Cleaned && method is { MustDry: true } ? Usual(method.DryHours)
            : null;
    }

    private static (decimal Days, string Words) Usual(decimal hours) =>
        (hours / 24m, $"{QuantityText.Format(new Quantity(hours, Dimension.Number))} h, the usual time at room temperature");
}
