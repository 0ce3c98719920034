using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class DielectricFiguresTests
{
    // SV01. Polypropylene X2 by TDK B32921C to B32928D: 100 GΩ to 0.33 µF, 30 000 s above.
    [Theory]
    [InlineData("0.0000001", 100e9)]
    [InlineData("0.00000047", 63.83e9)]
    [InlineData("0.000001", 30e9)]
    [InlineData("0.0000022", 13.636e9)]
    public void A_new_polypropylene_part_holds_thirty_thousand_seconds(string farads, double ohms) =>
        Assert.Equal(ohms, (double)DielectricFigures.Polypropylene.LeastInsulationOhms(Exact.Of(farads)).Value.Value, ohms * 1e-4);

    // SV06. Polyester 10 000 s (WIMA): 1 µF 10 GΩ, 10 nF the 15 GΩ of small values, from memory of IEC 60384-2.
    [Theory]
    [InlineData("0.000001", "10000000000")]
    [InlineData("0.00000001", "15000000000")]
    public void A_large_film_is_judged_by_its_time_constant_and_a_small_one_in_ohm(string farads, string ohms) =>
        Assert.Equal(Exact.Of(ohms), DielectricFigures.Polyester.LeastInsulationOhms(Exact.Of(farads)).Value.Value);

    // SV07. R = (V - v) Rg / v: 250 V, 470 kΩ, 0.1 V: 1.1745 GΩ; 250 V, 1 MΩ, 15 mV: 16.67 GΩ; 350 V, 500 kΩ, 5 V: 34.5 MΩ.
    [Theory]
    [InlineData("250", "470000", "0.1", 1.1745e9)]
    [InlineData("250", "1000000", "0.015", 16.666e9)]
    [InlineData("350", "500000", "5", 34.5e6)]
    public void A_coupling_capacitor_needs_the_insulation_that_its_grid_asks_for(string volts, string leak, string shift, double ohms) =>
        Assert.Equal(ohms, (double)GridLeak.LeastInsulationOhms(Exact.Of(volts), Exact.Of(leak), Exact.Of(shift)).Value.Value, ohms * 1e-3);

    // A stage of 1.5 V of bias is moved by a hundredth of it at most: 15 mV, common practice.
    [Fact]
    public void A_small_stage_bears_less_than_an_output_stage() => Assert.Equal(0.015m, GridLeak.AcceptedVoltsFor(-1.5m).Value.Value);

    // SV09. Class 1 by Knowles: 100 GΩ or 1000 s, the less.
    [Theory]
    [InlineData("0.000000001", 100e9)]
    [InlineData("0.00000001", 100e9)]
    [InlineData("0.000000047", 21.277e9)]
    [InlineData("0.0000001", 10e9)]
    [InlineData("0.000001", 1e9)]
    public void A_class_1_ceramic_has_the_insulation_of_its_own_standard(string farads, double ohms)
    {
        Assert.Equal(ohms, (double)DielectricFigures.CeramicClass1.LeastInsulationOhms(Exact.Of(farads)).Value.Value, ohms * 1e-4);
        Assert.Equal(0.5m, DielectricFigures.CeramicClass1.WornShare);
    }

    // SV10. 22 pF: 0.0015 x (15 / 22 + 0.7) = 0.002073 at 1 MHz; above 50 pF 0.0015; above 1 nF at 1 kHz (Knowles; MIL-PRF-123D, 4.6.7).
    [Theory]
    [InlineData("0.000000000022", 0.002073, 1_000_000)]
    [InlineData("0.000000000051", 0.0015, 1_000_000)]
    [InlineData("0.0000000022", 0.0015, 1_000)]
    public void The_loss_of_a_small_class_1_ceramic_goes_with_its_value(string farads, double factor, int hertz)
    {
        DielectricLoss loss = DielectricFigures.CeramicClass1.LossFor(Exact.Of(farads))!;
        Assert.Equal(factor, (double)loss.Factor, 1e-6);
        Assert.Equal(hertz, loss.Hertz);
    }

    // SV11. Mica of 470 pF: 0.00075 at 1 MHz; 2.2 nF 0.0014 and 10 nF 0.0012 at 1 kHz (Cornell Dubilier); under 75 pF nothing is known.
    [Theory]
    [InlineData("0.00000000047", "0.00075", 1_000_000)]
    [InlineData("0.0000000022", "0.0014", 1_000)]
    [InlineData("0.0000000047", "0.0013", 1_000)]
    [InlineData("0.00000001", "0.0012", 1_000)]
    public void The_loss_of_mica_goes_with_its_value(string farads, string factor, int hertz)
    {
        DielectricLoss loss = DielectricFigures.SilverMica.LossFor(Exact.Of(farads))!;
        Assert.Equal((Exact.Of(factor), hertz), (loss.Factor, (int)loss.Hertz));
        Assert.Null(DielectricFigures.SilverMica.LossFor(0.000000000047m));
    }

    // SV12. A disc of 10 nF: 10 GΩ new, 3 GΩ worn (Vishay VY2); 1 kΩ is out by any source.
    [Fact]
    public void A_ceramic_disc_of_class_2_has_gigohms()
    {
        decimal least = DielectricFigures.CeramicClass2.LeastInsulationOhms(0.00000001m).Value.Value;
        Assert.Equal((10_000_000_000m, 3_000_000_000m), (least, least * DielectricFigures.CeramicClass2.WornShare));
        Assert.True(1_000m < least * DielectricFigures.CeramicClass2.WornShare);
    }

    [Fact]
    public void Each_dielectric_names_its_source() => Assert.All(DielectricFigures.All, d => Assert.NotEmpty(d.Source.Text));
}
