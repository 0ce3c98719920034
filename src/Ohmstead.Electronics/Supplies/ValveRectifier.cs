namespace Ohmstead.Electronics.Supplies;

/// <summary>A valve rectifier and the largest first capacitor it may feed; more means a peak current it was not made for.</summary>
/// <param name="Type">Its type number.</param>
/// <param name="LargestInputFarads">The largest reservoir capacitance, in farad.</param>
public sealed record ValveRectifier(string Type, decimal LargestInputFarads)
{
    /// <summary>Where the figures come from; a maker's sheet for the very valve comes first.</summary>
    public static Source Source { get; } = Source.FromMemory("valve data books", "capacitor input to filter, maximum");

    /// <summary>The valves known here.</summary>
    public static IReadOnlyList<ValveRectifier> All { get; } =
    [
        new("5Y3", 0.000020m), new("5U4", 0.000040m), new("GZ34", 0.000060m), new("5AR4", 0.000060m), new("EZ80", 0.000050m),
        new("EZ81", 0.000050m),
    ];
}
