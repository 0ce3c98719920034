using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

public sealed class LinearTrendTests
{
    // NIST StRD, data set Norris, certified values.
    [Fact]
    [Trait("CheckValue", "CV58")]
    public void The_certified_line_comes_out_to_nine_figures()
    {
        double[] x =
        [
            0.2,
            337.4,
            118.2,
            884.6,
            10.1,
            226.5,
            666.3,
            996.3,
            448.6,
            777.0,
            558.2,
            0.4,
            0.6,
            775.5,
            666.9,
            338.0,
            447.5,
            11.6,
            556.0,
            228.1,
            995.8,
            887.6,
            120.2,
            0.3,
            0.3,
            556.8,
            339.1,
            887.2,
            999.0,
            779.0,
            11.1,
            118.3,
            229.2,
            669.1,
            448.9,
            0.5,
        ];
        double[] y =
        [
            0.1,
            338.8,
            118.1,
            888.0,
            9.2,
            228.1,
            668.5,
            998.5,
            449.1,
            778.9,
            559.2,
            0.3,
            0.1,
            778.1,
            668.8,
            339.3,
            448.9,
            10.8,
            557.7,
            228.3,
            998.0,
            888.8,
            119.6,
            0.3,
            0.6,
            557.6,
            339.3,
            888.0,
            998.5,
            778.9,
            10.2,
            117.6,
            228.9,
            668.4,
            449.2,
            0.2,
        ];
        LinearTrend line = LinearTrend.Fit(Points(x, y)).Value;
        Certified(-0.262323073774029, line.Intercept);
        Certified(1.00211681802045, line.Slope);
        Certified(0.884796396144373, line.ResidualDeviation);
        Certified(0.232818234301152, line.InterceptDeviation);
        Certified(0.429796848199937e-3, line.SlopeDeviation);
        Certified(0.999993745883712, line.DeterminationShare);
        Certified(4255954.13232369, line.RegressionSumOfSquares);
        Certified(26.6173985294224, line.ResidualSumOfSquares);
        Certified(5436385.54079785, line.RegressionSumOfSquares / (line.ResidualSumOfSquares / 34));
    }

    // R data set cars: widely printed 95 % prediction intervals.
    [Theory]
    [Trait("CheckValue", "CV59")]
    [InlineData(10, 21.745, -9.810, 53.300)]
    [InlineData(12, 29.610, -1.750, 60.969)]
    [InlineData(19, 57.137, 25.762, 88.512)]
    [InlineData(21, 65.001, 33.423, 96.580)]
    [InlineData(24, 76.799, 44.752, 108.845)]
    public void A_new_reading_is_expected_where_the_published_interval_says(double speed, double fit, double low, double high)
    {
        LinearTrend line = LinearTrend.Fit(Cars()).Value;
        Assert.Equal(-17.5791, line.Intercept, 5e-5);
        Assert.Equal(3.9324, line.Slope, 5e-5);
        ConfidenceInterval interval = line.Prediction(speed).Value;
        Assert.Equal(fit, line.At(speed), 1e-3);
        Assert.Equal(low, interval.Low, 1e-3);
        Assert.Equal(high, interval.High, 1e-3);
    }

