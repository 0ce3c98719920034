namespace Ohmstead.Electronics.Capacitors;

/// <summary>A series of wet aluminium electrolytics with the dissipation factor it may have at each rated voltage, 20 to 27 degrees
/// Celsius.</summary>
/// <param name="Name">What kind of series it is.</param>
/// <param name="Hertz">The frequency the limits hold at.</param>
/// <param name="Columns">Rated voltages, rising, with their limits.</param>
/// <param name="Source">The data sheet.</param>
public sealed record LossFactorSeries(string Name, decimal Hertz, IReadOnlyList<LossFactorColumn> Columns, Source Source)
{
    private const decimal StepFarads = 0.001m;
    private const decimal StepFactor = 0.02m;

    /// <summary>A general-purpose series for 105 degrees, measured at 120 Hz.</summary>
    public static LossFactorSeries General105 { get; } =
        new(
            "general purpose, 105 degrees, 120 Hz",
            120m,
            [
                new(6.3m, 0.23m),
                new(10m, 0.20m),
                new(16m, 0.16m),
                new(25m, 0.14m),
                new(35m, 0.12m),
                new(50m, 0.10m),
                new(63m, 0.09m),
                new(100m, 0.08m),
                new(160m, 0.12m),
                new(200m, 0.14m),
                new(250m, 0.17m),
                new(350m, 0.20m),
                new(400m, 0.25m),
                new(450m, 0.25m),
            ],
            Source.Published("Lelon RGA data sheet", "tan delta")
        );

    /// <summary>An older general-purpose series for 85 degrees, measured at 100 Hz and 27 degrees.</summary>
    public static LossFactorSeries General85At100Hertz { get; } =
        new(
            "general purpose, 85 degrees, 100 Hz",
            100m,
            [
                new(6.3m, 0.20m),
                new(10m, 0.16m),
                new(16m, 0.14m),
                new(25m, 0.12m),
                new(35m, 0.11m),
                new(50m, 0.10m),
                new(63m, 0.09m),
                new(100m, 0.08m),
                new(160m, 0.11m),
                new(250m, 0.11m),
                new(350m, 0.14m),
                new(400m, 0.13m),
                new(450m, 0.12m),
            ],
            Source.Published("Keltron radial electrolytics, IS 4317 / IEC 384-4 data sheet", "tan delta")
        );

    /// <summary>Cans above 450 V, which the other series do not reach.</summary>
    public static LossFactorSeries Above450Volts { get; } =
        new(
            "above 450 V, 120 Hz",
            120m,
            [new(500m, 0.25m), new(630m, 0.25m)],
            Source.FromMemory("aluminium electrolytic data sheets", "tan delta 0.20 to 0.25 at 500 V, the wider")
        );

    /// <summary>The series known here. Makers differ by up to two at 400 to 450 V: a part's own data sheet comes first.</summary>
    public static IReadOnlyList<LossFactorSeries> All { get; } = [General105, General85At100Hertz, Above450Volts];

    /// <summary>The limit for a part of this series.</summary>
    /// <returns>The limit in its three readings, or a refusal that names the neighbouring columns when the voltage has none of its
    /// own.</returns>
    public Outcome<LossFactorLimit> Limit(decimal ratedVolts, decimal farads) =>
        ColumnFrom(ratedVolts) is { } column && column.RatedVolts == ratedVolts
            ? LimitFrom(column.LossFactor, farads)
            : Outcome<LossFactorLimit>.Refused(NoColumn(ratedVolts));

    /// <summary>The column of a voltage, or where it has none of its own the next one above; null beyond the last.</summary>
    public LossFactorColumn? ColumnFrom(decimal ratedVolts)
    {
        for (int at = 0; at < Columns.Count; at++)
        {
            if (Columns[at].RatedVolts >= ratedVolts)
            {
                return Columns[at];
            }
        }

        return null;
    }

    /// <summary>The columns on either side of a voltage that has none of its own; one of them is null at the ends.</summary>
    public (LossFactorColumn? Below, LossFactorColumn? Above) Neighbours(decimal ratedVolts) =>
        (Columns.LastOrDefault(c => c.RatedVolts < ratedVolts), Columns.FirstOrDefault(c => c.RatedVolts > ratedVolts));

    /// <summary>The three readings of the rule for any base limit, at this series' frequency and with its source.</summary>
    public Outcome<LossFactorLimit> LimitFrom(decimal baseFactor, decimal farads) =>
        Sound(baseFactor, farads).Compute(() => Steps(baseFactor, farads));

    /// <summary>The strict reading of <see cref="LimitFrom"/> alone: only completed steps count.</summary>
    public static Outcome<decimal> StrictFrom(decimal baseFactor, decimal farads) =>
        Sound(baseFactor, farads)
            .Flatten((baseFactor, farads), static given => Outcome<decimal>.From(Completed(given.baseFactor, StepsOf(given.farads))));

    private static Domain Sound(decimal baseFactor, decimal farads) =>
        Domain.Require(Domain.Positive("capacitance", farads), Domain.Within("dissipation factor", baseFactor, 0m, 10m));

    private static decimal StepsOf(decimal farads) => farads <= StepFarads ? 0m : (farads - StepFarads) / StepFarads;

    private static decimal Completed(decimal baseFactor, decimal steps) => baseFactor + (StepFactor * decimal.Floor(steps));

    private LossFactorLimit Steps(decimal baseFactor, decimal farads)
    {
        decimal steps = StepsOf(farads);
        decimal completed = Completed(baseFactor, steps);
        decimal proRata = baseFactor + (StepFactor * steps);
        decimal roundedUp = baseFactor + (StepFactor * decimal.Ceiling(steps));
        LazyText arithmetic = new(() =>
            steps == 0
                ? $"{Figures.Text(baseFactor)} up to 1000 µF"
                : $"{Figures.Text(baseFactor)} + 0.02 x {Figures.Text(decimal.Floor(steps))} = {Figures.Text(completed)} by completed "
                    + $"steps; x {Figures.Text(steps)} = {Figures.Text(proRata)} pro rata; x {Figures.Text(decimal.Ceiling(steps))} = "
                    + $"{Figures.Text(roundedUp)} rounded up"
        );
        return new LossFactorLimit(baseFactor, completed, proRata, roundedUp, Hertz, arithmetic, Source);
    }

    private string NoColumn(decimal ratedVolts)
    {
        string Words(LossFactorColumn? column) =>
            column is null ? "none" : $"{Figures.Text(column.RatedVolts)} V {Figures.Text(column.LossFactor)}";
        (LossFactorColumn? below, LossFactorColumn? above) = Neighbours(ratedVolts);
        return $"the series has no column for {Figures.Text(ratedVolts)} V; below it {Words(below)}, above it {Words(above)}";
    }
}

/// <summary>The limit of one rated voltage.</summary>
/// <param name="RatedVolts">The rated voltage in volt.</param>
/// <param name="LossFactor">The largest dissipation factor up to 1000 µF.</param>
public sealed record LossFactorColumn(decimal RatedVolts, decimal LossFactor);
