using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Capacitors;

/// <summary>
/// What a capacitor across the mains or from the mains to the case must show: insulation, dissipation factor and how far its capacitance
/// may go, new and at the end of its life. None of these may be relaxed.
/// </summary>
/// <param name="Dielectric">What it is of.</param>
/// <param name="NewSeconds">The least product of insulation and capacitance of a new one, in second; null where there is only a figure in
/// ohm.</param>
/// <param name="NewOhms">The least insulation of a new one, in ohm; the product holds where it is less.</param>
/// <param name="WornShare">The share of it that must be left at the end of life.</param>
/// <param name="NewLossFactor">The largest dissipation factor of a new one at 1 kHz.</param>
/// <param name="LossGainSmall">What life may add to it up to 1 µF.</param>
/// <param name="LossGainLarge">What life may add to it above 1 µF.</param>
/// <param name="CapacitanceChange">How far its capacitance may go in its life, as a share of what it had.</param>
/// <param name="Insulation">Where the insulation comes from.</param>
/// <param name="Source">Where the rest comes from.</param>
public sealed record SuppressionFigures(
    string Dielectric,
    decimal? NewSeconds,
    decimal NewOhms,
    decimal WornShare,
    decimal NewLossFactor,
    decimal LossGainSmall,
    decimal LossGainLarge,
    decimal CapacitanceChange,
    Source Insulation,
    Source Source
)
{
    /// <summary>The frequency at which the dissipation factor holds.</summary>
    public const decimal LossHertz = 1_000m;

    private const decimal Microfarad = 0.000001m;

    // Discs of class Y are made to 10 nF or so: common practice.
    private const decimal LargestDisc = 0.000000012m;

    /// <summary>
    /// Insulation under this, in ohm, is a fault of any of them: it is under half of what every maker's sheet that was read promises. What
    /// lies between this and what today's sheets promise may be sound in an old part, for which no source is at hand: the text of the
    /// standard could not be read.
    /// </summary>
    public const decimal FaultBelowOhms = 1_000_000_000m;

    private static readonly Source FilmInsulation = Source.Published(
        "TDK B32921C to B32928D data sheet (X2, 305 V); KEMET R.41 data sheet (X1/Y2)",
        "100 GΩ to 0.33 µF, 30 000 s above; half after damp heat and endurance"
    );
    private static readonly Source PolyesterInsulation = Source.Published(
        "WIMA, characteristics of the plastic film dielectrics; Vishay MKT 371 to 373 data sheet 28109",
        "10 000 s of polyester; half after endurance"
    );
    private static readonly Source DiscInsulation = Source.Published(
        "WKO data sheet, ceramic X1/Y2; Vishay VY2 data sheet 28535",
        "6 GΩ new, 3 GΩ after endurance"
    );
    private static readonly Source FilmSheet = Source.Published(
        "TDK B32921C to B32928D data sheet (X2, 305 V)",
        "damp heat and endurance: half the insulation, tan delta + 0.008 to 1 µF, + 0.005 above, 10 % of capacitance"
    );
    private static readonly Source DiscSheet = Source.Published(
        "Vishay VY2 data sheet 28535",
        "10 GΩ new, 3 GΩ after endurance; tan delta 0.025 and 0.05; 15 % of capacitance"
    );

    /// <summary>Polypropylene film, as the X2 of today is.</summary>
    public static SuppressionFigures Polypropylene { get; } =
        new("polypropylene film", 30_000m, 100_000_000_000m, 0.5m, 0.003m, 0.008m, 0.005m, 0.10m, FilmInsulation, FilmSheet);

    /// <summary>Polyester film.</summary>
    public static SuppressionFigures Polyester { get; } =
        new("polyester film", 10_000m, 100_000_000_000m, 0.5m, 0.010m, 0.008m, 0.005m, 0.10m, PolyesterInsulation, FilmSheet);

    /// <summary>Metallised paper in resin, which crazes: no measurement passes a crazed one. Its own insulation and loss have no source at
    /// hand.</summary>
    public static SuppressionFigures MetallisedPaper { get; } =
        new("metallised paper", 30_000m, 100_000_000_000m, 0.5m, 0.010m, 0.008m, 0.005m, 0.10m, FilmInsulation, FilmSheet)
        {
            MayBePaper = true,
        };

    /// <summary>Where nothing says which film or paper it is.</summary>
    public static SuppressionFigures FilmOrPaper { get; } =
        new("film or paper, not written which", 30_000m, 100_000_000_000m, 0.5m, 0.010m, 0.008m, 0.005m, 0.10m, FilmInsulation, FilmSheet)
        {
            MayBePaper = true,
        };

    /// <summary>A ceramic disc of class 2.</summary>
    public static SuppressionFigures CeramicDisc { get; } =
        new("ceramic disc", null, 6_000_000_000m, 0.5m, 0.025m, 0.025m, 0.025m, 0.15m, DiscInsulation, DiscSheet);

    /// <summary>Whether it is or may be of paper, whose loss has no source at hand: more than that of film does not decide.</summary>
    public bool MayBePaper { get; init; }

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SuppressionFigures> All { get; } = [Polypropylene, Polyester, MetallisedPaper, FilmOrPaper, CeramicDisc];

    /// <summary>The least insulation in ohm.</summary>
    /// <param name="farads">The capacitance, in farad.</param>
    /// <param name="isNew">True for one that has not been fitted yet.</param>
    public Outcome<Worked<decimal>> LeastOhms(decimal farads, bool isNew) =>
        Domain
            .Require(Domain.Positive("capacitance", farads))
            .Compute(() =>
            {
                decimal ohms = NewSeconds / farads is { } byProduct && byProduct < NewOhms ? byProduct : NewOhms;
                decimal least = isNew ? ohms : ohms * WornShare;
                return new Worked<decimal>(
                    least,
                    new(() =>
                        (
                            ohms == NewOhms
                                ? Rounded.Ohms(ohms)
                                : $"{Figures.Text(NewSeconds!.Value)} s / {Rounded.Farads(farads)} = {Rounded.Ohms(ohms)}"
                        ) + (isNew ? string.Empty : $"; at the end of life {Figures.Text(WornShare)} x = {Rounded.Ohms(least)}")
                    ),
                    Insulation
                );
            });

    /// <summary>The largest dissipation factor at 1 kHz.</summary>
    /// <param name="farads">The capacitance, in farad.</param>
    /// <param name="isNew">True for one that has not been fitted yet.</param>
    public Outcome<Worked<decimal>> LargestLossFactor(decimal farads, bool isNew) =>
        Domain
            .Require(Domain.Positive("capacitance", farads))
            .Compute(() =>
            {
                decimal gain = farads <= Microfarad ? LossGainSmall : LossGainLarge;
                decimal largest = isNew ? NewLossFactor : NewLossFactor + gain;
                return new Worked<decimal>(
                    largest,
                    new(() =>
                        isNew
                            ? $"{Figures.Text(NewLossFactor)} at 1 kHz"
                            : $"{Figures.Text(NewLossFactor)} + {Figures.Text(gain)} = {Figures.Text(largest)} at 1 kHz"
                    ),
                    Source
                );
            });

    /// <summary>
    /// The d.c. voltage that a film part bears between its terminals for a minute when it is new, 4.3 times its rated a.c. voltage. For
    /// makers: to repeat it harms the part.
    /// </summary>
    public static Outcome<Worked<decimal>> FilmProofVolts(decimal ratedVolts) =>
        Domain
            .Require(Domain.Positive("rated voltage", ratedVolts))
            .Compute(() =>
                new Worked<decimal>(
                    4.3m * ratedVolts,
                    new(() => $"4.3 x {Figures.Text(ratedVolts)} V = {Figures.Text(4.3m * ratedVolts)} V d.c. for a minute"),
                    FilmSheet
                )
                {
                    Remarks = ["a new part is proved so once by its maker; to repeat it may damage it, so no workshop does"],
                }
            );

    /// <summary>The figures of a part, by what the record says it is.</summary>
    /// <param name="isCeramic">True where it is written to be ceramic, false where it is written to be not, null where neither is
    /// written.</param>
    /// <param name="film">What a film or paper part is of, or what else it is; null where that is not written.</param>
    /// <param name="isY">True for a class Y.</param>
    /// <param name="farads">The capacitance, in farad.</param>
    public static SuppressionFigures For(bool? isCeramic, CapacitorKind? film, bool isY, decimal farads) =>
        (isCeramic, film) switch
        {
            (true, _) => CeramicDisc,
            (_, CapacitorKind.Polypropylene) => Polypropylene,
            (_, CapacitorKind.Polyester) => Polyester,
            (_, CapacitorKind.Paper or CapacitorKind.MetallisedPaper) => MetallisedPaper,
            // A small Y is a disc as often as not: what both must show is what a disc must show.
            (null, _) when isY && farads <= LargestDisc => CeramicDisc,
            _ => FilmOrPaper,
        };
}
