using System.Collections.Immutable;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>One line of an order: how many of what.</summary>
/// <param name="Id">Its name within the order.</param>
/// <param name="Quantity">How many were ordered.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record OrderLine(Written<string> Id, Written<int> Quantity, Spot Spot)
{
    /// <summary>What the parts are; null for a line that is in words alone.</summary>
    public PartValues? Values { get; init; }

    /// <summary>True where values of a part are written and no kind that they are of: they say nothing then.</summary>
    public bool HasLooseValues { get; init; }

    /// <summary>What was ordered, in words.</summary>
    public Written<string>? What { get; init; }

    /// <summary>What one of them costs, with the currency.</summary>
    public Written<string>? Price { get; init; }

    /// <summary>When what had not come of it was known to be lost.</summary>
    public Written<DateOnly>? Lost { get; init; }

    /// <summary>When what had not come of it was cancelled.</summary>
    public Written<DateOnly>? Cancelled { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>What came of a line of an order in one parcel.</summary>
/// <param name="Date">The day.</param>
/// <param name="Line">The line.</param>
/// <param name="Quantity">How many came.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record OrderArrival(Written<DateOnly> Date, Written<string> Line, Written<int> Quantity, Spot Spot)
{
    /// <summary>The lot in the drawer that it became; null for what went to no lot.</summary>
    public Written<string>? Lot { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>Something ordered.</summary>
/// <param name="Id">Its name in the records.</param>
/// <param name="Placed">When.</param>
/// <param name="For">What.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Order(Written<string> Id, Written<DateOnly> Placed, Written<string> For, Spot Spot)
{
    /// <summary>From whom.</summary>
    public Written<string>? From { get; init; }

    /// <summary>What was ordered, line by line; empty where its words alone say so.</summary>
    public ImmutableArray<OrderLine> Lines { get; init; } = [];

    /// <summary>Lines that stand in the list and could not be read.</summary>
    public UnreadNames UnreadLines { get; init; } = UnreadNames.None;

    /// <summary>What came of the lines, parcel by parcel.</summary>
    public ImmutableArray<OrderArrival> Came { get; init; } = [];

    /// <summary>When a part of it came, of an order without lines.</summary>
    public Written<DateOnly>? PartReceived { get; init; }

    /// <summary>When all had come.</summary>
    public Written<DateOnly>? Received { get; init; }

    /// <summary>When it was known to be lost.</summary>
    public Written<DateOnly>? Lost { get; init; }

    /// <summary>When it was cancelled.</summary>
    public Written<DateOnly>? Cancelled { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}
