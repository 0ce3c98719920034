using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class TradeNotationTests
{
    [Theory] // common practice
    [Trait("CheckValue", "CV10")]
    [InlineData("8 mfd", "8 µF")]
    [InlineData("250 mmf", "250 pF")]
    [InlineData("20 MFD", "20 µF")]
    [InlineData("20 MF", "20 µF")]
    [InlineData("20 mF", "20 µF")]
    [InlineData(".0047", "4.7 nF")]
    [InlineData(".01", "10 nF")]
    [InlineData("47", "47 pF")]
    [InlineData("4700", "4.7 nF")]
    public void Old_print_is_read_as_the_trade_meant_it(string text, string expected) =>
        Assert.Equal(expected, QuantityText.Format(Assert.Single(Single(text).Sections)));

    [Fact]
    [Trait("CheckValue", "CV10")]
    public void Five_hundred_centimetres_are_556_picofarad()
    {
        // 1 F = 8.987 55e11 cm; the units program gives 556.325 pF for 500 statfarad.
        Assert.Equal(556.325e-12m, Math.Round(Single("500 cm").Sections[0].Value, 15));
    }

    [Fact]
    public void A_jar_is_given_as_both_texts_have_it()
    {
        var readings = TradeNotation.Parse("1 jar").Value.Readings; // from memory
        Assert.Equal(["1.113 nF", "1.111 nF"], readings.Select(reading => QuantityText.Format(reading.Value.Sections[0], 4)));
    }

    [Fact]
    public void The_M_of_point_01_M_leaves_the_value_alone()
    {
        var readings = TradeNotation.Parse(".01M").Value.Readings;
        Assert.All(readings, reading => Assert.Equal(1e-8m, reading.Value.Sections[0].Value));
        Assert.Equal([null, "±20 %"], readings.Select(reading => reading.Value.Tolerance?.ToString()));
    }

    [Theory]
    [InlineData("8+8 mfd 450 V", "8 µF, 8 µF", "450 V")]
    [InlineData("40/40/20 µF 350 WVDC", "40 µF, 40 µF, 20 µF", "350 V")]
    [InlineData("8+8", "8 µF, 8 µF", "")]
    [InlineData("32-32", "32 µF, 32 µF", "")]
    [InlineData("2200u 16", "2200 µF", "16 V")]
    [InlineData("2200/16", "2200 µF", "16 V")]
    [InlineData("2200 MFD 16 WVDC", "2200 µF", "16 V")]
    [InlineData("0.1 µF 400 VDCW", "100 nF", "400 V")]
    public void Sections_and_the_rated_voltage_are_read(string text, string sections, string volts)
    {
        var print = Single(text);
        Assert.Equal(sections, string.Join(", ", print.Sections.Select(QuantityText.Format)));
        Assert.Equal(volts, print.RatedVoltage is { } rated ? QuantityText.Format(rated) : "");
    }

    [Fact]
    public void A_slash_between_like_numbers_can_be_sections_or_a_voltage()
    {
        var readings = TradeNotation.Parse("100/25").Value.Readings;
        Assert.Equal(
            ["25 V", null],
            readings.Select(reading => reading.Value.RatedVoltage is { } rated ? QuantityText.Format(rated) : null)
        );
        Assert.Equal([1, 2], readings.Select(reading => reading.Value.Sections.Length));
    }

    [Theory]
    [InlineData("10 µF 25 V BP")]
    [InlineData("10 µF 25 V NP")]
    [InlineData("10 µF bip")]
    [InlineData("10 µF 0+0")]
    public void A_bipolar_mark_is_seen(string text) => Assert.True(Single(text).IsBipolar);

    [Fact]
    public void Three_bare_digits_keep_both_their_meanings() =>
        Assert.Equal(
            ["33 pF", "330 pF"],
            TradeNotation.Parse("330").Value.Readings.Select(reading => QuantityText.Format(reading.Value.Sections[0]))
        );

    [Fact]
    public void The_K_of_47K_on_a_disc_is_a_tolerance()
    {
        var print = Single("47K");
        Assert.Equal(("47 pF", "±10 %"), (QuantityText.Format(print.Sections[0]), print.Tolerance.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("condenser")]
    [InlineData("8+")]
    [InlineData("8+8-4")]
    [InlineData("8 mfd 525 SV")]
    [InlineData("8 mfd many V")]
    [InlineData("8 mfd 450 ohm")]
    [InlineData("100 F 5 V 3")]
    [InlineData("900000 F")]
    [InlineData("4,7 mfd")]
    public void What_is_not_understood_is_a_fault(string text) => Assert.NotNull(TradeNotation.Parse(text).Fault?.Message);

    private static CapacitorPrint Single(string text) => Assert.Single(TradeNotation.Parse(text).Value.Readings).Value;
}
