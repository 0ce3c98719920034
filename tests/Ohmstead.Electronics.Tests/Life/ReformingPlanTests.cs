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
    // 100 ohm up to 100 V and 1 kohm above, an hour at the rated voltage, 12 hours of rest: TDK, general technical information.
    [Theory]
    [InlineData("100", "100")]
    [InlineData("101", "1000")]
    public void Before_leakage_is_measured_a_part_is_held_for_an_hour(string volts, string ohms)
    {
        var procedure = ReformingProcedure.PreTreatment;
        Assert.Equal(Exact.Of(ohms), Exact.Of(volts) <= procedure.BoundVolts ? procedure.OhmsUpTo : procedure.OhmsAbove);
        Assert.Equal((1m, 12m), (procedure.HoursAtRated, procedure.RestHours));
    }

    [Fact]
    public void Preconditioning_rests_before_leakage_is_judged() =>
        Assert.Contains(ReformingPlan.For(25m, ReformingProcedure.Preconditioning, null).Value.Steps, s => s.Hours == 12m);

    // SV37: 450 V over 1 kΩ 202.5 W, 10 kΩ 20.25 W, 100 kΩ 2.03 W, should the part be shorted. V² / R by hand calculator.
    [Theory]
    [Trait("CheckValue", "SV37")]
    [InlineData(1_000, 202.5)]
    [InlineData(10_000, 20.25)]
    [InlineData(100_000, 2.03)]
    public void A_shorted_part_heats_its_resistor(int ohms, double watts)
    {
        ReformingProcedure through = ReformingProcedure.HalfHour with { OhmsUpTo = ohms, OhmsAbove = ohms };
        Assert.Equal(watts, (double)ReformingPlan.For(450m, through, null).Value.WorstWatts, 6e-3);
    }

    // Solid tantalum and polymer fail short; paper and film have no oxide to form.
    [Fact]
    public void Every_plan_says_for_which_parts_it_is() =>
        Assert.All(ReformingProcedure.All, p =>
            Assert.StartsWith(
                "only for aluminium electrolytics with liquid electrolyte and a right way round; never for tantalum, polymer, paper or "
                    + "film",
                ReformingPlan.For(25m, p, null).Value.ForParts,
                StringComparison.Ordinal
            )
        );

    // The maker's letter gives resistor, current and hours; raising by quarters and letting down through 1 to 20 kΩ are common practice.
    [Fact]
    public void A_step_that_is_not_the_maker_s_is_not_laid_at_the_maker_s_door()
    {
        ReformingPlan plan = ReformingPlan.For(400m, ReformingProcedure.LongStored, 50m).Value;
        Assert.Equal(plan.Source, plan.Steps[3].Source);
        Assert.All(plan.Steps.Where(step => step.Hours is null), step => Assert.Equal(SourceBasis.CommonPractice, step.Source.Basis));
    }

    // EIA-815:1999: let down through about 1 Ω for each volt.
    [Fact]
    public void Preconditioning_lets_a_part_of_450_volts_down_through_450_ohm() =>
        Assert.Contains(ReformingPlan.For(450m, ReformingProcedure.Preconditioning, null).Value.Steps, s =>
            s.Do.StartsWith("let down through a wire-wound resistor of about 450 Ω", StringComparison.Ordinal)
        );

    // Nippon Chemi-Con FAQ 29BDH9T: 30 to 60 min through about 1 kΩ.
    [Fact]
    public void The_short_procedure_takes_half_an_hour_to_an_hour() =>
        Assert.StartsWith(
            "hold at 25 V for 0.5 to 1 h",
            ReformingPlan.For(25m, ReformingProcedure.HalfHour, null).Value.Steps[0].Do,
            StringComparison.Ordinal
        );

    [Fact]
    public void There_is_no_plan_for_what_no_electrolytic_is_rated_at() =>
        Assert.Equal("rated voltage is 1000, expected 1 to 630", ReformingPlan.For(1000m, ReformingProcedure.LongStored, null).Refusal);

    [Fact]
    public void Sources_disagree_about_shelf_life()
    {
        ShelfAge age = ShelfAge.Compute(new DateOnly(2020, 1, 1), new DateOnly(2026, 1, 1)).Value;
        Assert.Equal(6, age.Years, 0.01);
        Assert.Equal(
            [
                "meets its limits after forming again",
                "form again",
                "form again before use what was stored hot or for long, never rated voltage at once",
            ],
            age.Advice.Select(a => a.Says)
        );
    }

    [Fact]
    public void A_part_from_the_future_is_refused() =>
        Assert.Equal(
            "the part was made after the day asked for",
            ShelfAge.Compute(new DateOnly(2027, 1, 1), new DateOnly(2026, 1, 1)).Refusal
        );
}
