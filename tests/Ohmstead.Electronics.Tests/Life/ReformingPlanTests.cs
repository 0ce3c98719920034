using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Electronics.Tests.Life;

public sealed class ReformingPlanTests
{
    // 10 kohm up to 75 V, 100 kohm above: Cornell Dubilier, October 1993; V²/R by hand calculator.
    [Theory]
    [InlineData("450", "100000", 2.03)]
    [InlineData("75", "10000", 0.56)]
    public void The_resistor_must_bear_a_shorted_part(string volts, string ohms, double watts)
    {
        ReformingPlan plan = ReformingPlan.For(Exact.Of(volts), ReformingProcedure.LongStored, 50m).Value;
        Assert.Equal(Exact.Of(ohms), plan.SeriesOhms);
        Assert.Equal(watts, (double)plan.WorstWatts, 5e-3);
    }

    [Fact]
    public void A_long_stored_part_is_raised_slowly_and_held_four_hours()
    {
        ReformingPlan plan = ReformingPlan.For(400m, ReformingProcedure.LongStored, 50m).Value;
        Assert.Equal([100m, 200m, 300m, 400m], plan.Steps.Take(4).Select(s => s.Volts));
        Assert.Equal(4m, plan.Steps[3].Hours);
        Assert.Equal("raise to 100 V, keeping under 1 mA; go on when the current has fallen and stays", plan.Steps[0].Do);
    }

    [Fact]
    public void Every_plan_says_when_to_give_up_and_defers()
    {
        Assert.All(ReformingProcedure.All, p => Assert.Contains("the can warms", ReformingPlan.For(25m, p, null).Value.StopWhen));
        Assert.Contains("the last leakage is above 50 µA", ReformingPlan.For(25m, ReformingProcedure.HalfHour, 50m).Value.StopWhen);
        Assert.Equal(SafetyNotice.Defer, ReformingPlan.Caution);
    }

    // EIA-815:1999: rest 12 to 48 h after an hour at rated voltage.
    [Fact]
    public void Preconditioning_rests_before_leakage_is_judged() =>
        Assert.Contains(ReformingPlan.For(25m, ReformingProcedure.Preconditioning, null).Value.Steps, s => s.Hours == 12m);

    [Fact]
    public void Sources_disagree_about_shelf_life()
    {
        ShelfAge age = ShelfAge.Of(new DateOnly(2020, 1, 1), new DateOnly(2026, 1, 1)).Value;
        Assert.Equal(6, age.Years, 0.01);
        Assert.Equal(["meets its limits after forming again", "scrap", "form again from time to time"], age.Advice.Select(a => a.Says));
    }

    [Fact]
    public void A_part_from_the_future_is_refused() =>
        Assert.Equal("the part was made after the day asked for", ShelfAge.Of(new DateOnly(2027, 1, 1), new DateOnly(2026, 1, 1)).Refusal);
}
