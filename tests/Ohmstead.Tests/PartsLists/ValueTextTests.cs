using Ohmstead.PartsLists;
using Ohmstead.Records.Model;

namespace Ohmstead.Tests.PartsLists;

/// <summary>Values as layout programs and people write them into one cell. Letter codes by IEC 60062, words beside them common
/// practice.</summary>
public sealed class ValueTextTests
{
    [Theory]
    [InlineData("4u7", "aluminium electrolytic", "capacitance: 4.7 µF")]
    [InlineData("100n 63V", "polyester film", "capacitance: 100 nF, rated_voltage: 63 V")]
    [InlineData("100 nF 63 V", "polyester film", "capacitance: 100 nF, rated_voltage: 63 V")]
    [InlineData("100nF, 63 VDC, ±10 %", "polyester film", "capacitance: 100 nF, rated_voltage: 63 V, tolerance: ±10 %")]
    [InlineData("100 nF/63 V; 10 %", "polyester film", "capacitance: 100 nF, rated_voltage: 63 V, tolerance: ±10 %")]
    [InlineData("10k 1%", "metal film resistor", "resistance: 10 kΩ, tolerance: ±1 %")]
    [InlineData("2200uF/25V", "aluminium electrolytic", "capacitance: 2200 µF, rated_voltage: 25 V")]
    [InlineData("2200uF/25V/-10/+50%", "aluminium electrolytic", null)]
    [InlineData(
        "2200uF 25V -10/+50 % 105°C",
        "aluminium electrolytic",
        "capacitance: 2200 µF, rated_voltage: 25 V, tolerance: -10/+50 %, temperature: 105 °C"
    )]
    [InlineData("4k7 1/4W", "carbon film resistor", "resistance: 4.7 kΩ, power: 250 mW")]
    [InlineData("0R47 5W", "wire-wound resistor", "resistance: 470 mΩ, power: 5 W")]
    [InlineData("4K7J", "carbon film resistor", "resistance: 4.7 kΩ, tolerance: ±5 %")]
    [InlineData("4n7K", "polyester film", "capacitance: 4.7 nF, tolerance: ±10 %")]
    [InlineData("100n X7R 50V", "ceramic class 2", "capacitance: 100 nF, material: X7R, rated_voltage: 50 V")]
    [InlineData("22p NP0", "ceramic class 1", "capacitance: 22 pF, material: C0G")]
    [InlineData("2n2 X1Y2 250V", "suppression capacitor", "capacitance: 2.2 nF, safety_class: X1/Y2, rated_voltage: 250 V")]
    [InlineData("2n2 Y2/X1 250V", "suppression capacitor", "capacitance: 2.2 nF, safety_class: X1/Y2, rated_voltage: 250 V")]
    [InlineData("100n X2 275V", "suppression capacitor", "capacitance: 100 nF, safety_class: X2, rated_voltage: 275 V")]
    [InlineData("10u 35V tantalum", "tantalum", "capacitance: 10 µF, rated_voltage: 35 V")]
    [InlineData("10 mH", "inductor", "inductance: 10 mH")]
    [InlineData("630 mA", "fuse", "current: 630 mA")]
    [InlineData("T1.6A", "fuse", "current: 1.6 A, speed: T")]
    [InlineData("T 315 mA L 250 V", "fuse", "current: 315 mA, speed: T, breaking: L, rated_voltage: 250 V")]
    [InlineData("F500mAH250V 5x20", "fuse", "current: 500 mA, speed: F, breaking: H, rated_voltage: 250 V, size: 5 x 20 mm")]
    [InlineData("1A 6.3x32mm", "fuse", "current: 1 A, size: 6.3 x 32 mm")]
    [InlineData("4.433619 MHz", "crystal", "frequency: 4.433619 MHz")]
    [InlineData("5V1", "zener diode", "rated_voltage: 5.1 V")]
    [InlineData("WX-C9V1", "zener diode", "type: WX-C9V1")]
    [InlineData("WX-D4", "diode", "type: WX-D4")]
    [InlineData("5V relay WX", "relay", "type: 5V relay WX")]
    [InlineData("7805", "integrated circuit", "type: 7805")]
    [InlineData("2A3", "valve", "type: 2A3")]
    public void Each_word_says_one_thing_of_the_part(string text, string kind, string? values)
    {
        var read = ValueText.Read(text, KindOf.Named(kind), null);
        Assert.Equal(values ?? string.Empty, string.Join(", ", read.Values.Select(value => $"{value.Key}: {value.Value}")));
        Assert.Equal(values is null, read.Fault is not null);
    }

    /// <summary>The digit code of capacitors (EIA-198), as 'marking' reads it. Aluminium electrolytics print their value.</summary>
    [Theory]
    [InlineData("104", "polyester film", "capacitance: 100 nF")]
    [InlineData("104K 63V", "ceramic class 2", "capacitance: 100 nF, tolerance: ±10 %, rated_voltage: 63 V")]
    [InlineData("229", "ceramic class 1", "capacitance: 2.2 pF")]
    [InlineData("475", "tantalum", "capacitance: 4.7 µF")]
    public void Three_digits_on_a_capacitor_are_its_code(string text, string kind, string values) =>
        Assert.Equal(
            values,
            string.Join(", ", ValueText.Read(text, KindOf.Named(kind), null).Values.Select(value => $"{value.Key}: {value.Value}"))
        );

