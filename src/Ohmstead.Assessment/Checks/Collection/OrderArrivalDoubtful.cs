using System.Globalization;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>What is written as come of an order does not agree with its lines, or with the lots in the drawer.</summary>
public sealed class OrderArrivalDoubtful : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "order-arrival-doubtful",
            Severity.Warning,
            "what is written as come of an order does not agree with its lines, or with the lots in the drawer",
            CheckEffect.Told,
            "no board is judged by what came of an order; a lot is judged by its own readings"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        var look = new Arrivals(Description, collection.Workshop, stock);
        foreach (var order in stock.Orders)
        {
            foreach (var finding in look.Of(order))
            {
                yield return finding;
            }
        }

        foreach (var lot in stock.Lots.Where(collection.Workshop.IsOfNoLine))
        {
            var order = collection.Workshop.Orders[lot.Order!.Value];
            yield return look.Finding(
                lot.Order.Spot,
                $"lot {lot.Id.Value} came under order {order.Id.Value}, and no line of that order became it",
                $"say so under came: of the order: {{ date: {lot.Received!.Text}, line: …, quantity: …, lot: {lot.Id.Value} }}"
            );
        }
    }

    // What was seen so far, in order of the file.
    private sealed class Arrivals(CheckDescription check, Workshop workshop, StockFile stock)
    {
        private readonly Dictionary<string, OrderArrival> lots = new(StringComparer.Ordinal);
        private KnownNames? known;

        public IEnumerable<Finding> Of(Order order)
        {
            OrderLine[] lines = [.. order.Lines.DistinctBy(line => line.Id.Value, StringComparer.Ordinal)];
            var left = lines.ToDictionary(line => line.Id.Value, line => (long)line.Quantity.Value, StringComparer.Ordinal);
            var spots = lines.ToDictionary(line => line.Id.Value, line => line.Spot, StringComparer.Ordinal);
            foreach (var came in order.Came)
            {
                if (ByLine(order, came, left, spots) is { } ofLine)
                {
                    yield return ofLine;
                }

                if (came.Lot is { } lot && ByLot(order, came, lot) is { } ofLot)
                {
                    yield return ofLot;
                }
            }

            if (order.Lines.Length > 0 && order.PartReceived is { } part)
            {
                yield return Finding(
                    part.Spot,
                    $"order {order.Id.Value} has lines, and part_received does not say which of them came",
                    "take part_received out, and say under came: which line and how many"
                );
            }

            if (order.Received is { } received && lines.FirstOrDefault(line => IsOpen(line) && left[line.Id.Value] > 0) is { } open)
            {
                yield return Finding(
                    received.Spot,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"order {order.Id.Value} is said to have come, and {left[open.Id.Value]} of line {open.Id.Value} did not"
                    ),
                    "say under came: what came, or end the line with cancelled: and a day"
                ) with
                {
                    Related = [new RelatedPlace(open.Spot.In(stock.Path), "the line")],
                };
            }
        }

        public Finding Finding(Spot spot, string message, string next) =>
            new(check.Name, check.Severity, spot.In(stock.Path), message, next);

        private Finding? ByLine(Order order, OrderArrival came, Dictionary<string, long> left, Dictionary<string, Spot> spots)
        {
            var (name, line) = (order.Id.Value, came.Line);
            if (!left.TryGetValue(line.Value, out var open))
            {
                return order.UnreadLines.MayHold(line.Value)
                    ? null
                    : Finding(
                        line.Spot,
                        $"order {name} has no line '{line.Value}'",
                        order.Lines.Length == 0
                            ? $"write the lines of the order under lines:, or received: {came.Date.Text}"
                            : $"write one of its lines: {string.Join(", ", left.Keys.Take(20))}"
                    );
            }

            if (came.Quantity.Value == 0)
            {
                return Finding(
                    came.Quantity.Spot,
                    $"of line {line.Value} of order {name} came none",
                    "write how many came, or take it out"
                );
            }

            left[line.Value] = open - came.Quantity.Value;
            return left[line.Value] >= 0
                ? null
                : Finding(
                    came.Quantity.Spot,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"of line {line.Value} of order {name} came {-left[line.Value]} more than were ordered"
                    ),
                    "mend how many came, the line, or how many were ordered"
                ) with
                {
                    Related = [new RelatedPlace(spots[line.Value].In(stock.Path), "the line")],
                };
        }

        private Finding? ByLot(Order order, OrderArrival came, Written<string> lot)
        {
            if (!lots.TryAdd(lot.Value, came))
            {
                return Finding(
                    lot.Spot,
                    $"lot {lot.Value} came already, on {lots[lot.Value].Date.Text}; what comes later is a lot of its own",
                    "give what came later another lot, or take one of the two out"
                ) with
                {
                    Related = [new RelatedPlace(lots[lot.Value].Spot.In(stock.Path), "first written here")],
                };
            }

            if (workshop.Lots.GetValueOrDefault(lot.Value) is not { } found)
            {
                return stock.UnreadLots.MayHold(lot.Value)
                    ? null
                    : new UnknownName("lot", $"add lot {lot.Value} under lots").In(
                        stock.Path,
                        check,
                        lot,
                        $"there is no lot '{lot.Value}' in the drawer",
                        known ??= new(workshop.Lots.Keys.Order(StringComparer.Ordinal))
                    );
            }

            return found.Order is { } other && other.Value != order.Id.Value
                    ? Finding(
                        lot.Spot,
                        $"lot {lot.Value} says that it came under order {other.Value}, not {order.Id.Value}",
                        "mend one of the two"
                    )
                : found.Quantity is { } quantity && quantity.Value != came.Quantity.Value
                    ? Finding(
                        came.Quantity.Spot,
                        $"{came.Quantity.Text} came and became lot {lot.Value}, which says that {quantity.Text} came",
                        "mend one of the two counts"
                    ) with
                    {
                        Related = [new RelatedPlace(quantity.Spot.In(stock.Path), "the quantity of the lot")],
                    }
                : null;
        }

        private static bool IsOpen(OrderLine line) => line.Lost is null && line.Cancelled is null;
    }
}
