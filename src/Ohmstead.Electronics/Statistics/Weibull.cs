using MathNet.Numerics;

namespace Ohmstead.Electronics.Statistics;

/// <summary>A Weibull life, S(t) = exp(-(t/eta)^beta).</summary>
/// <param name="Shape">The shape beta: under 1 early failures, 1 chance, above 1 wear.</param>
/// <param name="Scale">The scale eta, the age by which 63.2 % have failed, in the unit of the ages.</param>
public sealed record Weibull(double Shape, double Scale)
{
    /// <summary>The mean life, eta gamma(1 + 1/beta).</summary>
    public double Mean => Scale * SpecialFunctions.Gamma(1 + (1 / Shape));

    /// <summary>The share still good at an age.</summary>
    public double Survival(double age) => age <= 0 ? 1 : Math.Exp(-Math.Pow(age / Scale, Shape));

    /// <summary>The age by which a share has failed, eta (-ln(1 - share))^(1/beta); refused outside 0 to 1.</summary>
    public Outcome<double> AgeAt(double shareFailed) =>
        Domain
            .Require(Domain.Within("share failed", shareFailed, 0, 0.999999))
            .Compute(() => Scale * Math.Pow(-Math.Log(1 - shareFailed), 1 / Shape));

    /// <summary>The probability that an item good at one age fails before a later one, 1 - S(t2)/S(t1).</summary>
    public Outcome<double> FailsBetween(double goodAt, double age) =>
        Domain
            .Require(Domain.NotNegative("age", goodAt), Domain.That(age >= goodAt, "the later age is before the earlier one"))
            .Compute(() => -Expm1(Math.Pow(goodAt / Scale, Shape) - Math.Pow(age / Scale, Shape)));

    private static double Expm1(double x) => Math.Abs(x) < 1e-5 ? x + (x * x / 2) : Math.Exp(x) - 1;
}
