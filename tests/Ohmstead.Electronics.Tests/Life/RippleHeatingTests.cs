using Ohmstead.Electronics.Life;

namespace Ohmstead.Electronics.Tests.Life;

public sealed class RippleHeatingTests
{
    // dT = I² ESR / (beta S), form of a maker's technical note from memory; 12.5 x 25 mm can, by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV32")]
    [InlineData(1.0, 2.0, 4.527)]
    [InlineData(1.0, 1.5, 6.036)]
    [InlineData(1.0, 1.0, 9.054)]
    [InlineData(0.5, 2.0, 1.132)]
    public void Ripple_warms_a_can(double amperes, double beta, double kelvin)
    {
        double surface = RippleHeating.SurfaceSquareCentimetres(12.5, 25, CanSurface.OneEnd).Value;
        Assert.Equal(kelvin, RippleHeating.RiseKelvin(amperes, 0.1, surface, beta).Value.Value, 1e-3);
    }

    // 11.045 against 12.272 cm²: the two ways of counting differ by 11 %.
    [Fact]
    public void Counting_one_end_or_both_changes_the_surface()
    {
        Assert.Equal(11.045, RippleHeating.SurfaceSquareCentimetres(12.5, 25, CanSurface.OneEnd).Value, 1e-3);
        Assert.Equal(12.272, RippleHeating.SurfaceSquareCentimetres(12.5, 25, CanSurface.BothEnds).Value, 1e-3);
    }

    [Fact]
    public void Half_the_rated_ripple_makes_a_quarter_of_the_rise() =>
        Assert.Equal(1.25, RippleHeating.RiseFromRating(5, 0.5, 1).Value.Value, 1e-12);

    // 10 K of the case are as many of the core for 8 mm, 11 K up to 12.5 mm, then 12 K (18 mm), 13 K (22 mm), 14 K (25 mm), 15 K (30 mm),
    // 16 K (35 mm): Rubycon, life of aluminium electrolytic capacitors, technical note, column alignment reconstructed.
    [Theory]
    [InlineData(8, 50)]
    [InlineData(8.1, 51)]
    [InlineData(12.5, 51)]
    [InlineData(12.6, 52)]
    [InlineData(16, 52)]
    [InlineData(18, 52)]
    [InlineData(22, 53)]
    [InlineData(25, 54)]
    [InlineData(25.1, 55)]
    [InlineData(30, 55)]
    [InlineData(35, 56)]
    public void The_core_of_a_thick_can_is_hotter_than_its_case(double millimetres, double celsius) =>
        Assert.Equal(celsius, RippleHeating.CoreCelsius(40, 50, millimetres).Value.Value, 1e-9);

    [Fact]
    public void A_can_wider_than_the_table_is_refused() =>
        Assert.Equal("diameter is 50, expected 1 to 35", RippleHeating.CoreCelsius(40, 50, 50).Refusal);

    // 1.2 V peak to peak of a triangle are 1.2 / (2 sqrt 3) = 0.34641 V r.m.s.; 2200 µF at 100 Hz have 0.72343 ohm: 0.47884 A, by hand
    // calculator.
    [Fact]
    public void A_ripple_voltage_tells_the_ripple_current_of_its_capacitor() =>
        Assert.Equal(0.47884, RippleHeating.FromVoltage(1.2, 100, 2200e-6).Value.Value, 1e-5);

    [Fact]
    public void A_ripple_without_a_frequency_tells_no_current() =>
        Assert.Equal("ripple frequency is 0, expected 1 to 1000000", RippleHeating.FromVoltage(1.2, 0, 2200e-6).Refusal);
}
