namespace Ohmstead.Electronics.Parts;

/// <summary>The voltages of one electrochemical cell. A pack has so many times as much.</summary>
/// <remarks>A voltage without load says little of the charge left: a spent cell often reads well until something draws current.</remarks>
/// <param name="Name">The chemistry, in the words of records.</param>
/// <param name="NominalVolts">The nominal voltage of one cell, in volt.</param>
/// <param name="SpentVolts">The end-point voltage of one cell, in volt: under it the cell counts as spent.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record CellChemistry(string Name, decimal NominalVolts, decimal SpentVolts, Source Source)
{
    private static readonly Source Primary = Source.FromMemory("IEC 60086-2 and -3", "end-point voltages");

    /// <summary>The chemistries known here.</summary>
    public static IReadOnlyList<CellChemistry> All { get; } =
    [
        new("lithium", 3.0m, 2.5m, Source.Practice("replaced under 2.5 V; makers' sheets discharge to 2.0 V (Energizer form 12006-A, Sanyo CR)")),
        new("nickel-cadmium", 1.2m, 1.0m, Source.FromMemory("IEC 61951-1", "discharge to 1.0 V")),
        new("nickel-metal hydride", 1.2m, 1.0m, Source.FromMemory("IEC 61951-2", "discharge to 1.0 V")),
        new("alkaline", 1.5m, 0.9m, Primary),
        new("zinc-carbon", 1.5m, 0.9m, Primary),
        new("silver oxide", 1.55m, 1.2m, Primary),
        new("lead-acid", 2.0m, 1.75m, Source.FromMemory("IEC 60896", "final voltage")),
    ];

    /// <summary>The chemistry of a name, or null.</summary>
    public static CellChemistry? Find(string name) => All.FirstOrDefault(cell => cell.Name == name);

    /// <summary>How many cells in series make a nominal voltage, or null when it is no whole number of them.</summary>
    public int? CellsIn(decimal nominalVolts)
    {
        decimal cells = nominalVolts / NominalVolts;
        return cells >= 1m && cells <= 1000m && cells == decimal.Truncate(cells) ? (int)cells : null;
    }

    /// <summary>The voltage under which so many cells in series count as spent, in volt.</summary>
    public Outcome<Worked<decimal>> SpentPack(int cells) =>
        Domain.Of(Domain.That(cells >= 1, $"{Figures.Text(cells)} cells, expected one or more")).Compute(() =>
        {
            decimal volts = cells * SpentVolts;
            return new Worked<decimal>(volts, new(() => $"{Figures.Text(cells)} x {Figures.Text(SpentVolts)} V = {Figures.Text(volts)} V"), Source);
        });
}
