using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>The cold resistance of a whole fuse: at most its largest voltage drop divided by its rated current. What is far above it is
/// blown or broken.</summary>
/// <remarks>Between the two lie leads and contacts of an ordinary meter: such a reading does not decide.</remarks>
public static class FuseResistance
{
    private const decimal TimesForBroken = 5m;
    private const decimal OhmsOfLeads = 1m;

    // Rated current up to which a largest drop holds, in volt.
    private static readonly IReadOnlyList<(decimal Amperes, decimal Volts)> Drops =
    [
        (1.25m, 0.250m),
        (1.6m, 0.200m),
        (2m, 0.190m),
        (2.5m, 0.180m),
        (3.15m, 0.140m),
        (decimal.MaxValue, 0.100m),
    ];

    private static readonly Source Slow = Source.Published("Schurter SMD-SPT data sheet", "voltage drop at rated current");

    // The thin wire of a small rating drops volts: 4.7 V at 63 mA. The largest stands for all down to there, and a blown one still shows a
    // million times that.
    private static readonly Source Small = Source.Published("Eaton GMA data sheet", "largest voltage drop of 63 mA, 4.7 V");
    private const decimal SmallVolts = 4.7m;
    private const decimal SmallestAmperes = 0.063m;

    /// <summary>The resistance up to which a fuse is whole, in ohm.</summary>
    public static Outcome<Worked<decimal>> Whole(decimal ratedAmperes) =>
        Domain
            .Require(
                Domain.Positive("rated current", ratedAmperes),
                Domain.That(
                    ratedAmperes <= 0m || ratedAmperes >= SmallestAmperes,
                    $"rated current is {Figures.Text(ratedAmperes)} A, the voltage drop of one under 63 mA is in no source at hand"
                )
            )
            .Compute(() =>
            {
                decimal volts = ratedAmperes < 1m ? SmallVolts : Drops.First(row => ratedAmperes <= row.Amperes).Volts;
                decimal ohms = volts / ratedAmperes;
                return new Worked<decimal>(
                    ohms,
                    new(() => $"{Figures.Text(volts)} V / {Figures.Text(ratedAmperes)} A = {Rounded.Ohms(ohms)}"),
                    ratedAmperes < 1m ? Small : Slow
                );
            });

    /// <summary>The resistance above which it is blown or broken, in ohm: five times that and the ohm of leads and contacts (common
    /// practice).</summary>
    public static Outcome<Worked<decimal>> Blown(decimal ratedAmperes) =>
        Whole(ratedAmperes)
            .Then(whole => new Worked<decimal>(
                (TimesForBroken * whole.Value) + OhmsOfLeads,
                new(() =>
                    $"5 x {Rounded.Ohms(whole.Value)} + 1 Ω of leads and contacts = "
                    + $"{Rounded.Ohms((TimesForBroken * whole.Value) + OhmsOfLeads)}"
                ),
                Source.CommonPractice
            ));
}
