using MathNet.Numerics.Distributions;

namespace Ohmstead.Electronics.Uncertainty;

/// <summary>What makes a result uncertain, put together by the law of propagation of uncertainty.</summary>
/// <param name="Components">The components.</param>
public sealed record UncertaintyBudget(IReadOnlyList<UncertaintyComponent> Components)
{
    private const double CoverageFactor = 2;

    /// <summary>Correlations between components; what is not listed is independent.</summary>
    public IReadOnlyList<Correlation> Correlations { get; init; } = [];

    /// <summary>The law of propagation, and the degrees of freedom of its result.</summary>
    public static Source Source { get; } = Source.FromMemory("JCGM 100:2008", "5.1.2, 5.2.2, G.4.1");

    /// <summary>The combined standard uncertainty, sqrt(sum (c u)² + 2 sum c_i c_j u_i u_j r_ij).</summary>
    public Outcome<double> Combined() =>
        Checked()
            .Compute(() =>
            {
                double variance =
                    Components.Sum(c => c.Contribution * c.Contribution)
                    + (2 * Correlations.Sum(r => Components[r.First].Contribution * Components[r.Second].Contribution * r.Coefficient));
                return Math.Sqrt(Math.Max(0, variance));
            });

    /// <summary>The expanded uncertainty with k = 2, about 95 % where the degrees of freedom are many, with its working.</summary>
    public Outcome<Worked<double>> Expanded() =>
        Combined()
            .Then(combined =>
            {
                string terms = string.Join(", ", Components.Select(c => $"{c.Name} {Figures.Text(Math.Abs(c.Contribution), 4)}"));
                return new Worked<double>(
                    CoverageFactor * combined,
                    $"root sum of squares of {terms} = {Figures.Text(combined, 4)}; x 2 = {Figures.Text(CoverageFactor * combined, 4)}",
                    Source
                );
            });

    /// <summary>
    /// The effective degrees of freedom, uc^4 / sum(u_i^4 / nu_i) (Welch and Satterthwaite); infinite when every component is. Refused
    /// with correlations, for which the formula does not hold.
    /// </summary>
    public Outcome<double> EffectiveDegreesOfFreedom()
    {
        if (Correlations.Count > 0)
        {
            return Outcome<double>.Refused("effective degrees of freedom are defined for independent components only");
        }

        if (!Combined().Is(out double combined, out string? reason))
        {
            return Outcome<double>.Refused(reason);
        }

        double denominator = Components.Sum(c => Math.Pow(c.Contribution, 4) / c.DegreesOfFreedom);
        return Outcome<double>.From(denominator > 0 ? Math.Pow(combined, 4) / denominator : double.PositiveInfinity);
    }

    /// <summary>The coverage factor for a coverage probability by Student's t at the effective degrees of freedom, rounded down.</summary>
    public Outcome<double> CoverageFactorFor(double probability) =>
        EffectiveDegreesOfFreedom().Is(out double degrees, out string? reason)
            ? Coverage(probability, Math.Floor(degrees))
            : Outcome<double>.Refused(reason);

    /// <summary>Student's t for a two-sided coverage probability; the normal distribution when the degrees of freedom are
    /// infinite.</summary>
    public static Outcome<double> Coverage(double probability, double degreesOfFreedom) =>
        Domain
            .Require(
                Domain.Within("coverage probability", probability, 0.5, 0.9999),
                Domain.That(degreesOfFreedom >= 1, $"degrees of freedom are {Figures.Text(degreesOfFreedom)}, expected 1 or more")
            )
            .Compute(() =>
                double.IsPositiveInfinity(degreesOfFreedom)
                    ? Normal.InvCDF(0, 1, (1 + probability) / 2)
                    : StudentT.InvCDF(0, 1, degreesOfFreedom, (1 + probability) / 2)
            );

    private Domain Checked() =>
        Domain.Require(
            Domain.That(Components.Count > 0, "the budget has no component, expected one or more"),
            Components
                .Select(c =>
                    Domain.NotNegative($"standard uncertainty of {c.Name}", c.StandardUncertainty)
                    ?? Domain.Finite($"sensitivity of {c.Name}", c.Sensitivity)
                    ?? Domain.That(
                        c.DegreesOfFreedom > 0,
                        $"degrees of freedom of {c.Name} are {Figures.Text(c.DegreesOfFreedom)}, expected above 0"
                    )
                )
                .FirstOrDefault(f => f is not null),
            Correlations.Select(Fault).FirstOrDefault(f => f is not null)
        );

    private string? Fault(Correlation r) =>
        r.First == r.Second || r.First < 0 || r.Second < 0 || r.First >= Components.Count || r.Second >= Components.Count
            ? "a correlation names components that are not in the budget"
            : Domain.Within("correlation coefficient", r.Coefficient, -1.0, 1.0);
}
