using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Electronics.Tests.Uncertainty;

public sealed class UncertaintyBudgetTests
{
    // Root sum of squares, JCGM 100:2008 5.1.2; capacitance of 412.0 µF with five repeats of s = 0.8, by hand calculator.
    [Fact]
    public void A_budget_adds_as_the_root_of_squares()
    {
        UncertaintyBudget budget = new([
            new("meter", StandardUncertainty.Rectangular(2.56)),
            new("resolution", StandardUncertainty.OfResolution(0.1)),
            new("repeatability", 0.8 / Math.Sqrt(5), DegreesOfFreedom: 4),
        ]);
        Assert.Equal(1.5210, budget.Combined().Value, 1e-4);
        Assert.Equal(3.042, budget.Expanded().Value.Value, 5e-4);
    }

    // JCGM 100:2008 H.1 (end gauge), components and result from memory: uc = 32 nm, 16 degrees of freedom, U99 = 93 nm.
    [Fact]
    public void The_end_gauge_of_gum_h1_has_sixteen_effective_degrees_of_freedom()
    {
        UncertaintyBudget budget = new([
            new("standard", 25, DegreesOfFreedom: 18),
            new("difference", 9.7, DegreesOfFreedom: 25.6),
            new("expansion", 2.9, DegreesOfFreedom: 50),
            new("temperature", 16.6, DegreesOfFreedom: 2),
        ]);
        Assert.Equal(32, budget.Combined().Value, 0.5);
        Assert.Equal(16, Math.Floor(budget.EffectiveDegreesOfFreedom().Value));
        Assert.Equal(2.92, budget.CoverageFactorFor(0.99).Value, 0.005);
        Assert.Equal(93, 32 * budget.CoverageFactorFor(0.99).Value, 0.6);
    }

    // Student's t for 95.45 %: JCGM 100:2008 table G.2, from memory.
    [Theory]
    [InlineData(4, 2.87)]
    [InlineData(9, 2.32)]
    [InlineData(16, 2.17)]
    [InlineData(double.PositiveInfinity, 2.00)]
    public void Few_readings_need_a_larger_coverage_factor(double degrees, double t) =>
        Assert.Equal(t, UncertaintyBudget.Coverage(0.9545, degrees).Value, 0.005);

    [Fact]
    public void Two_components_that_move_together_add_in_full()
    {
        UncertaintyBudget budget = new([new("a", 3), new("b", 4)]) { Correlations = [new(0, 1, 1)] };
        Assert.Equal(7, budget.Combined().Value, 1e-12);
        Assert.Equal(1, (budget with { Correlations = [new(0, 1, -1)] }).Combined().Value, 1e-12);
        Assert.Equal(
            "effective degrees of freedom are defined for independent components only",
            budget.EffectiveDegreesOfFreedom().Refusal
        );
    }

    [Fact]
    public void A_correlation_with_nothing_is_refused() =>
        Assert.Equal(
            "a correlation names components that are not in the budget",
            (new UncertaintyBudget([new("a", 3)]) { Correlations = [new(0, 1, 0.5)] }).Combined().Refusal
        );

    [Fact]
    public void An_empty_budget_is_refused() =>
        Assert.Equal("the budget has no component, expected one or more", new UncertaintyBudget([]).Combined().Refusal);

    [Fact]
    public void Specifications_alone_have_infinite_degrees_of_freedom() =>
        Assert.Equal(double.PositiveInfinity, new UncertaintyBudget([new("meter", 1)]).EffectiveDegreesOfFreedom().Value);

    // Distributions: JCGM 100:2008 4.3.7, 4.3.9, F.2.2.1, 4.3.3.
    [Fact]
    public void Each_distribution_has_its_own_divisor()
    {
        Assert.Equal(0.577, StandardUncertainty.Rectangular(1), 1e-3);
        Assert.Equal(0.408, StandardUncertainty.Triangular(1), 1e-3);
        Assert.Equal(0.707, StandardUncertainty.UShaped(1), 1e-3);
        Assert.Equal(0.29, StandardUncertainty.OfResolution(1), 2e-3);
        Assert.Equal(0.5, StandardUncertainty.OfExpanded(1, 2));
    }
}
