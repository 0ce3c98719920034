using System.Globalization;
using CsCheck;
using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class LetterCodeTests
{
    // IEC 60062, principle and examples as published: R47, 4R7, 470R, 4K7, 47K, 47K3, 470K, 4M7.
    [Theory]
    [Trait("CheckValue", "CV01")]
    [InlineData("4k7", "4700")]
    [InlineData("4K7", "4700")]
    [InlineData("2M2", "2200000")]
    [InlineData("0R1", "0.1")]
    [InlineData("R47", "0.47")]
    [InlineData("R1", "0.1")]
    [InlineData("R10", "0.1")]
    [InlineData("470R", "470")]
    [InlineData("47K", "47000")]
    [InlineData("47K3", "47300")]
    [InlineData("4M7", "4700000")]
    [InlineData("59R04", "59.04")]
    [InlineData("L50", "0.0005")]
    [InlineData("5L0", "0.005")]
    public void The_letter_of_a_resistor_stands_for_the_point_and_multiplies(string text, string ohms) =>
        Assert.Equal(new Quantity(Decimal(ohms), Dimension.Resistance), Single(text, Dimension.Resistance).Nominal);

    [Theory] // IEC 60062
    [Trait("CheckValue", "CV02")]
    [InlineData("4n7", "0.0000000047")]
    [InlineData("p33", "0.00000000000033")]
    [InlineData("33p2", "0.0000000000332")]
    [InlineData("10m", "0.01")]
    [InlineData("1µ5", "0.0000015")]
    [InlineData("1u5", "0.0000015")]
    [InlineData("4F7", "4.7")]
    public void The_letter_of_a_capacitor_stands_for_the_point_and_multiplies(string text, string farads) =>
        Assert.Equal(new Quantity(Decimal(farads), Dimension.Capacitance), Single(text, Dimension.Capacitance).Nominal);

    [Theory] // IEC 60062
    [Trait("CheckValue", "CV03")]
    [InlineData("4K7J", Dimension.Resistance, "4700", "±5 %")]
    [InlineData("4n7K", Dimension.Capacitance, "0.0000000047", "±10 %")]
    [InlineData("n1M", Dimension.Capacitance, "0.0000000001", "±20 %")]
    public void A_letter_after_the_digits_is_the_tolerance(string text, Dimension dimension, string value, string tolerance)
    {
        var marked = Single(text, dimension);
        Assert.Equal((Decimal(value), tolerance), (marked.Nominal.Value, marked.Tolerance.ToString()));
    }

    [Fact]
    [Trait("CheckValue", "CV04")]
    public void Below_ten_picofarad_the_letter_D_is_half_a_picofarad() =>
        Assert.Equal("7.7 pF … 8.7 pF", Single("8p2D", Dimension.Capacitance).Limits.ToString()); // IEC 60062

    [Fact]
    public void From_ten_picofarad_up_the_letter_D_has_two_meanings_and_both_are_given()
    {
        var marking = LetterCode.Parse("47pD", Dimension.Capacitance).Value;
        Assert.Equal(["±0.5 %", "±0.5 pF"], marking.Readings.Select(reading => reading.Value.Tolerance.ToString()));
        Assert.Equal(2, marking.Readings.Select(reading => reading.Source).Distinct().Count());
    }

    [Fact]
    public void The_E_of_old_Continental_resistors_is_read_as_a_point_on_the_part_itself() =>
        Assert.Equal(4.7m, Single("4E7", Dimension.Resistance).Nominal.Value); // common practice

    [Theory]
    [InlineData("47", Dimension.Resistance)]
    [InlineData("k", Dimension.Resistance)]
    [InlineData("", Dimension.Resistance)]
    [InlineData("4n7", Dimension.Resistance)]
    [InlineData("4k7", Dimension.Capacitance)]
    [InlineData("4K7JK", Dimension.Resistance)]
    [InlineData("4K7X", Dimension.Resistance)]
    [InlineData("123456789012K3", Dimension.Resistance)]
    [InlineData("4V7", Dimension.Voltage)]
    public void What_is_no_code_is_a_fault(string text, Dimension dimension) => Assert.NotNull(LetterCode.Parse(text, dimension).Fault);

    [Fact]
    public void A_code_made_from_a_value_is_read_back_as_that_value() =>
        Gen.Select(Gen.Int[1, 999], Gen.Int[0, 999], Gen.Int[0, 3].Select(n => ("RKMG"[n], 3 * n)))
            .Sample(
                (whole, thousandths, letter) =>
                {
                    var text = string.Create(CultureInfo.InvariantCulture, $"{whole}{letter.Item1}{thousandths:D3}");
                    var value =
                        (whole + (thousandths / 1000m))
                        * Enumerable.Repeat(10m, letter.Item2).Aggregate(1m, (product, ten) => product * ten);
                    return LetterCode.Parse(text, Dimension.Resistance).Value.Readings[0].Value.Nominal.Value == value;
                }
            );

    private static MarkedValue Single(string text, Dimension dimension) =>
        Assert.Single(LetterCode.Parse(text, dimension).Value.Readings).Value;

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
