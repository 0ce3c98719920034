using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;
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
    // 7 V x 0.5 A; 12 V less half of 2 V less 7.5 V (Texas Instruments LM340, SNOSBT0L).
    [InlineData("regulator-heat", "input=12V output=5V current=0.5A", "heat", 3.5, 0)]
    [InlineData("regulator-heat", "input=12V output=5V current=0.5A type=7805C ripple=2V", "headroom", 3.5, 0)]
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
    // SV14: 15 % of 450 V. SV35: 25 kV on 1 nF through 10 MΩ, 62.5 W, 60 V after 60.3 ms.
    [InlineData("discharge", "capacitance=470uF from=450V resistance=2k2", "that may come back", 67.5, 1e-9)]
    [InlineData("discharge", "capacitance=1nF from=25kV resistance=10M", "power", 62.5, 1e-9)]
    [InlineData("discharge", "capacitance=1nF from=25kV resistance=10M", "time from", 0.0603, 1e-4)]
    [InlineData("discharge", "capacitance=1nF from=25kV resistance=10M", "least resistance", 1e6, 0)]
    // SV25: (5 V - 3 V) / 25 mA.
    [InlineData("charge-guard", "supply=5V largest=25mA", "least resistor", 80, 0)]
    public void A_supply_rule_gives_the_worked_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    [Theory]
    // TTL data book, from memory: 4.75 to 5.25 V; the limit itself is inside.
    [InlineData("rail-limits", "rail=5V list=families read=4.75V", "TTL 74, 74LS", "4.75 V to 5.25 V: 4.75 V is inside")]
    [InlineData("rail-limits", "rail=5V list=families read=4.74V", "TTL 74, 74LS", "4.75 V to 5.25 V: 4.74 V is outside")]
    // 12 V less 10 % and 9 % of a negative rail, from memory.
    [InlineData("rail-limits", "rail=-12V list=computers", "early desktop supply", "-13.2 V to -10.92 V")]
    // 40 CFR 761.2(a)(4).
    [InlineData("oil-filled", "made=1979-07-01 country=US", "it must be assumed", "yes, until it is tested or is marked \"No PCBs\"")]
    [InlineData("oil-filled", "country=US", "it must be assumed", "yes, until it is tested or is marked \"No PCBs\"")]
    [InlineData("oil-filled", "made=1979-07-03 country=US", "it must be assumed", "no, by this law")]
    // SV24: 5 MΩ of an old transformer passes in service and fails as reinforced.
    [InlineData("mains-insulation", "read=5M", "class II in service", "at least 2 MΩ: 5 MΩ is inside")]
    [InlineData("mains-insulation", "read=5M", "reinforced insulation", "at least 7 MΩ: 5 MΩ is outside")]
    // A ripple of 100 V on 17 V is none: the rule of thumb holds to a fifth of the voltage (common practice).
    [InlineData("ripple", "current=1A capacitance=100uF peak=17V", "rule of thumb", "does not hold: 100 V is more than a fifth of 17 V")]
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
    [InlineData("charge-guard")]
    [InlineData("oil-filled")]
    [InlineData("mains-insulation")]
    public void A_figure_that_can_lead_a_hand_to_harm_defers_to_local_codes(string rule) =>
        Assert.Equal(SafetyNotice.Defer, Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).OfExample().Value.Cautions[^1]);

    // The figures of a set of 450 V hurt whatever the rule is called; the caution is that of the pages. 42.4 V: IEC 60335-1, 8.1.4, as
    // quoted.
    [Theory]
    [InlineData("surge", "rated-voltage=450V", "stored-energy")]
    [InlineData("no-load-peak", "winding=300V", "stored-energy")]
    [InlineData("regulator-heat", "input=300V output=250V current=50mA", "stored-energy")]
    [InlineData("grid-leak", "voltage=250V insulation=50M grid-leak=470k", "stored-energy")]
    [InlineData("rail-limits", "rail=230V", "mains")]
    [InlineData("meter-loading", "meter=1M source=470k shown=300V", "stored-energy")]
    [InlineData("leakage-limit", "capacitance=100uF rated-voltage=450V", "stored-energy")]
    [InlineData("ripple", "current=0.1A capacitance=47uF peak=400V", "stored-energy")]
    [InlineData("two-for-one", "capacitance=100uF rated-voltage=50V", "stored-energy")]
    [InlineData("discharge", "capacitance=1nF from=25kV resistance=10M", "picture-tube")]
    public void A_figure_above_touch_voltage_carries_the_caution_of_the_pages(string rule, string inputs, string hazard)
    {
        var answer = Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).Answer(inputs.Split(' '));
        Assert.Null(answer.Refusal);
        Assert.Equal(HazardCatalogue.All.Single(known => known.Name == hazard).Cautions, answer.Value.Cautions);
    }

    // 1.414 x 20 V x 1.2 x 1.1 - 1.4 V = 35.9 V.
    [Theory]
    [InlineData("surge", "rated-voltage=35V")]
    [InlineData("no-load-peak", "winding=20V")]
    public void A_figure_under_touch_voltage_carries_none(string rule, string inputs) =>
        Assert.Empty(Assert.IsType<ReckonRule>(ReckonCatalogue.Find(rule)).Answer(inputs.Split(' ')).Value.Cautions);

    // SV35: 1 to 20 kΩ at 25 kV would be a flash-over; 2.2 kΩ takes 284 kW.
    [Fact]
    public void A_picture_tube_through_kilohms_is_refused_with_its_power() =>
        Assert.Equal(
            "2.2 kΩ at 25 kV is a flash-over, 284 kW at the first moment; expected 1 MΩ or more (high voltage and picture tubes are let "
                + "down through many megohms (common practice))",
            Bench.Refusal("discharge", "capacitance=1nF from=25kV resistance=2k2")
        );
}
