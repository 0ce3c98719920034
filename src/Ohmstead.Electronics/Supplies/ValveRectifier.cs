namespace Ohmstead.Electronics.Supplies;

/// <summary>A valve rectifier and the largest first capacitor it may feed; more means a peak current it was not made for.</summary>
/// <param name="Type">Its type number.</param>
/// <param name="LargestInputFarads">The largest reservoir capacitance, in farad.</param>
public sealed record ValveRectifier(string Type, decimal LargestInputFarads)
{
    /// <summary>Where the figures come from; a maker's sheet for the very valve comes first.</summary>
    public static Source Source { get; } =
        Source.Published(
            "Emission Labs 5U4G data sheet; RCA and Mullard data sheets of 5Y3, GZ34 and GZ37, as indexed",
            "first capacitor; EZ80 and EZ81 from memory"
        );

    /// <summary>The valves known here.</summary>
    public static IReadOnlyList<ValveRectifier> All { get; } =
    [
        new("5Y3", 0.000020m),
        new("5U4", 0.000040m),
        new("GZ34", 0.000060m),
        new("5AR4", 0.000060m),
        new("GZ37", 0.000004m),
        new("EZ80", 0.000050m),
        new("EZ81", 0.000050m),
    ];
}
