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
        StoredEnergy stored = StoredEnergy.Of(Exact.Of(farads), Exact.Of(volts)).Value;
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
        Assert.Equal(seconds, Discharge.Seconds(ohms, farads, from, to).Value.Value, seconds > 10 ? 5e-3 : seconds > 2 ? 5e-4 : 1e-4);
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
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[1e-9, 0.1], Gen.Double[61, 1000]).Sample((seconds, farads, from) =>
        {
            double ohms = Discharge.LargestOhms(seconds, farads, from, 60).Value.Value;
            return Math.Abs(Discharge.Seconds(ohms, farads, from, 60).Value.Value - seconds) < 1e-9 * seconds;
        });
}
