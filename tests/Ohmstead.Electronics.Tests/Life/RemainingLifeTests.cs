using Ohmstead.Electronics.Life;

namespace Ohmstead.Electronics.Tests.Life;

public sealed class RemainingLifeTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);

    // 2000 h at 105 give 32 000 h at 65 (ten-kelvin rule); 8000 h used there leave 24 000 h: 3 years at 8000 h, 6 years at 4000 h.
    [Fact]
    public void The_answer_is_two_dates_and_a_warning()
    {
        RemainingLife life = RemainingLife.Of(2000, 105, [new(8000, 65)], new ExpectedUse(4000, 8000, 65, 65), Today).Value;
        Assert.Equal(new DateOnly(2029, 2, 28), life.Earliest);
        Assert.Equal(new DateOnly(2032, 2, 29), life.Latest);
        Assert.Equal("between 2029-02-28 and 2032-02-29, an estimate, not a promise", life.Text);
    }

    [Fact]
    public void A_part_without_a_data_sheet_has_no_date() =>
        Assert.Equal("no data-sheet life; measured state only",
            RemainingLife.Of(null, 85, [], new ExpectedUse(100, 200, 30, 40), Today).Refusal);

    [Fact]
    public void A_part_that_is_used_up_is_due_today()
    {
        RemainingLife life = RemainingLife.Of(1000, 85, [new(2000, 85)], new ExpectedUse(100, 200, 80, 85), Today).Value;
        Assert.Equal(Today, life.Earliest);
    }

    [Fact]
    public void A_part_hardly_used_is_counted_for_fifteen_years_at_most()
    {
        RemainingLife life = RemainingLife.Of(5000, 105, [], new ExpectedUse(10, 10, 45, 45), Today).Value;
        Assert.Equal(new DateOnly(2041, 2, 28), life.Latest);
        Assert.Contains("counted for 15 years at most: seals age whether the part works or not", life.Remarks);
    }

    [Fact]
    public void An_impossible_use_is_refused() =>
        Assert.Equal("the least hours a year are more than the most",
            RemainingLife.Of(2000, 105, [], new ExpectedUse(200, 100, 40, 50), Today).Refusal);

    [Fact]
    public void The_end_of_the_calendar_is_not_passed() =>
        Assert.Equal(DateOnly.MaxValue, RemainingLife.Of(5000, 105, [], new ExpectedUse(10, 10, 45, 45), DateOnly.MaxValue).Value.Latest);
}
