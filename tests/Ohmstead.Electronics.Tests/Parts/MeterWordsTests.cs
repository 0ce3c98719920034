using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class MeterWordsTests
{
    [Theory]
    [InlineData("20 kΩ/V meter on its 50 V range", "20000", "50")]
    [InlineData("meter of 20k\u2126/V, 100 V range", "20000", "100")]
    [InlineData("500 ohm per volt, 2.5V range", "500", "2.5")]
    public void Words_name_the_meter_and_its_range(string words, string ohmsPerVolt, string range) =>
        Assert.Equal(new MeterWords(Exact.Of(ohmsPerVolt), Exact.Of(range)), MeterWords.Parse(words));

    [Theory]
    [InlineData("20 kΩ/V meter")]
    [InlineData("on the 50 V range")]
    [InlineData("0 kΩ/V, 50 V range")]
    [InlineData("four-wire")]
    public void Words_that_name_only_one_of_them_say_nothing(string words) => Assert.Null(MeterWords.Parse(words));
}
