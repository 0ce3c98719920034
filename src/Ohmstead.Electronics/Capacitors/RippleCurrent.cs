namespace Ohmstead.Electronics.Capacitors;

/// <summary>Ripple currents of several frequencies against one rating.</summary>
public static class RippleCurrent
{
    private const double LeastMultiplier = 0.2;
    private const double GreatestMultiplier = 5;

    /// <summary>
    /// The current at the reference frequency that heats as much as all components together, sqrt(sum (I/F)²), in ampere r.m.s.
    /// </summary>
    public static Outcome<Worked<double>> Equivalent(IReadOnlyList<RippleComponent> components) =>
        Domain
            .Require(
                Domain.That(components.Count > 0, "no ripple component is given, expected one or more"),
                components
                    .Select(c =>
                        Domain.NotNegative("ripple current", c.Amperes)
                        ?? Domain.Within("frequency multiplier", c.Multiplier, LeastMultiplier, GreatestMultiplier)
                    )
                    .FirstOrDefault(f => f is not null)
            )
            .Compute(() =>
            {
                double amperes = Math.Sqrt(components.Sum(c => c.Amperes / c.Multiplier * (c.Amperes / c.Multiplier)));
                string terms = string.Join(" + ", components.Select(c => $"({Figures.Text(c.Amperes)} A / {Figures.Text(c.Multiplier)})²"));
                return new Worked<double>(
                    amperes,
                    $"sqrt({terms}) = {Figures.Text(amperes, 5)} A",
                    Source.Practice("sum of heating powers")
                );
            });
}

/// <summary>The current of one frequency.</summary>
/// <param name="Amperes">Ripple current in ampere r.m.s.</param>
/// <param name="Multiplier">How much more of this frequency the part bears than of the one it is rated at.</param>
public sealed record RippleComponent(double Amperes, double Multiplier);
