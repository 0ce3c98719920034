namespace Ohmstead.Electronics.Capacitors;

/// <summary>How much more ripple current of other frequencies than the rated one a grade of aluminium electrolytics bears.</summary>
/// <remarks>Makers differ widely: the part's own data sheet comes first.</remarks>
/// <param name="Name">The grade.</param>
/// <param name="Meaning">What parts it is for, and at which frequency they are rated.</param>
/// <param name="Rows">The multipliers, by rising frequency.</param>
/// <param name="Source">Where they come from.</param>
public sealed record RippleGrade(string Name, string Meaning, IReadOnlyList<RippleMultiplier> Rows, Source Source)
{
    // 100 Hz and 120 Hz are taken for one another, as everywhere.
    private const decimal Near = 1.25m;

    private static readonly Source Typical = Source.FromMemory(
        "aluminium electrolytic data sheets, typical figures; makers differ widely",
        null
    );

    /// <summary>Small general-purpose parts rated at 120 Hz.</summary>
    public static RippleGrade GeneralPurpose { get; } =
        new(
            "general-purpose",
            "small parts to 100 V, rated at 120 Hz",
            [
                new(50m, 0.75m, 0.80m),
                new(100m, 0.92m, 1.00m),
                new(120m, 1.00m, 1.00m),
                new(300m, 1.1m, 1.3m),
                new(1_000m, 1.2m, 1.5m),
                new(10_000m, 1.3m, 1.7m),
                new(100_000m, 1.4m, 1.7m),
            ],
            Typical
        );

    /// <summary>Radial parts of high voltage, rated at 120 Hz.</summary>
    public static RippleGrade HighVoltage { get; } =
        new(
            "high-voltage",
            "radial parts of 450 V, rated at 120 Hz",
            [
                new(60m, 0.80m, 0.80m),
                new(120m, 1.00m, 1.00m),
                new(500m, 1.25m, 1.25m),
                new(1_000m, 1.40m, 1.40m),
                new(10_000m, 1.50m, 1.50m),
                new(100_000m, 1.50m, 1.50m),
            ],
            Source.Published("NIC NRB-XW data sheet, 15 December 2010", "ripple current frequency correction")
        );

    /// <summary>Computer-grade and other large cans, rated at 120 Hz.</summary>
    public static RippleGrade LargeCan { get; } =
        new(
            "large-can",
            "computer-grade and other large cans, rated at 120 Hz",
            [
                new(100m, 0.92m, 0.97m),
                new(120m, 1.00m, 1.00m),
                new(400m, 1.04m, 1.15m),
                new(4_000m, 1.08m, 1.25m),
                new(10_000m, 1.10m, 1.35m),
                new(20_000m, 1.12m, 1.40m),
            ],
            Source.Published("General Electric/Aerovox application data, eight series", "page 67, ripple current multipliers")
        );

    /// <summary>Low-impedance parts rated at 100 kHz.</summary>
    public static RippleGrade LowImpedance { get; } =
        new(
            "low-impedance",
            "parts rated at 100 kHz",
            [new(120m, 0.4m, 0.7m), new(1_000m, 0.75m, 0.9m), new(10_000m, 0.90m, 0.98m), new(100_000m, 1.00m, 1.00m)],
            Typical
        );

    /// <summary>The grades known here.</summary>
    public static IReadOnlyList<RippleGrade> All { get; } = [GeneralPurpose, HighVoltage, LargeCan, LowImpedance];

    /// <summary>The row at a frequency or the next one under it, since more is borne at higher frequencies; refused outside the
    /// table.</summary>
    public Outcome<RippleMultiplier> At(decimal hertz) =>
        Domain
            .Require(
                Domain.That(
                    hertz * Near >= Rows[0].Hertz && hertz <= Rows[^1].Hertz,
                    $"no multiplier is known for {Figures.Text(hertz)} Hz, expected {Figures.Text(Rows[0].Hertz)} to "
                        + $"{Figures.Text(Rows[^1].Hertz)} Hz"
                )
            )
            .Compute(() => Rows.LastOrDefault(row => row.Hertz <= hertz) ?? Rows[0]);
}

/// <summary>The spread of a frequency multiplier between makers.</summary>
/// <param name="Hertz">The frequency.</param>
/// <param name="Low">The least figure met.</param>
/// <param name="High">The greatest figure met.</param>
public sealed record RippleMultiplier(decimal Hertz, decimal Low, decimal High);
