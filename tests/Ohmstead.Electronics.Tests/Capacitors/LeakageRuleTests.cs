using CsCheck;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class LeakageRuleTests
{
    // max(0.01 CV, 3 µA): Lelon RGA data sheet.
    [Fact]
    [Trait("CheckValue", "CV20")]
    public void A_hundredth_of_cv_but_not_under_three_microampere()
    {
        Worked<decimal> large = LeakageRules.GeneralLowVoltage.LimitMicroAmperes(0.0001m, 25m).Value;
        Worked<decimal> small = LeakageRules.GeneralLowVoltage.LimitMicroAmperes(0.00001m, 16m).Value;
        Assert.Equal(25.0m, large.Value);
        Assert.Equal("0.01 x 100 µF x 25 V = 25 µA, not under 3 µA", large.Arithmetic);
        Assert.Equal(3.0m, small.Value);
        Assert.Equal("0.01 x 10 µF x 16 V = 1.6 µA, not under 3 µA", small.Arithmetic);
    }

    // 0.3 (CV)^0.7 + 4, from memory of large-can data books; worked by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV21")]
    public void A_large_long_life_can_follows_a_power_of_cv() =>
        Assert.Equal(1479.8, (double)LeakageRules.LargeLongLifeCan.LimitMicroAmperes(0.00047m, 400m).Value.Value, 0.1);

    public static TheoryData<LeakageRule, string, string, double> WorkedRows =>
        new()
        {
            { LeakageRules.GeneralLowVoltage, "0.001", "63", 630 },
            { LeakageRules.GeneralLowVoltage, "0.0000047", "25", 3 },
            { LeakageRules.GeneralHighVoltage, "0.00047", "400", 3785 },
            { LeakageRules.ComputerGradeCan, "0.00047", "400", 1300.8 },
            { LeakageRules.LongLife, "0.00047", "63", 181.7 },
            { LeakageRules.GeneralFiveMinutes, "0.001", "16", 35 },
            { LeakageRules.SolidTantalum, "0.000033", "10", 3.3 },
            { LeakageRules.SolidTantalum, "0.0001", "10", 10 },
            { LeakageRules.SolidTantalum, "0.00001", "16", 1.6 },
            { LeakageRules.SolidTantalum, "0.0000001", "35", 0.5 },
        };

    // Each rule's own formula worked by hand calculator; the 33 µF 10 V tantalum of 3.3 µA is a published maker's example.
    [Theory]
    [MemberData(nameof(WorkedRows))]
    public void The_rules_agree_with_hand_working(LeakageRule rule, string farads, string volts, double microAmperes) =>
        Assert.Equal(microAmperes, (double)rule.LimitMicroAmperes(Exact.Of(farads), Exact.Of(volts)).Value.Value, 0.06);

    [Fact]
    public void The_high_voltage_rule_has_no_jump_where_its_figures_change()
    {
        decimal at = LeakageRules.GeneralHighVoltage.LimitMicroAmperes(0.000005m, 200m).Value.Value;
        Assert.Equal(45m, at);
        Assert.Equal(45m, LeakageRules.GeneralHighVoltage.LimitMicroAmperes(0.00000500001m, 200m).Value.Value, 3);
    }

    [Fact]
    public void A_rule_for_low_voltage_refuses_a_high_voltage_part() =>
        Assert.Equal(
            "the rule \"general purpose to 100 V\" holds for 0 to 100 V, the part is rated 350 V",
            LeakageRules.GeneralLowVoltage.LimitMicroAmperes(0.00001m, 350m).Refusal
        );

    [Fact]
    public void A_larger_part_may_always_leak_at_least_as_much() =>
        Gen.Select(
                Gen.Int[0, LeakageRules.All.Count - 1],
                Gen.Int[1, 100_000],
                Gen.Int[0, 100_000],
                Gen.Int[0, 3].Select(i => new[] { 50m, 100m, 160m, 400m }[i])
            )
            .Sample(
                (index, nanoFarads, more, volts) =>
                {
                    LeakageRule rule = LeakageRules.All[index];
                    bool known = rule.LimitMicroAmperes(nanoFarads / 1_000_000_000m, volts).Is(out Worked<decimal>? small, out _);
                    return !known || small!.Value <= rule.LimitMicroAmperes((nanoFarads + more) / 1_000_000_000m, volts).Value.Value;
                }
            );

    // MIL-PRF-49137E 4.8.4: the voltage is on for at most 5 minutes through 1000 Ω before the leakage is read.
    [Fact]
    public void A_solid_tantalum_is_read_after_five_minutes() => Assert.Equal(5m, LeakageRules.SolidTantalum.Minutes);

    [Fact]
    public void What_is_remembered_beside_a_source_that_was_read_says_so() =>
        Assert.Equal(SourceBasis.Memory, LeakageRules.SolidTantalum.Source.Basis);
}
