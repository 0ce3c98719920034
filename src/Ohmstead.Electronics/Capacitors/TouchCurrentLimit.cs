using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Capacitors;

/// <summary>The largest touch current of a class of equipment. Never a permission: see <see cref="Hazards.SafetyNotice.Defer"/>.</summary>
/// <param name="Equipment">What equipment it is for.</param>
/// <param name="Milliamperes">The limit in milliampere.</param>
public sealed record TouchCurrentLimit(string Equipment, decimal Milliamperes)
{
    // Mains 10 % high and a part of +20 %, since what was sold as ±20 % may be.
    private const decimal HighMains = 1.1m;
    private const decimal HighCapacitance = 1.2m;

    /// <summary>Where the figures come from: two texts that agree.</summary>
    public static Source Source { get; } =
        Source.Published("IEC 60950-1 table 5A, as quoted on the emc-pstc list; in-service practice in the UK", "touch current");

    /// <summary>The limits, the strictest first. 0.25 mA is of what is not joined to protective earth; hand-held equipment of class I has
    /// 0.75 mA.</summary>
    public static IReadOnlyList<TouchCurrentLimit> All { get; } =
    [new("class II, not joined to protective earth", 0.25m), new("class I, hand-held", 0.75m), new("class I, other", 3.5m)];

    /// <summary>The touch current with mains 10 % high and a capacitance 20 % high, in milliampere.</summary>
    public static Outcome<Worked<decimal>> WorstMilliamperes(decimal farads, decimal volts, decimal hertz) =>
        SafetyCapacitor.TouchMilliamperes(farads * HighCapacitance, volts * HighMains, hertz);

    /// <summary>The limits that a current is above.</summary>
    public static IReadOnlyList<TouchCurrentLimit> PassedBy(decimal milliamperes) =>
        [.. All.Where(limit => milliamperes > limit.Milliamperes)];

    /// <summary>The largest capacitance that stays within this limit, I / (2 pi f V), in farad.</summary>
    public Outcome<Worked<decimal>> LargestFarads(decimal volts, decimal hertz) =>
        Domain
            .Require(Domain.Positive("voltage", volts), Domain.Positive("frequency", hertz))
            .Compute(() =>
            {
                decimal farads = Milliamperes / 1000m / (LossFactor.TwoPi * hertz * volts);
                string working =
                    $"{Figures.Text(Milliamperes)} mA / (2 pi x {Figures.Text(hertz)} Hz x {Figures.Text(volts)} V) = "
                    + $"{Rounded.Farads(farads)}";
                return new Worked<decimal>(farads, working, Source);
            });
}
