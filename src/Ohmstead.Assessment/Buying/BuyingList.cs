using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Buying;

/// <summary>What to buy for the whole collection: what the boards need, less what lies in the drawer, less what is on order.</summary>
public static class BuyingList
{
    /// <summary>The list, in order of the parts' words.</summary>
    /// <remarks>
    /// A lot counts with what is left of it, unless a part of it failed its incoming reading or it lies longer than its shelf life, and
    /// only where it fits without a doubt (<see cref="FitVerdict.IsSure"/>). Lots that came with an order that has not arrived do not
    /// count. A part is set aside once: the line that asks for the highest voltage chooses first, and takes what is nearest to the
    /// original. Of an order with lines each line counts with what may still come of it, by <see cref="ComingParts"/>. Of one in words
    /// alone a place counts as on order when its board waits for it and the wait names the place or its value, or the board needs
    /// nothing else.
    /// </remarks>
    /// <param name="workshop">The drawer and the orders.</param>
    /// <param name="boards">All boards.</param>
    /// <param name="today">The day to judge shelf life by.</param>
    public static IReadOnlyList<BuyingLine> Compute(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var coming = ComingParts.Count(workshop);
        var waited = coming.SetAside(boards);
        var ordered = boards.SelectMany(board => board.Needs.Where(need => WaitFor(workshop, board, need) is not null)).ToHashSet();
        var lines = boards
            .SelectMany(board => board.Needs)
            .GroupBy(need => need.What, StringComparer.Ordinal)
            .OrderByDescending(group => group.First().Values.RatedVoltage?.Value.Value ?? 0m)
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .ToArray();
        var counted = Drawer.Count(workshop, BoardSummary.UseOfLots(boards), today);
        SetAsideParts drawer = new([
            .. counted
                .Lots.Where(lot => lot.Doubts.Count == 0)
                .OrderBy(lot => lot.Lot.Values.RatedVoltage?.Value.Value ?? 0m)
                .ThenBy(lot => lot.Lot.Id.Value, StringComparer.Ordinal)
                .Select(lot => new Stocked(counted.Offer(lot), lot.Left)),
        ]);
        var list = new List<BuyingLine>(lines.Length);
        foreach (var line in lines)
        {
            PartNeed[] places = [.. line.OrderBy(need => need.Board, StringComparer.Ordinal)];
            (string Line, int Count)[] named =
            [
                .. places
                    .Where(waited.ContainsKey)
                    .GroupBy(need => waited[need], StringComparer.Ordinal)
                    .Select(group => (group.Key, group.Count())),
            ];
            var promised = places.Count(need => ordered.Contains(need) || waited.ContainsKey(need));
            var lying = drawer.Take(places, places.Length - promised);
            var more = coming.Take(places, places.Length - promised - lying.Sum(lot => lot.Count));
            list.Add(new(line.Key, [.. places], lying, promised + more.Sum(one => one.Count)) { Coming = Joined([.. named, .. more]) });
        }

        return [.. list.OrderBy(line => line.What, StringComparer.Ordinal)];
    }

    private static (string Line, int Count)[] Joined((string Line, int Count)[] lines) =>
        [.. lines.GroupBy(line => line.Line, StringComparer.Ordinal).Select(group => (group.Key, group.Sum(line => line.Count)))];

    /// <summary>The wait of a board under an open order in words alone that a place counts as served by; null when there is none.</summary>
    internal static Wait? WaitFor(Workshop workshop, BoardSummary board, PartNeed need) =>
        board.Waits.FirstOrDefault(wait =>
            IsOpen(workshop, wait)
            && (
                board.Needs.Length == 1
                || Names(wait.For.Value, need.Reference)
                || ValueOf(need.Values) is { } value && Names(wait.For.Value, value)
            )
        );

    private static bool IsOpen(Workshop workshop, Wait wait) =>
        wait.Order is { } name
        && workshop.Orders.GetValueOrDefault(name.Value) is { } order
        && order.Lines.Length == 0
        && OrderStates.IsOpen(OrderStates.For(order));

    private static string? ValueOf(PartValues values) =>
        ChosenBy.Value(values) is { } value ? QuantityText.Format(value.Value) : values.Type?.Value;

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
}
