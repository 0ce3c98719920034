using System.Collections.Frozen;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>
/// Everything of a collection that boards refer to, found by name: designs, instruments, lots, orders. Loaded once, before any board.
/// </summary>
public sealed class Workshop
{
    private readonly FrozenDictionary<string, OrderState> states;
    private readonly FrozenDictionary<(string Order, string Line), LineStanding> lines;
    private readonly FrozenDictionary<string, (Order Order, OrderArrival Arrival)> arrivals;

    /// <summary>Gathers the files of a collection. Where a name occurs twice the first one counts; a check reports the second.</summary>
    public Workshop(CollectionFile collection, InstrumentsFile? instruments, StockFile? stock, IReadOnlyList<DesignFile> designs)
    {
        Collection = collection;
        Rule = collection.Decision?.Value ?? DecisionRule.Guarded;
        InstrumentsFile = instruments;
        StockFile = stock;
        DesignFiles = designs;
        Instruments = ByName(instruments?.Instruments ?? [], instrument => instrument.Id.Value);
        Lots = ByName(stock?.Lots ?? [], lot => lot.Id.Value);
        Orders = ByName(stock?.Orders ?? [], order => order.Id.Value);
        states = Orders.Values.ToFrozenDictionary(order => order.Id.Value, OrderStates.For, StringComparer.Ordinal);
        lines = Orders
            .Values.SelectMany(LineStanding.All)
            .ToFrozenDictionary(line => (line.Order.Id.Value, line.Line.Id.Value), line => line);
        arrivals = Orders
            .Values.SelectMany(order => order.Came.Where(one => one.Lot is not null).Select(one => (Order: order, Arrival: one)))
            .DistinctBy(one => one.Arrival.Lot!.Value, StringComparer.Ordinal)
            .ToFrozenDictionary(one => one.Arrival.Lot!.Value, StringComparer.Ordinal);
        Designs = ByName(designs, design => design.Id.Value);
        IncomingReadings = (stock?.Bench ?? [])
            .SelectMany(visit =>
                visit.Readings.Where(reading => reading.Lot is not null).Select(reading => (Visit: visit, Reading: reading))
            )
            .ToLookup(pair => pair.Reading.Lot!.Value, StringComparer.Ordinal);
        Scrapped = (stock?.Bench ?? [])
            .SelectMany(visit => visit.Scrapped.Select(scrapped => (Visit: visit, Scrapped: scrapped)))
            .ToLookup(pair => pair.Scrapped.Lot.Value, StringComparer.Ordinal);
    }

    /// <summary>A workshop with nothing in it: a board alone in a folder.</summary>
    public static Workshop Empty { get; } = new(CollectionFile.Nameless, null, null, []);

    /// <summary>The collection file.</summary>
    public CollectionFile Collection { get; }

    /// <summary>How a reading near its limit is judged.</summary>
    public DecisionRule Rule { get; }

    /// <summary>The instruments file, or null when there is none.</summary>
    public InstrumentsFile? InstrumentsFile { get; }

    /// <summary>The stock file, or null when there is none.</summary>
    public StockFile? StockFile { get; }

    /// <summary>All designs, in order of path.</summary>
    public IReadOnlyList<DesignFile> DesignFiles { get; }

    /// <summary>Instruments by name.</summary>
    public IReadOnlyDictionary<string, Instrument> Instruments { get; }

    /// <summary>Lots by name.</summary>
    public IReadOnlyDictionary<string, Lot> Lots { get; }

    /// <summary>Orders by name.</summary>
    public IReadOnlyDictionary<string, Order> Orders { get; }

    /// <summary>Designs by name.</summary>
    public IReadOnlyDictionary<string, DesignFile> Designs { get; }

    /// <summary>Designs whose file is there and could not be read, by the name of the file.</summary>
    public IReadOnlySet<string> UnreadDesigns { get; init; } = FrozenSet<string>.Empty;

    /// <summary>Paths of the files of the collection, boards apart, in which something could not be read.</summary>
    public IReadOnlySet<string> FilesWithErrors { get; init; } = FrozenSet<string>.Empty;

    /// <summary>Incoming inspection: readings of lots in the drawer, by lot.</summary>
    public ILookup<string, (BenchVisit Visit, Reading Reading)> IncomingReadings { get; }

    /// <summary>Pieces that went to the bin before they were fitted, by lot.</summary>
    public ILookup<string, (BenchVisit Visit, Scrapped Scrapped)> Scrapped { get; }

    /// <summary>How many pieces of a lot went to the bin.</summary>
    public int ScrappedOf(string lot) => Scrapped[lot].Sum(pair => pair.Scrapped.Count.Value);

    /// <summary>A line of an order with what came of it; null where there is none of that name.</summary>
    public LineStanding? Line(string order, string line) => lines.GetValueOrDefault((order, line));

    /// <summary>The parcel that became a lot; null where no line of an order says so.</summary>
    public (Order Order, OrderArrival Arrival)? ArrivalOf(string lot) => arrivals.TryGetValue(lot, out var arrival) ? arrival : null;

    /// <summary>Whether a lot lies here under an order that is still open, and no line of the order says that it became the lot: what of
    /// that order may still come is not known.</summary>
    public bool IsOfNoLine(Lot lot) =>
        lot is { Received: not null, Order: { } name }
        && Orders.GetValueOrDefault(name.Value) is { Lines.Length: > 0 }
        && OrderStates.IsOpen(states[name.Value])
        && !arrivals.ContainsKey(lot.Id.Value);

    /// <summary>Whether a lot is there: it came, or no order says otherwise.</summary>
    internal bool HasCome(Lot lot) =>
        lot.Received is not null
        || lot.Order is not { } name
        || !states.TryGetValue(name.Value, out var state)
        || state == OrderState.Received
        || arrivals.ContainsKey(lot.Id.Value);

    private static FrozenDictionary<string, T> ByName<T>(IReadOnlyList<T> items, Func<T, string> name) =>
        items.DistinctBy(name, StringComparer.Ordinal).ToFrozenDictionary(name, StringComparer.Ordinal);
}
