namespace Ohmstead.Electronics.Hazards;

/// <summary>What a charged capacitor holds. Information only; see <see cref="SafetyNotice.Defer"/>.</summary>
/// <param name="Joules">Energy, C V² / 2.</param>
/// <param name="Coulombs">Charge, C V.</param>
/// <param name="Arithmetic">The working.</param>
public sealed record StoredEnergy(decimal Joules, decimal Coulombs, string Arithmetic)
{
    /// <summary>Where the formulas come from.</summary>
    public static Source Source { get; } = Source.Practice("energy and charge of a capacitor");

    /// <summary>The share of its voltage that a shorted aluminium electrolytic may recover by itself: measure again before
    /// touching.</summary>
    public const decimal RecoveryShare = 0.10m;

    /// <summary>The energy and charge of a capacitance at a voltage.</summary>
    public static Outcome<StoredEnergy> Of(decimal farads, decimal volts) =>
        Domain.Of(Domain.NotNegative("capacitance", farads)).Compute(() =>
        {
            decimal joules = farads * volts * volts / 2m;
            decimal coulombs = farads * Math.Abs(volts);
            string working = $"{Figures.Farads(farads)} x ({Figures.Text(volts)} V)² / 2 = {Figures.Text(joules, 4)} J; {Figures.Text(coulombs * 1000m, 4)} mC";
            return new StoredEnergy(joules, coulombs, working);
        });
}
