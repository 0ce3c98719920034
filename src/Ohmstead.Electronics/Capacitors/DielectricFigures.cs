using Ohmstead.Electronics.Quantities;

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
    Source Source
)
{
    private const decimal Half = 0.5m;
    private const decimal Picofarad = 0.000000000001m;

    private static readonly Source Film = Source.FromMemory("film capacitor makers' guides; IEC 60384-2, -16 and -17", null);
    private static readonly Source Wima = Source.Published(
        "WIMA, Characteristics of the plastic film dielectrics",
        "10 000 s and 0.008 of polyester; 15 GΩ of small values from memory of IEC 60384-2"
    );
    private static readonly Source Tdk = Source.Published(
        "TDK B32921C to B32928D data sheet",
        "100 GΩ to 0.33 µF, 30 000 s above; tan delta 0.001"
    );
    private static readonly Source WornFilm = Source.Published(
        "Vishay MKT 371 to 373 data sheet 28109",
        "half after damp heat and after endurance"
    );
    private static readonly Source WornPaper = Source.Practice("half, as of film");
    private static readonly Source Paper = Source.FromMemory("paper capacitor data sheets", null);
    private static readonly Source Ceramic = Source.Published(
        "Knowles, dielectric characteristics of multilayer ceramic capacitors",
        "100 GΩ or 1000 s, the less; 0.0015, to 50 pF 0.0015 (15 / C + 0.7)"
    );
    private static readonly Source WornCeramic = Source.Published(
        "MIL-PRF-123D, 3.20 and 3.23",
        "half of the insulation after life and moisture"
    );
    private static readonly Source Disc = Source.Published(
        "Vishay VY2 data sheet 28535; Knowles, dielectric characteristics",
        "10 GΩ, or 1000 s where that is less; 3 GΩ after endurance; tan delta 0.025, after endurance 0.05"
    );
    private static readonly Source Z5U = Source.FromMemory("ceramic capacitor data sheets to EIA-198", "tan delta of Z5U and Y5V");
    private static readonly Source Mica = Source.Published(
        "Cornell Dubilier application guide, radial dipped mica",
        "100 GΩ to 10 nF; 0.00075 at 1 MHz from 75 to 1000 pF, 0.0014 to 0.0012 at 1 kHz above"
    );
    private static readonly Source OldMica = Source.FromMemory("EIA-153, MIL-PRF-39001", "7.5 GΩ");

    /// <summary>Polyester film.</summary>
    public static DielectricFigures Polyester { get; } =
        new("polyester", 0.010m, 1_000m, 10_000m, 15_000_000_000m, 0.05m, "the product holds where it is less than 15 GΩ", Wima)
        {
            WornSource = WornFilm,
        };

    /// <summary>Polypropylene film.</summary>
    public static DielectricFigures Polypropylene { get; } =
        new("polypropylene", 0.001m, 1_000m, 30_000m, 100_000_000_000m, 0.03m, "self-healing costs capacitance, not insulation", Tdk)
        {
            WornSource = WornFilm,
        };

    /// <summary>Polystyrene film.</summary>
    public static DielectricFigures Polystyrene { get; } =
        new("polystyrene", 0.0005m, 1_000m, null, 100_000_000_000m, 0.005m, "melts near 85 degrees; solvents harm it", Film)
        {
            WornSource = WornFilm,
        };

    /// <summary>Polycarbonate film.</summary>
    public static DielectricFigures Polycarbonate { get; } =
        new("polycarbonate", 0.003m, 1_000m, 5_000m, null, 0.03m, "no longer made", Film) { WornSource = WornFilm };

    /// <summary>Paper in wax or oil.</summary>
    public static DielectricFigures PaperInWaxOrOil { get; } =
        new("paper in wax or oil", 0.01m, 1_000m, 2_000m, null, null, "aged parts often have under 20 MΩ: test at working voltage", Paper)
        {
            WornSource = WornPaper,
        };

    /// <summary>Metallised paper.</summary>
    public static DielectricFigures MetallisedPaper { get; } =
        new("metallised paper", 0.013m, 1_000m, 2_000m, null, null, "no measurement passes a crazed mains part", Paper)
        {
            WornSource = WornPaper,
        };

    /// <summary>Class 1 ceramic, whose loss up to 50 pF goes with the value.</summary>
    public static DielectricFigures CeramicClass1 { get; } =
        new("ceramic class 1", 0.0015m, 1_000_000m, 1_000m, 100_000_000_000m, 0m, "does not age", Ceramic) { LossOf = ClassOneLoss };

    /// <summary>Class 2 ceramic where nothing says which: discs and chips alike.</summary>
    public static DielectricFigures CeramicClass2 { get; } =
        new("ceramic class 2", 0.025m, 1_000m, 1_000m, 10_000_000_000m, null, "ages, see the rate per decade", Disc)
        {
            WornShare = 0.3m,
            WornSource = Disc,
            WornLossFactor = 0.05m,
        };

    /// <summary>Class 2 ceramic of the X7R kind, 25 V and more.</summary>
    public static DielectricFigures CeramicX7R { get; } =
        new("ceramic X7R", 0.025m, 1_000m, 1_000m, 10_000_000_000m, null, "ages, see the rate per decade", Disc)
        {
            WornShare = 0.3m,
            WornSource = Disc,
            WornLossFactor = 0.05m,
        };

    /// <summary>Class 2 ceramic of the Z5U and Y5V kind.</summary>
    public static DielectricFigures CeramicZ5U { get; } =
        new("ceramic Z5U or Y5V", 0.09m, 1_000m, 1_000m, 10_000_000_000m, null, "0.05 to 0.09 by maker; a bypass only", Z5U)
        {
            WornShare = 0.3m,
            WornSource = Disc,
        };

    /// <summary>Silver mica, whose loss goes with the value. An old one may keep only what the older standard asked of a new one.</summary>
    public static DielectricFigures SilverMica { get; } =
        new("silver mica", 0.00075m, 1_000_000m, 1_000m, 100_000_000_000m, 0.001m, "crackle is found in circuit, not by a meter", Mica)
        {
            LossOf = MicaLoss,
            WornShare = 0.075m,
            WornSource = OldMica,
        };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DielectricFigures> All { get; } =
    [
        Polyester,
        Polypropylene,
        Polystyrene,
        Polycarbonate,
        PaperInWaxOrOil,
        MetallisedPaper,
        CeramicClass1,
        CeramicClass2,
        CeramicX7R,
        CeramicZ5U,
        SilverMica,
    ];

    /// <summary>The share of its insulation that a worn part must have left.</summary>
    public decimal WornShare { get; init; } = Half;

    /// <summary>Where that share comes from.</summary>
    public Source WornSource { get; init; } = WornCeramic;

    /// <summary>The dissipation factor that a worn part may reach, where that is more than a new one's; else null.</summary>
    public decimal? WornLossFactor { get; init; }

    private Func<decimal, DielectricLoss?>? LossOf { get; init; }

    /// <summary>The largest dissipation factor of a new part of a capacitance and the frequency it holds at, or null where none is known
    /// for so small a value.</summary>
    public DielectricLoss? LossFor(decimal farads) =>
        farads <= 0m ? null
        : LossOf is { } of ? of(farads)
        : new(LossFactorLimit, LossFactorHertz, new(() => $"{Figures.Text(LossFactorLimit)} at {Figures.Text(LossFactorHertz)} Hz"));

    // Measured at 1 MHz to 1000 pF and at 1 kHz above: MIL-PRF-123D, 4.6.7.
    private static DielectricLoss ClassOneLoss(decimal farads)
    {
        decimal hertz = HertzOf(farads);
        if (farads > 50m * Picofarad)
        {
            return new(0.0015m, hertz, new(() => $"0.0015 at {Figures.Text(hertz)} Hz"));
        }

        decimal limit = 0.0015m * ((15m / (farads / Picofarad)) + 0.7m);
        return new(
            limit,
            hertz,
            new(() => $"0.0015 x (15 / {Figures.Text(farads / Picofarad)} + 0.7) = {Figures.Text(limit)} at {Figures.Text(hertz)} Hz")
        );
    }

    private static DielectricLoss? MicaLoss(decimal farads)
    {
        decimal? limit = (farads / Picofarad) switch
        {
            < 75m => null,
            <= 1_000m => 0.00075m,
            <= 3_300m => 0.0014m,
            < 10_000m => 0.0013m,
            _ => 0.0012m,
        };
        decimal hertz = HertzOf(farads);
        return limit is { } known
            ? new(known, hertz, new(() => $"{Figures.Text(known)} at {Figures.Text(hertz)} Hz for {Rounded.Farads(farads)}"))
            : null;
    }

    private static decimal HertzOf(decimal farads) => farads <= 1_000m * Picofarad ? 1_000_000m : 1_000m;

    /// <summary>The least insulation resistance in ohm for a capacitance: the product divided by it, but not more than the figure in
    /// ohm.</summary>
    public Outcome<Worked<decimal>> LeastInsulationOhms(decimal farads) =>
        Domain
            .Require(
                Domain.Positive("capacitance", farads),
                Domain.That(InsulationSeconds is not null || InsulationOhms is not null, $"no insulation figure is known for {Dielectric}")
            )
            .Compute(() =>
            {
                decimal? byProduct = InsulationSeconds / farads;
                if (byProduct is { } ohms && (InsulationOhms is not { } most || ohms <= most))
                {
                    return new Worked<decimal>(
                        ohms,
                        $"{Figures.Text(InsulationSeconds!.Value)} s / {Rounded.Farads(farads)} = {Rounded.Ohms(ohms)}",
                        Source
                    );
                }

                return new Worked<decimal>(InsulationOhms!.Value, $"{Rounded.Ohms(InsulationOhms.Value)} for a small value", Source);
            });
}

/// <summary>The largest dissipation factor of a dielectric at one capacitance.</summary>
/// <param name="Factor">The factor.</param>
/// <param name="Hertz">The frequency it holds at.</param>
/// <param name="Arithmetic">How it was reached.</param>
public sealed record DielectricLoss(decimal Factor, decimal Hertz, LazyText Arithmetic);
