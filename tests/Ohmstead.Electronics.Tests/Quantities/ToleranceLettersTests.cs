using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

public class ToleranceLettersTests
{
    [Theory] // IEC 60062, from memory
    [Trait("CheckValue", "CV05")]
    [InlineData("22 nF", "Z", "17.6 nF … 39.6 nF")]
    [InlineData("100 µF", "T", "90 µF … 150 µF")]
    [InlineData("100 nF", "K", "90 nF … 110 nF")]
    [InlineData("4.7 pF", "C", "4.45 pF … 4.95 pF")]
    [InlineData("470 µF", "Q", "423 µF … 611 µF")]
    [InlineData("100 µF", "S", "80 µF … 150 µF")]
    public void A_letter_gives_the_limits_of_its_nominal_value(string nominal, string letter, string limits)
    {
        var value = QuantityText.Parse(nominal, Dimension.Capacitance).Value;
        Assert.Equal(limits, Tolerance.Parse(letter, Dimension.Capacitance, value).Value.Apply(value).ToString());
    }

    [Theory]
    [InlineData("P")]
    [InlineData("W")]
    [InlineData("H")]
    [InlineData("L")]
    [InlineData("E")]
    [InlineData("A")]
    [InlineData("N")]
    [InlineData("D")]
    public void A_letter_that_sources_disagree_on_is_ambiguous_and_names_them(string letter)
    {
        var fault = Tolerance.Parse(letter, Dimension.Capacitance, new Quantity(1e-8m, Dimension.Capacitance)).Fault;
        Assert.Equal(ParseFaultKind.Ambiguous, fault?.Kind);
        Assert.Contains(" or ", fault?.Message, StringComparison.Ordinal);
        Assert.Contains("(", fault?.Message, StringComparison.Ordinal);
    }

    // -20/+50 % by lists of the trade in the West, -10/+100 % (the letter Ю) by Soviet and Russian ones: the widest counts for what may
    // hurt.
    [Fact]
    public void The_letter_Y_means_one_thing_in_the_West_and_another_in_the_East()
    {
        var meanings = ToleranceLetters.Meanings('Y', Dimension.Capacitance);
        Assert.Equal(["-20/+50 %", "-10/+100 %"], meanings.Select(meaning => meaning.Tolerance.ToString()));
        Assert.Equal(
            ParseFaultKind.Ambiguous,
            Tolerance.Parse("Y", Dimension.Capacitance, new Quantity(1e-4m, Dimension.Capacitance)).Fault?.Kind
        );
    }

    [Fact]
    public void The_letter_B_of_a_capacitor_needs_its_value() =>
        Assert.Equal(ParseFaultKind.Ambiguous, Tolerance.Parse("B", Dimension.Capacitance).Fault?.Kind);

    [Fact]
    public void The_letter_F_of_a_large_capacitor_is_one_per_cent() =>
        Assert.Equal("±1 %", Tolerance.Parse("F", Dimension.Capacitance, new Quantity(1e-9m, Dimension.Capacitance)).Value.ToString());

    [Theory]
    [InlineData("B", "±0.1 %")]
    [InlineData("F", "±1 %")]
    [InlineData("J", "±5 %")]
    [InlineData("M", "±20 %")]
    public void The_letters_of_a_resistor_are_per_cent(string letter, string expected) =>
        Assert.Equal(expected, Tolerance.Parse(letter, Dimension.Resistance).Value.ToString());

    [Fact]
    public void A_small_letter_is_pointed_to_its_capital() =>
        Assert.Equal("K", Tolerance.Parse("k", Dimension.Capacitance).Fault?.NextStep);

    [Fact]
    public void A_voltage_has_no_tolerance_letters() =>
        Assert.Equal(ParseFaultKind.NotUnderstood, Tolerance.Parse("K", Dimension.Voltage).Fault?.Kind);
}
