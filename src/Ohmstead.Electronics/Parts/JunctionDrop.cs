namespace Ohmstead.Electronics.Parts;

/// <summary>The forward drop of a healthy junction at about 1 mA.</summary>
/// <param name="Material">What the junction is of, in the words of records.</param>
/// <param name="LowVolts">The lowest usual drop, in volt.</param>
/// <param name="HighVolts">The highest usual drop, in volt.</param>
public sealed record JunctionDrop(string Material, decimal LowVolts, decimal HighVolts)
{
    /// <summary>Where the figures come from.</summary>
    public static Source Source { get; } = Source.CommonPractice;

    /// <summary>Silicon.</summary>
    public static JunctionDrop Silicon { get; } = new("silicon", 0.55m, 0.75m);

    /// <summary>Germanium; it leaks by its type.</summary>
    public static JunctionDrop Germanium { get; } = new("germanium", 0.15m, 0.4m);

    /// <summary>A metal on silicon.</summary>
    public static JunctionDrop Schottky { get; } = new("Schottky", 0.15m, 0.4m);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<JunctionDrop> All { get; } = [Silicon, Germanium, Schottky];

    /// <summary>The junction of a material, or null.</summary>
    public static JunctionDrop? Find(string material) => All.FirstOrDefault(junction => junction.Material == material);
}
