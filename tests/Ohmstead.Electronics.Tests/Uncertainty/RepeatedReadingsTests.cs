using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Electronics.Tests.Uncertainty;

public sealed class RepeatedReadingsTests
{
    private static readonly double[] Volts = [5.007, 4.994, 5.005, 4.990, 4.999];
    private static readonly double[] Amperes = [0.019663, 0.019639, 0.019640, 0.019685, 0.019678];
    private static readonly double[] Radians = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

    // JCGM 100:2008 H.2, data and printed results from memory: R 127.732 (0.071), X 219.847 (0.295), Z 254.260 (0.236) ohm.
    [Fact]
    [Trait("CheckValue", "CV45")]
    public void Resistance_reactance_and_impedance_of_gum_h2_come_out_with_their_uncertainties()
    {
        RepeatedReadings set = RepeatedReadings.Evaluate([Volts, Amperes, Radians]).Value;
        (double v, double i, double phi) = (set.Mean(0), set.Mean(1), set.Mean(2));
        double z = v / i;
        double[] byR = [Math.Cos(phi) / i, -z * Math.Cos(phi) / i, -z * Math.Sin(phi)];
        double[] byX = [Math.Sin(phi) / i, -z * Math.Sin(phi) / i, z * Math.Cos(phi)];
        double[] byZ = [1 / i, -z / i, 0];

        Assert.Equal(127.732, z * Math.Cos(phi), 1e-3);
        Assert.Equal(219.847, z * Math.Sin(phi), 1e-3);
        Assert.Equal(254.260, z, 1e-3);
        Assert.Equal(0.071, Math.Sqrt(set.Covariance(byR, byR)), 1e-3);
        Assert.Equal(0.295, Math.Sqrt(set.Covariance(byX, byX)), 1e-3);
        Assert.Equal(0.236, Math.Sqrt(set.Covariance(byZ, byZ)), 1e-3);
        Assert.Equal(-0.588, Ratio(set, byR, byX), 1e-3);
        Assert.Equal(-0.485, Ratio(set, byR, byZ), 1e-3);
        Assert.Equal(0.993, Ratio(set, byX, byZ), 1e-3);
    }

    // The same example: means, their uncertainties and correlations as printed.
    [Fact]
    public void The_three_readings_of_gum_h2_are_correlated_as_printed()
    {
        RepeatedReadings set = RepeatedReadings.Evaluate([Volts, Amperes, Radians]).Value;
        Assert.Equal(4.9990, set.Mean(0), 1e-10);
        Assert.Equal(0.0032, set.UncertaintyOfMean(0), 5e-5);
        Assert.Equal(0.0095e-3, set.UncertaintyOfMean(1), 5e-8);
        Assert.Equal(0.00075, set.UncertaintyOfMean(2), 5e-6);
        Assert.Equal(-0.36, set.CorrelationOf(0, 1), 5e-3);
        Assert.Equal(0.86, set.CorrelationOf(0, 2), 5e-3);
        Assert.Equal(-0.65, set.CorrelationOf(1, 2), 5e-3);
    }

    [Fact]
    public void Readings_that_were_not_taken_together_are_refused() =>
        Assert.Equal(
            "the quantities were not read equally often",
            RepeatedReadings
                .Evaluate([
                    [1, 2],
                    [1, 2, 3],
                ])
                .Refusal
        );

    private static double Ratio(RepeatedReadings set, double[] a, double[] b) =>
        set.Covariance(a, b) / Math.Sqrt(set.Covariance(a, a) * set.Covariance(b, b));
}
