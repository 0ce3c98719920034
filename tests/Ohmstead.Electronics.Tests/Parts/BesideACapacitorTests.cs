using CsCheck;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class BesideACapacitorTests
{
    // SV19 to SV22. Circuit theory: (r - jx) || R, worked with complex numbers.
    [Theory]
    [InlineData("133", "120", "0.000001", "10000", 297.48)]
    [InlineData("10", "120", "0.00001", "1000", 26.685)]
    [InlineData("0.3", "120", "0.00047", "1000", 0.3079)]
    [InlineData("0.3", "120", "0.00047", "47", 0.4637)]
    [InlineData("5", "100000", "0.000001", "10000", 4.9978)]
    public void A_resistance_beside_a_capacitor_raises_its_ESR_where_the_reactance_is_greater_and_lowers_it_where_it_is_less(
        string esr,
        string hertz,
        string farads,
        string beside,
        double reads
    ) =>
        Assert.Equal(
            reads,
            (double)BesideACapacitor.Read(Exact.Of(esr), Exact.Of(hertz), Exact.Of(farads), Exact.Of(beside)).Value.Value.EsrOhms,
            reads * 2e-4
        );

    // SV19. The same reading shows 1.0444 µF and D 0.2342.
    [Fact]
    public void It_raises_the_capacitance_and_the_loss_as_well()
    {
        SeriesReading reading = BesideACapacitor.Read(133m, 120m, 0.000001m, 10_000m).Value.Value;
        Assert.Equal(1.0444e-6, (double)reading.Farads, 5e-11);
        Assert.Equal(0.2342, (double)reading.LossFactor, 5e-5);
    }

    // SV18. 100 nF, 1 kHz: D 0.016 against 0.001 is explained by 106.1 kohm; 100 kohm adds 0.015915.
    [Fact]
    public void The_resistance_that_explains_a_dissipation_factor_follows_from_it()
    {
        Assert.Equal(106_103, (double)BesideACapacitor.ExplainsLossFactor(0.001m, 0.016m, 1_000m, 0.0000001m).Value.Value, 1.0);
        Assert.Equal(0.015915, (double)(BesideACapacitor.Read(0m, 1_000m, 0.0000001m, 100_000m).Value.Value.LossFactor), 1e-6);
    }

    // SV21 turned round: what makes 0.4637 ohm of 0.3 ohm is 47 ohm. At 100 kHz nothing does.
    [Fact]
    public void The_resistance_that_explains_an_ESR_follows_from_it_where_there_is_one()
    {
        Assert.Equal(47, (double)BesideACapacitor.ExplainsEsr(0.3m, 0.4637m, 120m, 0.00047m).Value.Value, 0.05);
        Assert.Equal(
            "no resistance beside it makes 400 mΩ of 300 mΩ",
            BesideACapacitor.ExplainsEsr(0.3m, 0.4m, 100_000m, 0.00047m).Refusal
        );
    }

    // (L² + x²) / (2 x): 470 µF at 120 Hz has x = 2.8219 ohm, L = 0.4 ohm: 1.4393 ohm. At 100 kHz x = 3.4 milliohm is under L, and L stays.
    [Theory]
    [InlineData("0.4", "120", "0.00047", 1.4393)]
    [InlineData("0.4", "100000", "0.00047", 0.4)]
    public void No_resistance_beside_it_makes_more_of_a_good_ESR_than_this(string limit, string hertz, string farads, double most) =>
        Assert.Equal(most, (double)BesideACapacitor.LargestEsr(Exact.Of(limit), Exact.Of(hertz), Exact.Of(farads)).Value.Value, 1e-4);

    [Fact]
    public void No_good_part_with_any_resistance_beside_it_reads_more_than_the_bound() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Int[1, 1_000_000], Gen.Int[20, 100_000], Gen.Int[1, 10_000], Gen.Int[1, 1000])
            .Sample(
                (share, beside, hertz, microfarads, limit) =>
                {
                    (decimal most, decimal farads) = (limit / 100m, microfarads / 1_000_000m);
                    decimal reads = BesideACapacitor.Read(most * share / 1000m, hertz, farads, beside / 100m).Value.Value.EsrOhms;
                    return reads <= BesideACapacitor.LargestEsr(most, hertz, farads).Value.Value * 1.0000001m;
                }
            );

    // SV17. Cs 100 µF with D 0.5 is 80 µF in parallel; at D 0.03 the two differ by 0.0899 %.
    [Theory]
    [InlineData("0.5", 0.8)]
    [InlineData("0.03", 0.999101)]
    public void Series_and_parallel_capacitance_differ_by_the_loss(string loss, double share) =>
        Assert.Equal(share * 100e-6, (double)LossFactor.ParallelFarads(0.0001m, Exact.Of(loss)).Value, 1e-10);

    // Circuit theory: without a resistance beside it a meter shows the part.
    [Fact]
    public void A_very_great_resistance_beside_it_changes_nothing() =>
        Assert.Equal(0.3, (double)BesideACapacitor.Read(0.3m, 120m, 0.00047m, 1_000_000_000m).Value.Value.EsrOhms, 1e-6);

    // SV23. 10 mH with 100 nF and 470 nF beside it at 1 kHz: 10.411 and 12.278 mH.
    [Theory]
    [InlineData("0.0000001", 0.010411)]
    [InlineData("0.00000047", 0.012278)]
    public void A_capacitance_beside_an_inductor_raises_its_reading_below_resonance(string farads, double henries)
    {
        decimal read = BesideAnInductor.ReadHenries(0.010m, Exact.Of(farads), 1_000m).Value.Value;
        Assert.Equal(henries, (double)read, 5e-7);
        Assert.Equal((double)Exact.Of(farads), (double)BesideAnInductor.ExplainsFarads(0.010m, read, 1_000m).Value.Value, 1e-12);
    }

    // SV23. 10 mH and 470 nF resonate at 2321.5 Hz.
    [Fact]
    public void Above_resonance_it_is_no_inductance() =>
        Assert.Equal("2322 Hz is not below the resonance of the two", BesideAnInductor.ReadHenries(0.010m, 0.00000047m, 2_322m).Refusal);
}
