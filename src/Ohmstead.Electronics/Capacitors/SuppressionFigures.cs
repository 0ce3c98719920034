using Ohmstead.Electronics.Substitution;

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
    Source Source)
{
    /// <summary>The frequency at which the dissipation factor holds.</summary>
    public const decimal LossHertz = 1_000m;

    private const decimal Microfarad = 0.000001m;

    // Discs of class Y are made to 10 nF or so: common practice.
    private const decimal LargestDisc = 0.000000012m;

    private static readonly Source Floor =
        Source.FromMemory("IEC 60384-14", "insulation resistance: 15 GΩ to 0.33 µF, 5000 s above, ceramic 6 GΩ; half after endurance");
    private static readonly Source FilmSheet =
        Source.Published("TDK B32921C to B32928D data sheet (X2, 305 V)",
            "damp heat and endurance: half the insulation, tan delta + 0.008 to 1 µF, + 0.005 above, 10 % of capacitance");
    private static readonly Source PaperSheet = Source.FromMemory("KEMET PME271 data sheets", "12 GΩ, 4000 s; tan delta 0.013");
    private static readonly Source DiscSheet =
        Source.Published("Vishay VY2 data sheet 28535", "10 GΩ new, 3 GΩ after endurance; tan delta 0.025 and 0.05; 15 % of capacitance");

    /// <summary>Polypropylene film, as the X2 of today is.</summary>
    public static SuppressionFigures Polypropylene { get; } =
        new("polypropylene film", 5_000m, 15_000_000_000m, 0.5m, 0.003m, 0.008m, 0.005m, 0.10m, Floor, FilmSheet);

    /// <summary>Polyester film.</summary>
    public static SuppressionFigures Polyester { get; } =
        new("polyester film", 5_000m, 15_000_000_000m, 0.5m, 0.010m, 0.008m, 0.005m, 0.10m, Floor, FilmSheet);

    /// <summary>Metallised paper in resin, which crazes: no measurement passes a crazed one.</summary>
    public static SuppressionFigures MetallisedPaper { get; } =
        new("metallised paper", 4_000m, 12_000_000_000m, 0.5m, 0.013m, 0.008m, 0.005m, 0.10m, PaperSheet, FilmSheet);

    /// <summary>Where nothing says which film or paper it is: the floor of the standard, and the widest loss of the three.</summary>
    public static SuppressionFigures FilmOrPaper { get; } =
        new("film or paper, not written which", 5_000m, 15_000_000_000m, 0.5m, 0.013m, 0.008m, 0.005m, 0.10m, Floor, FilmSheet);

    /// <summary>A ceramic disc of class 2.</summary>
    public static SuppressionFigures CeramicDisc { get; } =
        new("ceramic disc", null, 6_000_000_000m, 0.5m, 0.025m, 0.025m, 0.025m, 0.15m, Floor, DiscSheet);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SuppressionFigures> All { get; } = [Polypropylene, Polyester, MetallisedPaper, FilmOrPaper, CeramicDisc];

    /// <summary>The least insulation in ohm.</summary>
    /// <param name="farads">The capacitance, in farad.</param>
    /// <param name="isNew">True for one that has not been fitted yet.</param>
    public Outcome<Worked<decimal>> LeastOhms(decimal farads, bool isNew) =>
        Domain.Of(Domain.Positive("capacitance", farads)).Compute(() =>
        {
            decimal ohms = NewSeconds / farads is { } byProduct && byProduct < NewOhms ? byProduct : NewOhms;
            decimal least = isNew ? ohms : ohms * WornShare;
            return new Worked<decimal>(
                least,
                new(() =>
                    (ohms == NewOhms ? Figures.Ohms(ohms)
                        : $"{Figures.Text(NewSeconds!.Value)} s / {Figures.Farads(farads)} = {Figures.Ohms(ohms)}")
                    + (isNew ? string.Empty : $"; at the end of life {Figures.Text(WornShare)} x = {Figures.Ohms(least)}")),
                Insulation);
        });

    /// <summary>The largest dissipation factor at 1 kHz.</summary>
    /// <param name="farads">The capacitance, in farad.</param>
    /// <param name="isNew">True for one that has not been fitted yet.</param>
    public Outcome<Worked<decimal>> LargestLossFactor(decimal farads, bool isNew) =>
        Domain.Of(Domain.Positive("capacitance", farads)).Compute(() =>
        {
            decimal gain = farads <= Microfarad ? LossGainSmall : LossGainLarge;
            decimal largest = isNew ? NewLossFactor : NewLossFactor + gain;
            return new Worked<decimal>(
                largest,
                new(() => isNew ? $"{Figures.Text(NewLossFactor)} at 1 kHz"
                    : $"{Figures.Text(NewLossFactor)} + {Figures.Text(gain)} = {Figures.Text(largest)} at 1 kHz"),
                Source);
        });

    /// <summary>
    /// The d.c. voltage that a film part bears between its terminals for a minute when it is new, 4.3 times its rated a.c. voltage. For
    /// makers: to repeat it harms the part.
    /// </summary>
    public static Outcome<Worked<decimal>> FilmProofVolts(decimal ratedVolts) =>
        Domain.Of(Domain.Positive("rated voltage", ratedVolts)).Compute(() =>
            new Worked<decimal>(4.3m * ratedVolts,
                new(() => $"4.3 x {Figures.Text(ratedVolts)} V = {Figures.Text(4.3m * ratedVolts)} V d.c. for a minute"), FilmSheet)
            {
                Remarks = ["a new part is proved so once by its maker; to repeat it may damage it, so no workshop does"],
            });

    /// <summary>The figures of a part, by what the record says it is.</summary>
    /// <param name="isCeramic">True where it is written to be ceramic, false where it is written to be not, null where neither is
    /// written.</param>
    /// <param name="film">What a film or paper part is of, or what else it is; null where that is not written.</param>
    /// <param name="isY">True for a class Y.</param>
    /// <param name="farads">The capacitance, in farad.</param>
    public static SuppressionFigures Of(bool? isCeramic, CapacitorKind? film, bool isY, decimal farads) => (isCeramic, film) switch
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
