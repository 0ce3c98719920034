using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Buying;

/// <summary>What may still come of the lines of orders, as parts to be set aside.</summary>
/// <remarks>
/// A line counts with what has not come of it, where it says which kind of part it is; a line in words alone counts nowhere. A board that
/// waits for a line is served first, by whatever nothing speaks against: somebody has said that it is for that board. For all others a
/// line counts as a lot in the drawer does, only where it fits without a doubt. The lines of an order of which a lot lies here that no
/// line became do not count: which of them has come is not known.
/// </remarks>
internal sealed class ComingParts
{
    private readonly Dictionary<(string Order, string Line), Stocked> lines;
    private readonly ILookup<string, Stocked> ofOrder;
    private readonly SetAsideParts parts;

    private ComingParts((LineStanding Line, Stocked Stocked)[] coming)
    {
        lines = coming.ToDictionary(one => (one.Line.Order.Id.Value, one.Line.Line.Id.Value), one => one.Stocked);
        ofOrder = coming.ToLookup(one => one.Line.Order.Id.Value, one => one.Stocked, StringComparer.Ordinal);
        parts = new([.. coming.Select(one => one.Stocked)]);
    }

    /// <summary>Counts what may still come.</summary>
    public static ComingParts Count(Workshop workshop)
    {
        var doubtful = workshop.Lots.Values.Where(workshop.IsOfNoLine).Select(lot => lot.Order!.Value).ToHashSet(StringComparer.Ordinal);
        return new([
            .. workshop
                .Orders.Values.Where(order => !doubtful.Contains(order.Id.Value))
                .OrderBy(order => order.Placed.Value)
                .ThenBy(order => order.Id.Value, StringComparer.Ordinal)
                .SelectMany(LineStanding.All)
                .Where(line => line is { Outstanding: > 0, Line.Values: not null })
                .Select(line => (line, new Stocked(new(line.Name, line.Line.Values!, []), line.Outstanding))),
        ]);
    }

    /// <summary>Sets parts aside for the boards that wait for a line, or for an order with lines.</summary>
    /// <returns>The needs that are served, each with the name of its line.</returns>
    public Dictionary<PartNeed, string> SetAside(IReadOnlyList<BoardSummary> boards)
    {
        var served = new Dictionary<PartNeed, string>();
        if (lines.Count == 0)
        {
            return served;
        }

        // Who names the line comes before who names the order alone.
        foreach (var isOfLine in new[] { true, false })
        {
            foreach (var board in boards.OrderBy(board => board.Id.Value, StringComparer.Ordinal))
            {
                foreach (var wait in board.Waits.Where(wait => wait.Line is not null == isOfLine))
                {
                    Serve(board, Waited(wait), served);
                }
            }
        }

        return served;
    }

    /// <summary>Sets parts aside for places of equal words.</summary>
    public List<(string Name, int Count)> Take(PartNeed[] needs, int wanted) => parts.Take(needs, wanted);

    private IEnumerable<Stocked> Waited(Wait wait) =>
        wait.Order is not { } order ? []
        : wait.Line is not { } line ? ofOrder[order.Value]
        : lines.TryGetValue((order.Value, line.Value), out var one) ? [one]
        : [];

    private static void Serve(BoardSummary board, IEnumerable<Stocked> coming, Dictionary<PartNeed, string> served)
    {
        foreach (var stocked in coming)
        {
            foreach (var need in board.Needs)
            {
                if (
                    stocked.Left > 0
                    && !served.ContainsKey(need)
                    && FitJudge.MayFit(need.Values, stocked.Offer.Values)
                    && FitJudge.Judge(need.Place, stocked.Offer).Outcome != ReasonWeight.Against
                )
                {
                    served.Add(need, stocked.Offer.Name);
                    stocked.Left--;
                }
            }
        }
    }
}
