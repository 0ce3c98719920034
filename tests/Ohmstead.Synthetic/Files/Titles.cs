namespace Ohmstead.Synthetic.Files;

/// <summary>What the boards of the invented station are.</summary>
public static class Titles
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Barograph servo amplifier",
        "Tide gauge logger",
        "Teleprinter line unit",
        "Chart recorder drive",
        "Bench supply regulator",
        "Anemometer pulse counter",
        "Receiver intermediate amplifier",
        "Data terminal deflection board",
    ];
}
