using MathNet.Numerics.Distributions;

namespace Ohmstead.Electronics.Uncertainty;

/// <summary>How likely the true value is inside its limits, for a reading with a normal uncertainty and no other knowledge.</summary>
/// <remarks>JCGM 106:2012, clause 7. With no uncertainty the answer is 0 or 1, and exactly on the limit is inside.</remarks>
public static class ConformanceProbability
{
    /// <summary>Where the formulas come from.</summary>
    public static Source Source { get; } = Source.FromMemory("JCGM 106:2012", "clause 7");

    /// <summary>Phi((TU - y)/u) - Phi((TL - y)/u); a null limit is open.</summary>
    /// <param name="reading">The reading y.</param>
    /// <param name="standardUncertainty">Its standard uncertainty u, 0 or more.</param>
    /// <param name="lowerLimit">The lower limit TL, or null.</param>
    /// <param name="upperLimit">The upper limit TU, or null.</param>
    public static Outcome<double> Compute(double reading, double standardUncertainty, double? lowerLimit, double? upperLimit)
    {
        Domain domain = Domain.Require(
            Domain.Finite("reading", reading),
            Domain.NotNegative("standard uncertainty", standardUncertainty),
            Domain.That(!(lowerLimit > upperLimit), "the lower limit is above the upper limit")
        );
        return domain.Fault is { } fault ? Outcome<double>.Refused(fault)
            : standardUncertainty == 0 ? Outcome<double>.From(Sure(reading, lowerLimit, upperLimit))
            : Domain.IfFinite(
                Math.Clamp(Upper(reading, standardUncertainty, upperLimit) - Lower(reading, standardUncertainty, lowerLimit), 0, 1)
            );
    }

    /// <summary>The same from the expanded uncertainty U = 2 u, as decisions are given it.</summary>
    /// <param name="reading">The reading y.</param>
    /// <param name="expandedUncertainty">Its expanded uncertainty U at k = 2, 0 or more.</param>
    /// <param name="lowerLimit">The lower limit TL, or null.</param>
    /// <param name="upperLimit">The upper limit TU, or null.</param>
    public static Outcome<double> OfExpanded(decimal reading, decimal expandedUncertainty, decimal? lowerLimit, decimal? upperLimit) =>
        Compute((double)reading, (double)expandedUncertainty / 2, (double?)lowerLimit, (double?)upperLimit);

    private static double Sure(double reading, double? lowerLimit, double? upperLimit) =>
        reading < lowerLimit || reading > upperLimit ? 0 : 1;

    private static double Upper(double reading, double u, double? limit) => limit is { } l ? Normal.CDF(reading, u, l) : 1;

    private static double Lower(double reading, double u, double? limit) => limit is { } l ? Normal.CDF(reading, u, l) : 0;
}
