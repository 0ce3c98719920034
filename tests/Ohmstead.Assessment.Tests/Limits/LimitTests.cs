using Ohmstead.Assessment.Limits;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Tests.Limits;

public sealed class LimitTests
{
    private static Limit OfTwentyPerCent => new(
        LimitKind.Delivery,
        new Interval(new Quantity(0.001760m, Dimension.Capacitance), new Quantity(0.002640m, Dimension.Capacitance)),
        "the marking", "2200 µF 20 % allows 1760 µF … 2640 µF", "common practice");

    [Fact]
    public void Limits_are_equal_whether_or_not_somebody_has_read_their_words()
    {
        var read = OfTwentyPerCent;
        Assert.Equal("1760 … 2640 µF", read.InWords.Text.Replace("1760 µF", "1760", StringComparison.Ordinal));
        Assert.Equal(OfTwentyPerCent, read);
    }

    [Fact]
    public void Another_interval_has_words_of_its_own()
    {
        var read = OfTwentyPerCent;
        Assert.Contains("2640", read.InWords.Text, StringComparison.Ordinal);
        Assert.Equal("at most 100 µF", (read with { Interval = new Interval(null, new Quantity(0.0001m, Dimension.Capacitance)) }).InWords.Text);
    }
}
