using System.Globalization;
using CsCheck;
using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class DigitCodeTests
{
    [Theory] // EIA-198, from memory
    [Trait("CheckValue", "CV08")]
    [InlineData("104", "100 nF")]
    [InlineData("229", "2.2 pF")]
    [InlineData("479", "4.7 pF")]
    [InlineData("825", "8.2 µF")]
    [InlineData("473", "47 nF")]
    [InlineData("107", "100 µF")]
    [InlineData("508", "0.5 pF")]
    [InlineData("4R7", "4.7 pF")]
    [InlineData("47", "47 pF")]
    public void Two_digits_and_a_multiplier_are_picofarads(string code, string expected) =>
        Assert.Equal(expected, QuantityText.Format(Assert.Single(DigitCode.Parse(code).Value.Readings).Value.Nominal));

    [Theory]
    [InlineData("104K", "90 nF … 110 nF")]
    [InlineData("47K", "42.3 pF … 51.7 pF")]
    public void A_letter_behind_the_digits_is_the_tolerance_and_never_kilo(string code, string limits) =>
        Assert.Equal(limits, Assert.Single(DigitCode.Parse(code).Value.Readings).Value.Limits.ToString());

    [Fact]
    public void A_voltage_code_may_stand_in_front()
    {
        var marked = Assert.Single(DigitCode.Parse("2A104J").Value.Readings).Value;
        Assert.Equal(
            ("100 V", "100 nF", "±5 %"),
            (QuantityText.Format(marked.RatedVoltage!.Value), QuantityText.Format(marked.Nominal), marked.Tolerance.ToString())
        );
    }

    [Fact]
    public void Three_digits_ending_in_zero_have_two_meanings_that_only_a_measurement_can_tell()
    {
        var marking = DigitCode.Parse("220").Value;
        Assert.False(marking.IsCertain);
        Assert.Equal(["22 pF", "220 pF"], marking.Readings.Select(reading => QuantityText.Format(reading.Value.Nominal)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("047")]
    [InlineData("000")]
    [InlineData("10455")]
    [InlineData("104Ω")]
    [InlineData("104O")]
    [InlineData("K")]
    public void What_is_no_digit_code_is_a_fault(string code) => Assert.NotNull(DigitCode.Parse(code).Fault);

    [Fact]
    public void One_more_zero_in_the_code_is_ten_times_the_value() =>
        Gen.Select(Gen.Int[10, 99], Gen.Int[1, 6]).Sample((digits, zeros) => Farads(digits, zeros + 1) == 10m * Farads(digits, zeros));

    [Theory] // JIS and EIA voltage code, from memory
    [Trait("CheckValue", "CV09")]
    [InlineData("1H", "50 V")]
    [InlineData("2E", "250 V")]
    [InlineData("0J", "6.3 V")]
    [InlineData("2W", "450 V")]
    [InlineData("1A", "10 V")]
    [InlineData("1C", "16 V")]
    [InlineData("1E", "25 V")]
    [InlineData("1V", "35 V")]
    [InlineData("1J", "63 V")]
    [InlineData("2A", "100 V")]
    [InlineData("2D", "200 V")]
    [InlineData("2G", "400 V")]
    [InlineData("2J", "630 V")]
    [InlineData("3A", "1 kV")]
    [InlineData("0L", "5.5 V")] // 0L, 2Q, 2Z and 2P: a trade list
    [InlineData("2Q", "110 V")]
    [InlineData("2Z", "180 V")]
    [InlineData("2P", "220 V")]
    public void A_digit_and_a_letter_are_a_rated_voltage(string code, string expected) =>
        Assert.Equal(expected, QuantityText.Format(VoltageCode.Parse(code).Value));

    [Theory]
    [InlineData("1Z")]
    [InlineData("1L")]
    [InlineData("0P")]
    [InlineData("4A")]
    [InlineData("1h")]
    [InlineData("")]
    public void What_is_no_voltage_code_is_a_fault(string code) => Assert.NotNull(VoltageCode.Parse(code).Fault);

    private static decimal Farads(int digits, int zeros) =>
        DigitCode.Parse(string.Create(CultureInfo.InvariantCulture, $"{digits}{zeros}")).Value.Readings[0].Value.Nominal.Value;
}
