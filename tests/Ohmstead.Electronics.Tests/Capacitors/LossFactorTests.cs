using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class LossFactorTests
{
    // ESR = tan delta / (2 pi f C), the maker's own rule for a maximum ESR: Vishay 038 RSU data sheet 28309. Worked by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV16")]
    [InlineData("0.16", "120", "0.001", 0.21221)]
    [InlineData("0.16", "100", "0.001", 0.25465)]
    [InlineData("0.12", "120", "0.0001", 1.59155)]
    [InlineData("0.20", "120", "0.0022", 0.12057)]
    [InlineData("0.15", "120", "0.000047", 4.23284)]
    [InlineData("0.08", "100", "0.00001", 12.7324)]
    public void A_dissipation_factor_gives_the_esr_at_its_frequency(string lossFactor, string hertz, string farads, double ohms) =>
        Assert.Equal(
            ohms,
            (double)LossFactor.EsrOhms(Exact.Of(lossFactor), Exact.Of(hertz), Exact.Of(farads)).Value,
            ohms > 10 ? 1e-4 : 1e-5
        );

    // The same relation solved for tan delta; worked by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV17")]
    [InlineData("120", 0.12403)]
    [InlineData("100", 0.10336)]
    [InlineData("1000", 1.0336)]
    public void An_esr_of_0_35_ohm_on_470_microfarad_is_another_dissipation_factor_at_every_frequency(string hertz, double expected) =>
        Assert.Equal(expected, (double)LossFactor.FromEsr(0.35m, Exact.Of(hertz), 0.000470m).Value, expected > 1 ? 5e-5 : 1e-5);

    // Cp = Cs / (1 + D²), textbook definition.
    [Fact]
    [Trait("CheckValue", "CV18")]
    public void A_lossy_capacitor_reads_a_fifth_less_in_the_parallel_picture_at_a_loss_of_one_half()
    {
        Assert.Equal(80.0, (double)LossFactor.ParallelFarads(0.0001m, 0.5m).Value * 1e6, 1e-6);
        Assert.Equal(0.0001m, LossFactor.SeriesFarads(0.00008m, 0.5m).Value);
    }

    // |Z| of 100 µF with 0.25 ohm: 13.265 ohm at 120 Hz, 0.2505 ohm at 100 kHz, worked by hand calculator.
    [Theory]
    [InlineData(120, 13.265, 5e-4)]
    [InlineData(100_000, 0.2505, 5e-5)]
    public void The_impedance_falls_from_the_reactance_to_the_esr(double hertz, double ohms, double within) =>
        Assert.Equal(ohms, LossFactor.ImpedanceOhms(0.25, hertz, 100e-6).Value, within);

    // At resonance only the ESR is left: follows from the definition.
    [Fact]
    public void At_self_resonance_the_impedance_is_the_esr()
    {
        double hertz = LossFactor.ResonanceHertz(15e-9, 100e-6).Value;
        Assert.Equal(0.25, LossFactor.ImpedanceOhms(0.25, hertz, 100e-6, 15e-9).Value, 1e-12);
    }

    // 100 kohm across 100 nF at 1 kHz: D = 0.0159, worked by hand calculator.
    [Fact]
    public void A_leak_in_parallel_shows_as_loss() =>
        Assert.Equal(0.0159, (double)LossFactor.FromParallelResistance(100_000m, 1000m, 0.0000001m).Value, 5e-5);

    [Fact]
    public void Quality_is_the_inverse_of_loss() => Assert.Equal(6.25m, LossFactor.Quality(0.16m).Value);

    [Fact]
    public void The_series_and_the_parallel_picture_are_the_same_impedance()
    {
        // |Z|² = ESR² + Xs² must equal 1 / (1/Rp² + 1/Xp²).
        decimal esr = 0.35m,
            farads = 0.00047m,
            hertz = 120m;
        decimal loss = LossFactor.FromEsr(esr, hertz, farads).Value;
        double parallelOhms = (double)LossFactor.ParallelOhms(esr, loss).Value;
        double parallelReactance = (double)LossFactor.ReactanceOhms(hertz, LossFactor.ParallelFarads(farads, loss).Value).Value;
        double parallel = 1 / Math.Sqrt((1 / (parallelOhms * parallelOhms)) + (1 / (parallelReactance * parallelReactance)));
        Assert.Equal(LossFactor.ImpedanceOhms(0.35, 120, 470e-6).Value, parallel, 1e-9);
    }

    [Theory]
    [InlineData("0.16", "0", "0.001", "frequency is 0, expected above 0")]
    [InlineData("0.16", "120", "0", "capacitance is 0, expected above 0")]
    [InlineData("-0.1", "120", "0.001", "dissipation factor is -0.1, expected 0 or more")]
    public void What_cannot_be_is_refused_with_its_value(string lossFactor, string hertz, string farads, string reason) =>
        Assert.Equal(reason, LossFactor.EsrOhms(Exact.Of(lossFactor), Exact.Of(hertz), Exact.Of(farads)).Refusal);

    [Fact]
    public void Figures_beyond_all_arithmetic_are_refused_instead_of_failing() =>
        Assert.Equal(
            "the figures are too large or too small to compute with",
            LossFactor.EsrOhms(decimal.MaxValue, 0.0000000000000001m, 0.0000000000000001m).Refusal
        );

    [Fact]
    public void The_working_of_an_esr_limit_can_be_followed_by_hand() =>
        Assert.Equal("0.16 / (2 pi x 120 Hz x 1000 µF) = 212.207 mΩ", LossFactor.EsrLimit(0.16m, 120m, 0.001m).Value.Arithmetic);
}
