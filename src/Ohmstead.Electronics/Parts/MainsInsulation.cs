namespace Ohmstead.Electronics.Parts;

/// <summary>How much insulation there must be between the mains and what a hand can touch, in ohm at 500 V d.c.</summary>
/// <param name="Equipment">What it is asked of.</param>
/// <param name="Ohms">The least insulation.</param>
/// <param name="Source">Where it comes from; local codes and licensed practice come first.</param>
public sealed record MainsInsulation(string Equipment, decimal Ohms, Source Source)
{
    /// <summary>The voltage it is read at.</summary>
    public const decimal TestVolts = 500m;

    private static readonly Source InService = Source.Published(
        "IEE Wiring Matters, autumn 2005, page 16",
        "1 MΩ class I at 500 V d.c.; 2 MΩ class II by practice of appliance testing"
    );

    /// <summary>Equipment with a protective earth (class I), in service.</summary>
    public static MainsInsulation ClassOne { get; } = new("class I in service", 1_000_000m, InService);

    /// <summary>Equipment with double insulation (class II), in service.</summary>
    public static MainsInsulation ClassTwo { get; } = new("class II in service", 2_000_000m, InService);

    /// <summary>What new equipment, and the stricter practice, ask of reinforced insulation.</summary>
    public static MainsInsulation Reinforced { get; } =
        new("reinforced insulation", 7_000_000m, Source.Practice("appliance testing, the figure for new equipment"));

    /// <summary>All of them, the least first.</summary>
    public static IReadOnlyList<MainsInsulation> All { get; } = [ClassOne, ClassTwo, Reinforced];

    /// <summary>True when a reading is enough; exactly on the figure is enough.</summary>
    public bool Holds(decimal ohms) => ohms >= Ohms;
}
