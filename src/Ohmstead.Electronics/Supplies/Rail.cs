using System.Collections.Immutable;

namespace Ohmstead.Electronics.Supplies;

/// <summary>What a supply rail is or feeds: one row with all that follows from it. There is one object of each.</summary>
public sealed class Rail
{
    private Rail(string name)
    {
        Name = name;
    }

    /// <summary>Transistor-transistor logic, commercial.</summary>
    public static Rail Ttl { get; } = Logic("TTL", "TTL 74");

    /// <summary>Transistor-transistor logic, military.</summary>
    public static Rail MilitaryTtl { get; } = Logic("TTL 54", "TTL 54");

    /// <summary>Diode-transistor logic.</summary>
    public static Rail Dtl { get; } = Logic("DTL", "DTL 930");

    /// <summary>Resistor-transistor logic.</summary>
    public static Rail Rtl { get; } = Create("RTL", "RTL");

    /// <summary>Early CMOS.</summary>
    public static Rail Cmos4000A { get; } = Create("CMOS 4000A", "CMOS 4000A", isWide: true);

    /// <summary>Buffered CMOS.</summary>
    public static Rail Cmos4000B { get; } = Create("CMOS 4000B", "CMOS 4000B", isWide: true);

    /// <summary>CMOS with the pins of TTL.</summary>
    public static Rail Cmos74C { get; } = Create("CMOS 74C", "CMOS 74C", isWide: true);

    /// <summary>Quick CMOS.</summary>
    public static Rail Cmos74HC { get; } = Logic("CMOS 74HC", "CMOS 74HC", isWide: true);

    /// <summary>Quick CMOS with the levels of TTL.</summary>
    public static Rail Cmos74HCT { get; } = Logic("CMOS 74HCT", "CMOS 74HCT");

    /// <summary>Advanced CMOS.</summary>
    public static Rail Cmos74AC { get; } = Logic("CMOS 74AC", "CMOS 74AC", isWide: true);

    /// <summary>Advanced CMOS with the levels of TTL.</summary>
    public static Rail Cmos74ACT { get; } = Logic("CMOS 74ACT", "CMOS 74ACT");

    /// <summary>Emitter-coupled logic.</summary>
    public static Rail Ecl { get; } = Create("ECL", "ECL 10K");

    /// <summary>Processors and their like of n-channel MOS.</summary>
    public static Rail Nmos { get; } = Chips("NMOS", "NMOS 8080A");

    /// <summary>Dynamic memory with three supplies.</summary>
    public static Rail DynamicMemory { get; } = Chips("dynamic memory", "DRAM 4116");

    /// <summary>Erasable memory with three supplies.</summary>
    public static Rail Eprom { get; } = Chips("EPROM", "EPROM 2708");

    /// <summary>Drivers of a serial line.</summary>
    public static Rail LineDriver { get; } = Create("line driver", "EIA-232 driver", isWide: true);

    /// <summary>Operational amplifiers.</summary>
    public static Rail OpAmp { get; } = new("op-amp") { Ranges = RangesOf("op-amp"), Ripple = RippleLimit.RegulatedAnalogue };

    /// <summary>Heaters of valves.</summary>
    public static Rail Heater { get; } = Create("heater", "valve heater 6.3 V, absolute");

    /// <summary>The mains.</summary>
    public static Rail Mains { get; } = Create("mains", "mains");

    /// <summary>A reservoir before any regulator: its ripple goes with the voltage.</summary>
    public static Rail Unregulated { get; } = new("unregulated") { Ripple = RippleLimit.UnregulatedReservoir };

    /// <summary>A valve supply after its filter.</summary>
    public static Rail HighTension { get; } = new("high tension") { Ripple = RippleLimit.FilteredHighTension };

    /// <summary>All of them, in the order in which people are told the words.</summary>
    public static WordList<Rail> All { get; } =
        new([
            .. new[]
            {
                Ttl,
                MilitaryTtl,
                Dtl,
                Rtl,
                Cmos4000A,
                Cmos4000B,
                Cmos74C,
                Cmos74HC,
                Cmos74HCT,
                Cmos74AC,
                Cmos74ACT,
                Ecl,
                Nmos,
                DynamicMemory,
                Eprom,
                LineDriver,
                OpAmp,
                Heater,
                Mains,
                Unregulated,
                HighTension,
            }.Select(rail => (rail, rail.Name)),
        ]);

    /// <summary>Its word in records.</summary>
    public string Name { get; }

    /// <summary>Its ranges, one for each nominal voltage; none where it tells ripple alone.</summary>
    public ImmutableArray<RailLimit> Ranges { get; private init; } = [];

    /// <summary>Whether it runs from any voltage of its range; of the others each has its own.</summary>
    public bool IsWide { get; private init; }

    /// <summary>The ripple that is usual at any voltage, or null.</summary>
    public RippleLimit? Ripple { get; private init; }

    /// <summary>The ripple that is usual at 5 V, or null.</summary>
    public RippleLimit? RippleAtFive { get; private init; }

    /// <summary>The ripple that is usual at 12 V, or null.</summary>
    public RippleLimit? RippleAtTwelve { get; private init; }

    /// <summary>Its name.</summary>
    public override string ToString() => Name;

    private static Rail Create(string name, string family, bool isWide = false) => new(name) { Ranges = RangesOf(family), IsWide = isWide };

    private static Rail Logic(string name, string family, bool isWide = false) =>
        new(name)
        {
            Ranges = RangesOf(family),
            IsWide = isWide,
            RippleAtFive = RippleLimit.Logic,
        };

    private static Rail Chips(string name, string family) =>
        new(name)
        {
            Ranges = RangesOf(family),
            RippleAtFive = RippleLimit.Logic,
            RippleAtTwelve = RippleLimit.AtxTwelve,
        };

    // "TTL 74" has "TTL 74, 74LS, 74S" and not "TTL 74F"; "mains" has one for each country.
    private static ImmutableArray<RailLimit> RangesOf(string family) =>
        [
            .. RailLimits.All.Where(limit =>
                limit.Family == family
                || limit.Family.StartsWith(family + ",", StringComparison.Ordinal)
                || limit.Family.StartsWith(family + " ", StringComparison.Ordinal)
            ),
        ];
}