    [Theory]
    [InlineData("220", "mica", null, "'220' can be 22 pF or 220 pF", "write 22 pF or 220 pF")]
    [InlineData("472", "polyester film", "pF", "'472' can be 4.7 nF or 472 pF", "write 4.7 nF or 472 pF")]
    [InlineData("100", "aluminium electrolytic", null, "'100' has no unit, expected a capacitance in pF, nF, µF or F", null)]
    public void Three_digits_that_can_be_two_values_are_told_with_both(string text, string kind, string? unit, string fault, string? next)
    {
        var read = ValueText.Read(text, KindOf.Named(kind), unit);
        Assert.Equal(fault, read.Fault);
        Assert.True(next is null || next == read.NextStep, read.NextStep);
    }

    [Theory]
    [InlineData("0.1", "polyester film", "'0.1' has no unit, expected a capacitance in pF, nF, µF or F")]
    [InlineData("470", "carbon film resistor", "'470' has no unit, expected a resistance in mΩ, Ω, kΩ or MΩ")]
    [InlineData("4,7u", "aluminium electrolytic", "a comma can mean 4.7 or 4700")]
    [InlineData("100n lin", "polyester film", "'lin' in '100n lin' is not understood")]
    [InlineData("not fitted", "polyester film", "'not' in 'not fitted' is not understood")]
    [InlineData("100n 220n", "polyester film", "'100n 220n' gives capacitance twice")]
    [InlineData("8/16", "aluminium electrolytic", "'8/16' is not understood as a value")]
    [InlineData("10k", "polyester film", "'10k': resistance given, capacitance expected")]
    public void What_is_left_over_or_can_be_meant_otherwise_is_told(string text, string kind, string fault) =>
        Assert.Equal(fault, ValueText.Read(text, KindOf.Named(kind), null).Fault);

    [Theory]
    [InlineData("470", "carbon film resistor", "ohm", "470 Ω")]
    [InlineData("0.1", "polyester film", "µF", "100 nF")]
    [InlineData("4k7", "carbon film resistor", "ohm", "4.7 kΩ")]
    public void A_bare_figure_takes_the_unit_a_person_names_and_a_unit_that_is_written_stands(
        string text,
        string kind,
        string unit,
        string value
    ) => Assert.Equal(value, Assert.Single(ValueText.Read(text, KindOf.Named(kind), unit).Values).Value);

    [Theory]
    [InlineData("100n 50V X7R", "C", "ceramic class 2")]
    [InlineData("22p NP0", "C", "ceramic class 1")]
    [InlineData("10u, wet tantalum", "C", "wet tantalum")]
    [InlineData("10u tantalum bead", "C", "tantalum")]
    [InlineData("1u metallised paper", "C", "metallised paper")]
    [InlineData("12p, paper label on it", "C", null)]
    [InlineData("WX-N6 with a mica washer", "Q", null)]
    [InlineData("WX-G2 germanium transistor", "Q", "germanium transistor")]
    [InlineData("transformer, mains", "T", "transformer")]
    [InlineData("10k", "R", null)]
    public void A_text_tells_the_kind_only_where_the_class_letter_allows_it(string text, string letters, string? kind) =>
        Assert.Equal(kind, ValueText.KindOf(text, ClassLetter.Known(letters))?.Name);

    [Theory]
    [InlineData("U", "integrated circuit")]
    [InlineData("F", "fuse")]
    [InlineData("Y", "crystal")]
    [InlineData("C", null)]
    [InlineData("R", null)]
    [InlineData("D", null)]
    [InlineData("T", null)]
    [InlineData("V", null)]
    [InlineData("P", null)]
    [InlineData("", null)]
    public void A_class_letter_decides_only_where_it_has_one_meaning(string letters, string? kind)
    {
        // ASME Y14.44 and IEC 81346-2, from memory.
        Assert.Equal(kind, ClassLetter.Kind(letters)?.Name);
        Assert.NotEmpty(ClassLetter.Candidates(letters));
    }

    // The likeliest first: it stands in the command that a person is told to write.
    [Theory]
    [InlineData("P", "potentiometer, connector, regulator, zener diode")]
    [InlineData("VR", "potentiometer, regulator, zener diode")]
    [InlineData("CR", "diode, zener diode, bridge rectifier, selenium rectifier")]
    [InlineData("LA", "lamp, display")]
    [InlineData("TR", "transformer, transistor, germanium transistor")]
    [InlineData("V", "valve, transistor, diode")]
    [InlineData("X", "crystal, connector, valve")]
    [InlineData("L", "inductor, transformer")]
    [InlineData("Q", "transistor, germanium transistor")]
    [InlineData("IC", "integrated circuit, memory, regulator")]
    [InlineData("R", "carbon composition resistor, carbon film resistor, metal film resistor, wire-wound resistor, resistor network")]
    [InlineData("RN", "resistor network")]
    [InlineData("BR", "bridge rectifier")]
    [InlineData("M", "")]
    public void Letters_tell_the_kinds_they_may_mean_the_likeliest_first(string letters, string kinds) =>
        Assert.Equal(kinds, string.Join(", ", ClassLetter.Known(letters)));

    [Fact]
    public void C_may_be_any_capacitor() =>
        Assert.Equal(PartKinds.All.Values.Where(kind => kind.Family == PartFamily.Capacitor), ClassLetter.Known("C"));
}
