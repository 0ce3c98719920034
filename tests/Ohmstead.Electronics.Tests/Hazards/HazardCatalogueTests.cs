using Ohmstead.Electronics.Hazards;

namespace Ohmstead.Electronics.Tests.Hazards;

public sealed class HazardCatalogueTests
{
    [Fact]
    public void Every_hazard_ends_by_deferring_to_local_codes_and_licensed_practice() =>
        Assert.All(HazardCatalogue.All, h =>
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
        LimitInStandard[] household = [.. LimitInStandard.All.Where(l =>
            l.Source.Title.StartsWith("IEC 60335-1", StringComparison.Ordinal))];
        decimal microFarads = household.Single(l => l.Kind == LimitKind.Capacitance).Value;
        Assert.Equal(household.Single(l => l.Kind == LimitKind.Charge).Value, microFarads * 450m);
    }

    [Fact]
    public void Every_limit_names_its_standard_and_clause() => Assert.All(LimitInStandard.All, l => Assert.NotNull(l.Source.Clause));
}
