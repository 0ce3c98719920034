using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Hazards;

/// <summary>What a charged capacitor holds. Information only; see <see cref="SafetyNotice.Defer"/>.</summary>
/// <param name="Joules">Energy, C V² / 2.</param>
/// <param name="Coulombs">Charge, C V.</param>
/// <param name="Arithmetic">The working.</param>
public sealed record StoredEnergy(decimal Joules, decimal Coulombs, string Arithmetic)
{
    /// <summary>Where the formulas come from.</summary>
    public static Source Source { get; } = Source.Practice("energy and charge of a capacitor");

    /// <summary>The share of its voltage that a shorted aluminium electrolytic may recover by itself, the greatest that is told.</summary>
    public const decimal RecoveryShare = 0.15m;

    /// <summary>Where the share comes from.</summary>
    public static Source RecoverySource { get; } =
        Source.Published(
            "encyclopedia articles on dielectric absorption, read in quotations",
            "as much as 15 % for electrolytic capacitors"
        );

    /// <summary>Where it is said that the voltage comes back for days, more of it in large cans.</summary>
    public static Source RecoveryTimeSource { get; } =
        Source.Published("Nippon Chemi-Con FAQ 29BDH12", "recovery voltage peaks 10 to 20 days after");

    /// <summary>The voltage that may come back by itself after a capacitor was let down, in volt: after 450 V that is more than 60
    /// V.</summary>
    public static Outcome<Worked<decimal>> RecoveredVolts(decimal volts) =>
        Domain
            .Require(Domain.NotNegative("voltage", volts))
            .Compute(() =>
                new Worked<decimal>(
                    RecoveryShare * volts,
                    $"{Figures.Percent(RecoveryShare)} of {Figures.Text(volts)} V = {Figures.Text(RecoveryShare * volts)} V",
                    RecoverySource
                )
            );

    /// <summary>The energy and charge of a capacitance at a voltage.</summary>
    public static Outcome<StoredEnergy> Compute(decimal farads, decimal volts) =>
        Domain
            .Require(Domain.NotNegative("capacitance", farads))
            .Compute(() =>
            {
                decimal joules = farads * volts * volts / 2m;
                decimal coulombs = farads * Math.Abs(volts);
                string working =
                    $"{Rounded.Farads(farads)} x ({Figures.Text(volts)} V)² / 2 = {Figures.Text(joules, 4)} J; "
                    + $"{Figures.Text(coulombs * 1000m, 4)} mC";
                return new StoredEnergy(joules, coulombs, working);
            });
}
