namespace Ohmstead.Electronics.Capacitors;

/// <summary>What a healthy capacitor of a dry dielectric measures: loss, insulation and drift.</summary>
/// <param name="Dielectric">The dielectric.</param>
/// <param name="LossFactorLimit">The largest usual dissipation factor.</param>
/// <param name="LossFactorHertz">The frequency it is measured at.</param>
/// <param name="InsulationSeconds">The least product of insulation resistance and capacitance in second, or null where the sheets give
/// only ohm.</param>
/// <param name="InsulationOhms">The least insulation resistance in ohm of a small value, or null where the sheets give only the
/// product.</param>
/// <param name="DriftFraction">The usual drift over life as a fraction, or null where it is not a matter of capacitance.</param>
/// <param name="Note">What the figures do not say.</param>
/// <param name="Source">Where they come from.</param>
public sealed record DielectricFigures(
    string Dielectric,
    decimal LossFactorLimit,
    decimal LossFactorHertz,
    decimal? InsulationSeconds,
    decimal? InsulationOhms,
    decimal? DriftFraction,
    string Note,
    Source Source)
{
    private static readonly Source Film = Source.FromMemory("film capacitor makers' guides; IEC 60384-2, -16 and -17", null);
    private static readonly Source Paper = Source.FromMemory("paper capacitor data sheets", null);
    private static readonly Source Ceramic = Source.FromMemory("ceramic capacitor data sheets to EIA-198", null);

    /// <summary>Polyester film.</summary>
    public static DielectricFigures Polyester { get; } = new("polyester", 0.010m, 1_000m, 10_000m, 15_000_000_000m, 0.05m,
        "the product holds above 0.33 µF", Film);

    /// <summary>Polypropylene film.</summary>
    public static DielectricFigures Polypropylene { get; } = new("polypropylene", 0.001m, 1_000m, 30_000m, 100_000_000_000m, 0.03m,
        "self-healing costs capacitance, not insulation", Film);

    /// <summary>Polystyrene film.</summary>
    public static DielectricFigures Polystyrene { get; } = new("polystyrene", 0.0005m, 1_000m, null, 100_000_000_000m, 0.005m,
        "melts near 85 degrees; solvents harm it", Film);

    /// <summary>Polycarbonate film.</summary>
    public static DielectricFigures Polycarbonate { get; } = new("polycarbonate", 0.003m, 1_000m, 5_000m, null, 0.03m, "no longer made",
        Film);

    /// <summary>Paper in wax or oil.</summary>
    public static DielectricFigures PaperInWaxOrOil { get; } = new("paper in wax or oil", 0.01m, 1_000m, 2_000m, null, null,
        "aged parts often have under 20 MΩ: test at working voltage", Paper);

    /// <summary>Metallised paper.</summary>
    public static DielectricFigures MetallisedPaper { get; } = new("metallised paper", 0.013m, 1_000m, 2_000m, null, null,
        "no measurement passes a crazed mains part", Paper);

    /// <summary>Class 1 ceramic.</summary>
    public static DielectricFigures CeramicClass1 { get; } = new("ceramic class 1", 0.0015m, 1_000_000m, null, 10_000_000_000m, 0m,
        "does not age; figures to 1 nF", Ceramic);

    /// <summary>Class 2 ceramic of the X7R kind, 25 V and more.</summary>
    public static DielectricFigures CeramicX7R { get; } = new("ceramic X7R", 0.025m, 1_000m, null, null, null,
        "ages, see the rate per decade", Ceramic);

    /// <summary>Class 2 ceramic of the Z5U and Y5V kind.</summary>
    public static DielectricFigures CeramicZ5U { get; } = new("ceramic Z5U or Y5V", 0.09m, 1_000m, null, null, null,
        "0.05 to 0.09 by maker; a bypass only", Ceramic);

    /// <summary>Silver mica.</summary>
    public static DielectricFigures SilverMica { get; } = new(
        "silver mica", 0.001m, 1_000_000m, null, 7_500_000_000m, 0.001m,
        "loss figure above 100 pF; crackle is found in circuit, not by a meter", Source.FromMemory("EIA-153, MIL-PRF-39001", null));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DielectricFigures> All { get; } =
    [
        Polyester, Polypropylene, Polystyrene, Polycarbonate, PaperInWaxOrOil, MetallisedPaper, CeramicClass1, CeramicX7R, CeramicZ5U,
        SilverMica,
    ];

    /// <summary>The least insulation resistance in ohm for a capacitance: the product divided by it, but not more than the figure in
    /// ohm.</summary>
    public Outcome<Worked<decimal>> LeastInsulationOhms(decimal farads) =>
        Domain.Of(
            Domain.Positive("capacitance", farads),
            Domain.That(InsulationSeconds is not null || InsulationOhms is not null, $"no insulation figure is known for {Dielectric}"))
        .Compute(() =>
        {
            decimal? byProduct = InsulationSeconds / farads;
            if (byProduct is { } ohms && (InsulationOhms is not { } most || ohms <= most))
            {
                return new Worked<decimal>(ohms,
                    $"{Figures.Text(InsulationSeconds!.Value)} s / {Figures.Farads(farads)} = {Figures.Ohms(ohms)}", Source);
            }

            return new Worked<decimal>(InsulationOhms!.Value, $"{Figures.Ohms(InsulationOhms.Value)} for a small value", Source);
        });
}
