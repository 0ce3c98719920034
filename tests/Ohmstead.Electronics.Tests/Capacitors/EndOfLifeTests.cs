using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class EndOfLifeTests
{
    // Restorer's default is common practice: -20 to +50 %, twice the loss limit.
    [Theory]
    [InlineData("-0.20", false)]
    [InlineData("-0.201", true)]
    [InlineData("0.50", false)]
    [InlineData("0.501", true)]
    public void A_change_exactly_on_the_criterion_has_not_passed_it(string change, bool exceeded) =>
        Assert.Equal(exceeded, EndOfLifeCriteria.RestorersDefault.Judge(Exact.Of(change)).Single().Exceeded);

    [Fact]
    public void Four_fifths_of_an_allowed_change_are_worth_watching()
    {
        Assert.True(EndOfLifeCriteria.RestorersDefault.Judge(-0.16m).Single().WorthWatching);
        Assert.False(EndOfLifeCriteria.RestorersDefault.Judge(-0.15m).Single().WorthWatching);
    }

    // Kendeil: end of life at more than three times the initial ESR. A part at its initial value has used up nothing.
    [Fact]
    public void A_factor_of_the_first_value_starts_at_one()
    {
        Wear wear = EndOfLifeCriteria.LargeCan.Judge(null, lossRatio: 2m).Single();
        Assert.Equal(0.5m, wear.ShareUsed);
        Assert.Equal("2 of 3 x initial allowed", wear.Arithmetic);
    }

    [Fact]
    public void What_was_not_measured_is_not_judged() => Assert.Empty(EndOfLifeCriteria.AxialUsefulLife.Judge(null));

    [Fact]
    public void A_slip_of_units_is_exceeded_and_nothing_worse() =>
        Assert.True(
            EndOfLifeCriteria.RestorersDefault.Judge(decimal.MaxValue, decimal.MaxValue, null, decimal.MaxValue).All(w => w.Exceeded)
        );

    // Vishay 28327: +15/-30 % up to 6.3 V.
    [Fact]
    public void Some_series_may_lose_more_than_they_may_gain()
    {
        Assert.False(EndOfLifeCriteria.AxialEnduranceTo6V3.Judge(-0.25m).Single().Exceeded);
        Assert.True(EndOfLifeCriteria.AxialEnduranceTo6V3.Judge(0.25m).Single().Exceeded);
    }
}
