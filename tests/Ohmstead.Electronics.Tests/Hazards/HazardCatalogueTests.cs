using Ohmstead.Electronics.Hazards;

namespace Ohmstead.Electronics.Tests.Hazards;

public sealed class HazardCatalogueTests
{
    [Fact]
    public void Every_hazard_ends_by_deferring_to_local_codes_and_licensed_practice() => Assert.All(HazardCatalogue.All, h =>
        {
            Assert.True(h.Cautions.Count >= 2);
            Assert.Equal(SafetyNotice.Defer, h.Cautions[^1]);
        });

    [Fact]
    public void Every_hazard_has_a_name_of_its_own() => Assert.Distinct(HazardCatalogue.All.Select(h => h.Name));

    [Fact]
    public void A_caution_is_one_line_and_starts_in_lower_case() =>
        Assert.All(HazardCatalogue.All.SelectMany(h => h.Cautions.SkipLast(1)), c =>
        {
            Assert.DoesNotContain('\n', c);
            Assert.False(char.IsUpper(c[0]), c);
            Assert.False(c.EndsWith('.'), c);
        });

    // IEC 60335-1 8.1.4: 45 µC is 0.1 µF at 450 V, so the capacitance and the charge limits meet where one takes over.
    [Fact]
    public void The_capacitance_and_charge_limits_of_one_standard_meet_at_450_volts()
    {
        LimitInStandard[] household =
        [
            .. LimitInStandard.All.Where(l => l.Source.Title.StartsWith("IEC 60335-1", StringComparison.Ordinal)),
        ];
        decimal microFarads = household.Single(l => l.Kind == LimitedQuantity.Capacitance).Value;
        Assert.Equal(household.Single(l => l.Kind == LimitedQuantity.Charge).Value, microFarads * 450m);
    }

    // What hurts is held against texts that were read, or against none.
    [Fact]
    public void No_limit_and_no_caution_rests_on_memory()
    {
        Assert.All(LimitInStandard.All, l => Assert.Equal(SourceBasis.Published, l.Source.Basis));
        Assert.All(HazardCatalogue.All, h => Assert.NotEqual(SourceBasis.Memory, h.Source.Basis));
        Assert.All(HazardCatalogue.All.SelectMany(h => h.Cautions), caution =>
            Assert.DoesNotContain("memory)", caution, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Every_limit_names_its_standard_and_clause() => Assert.All(LimitInStandard.All, l => Assert.NotNull(l.Source.Clause));

    // IEC 60335-1, 8.1.4 as quoted twice: 42.4 V peak a.c. and 42.4 V d.c., stricter than the 60 V of the other standards.
    [Theory]
    [InlineData("42.4", false)]
    [InlineData("42.5", true)]
    public void A_household_part_is_live_above_42_4_volt_of_direct_current(string volts, bool above)
    {
        LimitInStandard household = LimitInStandard.All.Single(l =>
            l.Unit == "V d.c." && l.Source.Title.StartsWith("IEC 60335-1", StringComparison.Ordinal)
        );
        Assert.Equal(above, household.IsPassedBy(0m, Exact.Of(volts)));
    }

    // Lawrence Berkeley National Laboratory: capacitors are a hazard from 100 V and 10 J. 220 µF at 340 V hold 12.7 J, 47 µF at 350 V 2.88
    // J. SV36.
    [Theory]
    [Trait("CheckValue", "SV36")]
    [InlineData("0.00022", "340", true)]
    [InlineData("0.000047", "350", false)]
    [InlineData("0.005", "99", false)]
    public void Ten_joules_at_a_hundred_volts_are_a_hazard_of_their_own(string farads, string volts, bool above) =>
        Assert.Equal(
            above,
            LimitInStandard.All.Single(l => l is { Kind: LimitedQuantity.Energy, Value: 10m }).IsPassedBy(Exact.Of(farads), Exact.Of(volts))
        );

    // 47 µF at 450 V is 21 mC, 470 times the 45 µC that begin above 450 V; to 450 V 0.1 µF is the bound: IEC 60335-1, 8.1.4.
    [Theory]
    [InlineData("0.000047", "451", LimitedQuantity.Charge, true)]
    [InlineData("0.000047", "450", LimitedQuantity.Charge, false)]
    [InlineData("0.000047", "450", LimitedQuantity.Capacitance, true)]
    [InlineData("0.0000001", "450", LimitedQuantity.Capacitance, false)]
    public void The_charge_of_a_reservoir_is_held_against_its_standard(string farads, string volts, LimitedQuantity kind, bool above) =>
        Assert.Equal(
            above,
            LimitInStandard
                .All.Single(l => l.Kind == kind && l.Source.Title.StartsWith("IEC 60335-1", StringComparison.Ordinal))
                .IsPassedBy(Exact.Of(farads), Exact.Of(volts))
        );

    // In Compliance Magazine, The Capacitive Discharge Test: 10 s are for terminals for external conductors, 5 s for the plug; both to
    // under 60 V.
    [Fact]
    public void A_time_to_discharge_is_of_plug_or_terminals_and_never_of_the_inside() =>
        Assert.All(LimitInStandard.All.Where(l => l.Kind == LimitedQuantity.Time), l =>
            Assert.EndsWith("it says nothing of the inside", l.Condition, StringComparison.Ordinal)
        );

    // NAVEDTRA 14188 p. 1-16 (ground first, each tube by itself); common practice of television repair (dag strap, megohms, again before
    // touching).
    [Theory]
    [InlineData("strap on the outer coating")]
    [InlineData("10 MΩ or more")]
    [InlineData("never 1 to 20 kΩ")]
    [InlineData("clip first")]
    [InlineData("right before you touch")]
    public void A_picture_tube_says_how_it_is_let_down(string words) =>
        Assert.Contains(words, Cautions("picture-tube"), StringComparison.Ordinal);

    // Nippon Chemi-Con FAQ 29BDH12: most of it comes back 10 to 20 days later.
    [Theory]
    [InlineData("10 to 20 days")]
    [InlineData("shorting link")]
    [InlineData("1 MΩ or more")]
    public void A_reservoir_says_that_its_charge_comes_back_for_days(string words) =>
        Assert.Contains(words, Cautions("stored-energy"), StringComparison.Ordinal);

    // Potassium carbonate about pH 11.5, potassium hydroxide 12 to 14: the stronger is the wet one.
    [Theory]
    [InlineData("rechargeable-cell", "pH 11.5")]
    [InlineData("rechargeable-cell", "about pH 12, and more where it is strong")]
    [InlineData("polychlorinated-oil", "made before 2 July 1979, or nobody knows when")]
    [InlineData("lead-and-flux", "0.15 mg/m³ over 15 min")]
    [InlineData("lithium-cell", "a diode alone is no guard")]
    public void A_caution_says_what_its_source_says(string hazard, string words) =>
        Assert.Contains(words, Cautions(hazard), StringComparison.Ordinal);

    private static string Cautions(string name) => string.Join("; ", HazardCatalogue.All.Single(h => h.Name == name).Cautions);
}
