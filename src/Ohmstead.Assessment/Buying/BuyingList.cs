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
    /// original. A place counts as on order when its board waits for an open order and the wait names the place or its value, or the board
    /// needs nothing else.
    /// </remarks>
    /// <param name="workshop">The drawer and the orders.</param>
    /// <param name="boards">All boards.</param>
    /// <param name="today">The day to judge shelf life by.</param>
    public static IReadOnlyList<BuyingLine> Compute(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var ordered = boards.SelectMany(board => board.Needs.Where(need => IsOnOrder(workshop, board, need))).ToHashSet();
        var lines = boards
            .SelectMany(board => board.Needs)
            .GroupBy(need => need.What, StringComparer.Ordinal)
            .OrderByDescending(group => group.First().Values.RatedVoltage?.Value.Value ?? 0m)
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .ToArray();
        var counted = Drawer.Count(workshop, BoardSummary.UseOfLots(boards), today);
        Stocked[] drawer =
        [
            .. counted
                .Lots.Where(lot => lot.Doubts.Count == 0)
                .OrderBy(lot => lot.Lot.Values.RatedVoltage?.Value.Value ?? 0m)
                .ThenBy(lot => lot.Lot.Id.Value, StringComparer.Ordinal)
                .Select(lot => new Stocked(counted.Offer(lot)) { Left = lot.Left }),
        ];
        var list = new List<BuyingLine>(lines.Length);
        foreach (var line in lines)
        {
            PartNeed[] places = [.. line.OrderBy(need => need.Board, StringComparer.Ordinal)];
            var coming = places.Count(ordered.Contains);
            list.Add(new(line.Key, [.. places], SetAside(drawer, places, places.Length - coming), coming));
        }

        return [.. list.OrderBy(line => line.What, StringComparer.Ordinal)];
    }

    // Places of equal words can ask for different things of their circuits; a lot counts when it fits all of them.
    private static List<(string Lot, int Count)> SetAside(Stocked[] drawer, PartNeed[] needs, int wanted)
    {
        var taken = new List<(string, int)>();
        FitPlace[] places = [.. needs.Select(need => need.Place).Distinct()];
        var fitting = drawer
            .Where(stocked => stocked.Left > 0 && FitJudge.MayFit(places[0].Values, stocked.Offer.Values))
            .Select(stocked => (Stocked: stocked, Verdicts: places.Select(place => FitJudge.Judge(place, stocked.Offer)).ToArray()))
            .Where(fit => fit.Verdicts.All(verdict => verdict.IsSure));
        foreach (var (stocked, _) in FitJudge.Rank(places[0], fitting, fit => fit.Verdicts[0], fit => fit.Stocked.Offer.Values))
        {
            var count = Math.Min(wanted, stocked.Left);
            if (count > 0)
            {
                taken.Add((stocked.Offer.Name, count));
                stocked.Left -= count;
                wanted -= count;
            }
        }

        return taken;
    }

    private static bool IsOnOrder(Workshop workshop, BoardSummary board, PartNeed need) =>
        board.Waits.Any(wait =>
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
        && OrderStates.For(order) is OrderState.Placed or OrderState.PartReceived;

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

    private sealed class Stocked(LotOffer offer)
    {
        internal LotOffer Offer => offer;

        internal int Left { get; set; }
    }
}
