using CsCheck;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Electronics.Tests.Uncertainty;

public sealed class ConformityStatementTests
{
    // 4.78 V read on +/-(0.5 % + 2 digits of 10 mV) against 4.75 V: Phi((y - TL)/u), JCGM 106:2012 clause 7, by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV41")]
    public void A_rail_just_inside_its_limit_is_only_probably_inside()
    {
        decimal expanded = new AccuracySpecification(0.5m, 2m, 0.01m).ExpandedUncertaintyOf(4.78m).Value.Value;
        ConformityStatement statement = ConformityStatement.Decide(4.78m, expanded, 4.75m, null, DecisionRule.Guarded).Value;
        Assert.Equal(0.8817, statement.Probability, 1e-4);
        Assert.Equal(Conformity.ProbablyInside, statement.Conformity);
        Assert.False(statement.Accepted);
        Assert.False(statement.Decides);
    }

    // The same reading without its working.
    [Fact]
    public void A_decision_says_what_its_statement_says()
    {
        ConformityDecision decision = ConformityDecision.Decide(4.78m, 0.0507m, 4.75m, null, DecisionRule.Guarded).Value;
        Assert.Equal(0.8817, ConformanceProbability.OfExpanded(4.78m, 0.0507m, 4.75m, null).Value, 1e-4);
        Assert.Equal((Conformity.ProbablyInside, false, 0.0507m), (decision.Conformity, decision.Accepted, decision.GuardBand));
        Assert.Equal("the lower limit is above the upper limit", ConformityDecision.Decide(5m, 0.1m, 6m, 4m, DecisionRule.Simple).Refusal);
    }

    // 0.420 ohm on +/-(2 % + 0.02 ohm), lead residual +/-0.01 ohm, repeatability 0.006 ohm, limit 0.45; by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV43")]
    public void An_esr_in_the_guard_band_is_probably_inside()
    {
        UncertaintyBudget budget = new([
            new("meter", (double)new AccuracySpecification(2m, 0m, 0m, 0.02m).StandardUncertaintyOf(0.420m).Value),
            new("leads", StandardUncertainty.Rectangular(0.01)),
            new("repeatability", 0.006),
        ]);
        Assert.Equal(0.018390, budget.Combined().Value, 1e-6);
        double expanded = budget.Expanded().Value.Value;
        Assert.Equal(0.03678, expanded, 1e-5);

        ConformityStatement statement = ConformityStatement.Decide(0.420m, (decimal)expanded, null, 0.45m, DecisionRule.Guarded).Value;
        Assert.Equal(0.94859, statement.Probability, 1e-5);
        Assert.Equal(0.41322, (double)statement.UpperAcceptance!.Value, 1e-5);
        Assert.Equal(Conformity.ProbablyInside, statement.Conformity);
    }

    // 4.7 kohm 1 % (+/-47 ohm) on +/-(0.5 % + 2 digits of 1 ohm): definition ANSI/NCSL Z540.3 3.11, by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV44")]
    public void A_hand_meter_is_not_good_enough_for_a_one_per_cent_part()
    {
        AccuracySpecification meter = new(0.5m, 2m, 1m);
        Assert.Equal(25.5m, meter.HalfWidth(4700m).Value.Value);
        TestUncertaintyRatio ratio = TestUncertaintyRatio.Compute(47m, meter.ExpandedUncertaintyOf(4700m).Value.Value).Value;
        Assert.Equal(1.596, (double)ratio.Ratio, 1e-3);
        Assert.False(ratio.IsComfortable);
        Assert.Equal(
            "test uncertainty ratio 1.6 to 1 is under 4 to 1: use a guard band or report that the reading cannot decide",
            ratio.Warning
        );
    }

    // 470 µF -20 % on a budget of U = 3.042 µF: 94 / 3.042, by hand calculator.
    [Fact]
    public void A_wide_tolerance_on_a_good_meter_needs_no_warning()
    {
        TestUncertaintyRatio ratio = TestUncertaintyRatio.Compute(94m, 3.042m).Value;
        Assert.Equal(30.9, (double)ratio.Ratio, 0.05);
        Assert.Null(ratio.Warning);
    }

    // Risk on the acceptance limit is Phi(-2w/U): ILAC-G8:09/2019 table 1, as quoted by Harper Metrology, 24 October 2024.
    [Theory]
    [Trait("CheckValue", "CV47")]
    [InlineData("six sigma", 9.9e-10)]
    [InlineData("three sigma", 0.00135)]
    [InlineData("guard band of U", 0.02275)]
    [InlineData("guard band of 0.83 U", 0.0485)]
    [InlineData("simple acceptance", 0.5)]
    [InlineData("uncritical", 0.97725)]
    public void A_reading_on_the_acceptance_limit_carries_the_risk_of_its_rule(string name, double risk)
    {
        DecisionRule rule = DecisionRule.All.Single(r => r.Name == name);
        ConformityStatement statement = ConformityStatement.Decide(100m - (rule.GuardShare * 2m), 2m, null, 100m, rule).Value;
        Assert.True(statement.Accepted);
        Assert.Equal(risk, 1 - statement.Probability, risk * 0.01);
        Assert.Equal(risk, rule.FalseAcceptRisk, risk * 0.01);
    }

