namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>What is told about inputs that are wrong or missing.</summary>
public sealed class ReckonReaderTests
{
    [Theory]
    [InlineData("capacitance=391uF tan-delta=0.2", "esr needs frequency (in hertz, such as 100Hz)")]
    [InlineData("capacitance=391uF tan-delta=0.2 frequenzy=100Hz", "esr has no input 'frequenzy', 'frequency' is the nearest")]
    [InlineData("391uF", "'391uF' has no name, expected such as capacitance=391uF")]
    [InlineData("capacitance=", "'capacitance=' is no input, expected name=value")]
    [InlineData("capacitance=391uF capacitance=390uF", "capacitance is given twice")]
    [InlineData("capacitance=391mF", "capacitance: 'mF' is microfarad on old print and millifarad by SI; write 391 µF or 391000 µF")]
    public void A_wrong_or_missing_input_is_named(string inputs, string expected) => Assert.Equal(expected, Bench.Refusal("esr", inputs));

    [Theory]
    [InlineData("surface=top", "surface: 'top' is not known, expected one-end, both-ends")]
    [InlineData("beta=x", "beta: ")]
    public void A_word_or_number_that_is_none_is_named(string input, string expected) =>
        Assert.StartsWith(expected, Bench.Refusal("ripple-heating", input), StringComparison.Ordinal);

    [Fact]
    public void Quantities_are_read_as_in_records() =>
        Assert.Equal(
            "1 / (2 pi x 1 kHz x 2.2 kΩ x 4.7 µF) = 0.015392",
            Bench.Line("parallel-loss", "frequency=1kHz resistance=2k2 capacitance=4u7", "dissipation").Arithmetic
        );

    [Theory]
    [InlineData("survival", "ages=9,x", "'x' is no age, expected such as 9, 13+ or 3:9")]
    [InlineData("inspected-once", "looks=5@3", "'5@3' is no look, expected such as 1/10@20 for 1 bad of 10 at age 20")]
    [InlineData(
        "mixed-duty",
        "rated-life=1000h rated-temperature=105C phases=8h",
        "'8h' is no time at a temperature, expected such as 8h@45C"
    )]
    [InlineData("discharge", "capacitance=1uF from=400V", "discharge needs resistance or time")]
    public void An_entry_of_a_list_that_cannot_be_read_is_named_with_an_example(string rule, string inputs, string expected) =>
        Assert.Equal(expected, Bench.Refusal(rule, inputs));

    [Theory]
    [InlineData(
        "trend",
        "readings=0:0,0.0000000000000000000000000000000001:100000000000,0:1",
        "the figures are too large or too small to compute with"
    )]
    [InlineData(
        "preferred-value",
        "resistance=0.000000000000000000000001ohm",
        "resistance: 0.000000000000000001 µΩ is outside what this is meant for, expected 1 µΩ to 1000 TΩ"
    )]
    public void Figures_that_nothing_can_be_made_of_are_refused(string rule, string inputs, string expected) =>
        Assert.Equal(expected, Bench.Refusal(rule, inputs));
}
