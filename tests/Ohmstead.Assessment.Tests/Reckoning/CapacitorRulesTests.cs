using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;

namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Rules of capacitors as worked at the bench.</summary>
public sealed class CapacitorRulesTests
{
    [Theory]
    // 0.16 / (2 pi x 120 x 0.001), by hand calculator.
    [InlineData("esr", "capacitance=1000uF tan-delta=0.16 frequency=120Hz", "ESR", 0.21221, 1e-5)]
    [InlineData("tan-delta", "capacitance=470uF esr=0.35ohm frequency=120Hz", "dissipation factor", 0.12403, 1e-5)]
    // 2 pi x 1000 x 100 000 x 100e-9 = 62.832; its reciprocal.
    [InlineData("parallel-loss", "capacitance=100nF resistance=100k frequency=1kHz", "dissipation factor", 0.015915, 1e-6)]
    [InlineData("q", "tan-delta=20%", "quality factor", 5, 0)]
    // 0.2 / sqrt(1.04), by hand calculator.
    [InlineData("q", "tan-delta=0.2", "power factor", 0.196116, 1e-6)]
    // 1 / (2 pi x 50 x 1e-6): the 3.18 kΩ of every textbook.
    [InlineData("reactance", "capacitance=1uF frequency=50Hz", "reactance", 3183.1, 0.05)]
    // 39.7887 µF have 4 Ω at 1 kHz; with 3 Ω in series they make the triangle of 3, 4 and 5.
    [InlineData("impedance", "capacitance=39.7887uF esr=3ohm frequency=1kHz", "impedance", 5, 1e-4)]
    // sqrt(10e-9 x 100e-9) = 31.623e-9; 1 / (2 pi x that).
    [InlineData("resonance", "capacitance=100nF inductance=10nH", "self-resonant", 5.0329e6, 100)]
    // 1 + 0.5² = 1.25.
    [InlineData("series-parallel", "series=100uF tan-delta=0.5", "parallel capacitance", 80e-6, 1e-15)]
    [InlineData("series-parallel", "parallel=80uF tan-delta=0.5", "series capacitance", 100e-6, 1e-15)]
    [InlineData("series-parallel", "esr=1ohm tan-delta=0.5", "parallel resistance", 5, 1e-12)]
    // Data sheet column of 16 V is 0.16, one completed step above 1000 µF adds 0.02.
    [InlineData("tan-delta-limit", "capacitance=2200uF rated-voltage=16V", "dissipation factor", 0.18, 0)]
    // Data sheet of the same series, row of 25 V.
    [InlineData("cold-impedance", "rated-voltage=25V", "impedance at -40", 4, 0)]
    // 1 - 0.025 log10(262 800 h from an hour on), makers' ageing notes after EIA-198. Thirty years of 365.25 days are 262 980 h.
    [InlineData("ageing", "ceramic=X7R time=30years", "share left", 0.8645, 1e-4)]
    // Application notes, from memory: three times at 60 degrees, half way there the square root of it; 43.3 µA come back to 25.
    [InlineData("warm-leakage", "temperature=40C", "at most", 1.7321, 1e-4)]
    [InlineData("warm-leakage", "temperature=40C leakage=43.301uA", "at 20 degrees at least", 25e-6, 1e-9)]
    // A quarter lost where a fifth is allowed.
    [InlineData("wear", "change=-25%", "capacitance used, restorer's default", 1.25, 0)]
    // Data sheet: 0.01 CV or 3 µA, whichever is greater.
    [InlineData("leakage-limit", "capacitance=100uF rated-voltage=25V", "general purpose to 100 V", 25e-6, 0)]
    [InlineData("leakage-limit", "capacitance=10uF rated-voltage=16V", "general purpose to 100 V", 3e-6, 0)]
    // 0.3 (470 x 400)^0.7 + 4, by hand calculator.
    [InlineData("leakage-limit", "capacitance=470uF rated-voltage=400V", "large long-life can", 1479.8e-6, 0.1e-6)]
    // sqrt(1 + (0.8 / 1.4)²), by hand calculator.
    [InlineData("ripple-current", "parts=1.0A/1.0,0.8A/1.4", "equivalent", 1.1518, 1e-4)]
    // Typical figures of data sheets, from memory: 1.2 to 1.5 at 1 kHz, 0.75 to 0.9 for low impedance.
    [InlineData("ripple-multiplier", "frequency=1kHz", "greatest", 1.5, 0)]
    [InlineData("ripple-multiplier", "frequency=1kHz grade=low-impedance", "least", 0.75, 0)]
    // NIC NRB-XW data sheet: 1.40 at 1 kHz; General Electric/Aerovox p. 67: 1.35 at most at 10 kHz. SV16.
    [InlineData("ripple-multiplier", "frequency=1kHz grade=high-voltage", "greatest", 1.40, 0)]
    [InlineData("ripple-multiplier", "frequency=10kHz grade=large-can", "greatest", 1.35, 0)]
    // Between two rows the lower one: a higher frequency bears more.
    [InlineData("ripple-multiplier", "frequency=99kHz", "greatest", 1.7, 0)]
    [InlineData("ripple-multiplier", "frequency=299Hz", "greatest", 1.0, 0)]
    // X2 2.5 kV (Johanson Dielectrics), above 1 µF by the square root, from memory of IEC 60384-14: 2.5 kV / sqrt(2.2).
    [InlineData("impulse", "class=X2 capacitance=2.2uF", "peak impulse", 1.685, 1e-3)]
    // 2 pi x 50 x 4.7e-9 x 250.
    [InlineData("touch-current", "capacitance=4.7nF voltage=250V", "current", 0.369e-3, 1e-6)]
    // SV04: 2.2 nF at 230 V 50 Hz 0.1590 mA, with 20 % and 10 % more 0.2098 mA.
    [InlineData("touch-current", "capacitance=2.2nF voltage=230V mains=50Hz", "with mains", 0.2098e-3, 1e-7)]
    // EPCOS B41851/B43851 and B43858 data sheets: 1.15 to 100 V, 1.10 from 160 V up.
    [InlineData("surge", "rated-voltage=100V", "surge", 115, 0)]
    [InlineData("surge", "rated-voltage=250V", "surge", 275, 0)]
    [InlineData("surge", "rated-voltage=450V", "surge", 495, 0)]
    // A maker's guideline: half the rated voltage; two thirds of it at 125 degrees, from memory.
    [InlineData("tantalum-derating", "rail=12V", "least rated", 24, 0)]
    [InlineData("tantalum-derating", "rated-voltage=25V temperature=125C", "allowed", 16.6667, 1e-4)]
    // 10 000 s over 1 µF, from memory of film makers' guides.
    [InlineData("insulation", "dielectric=polyester capacitance=1uF", "least insulation", 10e9, 0)]
    // 250 V x 470 kΩ / 50.47 MΩ, by hand calculator.
    [InlineData("grid-leak", "voltage=250V insulation=50M grid-leak=470k", "the grid", 2.328, 1e-3)]
    // SV07: 15 mV on 1 MΩ from 250 V.
    [InlineData("grid-leak", "voltage=250V insulation=50M grid-leak=1M accepted=15mV", "least insulation", 16.67e9, 0.01e9)]
    public void A_capacitor_rule_gives_the_worked_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    // SV04: 100 nF at 230 V send 7.2 mA into the chassis, above every class (IEC 60950-1 table 5A, as quoted). What is not passed is not
    // told.
    [Theory]
    [InlineData("capacitance=100nF voltage=230V", 3)]
    [InlineData("capacitance=2.2nF voltage=230V", 0)]
    [InlineData("capacitance=2.7nF voltage=230V", 1)]
    public void A_touch_current_names_the_classes_it_is_above(string inputs, int classes) =>
        Assert.Equal(
            classes,
            Assert
                .IsType<ReckonRule>(ReckonCatalogue.Find("touch-current"))
                .Answer(inputs.Split(' '))
                .Value.Lines.Count(line => line.What == "that is above the limit for")
        );
}
