using CsCheck;
using Ohmstead.Electronics.Hazards;

namespace Ohmstead.Electronics.Tests.Hazards;

public sealed class DischargeTests
{
    // E = C V² / 2 and Q = C V, by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV48")]
    [InlineData("0.00047", "400", 37.60, 188)]
    [InlineData("0.000047", "450", 4.759, 21.15)]
    [InlineData("0.00022", "325", 11.619, 71.5)]
    [InlineData("0.1", "35", 61.25, 3500)]
    [InlineData("0.0000000005", "25000", 0.1563, 0.0125)]
    public void A_charged_capacitor_holds_energy_and_charge(string farads, string volts, double joules, double milliCoulombs)
    {
        StoredEnergy stored = StoredEnergy.Compute(Exact.Of(farads), Exact.Of(volts)).Value;
        Assert.Equal(joules, (double)stored.Joules, 1e-3);
        Assert.Equal(milliCoulombs, (double)stored.Coulombs * 1000, 0.001 * milliCoulombs);
    }

    // t = R C ln(V0 / Vs): ngspice 39 gives 1.96162 s for the first row, the others by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV49")]
    [InlineData(2200, 470e-6, 400, 60, 1.9616, 72.7)]
    [InlineData(1000, 100e-6, 450, 60, 0.2015, 202.5)]
    [InlineData(10_000, 47e-6, 450, 60, 0.9470, 20.25)]
    [InlineData(220_000, 100e-6, 450, 60, 44.33, 0.92)]
    [InlineData(100, 10_000e-6, 63, 5, 2.534, 39.7)]
    [InlineData(10_000, 220e-6, 325, 50, 4.118, 10.6)]
    [InlineData(1e6, 0.1e-6, 339, 60, 0.1732, 0.115)]
    public void A_resistor_lets_a_capacitor_down(double ohms, double farads, double from, double to, double seconds, double watts)
    {
        Assert.Equal(
            seconds,
            Discharge.Seconds(ohms, farads, from, to).Value.Value,
            seconds > 10 ? 5e-3
                : seconds > 2 ? 5e-4
                : 1e-4
        );
        Assert.Equal(watts, Discharge.PeakWatts(from, ohms).Value, watts * 6e-3);
    }

    // 470 µF from 400 to 60 V in 5 s: 5607.6 ohm, by hand calculator.
    [Fact]
    public void A_wanted_time_gives_the_largest_resistor() =>
        Assert.Equal(5607.6, Discharge.LargestOhms(5, 470e-6, 400, 60).Value.Value, 0.05);

    // Five time constants leave 0.674 %.
    [Fact]
    public void Five_time_constants_leave_under_one_per_cent() => Assert.Equal(0.674, Discharge.VoltsLeft(100, 5, 1e6, 1e-6).Value, 5e-4);

    [Fact]
    public void Every_time_carries_the_sentence_that_it_is_no_permission() =>
        Assert.Equal([SafetyNotice.Defer], Discharge.Seconds(2200, 470e-6, 400, 60).Value.Remarks);

    [Fact]
    public void Discharging_upwards_is_refused() =>
        Assert.Equal("the end voltage 60 V is above the start voltage 50 V", Discharge.Seconds(1000, 1e-6, 50, 60).Refusal);

