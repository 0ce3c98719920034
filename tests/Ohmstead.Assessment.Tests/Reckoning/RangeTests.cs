using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>What is outside the range of a rule has no answer but the reason.</summary>
public sealed class RangeTests
{
    // Fields whose figures are numbers of any unit: their own domains bound them.
    private static readonly string[] Unbounded = ["uncertainty", "statistics"];

    public static TheoryData<string> Names =>
        [
            .. ReckonCatalogue
                .Fields.Where(known => !Unbounded.Contains(known.Name))
                .SelectMany(known => known.Rules)
                .Select(rule => rule.Name),
        ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_quantity_that_a_rule_asks_for_has_a_range(string name) =>
        Assert.All(
            Assert
                .IsType<ReckonRule>(ReckonCatalogue.Find(name))
                .Inputs.Where(input => input.Kind is InputKind.Quantity or InputKind.Kelvin or InputKind.Count),
            input =>
                Assert.True(input.Least is not null && (input.Most is not null || input.Kind == InputKind.Count), $"{name} {input.Name}")
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_rule_takes_for_granted_is_in_its_own_range(string name) =>
        Assert.All(
            Assert
                .IsType<ReckonRule>(ReckonCatalogue.Find(name))
                .Inputs.Where(input => input is { Kind: InputKind.Quantity, Usual: not null, Least: not null }),
            input => Assert.InRange(QuantityText.Parse(input.Usual!, input.Dimension).Value.Value, input.Least!.Value, input.Most!.Value)
        );

    // Each of these was answered with a figure before, but for the last few of a kind.
    [Theory]
    [InlineData(
        "impulse",
        "class=Y1 capacitance=2.2uF",
        "capacitance is 2.2 µF, the figure of class Y1 holds to 1 µF and no such part is made above it"
    )]
    [InlineData("impulse", "class=X1 capacitance=1F", "capacitance: 1 F is outside what this is meant for, expected 1 pF to 100 µF")]
    [InlineData("ripple", "current=1A capacitance=4700uF wanted=100V peak=17V", "wanted: 100 V is more than a fifth of 17 V")]
    [InlineData("ripple", "current=0A wanted=1V", "load current is 0, expected above 0")]
    [InlineData("ripple", "current=-1A capacitance=4700uF", "current: -1 A is outside what this is meant for, expected 0 A to 1 kA")]
    [InlineData("ripple-evidence", "ripple=4V current=1A limit=0uF", "limit: 0 F is outside what this is meant for, expected 1 nF to 1 F")]
    [InlineData(
        "ripple-from-voltage",
        "ripple=100V frequency=100Hz capacitance=1F",
        "2 pi x 100 Hz x 1 F x 100 V / (2 sqrt 3) = 18138 A: no capacitor bears that, look at the ripple and at the capacitance again"
    )]
    [InlineData(
        "no-load-peak",
        "winding=1V diodes=100V",
        "a diode drop of 100 V is not under the peak of a winding of 1 V: nothing is rectified"
    )]
    [InlineData("no-load-peak", "winding=0.5V", "a diode drop of 1.4 V is not under the peak of a winding of 0.5 V: nothing is rectified")]
    [InlineData("regulator-heat", "input=5V output=12V current=1A", "12 V out of 5 V: a series regulator gives less than it gets")]
    [InlineData(
        "regulator-heat",
        "input=12V output=15V current=1A type=7805C",
        "output: a 7805C gives 4.75 V to 5.25 V, not 15 V: with another output say no type"
    )]
    [InlineData(
        "regulator-heat",
        "input=12V output=5V current=1A type=7805C ripple=100V",
        "a ripple of 100 V does not go with a mean of 12 V"
    )]
    [InlineData(
        "discharge",
        "capacitance=470uF from=400V resistance=1ohm",
        "1 Ω at 400 V is a flash-over, 160 kW at the first moment; expected 400 Ω or more (EIA-815:1999, discharge through about 1 Ω "
            + "for each volt)"
    )]
    [InlineData("surge", "rated-voltage=100000V", "rated voltage is 100000 V, no aluminium electrolytic is rated above 630 V")]
    [InlineData("tantalum-derating", "rail=500V", "rail: 500 V is outside what this is meant for, expected 500 mV to 62.5 V")]
    [InlineData(
        "touch-current",
        "capacitance=1F voltage=250V",
        "capacitance: 1 F is outside what this is meant for, expected 0.1 pF to 10 µF"
    )]
    [InlineData(
        "touch-current",
        "capacitance=1nF voltage=250V mains=1MHz",
        "mains: 1 MHz is outside what this is meant for, expected 10 Hz to 1 kHz"
    )]
    [InlineData(
        "leakage-limit",
        "capacitance=100F rated-voltage=25V",
        "capacitance: 100 F is outside what this is meant for, expected 10 nF to 500000 µF"
    )]
    [InlineData(
        "leakage-limit",
        "capacitance=100uF rated-voltage=1000V",
        "rated-voltage: 1 kV is outside what this is meant for, expected 1 V to 630 V"
    )]
    [InlineData("cold-impedance", "rated-voltage=0.001V", "rated-voltage: 1 mV is outside what this is meant for, expected 2 V to 450 V")]
    [InlineData(
        "tan-delta",
        "capacitance=470uF esr=1M frequency=120Hz",
        "that is a dissipation factor of 354370: a resistance and no capacitor, read its d.c. resistance"
    )]
    [InlineData(
        "tan-delta-limit",
        "capacitance=1F rated-voltage=16V",
        "capacitance: 1 F is outside what this is meant for, expected 10 nF to 100000 µF"
    )]
    [InlineData("ripple-current", "parts=1A/0.001", "frequency multiplier is 0.001, expected 0.2 to 5")]
    [InlineData("ripple-multiplier", "frequency=1GHz", "no multiplier is known for 1000000000 Hz, expected 50 to 100000 Hz")]
    [InlineData(
        "grid-leak",
        "voltage=0.05V insulation=1M grid-leak=470k",
        "voltage: 50 mV is outside what this is meant for, expected 1 V to 2 kV"
    )]
    [InlineData("warm-leakage", "temperature=40C leakage=-1A", "leakage: -1 A is outside what this is meant for, expected 0 A to 1 A")]
    [InlineData("wear", "change=-500%", "change: -5 is outside what this is meant for, expected -1 to 100")]
    [InlineData("choke-input", "inductance=1uH winding=300V", "inductance: 1 µH is outside what this is meant for, expected 1 mH to 200 H")]
    [InlineData("choke-input", "inductance=10H winding=-300V", "winding: -300 V is outside what this is meant for, expected 1 V to 5 kV")]
    [InlineData("dummy-load", "rail=5V rated-current=10A share=1%", "share: 0.01 is outside what this is meant for, expected 0.1 to 1")]
    [InlineData(
        "dummy-load",
        "rail=5V rated-current=10kA",
        "rated-current: 10 kA is outside what this is meant for, expected 1 mA to 500 A"
    )]
    [InlineData("meter-loading", "ohms-per-volt=20k range=2500V source=470k shown=3000V", "shown: 3 kV is more than the range of 2.5 kV")]
    [InlineData("fuse", "rated=0A speed=T", "rated: 0 A is outside what this is meant for, expected 1 mA to 100 A")]
    [InlineData("fuse", "rated=-1A speed=T", "rated: -1 A is outside what this is meant for, expected 1 mA to 100 A")]
    [InlineData(
        "ppm",
        "measured=1Hz nominal=10MHz",
        "1 Hz is another frequency than 10 MHz and no deviation of it: an overtone, a divider, a slip of the prefix"
    )]
    [InlineData(
        "baud-error",
        "clock=2MHz divisor=13 baud=1",
        "2000000 / 13 / 16 = 9615.38 against 1: 961438 %: another rate altogether and no error of this one"
    )]
    [InlineData(
        "temperature-change",
        "resistance=100k coefficient=100% rise=40K",
        "coefficient: 1 is outside what this is meant for, expected -0.02 to 0.02"
    )]
    [InlineData(
        "temperature-change",
        "resistance=100k coefficient=200ppm rise=-100000K",
        "rise: -100000 K is outside what this is meant for, expected -300 K to 300 K"
    )]
    [InlineData(
        "winding-rise",
        "cold=10.0ohm hot=100ohm",
        "that is a winding at 2311 degrees, expected -60 to 300: the two readings are not of one whole winding"
    )]
    [InlineData(
        "winding-rise",
        "cold=10.0ohm hot=12ohm start=1000C",
        "start: 1000 °C is outside what this is meant for, expected -40 °C to 100 °C"
    )]
    [InlineData(
        "life",
        "rated-life=2000h rated-temperature=105C temperature=-50C",
        "temperature: -50 °C is outside what this is meant for, expected 0 °C to 150 °C"
    )]
    [InlineData(
        "life",
        "rated-life=2000h rated-temperature=105C temperature=150C",
        "temperature: 150 °C is above the rated 105 °C, outside what the part is made for"
    )]
    [InlineData(
        "core-temperature",
        "ambient=40C case=500C diameter=18mm",
        "case: 500 °C is outside what this is meant for, expected -55 °C to 150 °C"
    )]
    [InlineData(
        "ripple-heating",
        "current=1kA esr=1ohm diameter=12.5mm length=25mm",
        "(1000 A)² x 1 Ω / (2 mW/(cm² K) x 11.045 cm²) = 45270739 K: it vents long before that, look at the current and at the ESR again"
    )]
    [InlineData(
        "rise-from-rating",
        "current=100A rated-current=1A",
        "current: 100 A is more than 5 times the rated 1 A, where the square no longer holds and the part vents"
    )]
    [InlineData("reform", "rated-voltage=1000V", "rated-voltage: 1 kV is outside what this is meant for, expected 1 V to 630 V")]
    [InlineData("reform", "rated-voltage=450V leakage=-1A", "leakage: -1 A is outside what this is meant for, expected 10 nA to 100 mA")]
    [InlineData("shelf-age", "made=1800-01-01 on=2026-01-01", "made: no aluminium electrolytic that can be used is from before 1920")]
    [InlineData(
        "mixed-duty",
        "rated-life=1000h rated-temperature=105C phases=8h@200C",
        "'8h@200C' is outside what the rule is meant for, expected 0 °C to 150 °C"
    )]
    [InlineData("q", "tan-delta=1000", "tan-delta: 1000 is outside what this is meant for, expected 0 to 100")]
    [InlineData("pitch", "pitch=1km", "pitch: 1000 m is outside what this is meant for, expected 0.5 mm to 100 mm")]
    [InlineData("charge-guard", "supply=500V largest=25mA", "supply: 500 V is outside what this is meant for, expected 3.1 V to 50 V")]
    public void What_is_outside_a_rule_is_refused_and_says_why(string rule, string inputs, string refusal) =>
        Assert.Equal(refusal, Bench.Refusal(rule, inputs));
}