    // JCGM 106:2012 clause 7 examples, inputs from memory: Zener 0.92, bursting pressure 0.99, viscosity 0.66.
    [Theory]
    [InlineData(-5.47, 0.05, null, -5.40, 0.92)]
    [InlineData(509.7, 8.6, 490.0, null, 0.99)]
    [InlineData(13.6, 1.8, 12.5, 16.3, 0.66)]
    public void The_probabilities_of_the_published_examples_come_out(
        double reading,
        double u,
        double? lower,
        double? upper,
        double printed
    ) => Assert.Equal(printed, ConformanceProbability.Compute(reading, u, lower, upper).Value, 0.005);

    // Capacitance against 376 µF with uc = 1.5210 µF: 377.5 gives 0.8380, 380.0 gives 0.9957, by hand calculator.
    [Theory]
    [InlineData("377.5", 0.8380, Conformity.ProbablyInside)]
    [InlineData("380.0", 0.9957, Conformity.Inside)]
    [InlineData("375.0", 0.2554, Conformity.ProbablyOutside)]
    [InlineData("372.0", 0.0043, Conformity.Outside)]
    public void Four_things_can_be_said_of_a_reading(string reading, double probability, Conformity expected)
    {
        ConformityStatement statement = ConformityStatement.Decide(Exact.Of(reading), 3.042m, 376m, null, DecisionRule.Guarded).Value;
        Assert.Equal(probability, statement.Probability, 2e-4);
        Assert.Equal(expected, statement.Conformity);
    }

    [Fact]
    public void An_exact_reading_exactly_on_its_limit_is_inside()
    {
        ConformityStatement statement = ConformityStatement.Decide(376m, 0m, 376m, 564m, DecisionRule.Guarded).Value;
        Assert.Equal(Conformity.Inside, statement.Conformity);
        Assert.Equal(1, statement.Probability);
    }

    [Fact]
    public void A_rare_part_is_kept_until_it_is_proved_outside()
    {
        ConformityStatement statement = ConformityStatement.Decide(375m, 3.042m, 376m, null, DecisionRule.Uncritical).Value;
        Assert.True(statement.Accepted);
        Assert.Equal(Conformity.ProbablyOutside, statement.Conformity);
    }

    [Fact]
    public void A_decision_without_any_limit_is_refused() =>
        Assert.Equal(
            "no limit is given, expected a lower or an upper one",
            ConformityStatement.Decide(1m, 0m, null, null, DecisionRule.Simple).Refusal
        );

    [Fact]
    public void Crossed_limits_are_refused() =>
        Assert.Equal("the lower limit is above the upper limit", ConformityStatement.Decide(1m, 0m, 2m, 1m, DecisionRule.Simple).Refusal);

    [Fact]
    public void The_working_can_be_followed_by_hand() =>
        Assert.Equal(
            "0.42 ± 0.03678 against at most 0.45, guard band 0.03678: accepted at most 0.41322; inside with probability 0.9486",
            ConformityStatement.Decide(0.42m, 0.03678m, null, 0.45m, DecisionRule.Guarded).Value.Arithmetic
        );

    [Fact]
    public void A_probability_is_never_outside_zero_to_one() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[0, 1e5], Gen.Double[-1e6, 1e6], Gen.Double[0, 1e6])
            .Sample((reading, u, lower, width) => ConformanceProbability.Compute(reading, u, lower, lower + width).Value is >= 0 and <= 1);

    [Fact]
    public void A_higher_reading_is_never_less_likely_to_be_over_a_lower_limit() =>
        Gen.Select(Gen.Double[-1e3, 1e3], Gen.Double[0, 1e3], Gen.Double[0, 1e2], Gen.Double[-1e3, 1e3])
            .Sample(
                (reading, more, u, lower) =>
                    ConformanceProbability.Compute(reading + more, u, lower, null).Value
                    >= ConformanceProbability.Compute(reading, u, lower, null).Value
            );

    [Fact]
    public void A_wider_guard_band_never_accepts_what_a_narrower_one_rejects() =>
        Gen.Select(Gen.Int[-2000, 2000], Gen.Int[0, 500])
            .Sample(
                (reading, u) =>
                {
                    bool Accepts(DecisionRule rule) => ConformityStatement.Decide(reading, u, -1000m, 1000m, rule).Value.Accepted;
                    return (!Accepts(DecisionRule.SixSigma) || Accepts(DecisionRule.Guarded))
                        && (!Accepts(DecisionRule.Guarded) || Accepts(DecisionRule.Simple))
                        && (!Accepts(DecisionRule.Simple) || Accepts(DecisionRule.Uncritical));
                }
            );
}
