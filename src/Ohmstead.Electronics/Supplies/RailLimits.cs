namespace Ohmstead.Electronics.Supplies;

/// <summary>Supply ranges by logic family, by whole supply and of heaters and mains.</summary>
public static class RailLimits
{
    private static readonly Source TtlBook = Source.FromMemory("Texas Instruments TTL Data Book", "recommended operating conditions");
    private static readonly Source CmosBook = Source.FromMemory(
        "RCA COS/MOS Integrated Circuits data book",
        "recommended operating conditions"
    );
    private static readonly Source HighSpeedCmos = Source.Published(
        "National MM54HC/74HC242 data sheet; Fairchild MM74HCT00 data sheet",
        "recommended operating conditions"
    );
    private static readonly Source AdvancedCmos = Source.FromMemory("data sheets of 74AC and 74ACT", "recommended operating conditions");
    private static readonly Source Mos = Source.FromMemory("Intel data catalog", "d.c. characteristics");
    private static readonly Source SixteenK = Source.FromMemory("16 K dynamic memory data sheets", "recommended operating conditions");
    private static readonly Source Eia232 = Source.Published(
        "EIA-232 levels, as told in the Simrad CS90 installation manual",
        "driver output into 3 to 7 kΩ"
    );
    private static readonly Source TechnicalReference = Source.FromMemory("IBM Technical Reference, PC, XT and AT", "power supply");
    private static readonly Source Heaters = Source.Published(
        "M. J. Darby, The Radio Constructor, April 1962 (r-type.org add130)",
        "heater voltage"
    );
    private static readonly Source Atx = Source.Published(
        "Intel ATX12V Power Supply Design Guide 2.0 and 1.1; ATX 0.9",
        "d.c. voltage regulation"
    );

    /// <summary>Logic families and devices.</summary>
    public static IReadOnlyList<RailLimit> Families { get; } =
    [
        new("TTL 74, 74LS, 74S", 5m, 4.75m, 5.25m, null, TtlBook),
        new(
            "TTL 74F",
            5m,
            4.50m,
            5.50m,
            null,
            Source.Published("National 74F373 data sheet", "recommended operating conditions, commercial")
        ),
        new("TTL 54", 5m, 4.50m, 5.50m, null, TtlBook),
        new("DTL 930", 5m, 4.5m, 5.5m, null, Source.FromMemory("DTL data sheets", null)),
        RailLimit.PlusMinus("RTL", 3.6m, 10m, null, Source.FromMemory("RTL data sheets", null)),
        new("CMOS 4000A", 5m, 3m, 12m, "absolute maximum 15 V", CmosBook),
        new(
            "CMOS 4000B",
            5m,
            3m,
            15m,
            "3 to 15 V is common to all; absolute maximum 18 V, of some makers 20 V: count with 18 V",
            Source.Published(
                "Harris CD4000B Series technical overview, quoting JEDEC standard 13-B; National CD4020BM data sheet",
                "ratings"
            )
        ),
        new("CMOS 74C", 5m, 3m, 15m, null, Source.FromMemory("74C data sheets", null)),
        new("CMOS 74HC", 5m, 2m, 6m, null, HighSpeedCmos),
        new("CMOS 74HCT", 5m, 4.5m, 5.5m, null, HighSpeedCmos),
        new("CMOS 74AC", 5m, 2m, 6m, null, AdvancedCmos),
        new("CMOS 74ACT", 5m, 4.5m, 5.5m, null, AdvancedCmos),
        RailLimit.PlusMinus(
            "ECL 10K",
            -5.2m,
            10m,
            "its levels are specified at 5 %",
            Source.FromMemory("MECL System Design Handbook", null)
        ),
        RailLimit.PlusMinus("NMOS 8080A, +12 V", 12m, 5m, null, Mos),
        RailLimit.PlusMinus("NMOS 8080A, +5 V", 5m, 5m, null, Mos),
        RailLimit.PlusMinus("NMOS 8080A, -5 V", -5m, 5m, null, Mos),
        RailLimit.PlusMinus("DRAM 4116, +12 V", 12m, 10m, null, SixteenK),
        RailLimit.PlusMinus("DRAM 4116, +5 V", 5m, 10m, null, SixteenK),
        new("DRAM 4116, -5 V", -5m, -5.7m, -4.5m, "first on and last off", SixteenK),
        RailLimit.PlusMinus("EPROM 2708, +12 V", 12m, 5m, null, Mos),
        RailLimit.PlusMinus("EPROM 2708, +5 V", 5m, 5m, null, Mos),
        RailLimit.PlusMinus("EPROM 2708, -5 V", -5m, 5m, null, Mos),
        new("EIA-232 driver, mark", -12m, -15m, -5m, "open circuit to 25 V", Eia232),
        new("EIA-232 driver, space", 12m, 5m, 15m, "open circuit to 25 V", Eia232),
        RailLimit.PlusMinus("op-amp, +15 V", 15m, 5m, null, Source.CommonPractice),
        RailLimit.PlusMinus("op-amp, -15 V", -15m, 5m, null, Source.CommonPractice),
    ];

    /// <summary>Whole supplies of desktop computers.</summary>
    public static IReadOnlyList<RailLimit> ComputerSupplies { get; } =
    [
        RailLimit.Asymmetric("early desktop supply, +5 V", 5m, 5m, 4m, null, TechnicalReference),
        RailLimit.Asymmetric("early desktop supply, +12 V", 12m, 5m, 4m, null, TechnicalReference),
        RailLimit.Asymmetric("early desktop supply, -5 V", -5m, 10m, 8m, null, TechnicalReference),
        RailLimit.Asymmetric("early desktop supply, -12 V", -12m, 10m, 9m, null, TechnicalReference),
        RailLimit.PlusMinus("ATX, +12 V", 12m, 5m, "to 10 % at its peak load", Atx),
        RailLimit.PlusMinus("ATX, +5 V", 5m, 5m, null, Atx),
        RailLimit.PlusMinus("ATX, +3.3 V", 3.3m, 5m, null, Atx),
        RailLimit.PlusMinus("ATX, -12 V", -12m, 10m, null, Atx),
        RailLimit.PlusMinus("ATX, -5 V", -5m, 10m, null, Atx),
        RailLimit.PlusMinus("ATX, +5 V standby", 5m, 5m, null, Atx),
    ];

    /// <summary>Heaters and mains, in volt r.m.s.</summary>
    public static IReadOnlyList<RailLimit> HeatersAndMains { get; } =
    [
        RailLimit.PlusMinus("valve heater 6.3 V, good", 6.3m, 5m, null, Source.FromMemory("valve data books", "heater voltage")),
        RailLimit.PlusMinus("valve heater 6.3 V, British practice", 6.3m, 7m, null, Heaters),
        RailLimit.PlusMinus(
            "valve heater 6.3 V, absolute",
            6.3m,
            10m,
            "the mean belongs at the rated voltage: beyond 7 % (5.859 to 6.741 V) it is borne, not good, and beyond 10 % the valve's "
                + "ratings are cut",
            Heaters
        ),
        RailLimit.PlusMinus(
            "mains 230 V",
            230m,
            10m,
            "95 % of a week's ten-minute means; the rest +10/-15 %. What was made before 1995 may be marked 220 or 240 V",
            Source.Published("EN 50160, as quoted with BS 7671 appendix 2", "supply voltage variations")
        ),
        RailLimit.PlusMinus("mains 120 V", 120m, 5m, null, Source.FromMemory("ANSI C84.1", "range A")),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<RailLimit> All { get; } = [.. Families, .. ComputerSupplies, .. HeatersAndMains];
}
