using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class LeakageTemperatureTests
{
    // Application notes, from memory: two to three times at 60 degrees and five to ten at 85, against 20. Half way to 60 the square roots
    // of 2 and 3.
    [Theory]
    [InlineData(20, 1, 1)]
    [InlineData(40, 1.4142, 1.7321)]
    [InlineData(60, 2, 3)]
    [InlineData(85, 5, 10)]
    public void Leakage_rises_with_warmth_by_two_to_three_times_at_60_degrees(int celsius, double least, double most)
    {
        Assert.Equal(least, (double)LeakageTemperature.LeastFactor(celsius).Value.Value, 4);
        Assert.Equal(most, (double)LeakageTemperature.GreatestFactor(celsius).Value.Value, 4);
    }

    [Theory]
    [InlineData(19)]
    [InlineData(86)]
    public void Outside_20_to_85_degrees_nothing_is_known(int celsius) =>
        Assert.Equal($"temperature is {celsius}, expected 20 to 85", LeakageTemperature.GreatestFactor(celsius).Refusal);
}
