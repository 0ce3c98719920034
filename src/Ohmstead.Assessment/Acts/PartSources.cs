using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Workshops;

namespace Ohmstead.Assessment.Acts;

/// <summary>Where a part that a place needs comes from, as far as the records tell: an order, the drawer, or nowhere yet.</summary>
/// <param name="workshop">The orders.</param>
/// <param name="buying">What all boards together need.</param>
public sealed class PartSources(Workshop workshop, IReadOnlyList<BuyingLine> buying)
{
    private readonly Dictionary<string, BuyingLine> lines = buying.ToDictionary(line => line.What, StringComparer.Ordinal);

    /// <summary>In a few words; null where nothing is known of it.</summary>
    /// <param name="board">The board.</param>
    /// <param name="need">What one of its places needs.</param>
    public string? Words(BoardSummary board, PartNeed need)
    {
        if (BuyingList.WaitFor(workshop, board, need)?.Order is { } order)
        {
            return $"{order.Value} is {OrderStates.Words(OrderStates.For(workshop.Orders[order.Value]))}";
        }

        return lines.GetValueOrDefault(need.What) is { } line ? Words(line) : null;
    }

    // Which of several places gets what there is, nobody has decided yet.
    private static string Words(BuyingLine line) =>
        line.ToBuy == line.Needed ? "to buy"
        : line.InDrawer == line.Needed ? $"in the drawer, {string.Join(", ", line.Drawer.Select(lot => lot.Lot))}"
        : line.OnOrder == line.Needed ? OnOrder(line)
        : string.Join(
            ", ",
            new (int Count, string Where)[] { (line.InDrawer, "in the drawer"), (line.OnOrder, "on order"), (line.ToBuy, "to buy") }
                .Where(part => part.Count > 0)
                .Select(part => string.Create(CultureInfo.InvariantCulture, $"of {line.Needed} needed {part.Count} {part.Where}"))
        );

    private static string OnOrder(BuyingLine line) =>
        line.Coming.Count == 0 ? "on order" : $"on order, {string.Join(", ", line.Coming.Select(coming => coming.Line))}";
}