    // JCGM 100:2008 H.3, data and printed results from memory: y1 -0.1712 (0.0029), y2 0.00218 (0.00067), r -0.930, b(30) -0.1494 (0.0041).
    [Fact]
    [Trait("CheckValue", "CV46")]
    public void The_thermometer_correction_of_gum_h3_comes_out_with_its_uncertainty()
    {
        double[] celsius = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] correction = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
        LinearTrend line = LinearTrend.Fit(Points([.. celsius.Select(c => c - 20)], correction)).Value;
        Assert.Equal(-0.1712, line.Intercept, 5e-5);
        Assert.Equal(0.0029, line.InterceptDeviation, 5e-5);
        Assert.Equal(0.00218, line.Slope, 5e-6);
        Assert.Equal(0.00067, line.SlopeDeviation, 5e-6);
        Assert.Equal(-0.930, line.CoefficientCorrelation, 5e-4);
        Assert.Equal(0.0035, line.ResidualDeviation, 5e-5);
        Assert.Equal(-0.1494, line.At(10), 5e-5);
        Assert.Equal(0.0041, line.LineDeviation(10), 5e-5);
    }

    // Invented ESR readings of five years against 0.42 ohm; R 4.2 gives the crossing of the upper prediction limit and of the line.
    [Fact]
    [Trait("CheckValue", "CV60")]
    public void The_upper_prediction_limit_reaches_the_limit_before_the_line()
    {
        LinearTrend line = LinearTrend.Fit(Points([0, 1, 2, 3, 4], [0.21, 0.24, 0.25, 0.29, 0.30])).Value;
        Assert.Equal(0.0230, line.Slope, 1e-12);
        Assert.Equal(0.2120, line.Intercept, 1e-12);
        Worked<double> crossing = line.UpperLimitCrossing(0.42).Value;
        Assert.Equal(6.942, crossing.Value, 1e-3);
        Assert.Equal(9.043, line.LineReaches(0.42)!.Value, 1e-3);
        Assert.Equal(["the line itself reaches it at 9.043"], crossing.Remarks);
        ConfidenceInterval sixth = line.Prediction(6).Value;
        Assert.Equal((0.3076, 0.3924), (Math.Round(sixth.Low, 4), Math.Round(sixth.High, 4)));
    }

    // R data set cars: widely printed 95 % interval of the slope, 3.096964 to 4.767853.
    [Fact]
    public void The_slope_is_known_as_well_as_the_published_interval_says()
    {
        LinearTrend line = LinearTrend.Fit(Cars()).Value;
        ConfidenceInterval slope = line.SlopeInterval().Value;
        Assert.Equal(3.096964, slope.Low, 5e-6);
        Assert.Equal(4.767853, slope.High, 5e-6);
    }

    [Fact]
    public void A_crossing_far_beyond_the_readings_is_called_a_guess() =>
        Assert.Contains(
            "beyond one more of the time observed: a guess",
            LinearTrend.Fit(Points([0, 1, 2, 3, 4], [0.21, 0.24, 0.25, 0.29, 0.30])).Value.UpperLimitCrossing(0.9).Value.Remarks
        );

    [Fact]
    public void A_limit_that_is_passed_already_is_reached_at_the_last_reading() =>
        Assert.Equal(4, LinearTrend.Fit(Points([0, 1, 2, 3, 4], [0.21, 0.24, 0.25, 0.29, 0.30])).Value.UpperLimitCrossing(0.2).Value.Value);

    [Fact]
    public void A_falling_trend_does_not_reach_an_upper_limit() =>
        Assert.Equal(
            "the trend does not reach 1 within 20 times the time observed",
            LinearTrend.Fit(Points([0, 1, 2, 3], [0.30, 0.28, 0.26, 0.24])).Value.UpperLimitCrossing(1).Refusal
        );

    [Fact]
    public void Two_readings_are_no_trend() =>
        Assert.Equal("2 readings, expected three or more for a trend", LinearTrend.Fit([new(0, 1), new(1, 2)]).Refusal);

    [Fact]
    public void Readings_of_one_day_are_no_trend() =>
        Assert.Equal("all readings were taken at one and the same time", LinearTrend.Fit([new(1, 1), new(1, 2), new(1, 3)]).Refusal);

    private static TrendPoint[] Cars()
    {
        double[] speeds =
        [
            4,
            4,
            7,
            7,
            8,
            9,
            10,
            10,
            10,
            11,
            11,
            12,
            12,
            12,
            12,
            13,
            13,
            13,
            13,
            14,
            14,
            14,
            14,
            15,
            15,
            15,
            16,
            16,
            17,
            17,
            17,
            18,
            18,
            18,
            18,
            19,
            19,
            19,
            20,
            20,
            20,
            20,
            20,
            22,
            23,
            24,
            24,
            24,
            24,
            25,
        ];
        double[] distances =
        [
            2,
            10,
            4,
            22,
            16,
            10,
            18,
            26,
            34,
            17,
            28,
            14,
            20,
            24,
            28,
            26,
            34,
            34,
            46,
            26,
            36,
            60,
            80,
            20,
            26,
            54,
            32,
            40,
            32,
            40,
            50,
            42,
            56,
            76,
            84,
            36,
            46,
            68,
            32,
            48,
            52,
            56,
            64,
            66,
            54,
            70,
            92,
            93,
            120,
            85,
        ];
        return Points(speeds, distances);
    }

    private static TrendPoint[] Points(double[] x, double[] y) => [.. x.Zip(y, (a, b) => new TrendPoint(a, b))];

    private static void Certified(double expected, double actual) => Assert.Equal(expected, actual, Math.Abs(expected) * 1e-9);
}
