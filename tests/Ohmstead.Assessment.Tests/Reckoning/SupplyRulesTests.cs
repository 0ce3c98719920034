using Ohmstead.Assessment.Reckoning;
using Ohmstead.Electronics.Hazards;

namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Rules of supplies and of stored energy as worked at the bench.</summary>
public sealed class SupplyRulesTests
{
    [Theory]
    // 6 pi x 50 x 10.
    [InlineData("choke-input", "inductance=10H", "largest load", 9424.8, 0.1)]
    // A fifth of 10 A at 5 V: 2.5 Ω, 10 W, two and a half times that.
    [InlineData("dummy-load", "rail=5V rated-current=10A", "resistor", 2.5, 0)]
    [InlineData("dummy-load", "rail=5V rated-current=10A", "rating", 25, 0)]
    // 1.41421 x 12 x 1.2 x 1.1 - 1.4.
    [InlineData("no-load-peak", "winding=12V regulation=20% mains-high=10% diodes=1.4V", "no-load peak", 21.00, 0.01)]
    // 7 V x 0.5 A; 12 V less half of 2 V less 7 V.
    [InlineData("regulator-heat", "input=12V output=5V current=0.5A", "heat", 3.5, 0)]
    [InlineData("regulator-heat", "input=12V output=5V current=0.5A type=7805C ripple=2V", "headroom", 4, 0)]
    // 1 A / (2 x 50 Hz x 4700 µF).
    [InlineData("ripple", "current=1A capacitance=4700uF", "ripple, peak to peak", 2.1277, 1e-4)]
    [InlineData("ripple", "current=1A wanted=1V", "capacitance", 0.01, 1e-9)]
    // ngspice 39 on the same circuit, 14.3 Ω of load: 1.753 V with its diodes, which are softer than the ones here.
    [InlineData("ripple", "current=1.0909A capacitance=4700uF peak=17V", "ripple by the waveform", 1.753, 0.04)]
    // 1 A / (2 x 50 Hz x 4 V).
    [InlineData("ripple-evidence", "ripple=4V current=1A limit=3760uF", "the capacitance", 0.0025, 1e-9)]
    // 2.2 kΩ x 470 µF x ln(400 / 60); a circuit simulator gave 1.96162 s.
    [InlineData("discharge", "capacitance=470uF from=400V resistance=2k2", "time from", 1.9616, 1e-4)]
    [InlineData("discharge", "capacitance=470uF from=400V time=1.96162s", "largest resistance", 2200, 0.1)]
    [InlineData("discharge", "capacitance=470uF from=400V resistance=2k2 time=1.96162s", "voltage left", 60, 1e-2)]
    // 400² / 2200, and 470 µF x 400² / 2.
    [InlineData("discharge", "capacitance=470uF from=400V resistance=2k2", "power", 72.727, 1e-3)]
    [InlineData("discharge", "capacitance=470uF from=400V resistance=2k2", "stored energy", 37.60, 1e-9)]
    public void A_supply_rule_gives_the_worked_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    [Theory]
    // TTL data book, from memory: 4.75 to 5.25 V; the limit itself is inside.
    [InlineData("rail-limits", "rail=5V list=families read=4.75V", "TTL 74, 74LS", "4.75 V to 5.25 V: 4.75 V is inside")]
    [InlineData("rail-limits", "rail=5V list=families read=4.74V", "TTL 74, 74LS", "4.75 V to 5.25 V: 4.74 V is outside")]
    // 12 V less 10 % and 9 % of a negative rail, from memory.
    [InlineData("rail-limits", "rail=-12V list=computers", "early desktop supply", "-13.2 V to -10.92 V")]
    public void A_rail_is_held_against_its_family(string rule, string inputs, string what, string expected) =>
        Assert.Equal(expected, Bench.Line(rule, inputs, what).Value);

    [Theory]
    [InlineData("discharge")]
    [InlineData("reform")]
    [InlineData("touch-current")]
    [InlineData("impulse")]
    [InlineData("ripple-evidence")]
    [InlineData("choke-input")]
    [InlineData("winding-rise")]
    [InlineData("fuse")]
    [InlineData("dummy-load")]
    public void A_figure_that_can_lead_a_hand_to_harm_defers_to_local_codes(string rule) =>
        Assert.Equal(SafetyNotice.Defer, Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).OfExample().Value.Cautions[^1]);
}
