using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>One calibration of an instrument.</summary>
/// <param name="Date">The day.</param>
/// <param name="Valid">How long it holds, 12 months when null.</param>
/// <param name="Certificate">The certificate.</param>
public sealed record Calibration(Written<DateOnly> Date, Written<Quantity>? Valid, Written<string>? Certificate);

/// <summary>What an instrument is good for in one quantity.</summary>
/// <param name="Measures">The quantity.</param>
/// <param name="Error">The part of the error that goes with the reading, as a fraction.</param>
/// <param name="Digits">The part counted in steps of the last digit.</param>
/// <param name="Step">The step of the last digit.</param>
/// <param name="Fixed">A fixed part.</param>
/// <param name="UpTo">The largest reading this holds for.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Accuracy(
    Written<Measured> Measures,
    Written<Quantity>? Error,
    Written<int>? Digits,
    Written<Quantity>? Step,
    Written<Quantity>? Fixed,
    Written<Quantity>? UpTo,
    Spot Spot
)
{
    /// <summary>The expanded uncertainty (k = 2) of the calibration itself, as a fraction of the reading, from its certificate.</summary>
    public Written<Quantity>? Certificate { get; init; }
}

/// <summary>A measuring instrument.</summary>
/// <param name="Id">Its name in the records.</param>
/// <param name="What">What it is.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Instrument(Written<string> Id, Written<string> What, Spot Spot)
{
    /// <summary>Maker.</summary>
    public Written<string>? Maker { get; init; }

    /// <summary>Serial number.</summary>
    public Written<string>? Serial { get; init; }

    /// <summary>Calibrations, as written.</summary>
    public ImmutableArray<Calibration> Calibrations { get; init; } = [];

    /// <summary>What it is good for.</summary>
    public ImmutableArray<Accuracy> Accuracies { get; init; } = [];

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>The instruments file.</summary>
/// <param name="Path">The path of the file.</param>
/// <param name="Instruments">The instruments.</param>
public sealed record InstrumentsFile(string Path, ImmutableArray<Instrument> Instruments)
{
    /// <summary>Instruments that stand in the list and could not be read.</summary>
    public UnreadNames Unread { get; init; } = UnreadNames.None;

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>Parts in the drawer that came together.</summary>
/// <param name="Id">Its name in the records.</param>
/// <param name="Values">What the parts are.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Lot(Written<string> Id, PartValues Values, Spot Spot)
{
    /// <summary>When it came.</summary>
    public Written<RoughDate>? Received { get; init; }

    /// <summary>How many came.</summary>
    public Written<int>? Quantity { get; init; }

    /// <summary>The order.</summary>
    public Written<string>? Order { get; init; }

    /// <summary>What one cost.</summary>
    public Written<string>? Price { get; init; }

    /// <summary>When last formed again.</summary>
    public Written<DateOnly>? Formed { get; init; }

    /// <summary>How long the parts may lie.</summary>
    public Written<Quantity>? ShelfLife { get; init; }
}

/// <summary>The stock file: drawer, orders, incoming inspection.</summary>
/// <param name="Path">The path of the file.</param>
/// <param name="Lots">The lots.</param>
/// <param name="Orders">The orders.</param>
/// <param name="Bench">Incoming inspection.</param>
public sealed record StockFile(string Path, ImmutableArray<Lot> Lots, ImmutableArray<Order> Orders, ImmutableArray<BenchVisit> Bench)
{
    /// <summary>Lots that stand in the list and could not be read.</summary>
    public UnreadNames UnreadLots { get; init; } = UnreadNames.None;

    /// <summary>Orders that stand in the list and could not be read.</summary>
    public UnreadNames UnreadOrders { get; init; } = UnreadNames.None;

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}
