namespace Ohmstead.Electronics.Uncertainty;

/// <summary>Whether a meter is good enough for a tolerance: half the tolerance range over the expanded uncertainty.</summary>
/// <remarks>A ratio of two accuracy specifications is another, more hopeful number.</remarks>
/// <param name="Ratio">The ratio.</param>
/// <param name="Arithmetic">The working.</param>
public sealed record TestUncertaintyRatio(decimal Ratio, string Arithmetic)
{
    /// <summary>The least comfortable ratio, four to one.</summary>
    public const decimal Wanted = 4m;

    /// <summary>Where the definition comes from.</summary>
    public static Source Source { get; } = Source.FromMemory("ANSI/NCSL Z540.3", "3.11");

    /// <summary>True when the ratio is four to one or better.</summary>
    public bool IsComfortable => Ratio >= Wanted;

    /// <summary>A warning for a meter that is not good enough, or null.</summary>
    public string? Warning =>
        IsComfortable
            ? null
            : $"test uncertainty ratio {Figures.Text(Ratio, 3)} to 1 is under 4 to 1: use a guard band or report that the reading "
                + "cannot decide";

    /// <summary>The ratio for a tolerance of plus or minus a half width, and an expanded uncertainty (k = 2) in the same unit.</summary>
    public static Outcome<TestUncertaintyRatio> Compute(decimal toleranceHalfWidth, decimal expandedUncertainty) =>
        Domain
            .Require(
                Domain.NotNegative("tolerance half width", toleranceHalfWidth),
                Domain.Positive("expanded uncertainty", expandedUncertainty)
            )
            .Compute(() =>
            {
                decimal ratio = toleranceHalfWidth / expandedUncertainty;
                return new TestUncertaintyRatio(
                    ratio,
                    $"{Figures.Text(toleranceHalfWidth)} / {Figures.Text(expandedUncertainty, 4)} = {Figures.Text(ratio, 4)}"
                );
            });
}
