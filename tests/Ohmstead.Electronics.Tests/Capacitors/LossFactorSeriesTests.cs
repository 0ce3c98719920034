using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class LossFactorSeriesTests
{
    // Base 0.16 at 16 V: Lelon RGA data sheet. The rule: for more than 1000 µF add 0.02 for every 1000 µF (same sheet and TDK B41856).
    [Fact]
    [Trait("CheckValue", "CV19")]
    public void The_three_readings_of_the_step_rule_differ_for_2200_microfarad_at_16_volts()
    {
        LossFactorLimit limit = LossFactorSeries.General105.Limit(16m, 0.0022m).Value;
        Assert.Equal(0.18m, limit.CompletedSteps);
        Assert.Equal(0.184m, limit.ProRata);
        Assert.Equal(0.20m, limit.RoundedUp);
        Assert.True(limit.ReadingsDiffer);
    }

    // The same rule worked by hand for other bases.
    [Theory]
    [InlineData("0.16", "0.001", "0.16", "0.16", "0.16")]
    [InlineData("0.14", "0.0033", "0.18", "0.186", "0.20")]
    [InlineData("0.22", "0.0047", "0.28", "0.294", "0.30")]
    [InlineData("0.28", "0.01", "0.46", "0.46", "0.46")]
    public void The_step_rule_agrees_with_hand_working(string baseFactor, string farads, string completed, string proRata, string roundedUp)
    {
        LossFactorLimit limit = LossFactorSeries.General105.LimitFrom(Exact.Of(baseFactor), Exact.Of(farads)).Value;
        Assert.Equal((Exact.Of(completed), Exact.Of(proRata), Exact.Of(roundedUp)), (limit.CompletedSteps, limit.ProRata, limit.RoundedUp));
        Assert.Equal(Exact.Of(completed), LossFactorSeries.StrictFrom(Exact.Of(baseFactor), Exact.Of(farads)).Value);
    }

    [Fact]
    public void No_capacitance_has_no_strict_limit() =>
        Assert.Equal("capacitance is 0, expected above 0", LossFactorSeries.StrictFrom(0.16m, 0m).Refusal);

    // Columns of the Lelon RGA data sheet: 16 V 0.16, then 25 V, 35 V, 50 V 0.10; the last is 450 V.
    [Theory]
    [InlineData("16", "0.16")]
    [InlineData("40", "0.10")]
    [InlineData("450", "0.25")]
    [InlineData("500", null)]
    public void A_voltage_between_two_columns_takes_the_one_above(string volts, string? lossFactor) =>
        Assert.Equal(lossFactor is null ? null : Exact.Of(lossFactor), LossFactorSeries.General105.ColumnFrom(Exact.Of(volts))?.LossFactor);

    [Theory]
    [InlineData("0.18", LimitPosition.Inside)]
    [InlineData("0.181", LimitPosition.Undecided)]
    [InlineData("0.20", LimitPosition.Undecided)]
    [InlineData("0.201", LimitPosition.Outside)]
    public void A_part_between_the_readings_is_undecided(string lossFactor, LimitPosition expected) =>
        Assert.Equal(expected, LossFactorSeries.General105.Limit(16m, 0.0022m).Value.Place(Exact.Of(lossFactor)));

    [Fact]
    public void A_voltage_without_a_column_is_refused_and_names_its_neighbours() =>
        Assert.Equal(
            "the series has no column for 40 V; below it 35 V 0.12, above it 50 V 0.1",
            LossFactorSeries.General105.Limit(40m, 0.0001m).Refusal
        );

    // Keltron radial data sheet: 0.11 at 160 and 250 V, 0.12 at 450 V, measured at 100 Hz.
    [Fact]
    public void The_older_series_at_100_hertz_has_its_own_limits()
    {
        LossFactorLimit limit = LossFactorSeries.General85At100Hertz.Limit(450m, 0.000047m).Value;
        Assert.Equal(0.12m, limit.CompletedSteps);
        Assert.Equal(100m, limit.Hertz);
    }

    // Typical ESR upper bounds of a 105 degree series at 120 Hz, tan delta / (2 pi f C) by hand calculator.
    [Theory]
    [InlineData("0.000001", "450", 332)]
    [InlineData("0.00001", "16", 21.2)]
    [InlineData("0.00047", "25", 0.395)]
    [InlineData("0.0022", "16", 0.109)]
    [InlineData("0.0047", "50", 0.0451)]
    public void The_upper_bound_of_esr_follows_from_the_loss_limit(string farads, string volts, double ohms) =>
        Assert.Equal(ohms, (double)TypicalEsr.UpperBoundAt120Hertz(Exact.Of(farads), Exact.Of(volts)).Value.Value, ohms * 0.005);

    [Fact]
    public void The_typical_esr_at_100_kilohertz_is_a_range() =>
        Assert.Equal((0.2m, 0.8m), TypicalEsr.TypicalAt100KiloHertz(0.0001m).Value.Value);
}
