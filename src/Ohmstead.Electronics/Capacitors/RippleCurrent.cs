namespace Ohmstead.Electronics.Capacitors;

/// <summary>Ripple currents of several frequencies against one rating.</summary>
public static class RippleCurrent
{
    private static readonly Source Multipliers = Source.FromMemory("aluminium electrolytic data sheets, typical figures; makers differ widely", null);

    /// <summary>Frequency multipliers of a general-purpose part rated at 120 Hz.</summary>
    public static IReadOnlyList<RippleMultiplier> GeneralPurpose { get; } =
    [
        new(50m, 0.75m, 0.80m), new(120m, 1.00m, 1.00m), new(300m, 1.1m, 1.3m), new(1_000m, 1.2m, 1.5m), new(10_000m, 1.3m, 1.7m),
        new(100_000m, 1.4m, 1.7m),
    ];

    /// <summary>Frequency multipliers of a low-impedance part rated at 100 kHz.</summary>
    public static IReadOnlyList<RippleMultiplier> LowImpedance { get; } =
    [
        new(120m, 0.4m, 0.7m), new(1_000m, 0.75m, 0.9m), new(10_000m, 0.90m, 0.98m), new(100_000m, 1.00m, 1.00m),
    ];

    /// <summary>Frequency multipliers of computer-grade and other large cans, rated at 120 Hz: less than those of small parts.</summary>
    public static IReadOnlyList<RippleMultiplier> LargeCan { get; } =
    [
        new(100m, 0.92m, 0.97m), new(120m, 1.00m, 1.00m), new(400m, 1.04m, 1.15m), new(4_000m, 1.08m, 1.25m), new(10_000m, 1.10m, 1.35m),
        new(20_000m, 1.12m, 1.40m),
    ];

    /// <summary>Frequency multipliers of small parts of 450 V, rated at 120 Hz.</summary>
    public static IReadOnlyList<RippleMultiplier> HighVoltageRadial { get; } =
    [
        new(60m, 0.80m, 0.80m), new(120m, 1.00m, 1.00m), new(500m, 1.25m, 1.25m), new(1_000m, 1.40m, 1.40m), new(10_000m, 1.50m, 1.50m),
    ];

    /// <summary>Where the multipliers of large cans come from.</summary>
    public static Source LargeCanSource { get; } = Source.Published("GE and Aerovox application data, page 67", "ripple multipliers of eight series");

    /// <summary>Where those of small parts of 450 V come from.</summary>
    public static Source HighVoltageRadialSource { get; } = Source.Published("NIC NRB-XW data sheet, 15 December 2010", "note 15");

    /// <summary>Where the multipliers come from.</summary>
    public static Source MultiplierSource => Multipliers;

    /// <summary>
    /// The current at the reference frequency that heats as much as all components together, sqrt(sum (I/F)²), in ampere r.m.s.
    /// </summary>
    public static Outcome<Worked<double>> Equivalent(IReadOnlyList<RippleComponent> components) =>
        Domain.Of(
            Domain.That(components.Count > 0, "no ripple component is given, expected one or more"),
            components.Select(c => Domain.NotNegative("ripple current", c.Amperes)
                ?? Domain.Positive("frequency multiplier", c.Multiplier)).FirstOrDefault(f => f is not null))
        .Compute(() =>
        {
            double amperes = Math.Sqrt(components.Sum(c => c.Amperes / c.Multiplier * (c.Amperes / c.Multiplier)));
            string terms = string.Join(" + ", components.Select(c => $"({Figures.Text(c.Amperes)} A / {Figures.Text(c.Multiplier)})²"));
            return new Worked<double>(amperes, $"sqrt({terms}) = {Figures.Text(amperes, 5)} A", Source.Practice("sum of heating powers"));
        });
}

/// <summary>The current of one frequency.</summary>
/// <param name="Amperes">Ripple current in ampere r.m.s.</param>
/// <param name="Multiplier">How much more of this frequency the part bears than of the one it is rated at.</param>
public sealed record RippleComponent(double Amperes, double Multiplier);

/// <summary>The spread of a frequency multiplier between makers.</summary>
/// <param name="Hertz">The frequency.</param>
/// <param name="Low">The least figure met.</param>
/// <param name="High">The greatest figure met.</param>
public sealed record RippleMultiplier(decimal Hertz, decimal Low, decimal High);
