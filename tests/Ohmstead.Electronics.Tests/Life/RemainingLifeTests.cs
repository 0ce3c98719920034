using Ohmstead.Electronics.Life;

namespace Ohmstead.Electronics.Tests.Life;

public sealed class RemainingLifeTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);

    // 2000 h at 105 give 32 000 h at 65 (ten-kelvin rule); 8000 h used there leave 24 000 h: 3 years at 8000 h, 6 years at 4000 h.
    [Fact]
    public void The_answer_is_two_dates_and_a_warning()
    {
        RemainingLife life = RemainingLife.Estimate(2000, 105, [new(8000, 65)], new ExpectedUse(4000, 8000, 65, 65), Today).Value;
        Assert.Equal(new DateOnly(2029, 2, 28), life.Earliest);
        Assert.Equal(new DateOnly(2032, 2, 29), life.Latest);
        Assert.Equal("between 2029-02-28 and 2032-02-29, an estimate, not a promise", life.Text);
    }

    [Fact]
    public void A_part_without_a_data_sheet_has_no_date() =>
        Assert.Equal(
            "no data-sheet life; measured state only",
            RemainingLife.Estimate(null, 85, [], new ExpectedUse(100, 200, 30, 40), Today).Refusal
        );

    [Fact]
    public void A_part_that_is_used_up_is_due_today()
    {
        RemainingLife life = RemainingLife.Estimate(1000, 85, [new(2000, 85)], new ExpectedUse(100, 200, 80, 85), Today).Value;
        Assert.Equal(Today, life.Earliest);
    }

    [Fact]
    public void A_part_hardly_used_is_counted_for_fifteen_years_at_most()
    {
        RemainingLife life = RemainingLife.Estimate(5000, 105, [], new ExpectedUse(10, 10, 45, 45), Today).Value;
        Assert.Equal(new DateOnly(2041, 2, 28), life.Latest);
        Assert.Contains("counted for 15 years at most: seals age whether the part works or not", life.Remarks);
    }

    [Fact]
    public void An_impossible_use_is_refused() =>
        Assert.Equal(
            "the least hours a year are more than the most",
            RemainingLife.Estimate(2000, 105, [], new ExpectedUse(200, 100, 40, 50), Today).Refusal
        );

    [Fact]
    public void The_end_of_the_calendar_is_not_passed() =>
        Assert.Equal(
            DateOnly.MaxValue,
            RemainingLife.Estimate(5000, 105, [], new ExpectedUse(10, 10, 45, 45), DateOnly.MaxValue).Value.Latest
        );

    // 2000 h at 105 give 32 000 h at 65 and 64 000 h at 55 (ten-kelvin rule): 6.4 and 12.8 years of 5000 h, by hand from the day it was
    // fitted.
    [Fact]
    public void Two_estimates_of_the_whole_life_are_counted_from_the_day_it_was_fitted()
    {
        RemainingLife life = Between(Rule(65), Rule(55), 5000);
        Assert.Equal(new DateOnly(2032, 7, 24), life.Earliest);
        Assert.Equal(new DateOnly(2038, 12, 18), life.Latest);
        Assert.Null(life.OtherSource);
        Assert.Equal(
            "ten-kelvin rule: 2000 h x 2^((105 - 65) / 10) = 32000 h, at 5000 h a year 6.4 years from 2026-03-01; "
                + "ten-kelvin rule: 2000 h x 2^((105 - 55) / 10) = 64000 h, at 5000 h a year 12.8 years from 2026-03-01",
            life.Arithmetic.Text
        );
    }

    // 64 000 h at 1000 h a year would be 64 years; makers stand behind 15.
    [Fact]
    public void Seals_age_too_so_that_fifteen_years_are_the_most()
    {
        RemainingLife life = Between(Rule(65), Rule(55), 1000);
        Assert.Equal(new DateOnly(2041, 2, 28), life.Latest);
        Assert.Contains("counted for 15 years at most: seals age whether the part works or not", life.Remarks);
    }

    [Fact]
    public void A_part_that_was_made_in_a_year_is_counted_from_the_first_and_from_the_last_day_of_it()
    {
        LifeEstimate year = Rule(65) with { ComputedHours = 8766 };
        RemainingLife life = RemainingLife.Between(year, year, 8766, new(1978, 1, 1), new(1978, 12, 31)).Value;
        Assert.Equal(new DateOnly(1979, 1, 1), life.Earliest);
        Assert.Equal(new DateOnly(1979, 12, 31), life.Latest);
    }

    [Fact]
    public void The_source_of_the_longer_estimate_is_told_when_it_is_another()
    {
        LifeEstimate longer = MakersLifeForms.LinearVoltageForm(2000, 105, 65, 0.8).Value;
        Assert.Equal(MakersLifeForms.LinearVoltageFormSource, Between(Rule(65), longer, 5000).OtherSource);
    }

    [Fact]
    public void Estimates_given_in_the_wrong_order_are_refused() =>
        Assert.Equal("the shorter estimate is the longer one", RemainingLife.Between(Rule(55), Rule(65), 1000, Today, Today).Refusal);

    private static LifeEstimate Rule(double celsius) => TenKelvinRule.Hours(2000, 105, celsius).Value;

    private static RemainingLife Between(LifeEstimate shortest, LifeEstimate longest, double hours) =>
        RemainingLife.Between(shortest, longest, hours, Today, Today).Value;
}