    [Fact]
    public void The_largest_resistor_takes_just_the_time_asked_for() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[1e-9, 0.1], Gen.Double[61, 1000])
            .Sample(
                (seconds, farads, from) =>
                {
                    double ohms = Discharge.LargestOhms(seconds, farads, from, 60).Value.Value;
                    return Math.Abs(Discharge.Seconds(ohms, farads, from, 60).Value.Value - seconds) < 1e-9 * seconds;
                }
            );

    // SV14: 10 to 15 % come back, encyclopedia articles on dielectric absorption say as much as 15 %; the greater counts. 340 V: 51 V, 450
    // V: 67.5 V, which is more than 60 V.
    [Theory]
    [Trait("CheckValue", "SV14")]
    [InlineData("340", "51")]
    [InlineData("450", "67.5")]
    public void What_was_let_down_may_come_back_to_more_than_it_was_let_down_to(string volts, string back) =>
        Assert.Equal(Exact.Of(back), StoredEnergy.RecoveredVolts(Exact.Of(volts)).Value.Value);

    // SV35: 25 kV on 1 nF and on 10 nF, C V² / 2 by hand calculator; through 10 MΩ 2.5 mA and 62.5 W, through 2.2 kΩ 11.4 A and 284 kW.
    [Theory]
    [Trait("CheckValue", "SV35")]
    [InlineData(10e6, 1e-9, 0.3125, 0.0025, 62.5, 0.0603)]
    [InlineData(1e6, 10e-9, 3.125, 0.025, 625, 0.0603)]
    [InlineData(2200, 1e-9, 0.3125, 11.36, 284_091, 0.00001327)]
    public void A_picture_tube_is_let_down_through_megohms(
        double ohms,
        double farads,
        double joules,
        double amperes,
        double watts,
        double seconds
    )
    {
        Assert.Equal(joules, (double)StoredEnergy.Compute((decimal)farads, 25_000m).Value.Joules, 1e-6);
        Assert.Equal(amperes, Discharge.PeakAmperes(25_000, ohms).Value, amperes * 1e-3);
        Assert.Equal(watts, Discharge.PeakWatts(25_000, ohms).Value, watts * 1e-3);
        Assert.Equal(seconds, Discharge.Seconds(ohms, farads, 25_000, 60).Value.Value, seconds * 2e-3);
    }

    // SV35: kilohms at 25 kV are a flash-over; common practice asks for megohms above 1 kV, EIA-815:1999 for about 1 Ω for each volt below.
    [Theory]
    [InlineData("25000", "2200", false)]
    [InlineData("25000", "999999", false)]
    [InlineData("25000", "1000000", true)]
    [InlineData("1000", "1000", true)]
    [InlineData("1000.1", "1000.1", false)]
    [InlineData("450", "450", true)]
    [InlineData("450", "449.9", false)]
    [InlineData("63", "100", true)]
    public void A_resistor_of_kilohms_at_kilovolts_is_a_flash_over(string volts, string ohms, bool may) =>
        Assert.Equal(may, LettingDown.Against(Exact.Of(volts), Exact.Of(ohms)) is null);

    [Fact]
    public void A_flash_over_is_told_with_its_power() =>
        Assert.StartsWith(
            "2.2 kΩ at 25 kV is a flash-over, 284 kW at the first moment; expected 1 MΩ or more",
            LettingDown.Against(25_000m, 2_200m),
            StringComparison.Ordinal
        );

    // SV36: V = sqrt(2 E / C), by hand calculator: 10 J are reached at 652 V on 47 µF, 447 V on 100 µF, 206 V on 470 µF; 0.25 J at 223.6 V
    // on 10 µF.
    [Theory]
    [Trait("CheckValue", "SV36")]
    [InlineData("0.000047", "652", 10)]
    [InlineData("0.0001", "447.2", 10)]
    [InlineData("0.00047", "206.3", 10)]
    [InlineData("0.00001", "223.6", 0.25)]
    public void Ten_joules_are_met_at_a_few_hundred_volts(string farads, string volts, double joules) =>
        Assert.Equal(joules, (double)StoredEnergy.Compute(Exact.Of(farads), Exact.Of(volts)).Value.Joules, joules * 2e-3);

    // 40 CFR 761.2(a)(4): before 2 July 1979 or unknown, 500 ppm or more must be assumed; after it, it need not be. Of the day itself the
    // law says nothing.
    [Theory]
    [InlineData("1979-07-01", true)]
    [InlineData("1979-07-02", true)]
    [InlineData("1979-07-03", false)]
    [InlineData(null, true)]
    public void An_oil_filled_capacitor_of_unknown_date_must_be_taken_to_hold_pcb(string? made, bool assumed) =>
        Assert.Equal(
            assumed,
            PolychlorinatedOil
                .MustBeAssumed(
                    made is null ? null : DateOnly.ParseExact(made, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
                )
                .Value
        );
}
