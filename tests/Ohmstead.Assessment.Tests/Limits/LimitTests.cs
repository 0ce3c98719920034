using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Tests.Limits;

public sealed class LimitTests
{
    // 2200 µF ±20 %: 1760 to 2640 µF.
    private static Limit OfTwentyPerCent =>
        new(
            LimitKind.Delivery,
            new Interval(new Quantity(0.001760m, Dimension.Capacitance), new Quantity(0.002640m, Dimension.Capacitance)),
            "the marking",
            "2200 µF 20 % allows 1760 µF … 2640 µF",
            "common practice"
        );

    [Fact]
    public void Limits_are_equal_whether_or_not_somebody_has_read_their_words()
    {
        var read = OfTwentyPerCent;
        Assert.Equal("1760 µF … 2640 µF", read.InWords.Text);
        Assert.Equal(OfTwentyPerCent, read);
    }

    [Fact]
    public void Another_interval_has_words_of_its_own()
    {
        var limit = OfTwentyPerCent;
        Assert.Equal("1760 µF … 2640 µF", limit.InWords.Text);
        Assert.Same(limit.InWords, (limit with { Nominal = null }).InWords);
        Assert.Equal(
            "at most 100 µF",
            (limit with { Interval = new Interval(null, new Quantity(0.0001m, Dimension.Capacitance)) }).InWords.Text
        );
        Assert.Equal("at most 1 Ω", (limit with { Interval = new Interval(null, new Quantity(1m, Dimension.Resistance)) }).InWords.Text);
    }
}
