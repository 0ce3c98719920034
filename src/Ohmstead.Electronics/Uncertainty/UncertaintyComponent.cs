namespace Ohmstead.Electronics.Uncertainty;

/// <summary>One thing that makes a result uncertain.</summary>
/// <param name="Name">What it is.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, in its own unit; 0 or more.</param>
/// <param name="Sensitivity">How much the result moves for one unit of it.</param>
/// <param name="DegreesOfFreedom">How well the uncertainty itself is known; infinite when taken from a specification.</param>
public sealed record UncertaintyComponent(
    string Name,
    double StandardUncertainty,
    double Sensitivity = 1,
    double DegreesOfFreedom = double.PositiveInfinity
)
{
    /// <summary>Its share of the result's uncertainty, with the sign of the sensitivity.</summary>
    internal double Contribution => Sensitivity * StandardUncertainty;
}

/// <summary>How two components move together.</summary>
/// <param name="First">The index of one.</param>
/// <param name="Second">The index of the other.</param>
/// <param name="Coefficient">The correlation coefficient, -1 to 1.</param>
public sealed record Correlation(int First, int Second, double Coefficient);
