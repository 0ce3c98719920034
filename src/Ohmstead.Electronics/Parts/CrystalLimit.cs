namespace Ohmstead.Electronics.Parts;

/// <summary>How far off a crystal may be for what it does.</summary>
/// <param name="Use">What it does.</param>
/// <param name="PartsPerMillion">The largest deviation to either side.</param>
public sealed record CrystalLimit(string Use, decimal PartsPerMillion)
{
    /// <summary>Where the figures come from.</summary>
    public static Source Source { get; } = Source.CommonPractice;

    /// <summary>The uses known here; the reading must be taken at the crystal's load capacitance (20, 30 or 32 pF).</summary>
    public static IReadOnlyList<CrystalLimit> All { get; } =
    [
        new("clock of logic", 100m),
        new("clock that keeps the time of day", 20m),
        new("colour subcarrier", 50m),
        new("serial line, both ends together", 20_000m),
    ];

    /// <summary>True when a deviation is inside; exactly on the limit is inside.</summary>
    public bool Holds(decimal deviation) => Math.Abs(deviation) <= PartsPerMillion;
}
