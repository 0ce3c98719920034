using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class MeasuringConditionsTests
{
    [Theory]
    [InlineData("120", "120", FrequencyMatch.Same)]
    [InlineData("100", "120", FrequencyMatch.Near)]
    [InlineData("120", "100", FrequencyMatch.Near)]
    [InlineData("1000", "120", FrequencyMatch.Different)]
    [InlineData("100000", "120", FrequencyMatch.Different)]
    [InlineData("0", "120", FrequencyMatch.Different)]
    public void A_reading_is_held_against_a_limit_of_its_own_frequency(string reading, string limit, FrequencyMatch expected) =>
        Assert.Equal(expected, MeasuringConditions.Match(Exact.Of(reading), Exact.Of(limit)));
}
