using System.Collections.Frozen;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>
/// Everything of a collection that boards refer to, found by name: designs, instruments, lots, orders. Loaded once, before any board.
/// </summary>
public sealed class Workshop
{
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

    /// <summary>Whether a lot is there: it came, or no order says otherwise.</summary>
    internal bool HasCome(Lot lot) =>
        lot.Received is not null
        || lot.Order is not { } name
        || Orders.GetValueOrDefault(name.Value) is not { } order
        || OrderStates.For(order) == OrderState.Received;

    private static FrozenDictionary<string, T> ByName<T>(IReadOnlyList<T> items, Func<T, string> name) =>
        items.DistinctBy(name, StringComparer.Ordinal).ToFrozenDictionary(name, StringComparer.Ordinal);
}
