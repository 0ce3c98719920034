using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.PreferredValues;

/// <summary>The rated voltages of aluminium electrolytics, today's and the old ones, and which of today's replaces an old one.</summary>
/// <remarks>
/// The rule is never to go below the mark: 64 V becomes 80 V although 63 V is nearer, and 6.4 V becomes 10 V. Sources: IEC 60384-4:2016
/// clause 2.2.3 for the preferred ratings, from memory; the market series and the rule are common practice.
/// </remarks>
public static class RatedVoltages
{
    private static readonly decimal[] MarketVolts =
    [
        4m,
        6.3m,
        10m,
        16m,
        25m,
        35m,
        50m,
        63m,
        80m,
        100m,
        160m,
        200m,
        250m,
        315m,
        350m,
        400m,
        420m,
        450m,
        500m,
    ];

    /// <summary>Preferred to take first: R5.</summary>
    public static ImmutableArray<decimal> FirstChoice { get; } = [1.0m, 1.6m, 2.5m, 4.0m, 6.3m];

    /// <summary>Preferred to take next: the rest of R10.</summary>
    public static ImmutableArray<decimal> SecondChoice { get; } = [1.25m, 2.0m, 3.15m, 5.0m, 8.0m];

    /// <summary>The ratings that are made, in rising order.</summary>
    public static ImmutableArray<Quantity> Market { get; } = [.. MarketVolts.Select(Volts)];

    /// <summary>The rating to look for in place of a mark, or the advice for marks above all of today's ratings.</summary>
    /// <param name="mark">The voltage marked on the old part.</param>
    public static VoltageReplacement Replace(Quantity mark)
    {
        if (mark.Dimension is not Dimension.Voltage || mark.Value <= 0m)
            return new VoltageReplacement(mark, null, [], "no rated voltage");
        var fitting = Market.Where(rating => rating.Value >= mark.Value).ToList();
        if (fitting.Count == 0)
            return new VoltageReplacement(mark, null, [], "above today's ratings: two in series with sharing resistors, or film");

        // Where today's mains or the market make the next step worth naming.
        var also = mark.Value switch
        {
            3m => 6.3m,
            300m => 350m,
            450m => 500m,
            _ => 0m,
        };
        return new VoltageReplacement(
            mark,
            fitting[0],
            also == 0m ? [] : [Volts(also)],
            mark.Value == 450m ? "500 V is preferred in valve gear at today's mains" : null
        );
    }

    private static Quantity Volts(decimal value) => new(value, Dimension.Voltage);
}
