using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class SuppressionFiguresTests
{
    // SV01. TDK B32921C to B32928D, X2 film: 100 GΩ to 0.33 µF, 30 000 s above; half after damp heat and endurance.
    [Theory(DisplayName = "SV01 what an X2 of film keeps of its insulation")]
    [InlineData("0.0000001", 100e9, 50e9)]
    [InlineData("0.00000047", 63.83e9, 31.915e9)]
    [InlineData("0.000001", 30e9, 15e9)]
    [InlineData("0.0000022", 13.636e9, 6.818e9)]
    public void A_film_suppressor_keeps_what_makers_promise(string farads, double ohms, double worn)
    {
        Assert.Equal(ohms, (double)SuppressionFigures.FilmOrPaper.LeastOhms(Exact.Of(farads), isNew: true).Value.Value, 2e6);
        Assert.Equal(worn, (double)SuppressionFigures.FilmOrPaper.LeastOhms(Exact.Of(farads), isNew: false).Value.Value, 2e6);
    }

    // SV02. The floor of IEC 60384-14 was remembered and not read (470 nF 10.64 and 5.32 GΩ): no limit rests on it. It lies where neither
    // side is proved.
    [Theory(DisplayName = "SV02 the remembered floor of the standard decides nothing")]
    [InlineData("0.00000047", 10.64e9)]
    [InlineData("0.00000047", 5.32e9)]
    [InlineData("0.000001", 5.0e9)]
    [InlineData("0.000001", 2.5e9)]
    public void What_is_remembered_alone_decides_nothing(string farads, double ohms) =>
        Assert.InRange(
            ohms,
            (double)SuppressionFigures.FaultBelowOhms,
            (double)SuppressionFigures.FilmOrPaper.LeastOhms(Exact.Of(farads), isNew: false).Value.Value
        );

    [Fact]
    public void No_figure_of_a_suppressor_rests_on_memory() =>
        Assert.All(SuppressionFigures.All, known =>
            Assert.Equal((SourceBasis.Published, SourceBasis.Published), (known.Insulation.Basis, known.Source.Basis))
        );

    // SV03. Y2 ceramic: 6 GΩ by a maker's sheet (WKO), 3 GΩ after endurance (Vishay VY2, document 28535): 10 kΩ and 50 mA at 250 V are
    // out.
    [Theory]
    [InlineData("10000", false)]
    [InlineData("5000", false)]
    [InlineData("3000000000", true)]
    [InlineData("2999999999", false)]
    public void A_ceramic_suppressor_has_three_gigohm_at_the_end_of_its_life(string ohms, bool holds) =>
        Assert.Equal(holds, Exact.Of(ohms) >= SuppressionFigures.CeramicDisc.LeastOhms(0.0000000022m, isNew: false).Value.Value);

    // TDK B32921C to B32928D: + 0.008 to 1 µF, + 0.005 above; Vishay VY2: 0.025 new, 0.05 after endurance.
    [Theory]
    [InlineData("polypropylene film", "0.000001", "0.011")]
    [InlineData("polypropylene film", "0.0000011", "0.008")]
    [InlineData("ceramic disc", "0.0000000022", "0.05")]
    public void A_worn_suppressor_may_have_gained_some_loss(string dielectric, string farads, string limit) =>
        Assert.Equal(
            Exact.Of(limit),
            SuppressionFigures
                .All.Single(known => known.Dielectric == dielectric)
                .LargestLossFactor(Exact.Of(farads), isNew: false)
                .Value.Value
        );

    // SV05. X2 of 305 V: 4.3 x 305 = 1311.5 V d.c. for a minute (TDK).
    [Fact]
    public void A_new_film_suppressor_bears_four_times_its_voltage_and_more() =>
        Assert.Equal(1311.5m, SuppressionFigures.FilmProofVolts(305m).Value.Value);

    [Theory]
    [InlineData(true, null, false, "0.0000001", "ceramic disc")]
    [InlineData(null, null, true, "0.0000000022", "ceramic disc")]
    [InlineData(null, null, true, "0.000000022", "film or paper, not written which")]
    [InlineData(false, null, true, "0.0000000022", "film or paper, not written which")]
    [InlineData(null, null, false, "0.0000000022", "film or paper, not written which")]
    [InlineData(null, CapacitorKind.MetallisedPaper, false, "0.0000001", "metallised paper")]
    [InlineData(null, CapacitorKind.Polyester, false, "0.0000001", "polyester film")]
    public void What_is_not_written_is_taken_for_what_both_may_be(
        bool? isCeramic,
        CapacitorKind? film,
        bool isY,
        string farads,
        string dielectric
    ) => Assert.Equal(dielectric, SuppressionFigures.For(isCeramic, film, isY, Exact.Of(farads)).Dielectric);

    // SV04. 2 pi x 50 Hz x 2.2 nF x 230 V = 0.1590 mA; 2.64 nF at 253 V 0.2098 mA; 100 nF 7.226 mA.
    [Theory]
    [InlineData("0.0000000022", "230", 0.1590)]
    [InlineData("0.00000000264", "253", 0.2098)]
    [InlineData("0.0000001", "230", 7.226)]
    public void A_capacitor_to_the_case_sends_a_current_into_it(string farads, string volts, double milliamperes) =>
        Assert.Equal(
            milliamperes,
            (double)SafetyCapacitor.TouchMilliamperes(Exact.Of(farads), Exact.Of(volts), 50m).Value.Value,
            milliamperes * 1e-3
        );
}
