using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>What to buy for the whole collection: what the boards need, less what lies in the drawer, less what is on order.</summary>
public static class BuyingList
{
    /// <summary>The list, in order of the parts' words.</summary>
    /// <remarks>
    /// A lot counts with what is left of it, unless a part of it failed its incoming reading or it lies longer than its shelf life. Lots that came with
    /// an order that has not arrived do not count. A part is set aside once: the line that asks for the highest voltage chooses first, and takes the
    /// lowest voltage that will do. A place counts as on order when its board waits for an open order and the wait names the place or its value, or the
    /// board needs nothing else.
    /// </remarks>
    /// <param name="workshop">The drawer and the orders.</param>
    /// <param name="boards">All boards.</param>
    /// <param name="today">The day to judge shelf life by.</param>
    public static IReadOnlyList<BuyingLine> Of(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var ordered = boards.SelectMany(board => board.Needs.Where(need => IsOnOrder(workshop, board, need))).ToHashSet();
        var lines = boards.SelectMany(board => board.Needs)
            .GroupBy(need => need.What, StringComparer.Ordinal)
            .OrderByDescending(group => group.First().Values.RatedVoltage?.Value.Value ?? 0m)
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .ToArray();
        var drawer = Drawer(workshop, boards, today);
        var list = new List<BuyingLine>(lines.Length);
        foreach (var line in lines)
        {
            PartNeed[] places = [.. line.OrderBy(need => need.Board, StringComparer.Ordinal)];
            var coming = places.Count(ordered.Contains);
            list.Add(new(line.Key, places, SetAside(drawer, places[0].Values, places.Length - coming), coming));
        }

        return [.. list.OrderBy(line => line.What, StringComparer.Ordinal)];
    }

    private static List<(string Lot, int Count)> SetAside(List<Stocked> drawer, PartValues need, int wanted)
    {
        var taken = new List<(string, int)>();
        foreach (var stocked in drawer.Where(stocked => LotFit.Fits(need, stocked.Lot.Values)))
        {
            var count = Math.Min(wanted, stocked.Left);
            if (count > 0)
            {
                taken.Add((stocked.Lot.Id.Value, count));
                stocked.Left -= count;
                wanted -= count;
            }
        }

        return taken;
    }

    private static List<Stocked> Drawer(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var fitted = boards.SelectMany(board => board.LotsFitted).CountBy(lot => lot, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        return
        [
            .. workshop.Lots.Values
                .Where(lot => HasCome(workshop, lot) && !IsTooOld(lot, today) && !HasFailed(workshop, lot))
                .OrderBy(lot => lot.Values.RatedVoltage?.Value.Value ?? 0m).ThenBy(lot => lot.Id.Value, StringComparer.Ordinal)
                .Select(lot => new Stocked(lot) { Left = (lot.Quantity?.Value ?? 0) - fitted.GetValueOrDefault(lot.Id.Value) }),
        ];
    }

    internal static bool HasCome(Workshop workshop, Lot lot) =>
        lot.Received is not null || lot.Order is not { } name || workshop.Orders.GetValueOrDefault(name.Value) is not { } order || OrderStates.Of(order) == OrderState.Received;

    private static bool IsTooOld(Lot lot, DateOnly today) => ShelfLife.Of(lot, today) is { } shelf && shelf.IsOverOn(today);

    internal static bool HasFailed(Workshop workshop, Lot lot)
    {
        var assessor = new Assessor(workshop);
        return workshop.IncomingReadings[lot.Id.Value].Any(pair => assessor.AssessIncoming(pair.Visit, pair.Reading).Overall == VerdictOutcome.Outside);
    }

    private static bool IsOnOrder(Workshop workshop, BoardSummary board, PartNeed need) =>
        board.Waits.Any(wait => IsOpen(workshop, wait) && (board.Needs.Count == 1 || Names(wait.For.Value, need.Reference) || ValueOf(need.Values) is { } value && Names(wait.For.Value, value)));

    private static bool IsOpen(Workshop workshop, Wait wait) =>
        wait.Order is { } name && workshop.Orders.GetValueOrDefault(name.Value) is { } order && OrderStates.Of(order) is OrderState.Placed or OrderState.PartReceived;

    private static string? ValueOf(PartValues values) =>
        (values.Capacitance ?? values.Resistance ?? values.Inductance ?? values.Frequency ?? values.Current) is { } value ? QuantityText.Format(value.Value) : values.Type?.Value;

    // C1 is not named by C12, nor 10 µF by 110 µF.
    private static bool Names(string text, string name)
    {
        for (var at = text.IndexOf(name, StringComparison.Ordinal); at >= 0; at = text.IndexOf(name, at + 1, StringComparison.Ordinal))
        {
            var end = at + name.Length;
            if ((at == 0 || !IsOfAWord(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOfAWord(char c) => char.IsLetterOrDigit(c) || c is '.';

    private sealed class Stocked(Lot lot)
    {
        internal Lot Lot => lot;

        internal int Left { get; set; }
    }
}
