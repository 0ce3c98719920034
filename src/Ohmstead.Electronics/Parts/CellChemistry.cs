namespace Ohmstead.Electronics.Parts;

/// <summary>The voltages of one electrochemical cell. A pack has so many times as much.</summary>
/// <remarks>A voltage without load says little of the charge left: a spent cell often reads well until something draws current.</remarks>
/// <param name="Name">The chemistry, in the words of records.</param>
/// <param name="NominalVolts">The nominal voltage of one cell, in volt.</param>
/// <param name="SpentVolts">The end-point voltage of one cell, in volt: under it the cell counts as spent.</param>
/// <param name="FullVolts">The voltage of a new or fully charged cell at rest, in volt: above it the cell is on its charger, open, or of
/// another chemistry.</param>
/// <param name="Source">Where the end point comes from.</param>
/// <param name="FullSource">Where the voltage of a full one comes from.</param>
public sealed record CellChemistry(
    string Name,
    decimal NominalVolts,
    decimal SpentVolts,
    decimal FullVolts,
    Source Source,
    Source FullSource
)
{
    private static readonly Source Resting = Source.Practice(
        "voltage of a full cell at rest: batteryuniversity.com BU-303, dss.net.au and forums"
    );
    private static readonly Source Primary = Source.Practice("end points of the trade");

    /// <summary>Lithium with manganese dioxide, which is not charged.</summary>
    public static CellChemistry Lithium { get; } =
        new(
            "lithium",
            3.0m,
            2.5m,
            3.3m,
            Source.Practice("replaced under 2.5 V; makers' sheets discharge to 2.0 V (Energizer form 12006-A, Sanyo CR)"),
            Resting
        );

    /// <summary>Nickel-cadmium.</summary>
    public static CellChemistry NickelCadmium { get; } =
        new("nickel-cadmium", 1.2m, 1.0m, 1.45m, Source.Practice("1.0 V of the trade; itwissen.info gives 0.8 to 0.9 V"), Resting);

    /// <summary>Nickel-metal hydride.</summary>
    public static CellChemistry NickelMetalHydride { get; } =
        new("nickel-metal hydride", 1.2m, 1.0m, 1.45m, Source.Published("itwissen.info", "cell end voltage 1.0 V"), Resting);

    /// <summary>Alkaline.</summary>
    public static CellChemistry Alkaline { get; } = new("alkaline", 1.5m, 0.9m, 1.65m, Primary, Resting) { IsDryCell = true };

    /// <summary>Zinc-carbon.</summary>
    public static CellChemistry ZincCarbon { get; } = new("zinc-carbon", 1.5m, 0.9m, 1.73m, Primary, Resting) { IsDryCell = true };

    /// <summary>Silver oxide.</summary>
    public static CellChemistry SilverOxide { get; } = new("silver oxide", 1.55m, 1.2m, 1.6m, Primary, Resting) { IsDryCell = true };

    /// <summary>Lead and acid.</summary>
    public static CellChemistry LeadAcid { get; } =
        new("lead-acid", 2.0m, 1.75m, 2.15m, Source.Published("batteryuniversity.com BU-303; itwissen.info", "1.75 V a cell"), Resting);

    /// <summary>The chemistries known here.</summary>
    public static IReadOnlyList<CellChemistry> All { get; } =
    [Lithium, NickelCadmium, NickelMetalHydride, Alkaline, ZincCarbon, SilverOxide, LeadAcid];

    /// <summary>
    /// Whether it is a primary cell of about 1.5 V with a watery electrolyte: none of these is charged, and none bursts in the place of
    /// another; lithium has twice the voltage.
    /// </summary>
    public bool IsDryCell { get; private init; }

    /// <summary>How many cells in series make a nominal voltage, or null when it is no whole number of them.</summary>
    public int? CellsIn(decimal nominalVolts)
    {
        decimal cells = nominalVolts / NominalVolts;
        return cells >= 1m && cells <= 1000m && cells == decimal.Truncate(cells) ? (int)cells : null;
    }

    /// <summary>The voltage under which so many cells in series count as spent, in volt.</summary>
    public Outcome<Worked<decimal>> SpentPack(int cells) =>
        Domain
            .Require(Domain.That(cells >= 1, $"{Figures.Text(cells)} cells, expected one or more"))
            .Compute(() =>
            {
                decimal volts = cells * SpentVolts;
                return new Worked<decimal>(
                    volts,
                    new(() => $"{Figures.Text(cells)} x {Figures.Text(SpentVolts)} V = {Figures.Text(volts)} V"),
                    Source
                );
            });

    /// <summary>The voltage above which so many cells in series are no resting pack of this chemistry, in volt.</summary>
    public Outcome<Worked<decimal>> FullPack(int cells) =>
        Domain
            .Require(Domain.That(cells >= 1, $"{Figures.Text(cells)} cells, expected one or more"))
            .Compute(() =>
            {
                decimal volts = cells * FullVolts;
                return new Worked<decimal>(
                    volts,
                    new(() => $"{Figures.Text(cells)} x {Figures.Text(FullVolts)} V = {Figures.Text(volts)} V"),
                    FullSource
                );
            });
}
