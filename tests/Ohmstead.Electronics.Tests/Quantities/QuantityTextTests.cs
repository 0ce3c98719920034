using System.Globalization;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Quantities;

public class QuantityTextTests
{
    [Theory]
    [InlineData("391 µF", Dimension.Capacitance, "0.000391")]
    [InlineData("391 \u03BCF", Dimension.Capacitance, "0.000391")]
    [InlineData("391 uF", Dimension.Capacitance, "0.000391")]
    [InlineData("391uF", Dimension.Capacitance, "0.000391")]
    [InlineData("391u", Dimension.Capacitance, "0.000391")]
    [InlineData("8 mfd", Dimension.Capacitance, "0.000008")]
    [InlineData("8 MFD", Dimension.Capacitance, "0.000008")]
    [InlineData("250 mmf", Dimension.Capacitance, "0.00000000025")]
    [InlineData("250 MMFD", Dimension.Capacitance, "0.00000000025")]
    [InlineData("250 uuF", Dimension.Capacitance, "0.00000000025")]
    [InlineData("250 µµF", Dimension.Capacitance, "0.00000000025")]
    [InlineData("100 PF", Dimension.Capacitance, "0.0000000001")]
    [InlineData(".047 µF", Dimension.Capacitance, "0.000000047")]
    [InlineData("1.4 \u2126", Dimension.Resistance, "1.4")]
    [InlineData("1.4 \u03A9", Dimension.Resistance, "1.4")]
    [InlineData("1.4 R", Dimension.Resistance, "1.4")]
    [InlineData("1.4 ohm", Dimension.Resistance, "1.4")]
    [InlineData("1.4 Ohms", Dimension.Resistance, "1.4")]
    [InlineData("110 mohm", Dimension.Resistance, "0.110")]
    [InlineData("2 Mohm", Dimension.Resistance, "2000000")]
    [InlineData("2 megohms", Dimension.Resistance, "2000000")]
    [InlineData("47k", Dimension.Resistance, "47000")]
    [InlineData("47 KΩ", Dimension.Resistance, "47000")]
    [InlineData("-12 V", Dimension.Voltage, "-12")]
    [InlineData("4 mV", Dimension.Voltage, "0.004")]
    [InlineData("18 µA", Dimension.Current, "0.000018")]
    [InlineData("120 Hz", Dimension.Frequency, "120")]
    [InlineData("455 kc/s", Dimension.Frequency, "455000")]
    [InlineData("38 °C", Dimension.Temperature, "38")]
    [InlineData("38 degC", Dimension.Temperature, "38")]
    [InlineData("38 C", Dimension.Temperature, "38")]
    [InlineData("-40 °C", Dimension.Temperature, "-40")]
    [InlineData("24 h", Dimension.Duration, "86400")]
    [InlineData("90 min", Dimension.Duration, "5400")]
    [InlineData("12 months", Dimension.Duration, "31557600")]
    [InlineData("2 years", Dimension.Duration, "63115200")]
    [InlineData("12.5 mm", Dimension.Length, "0.0125")]
    [InlineData("0.1 in", Dimension.Length, "0.00254")]
    [InlineData("0.12", Dimension.Ratio, "0.12")]
    [InlineData("12 %", Dimension.Ratio, "0.12")]
    [InlineData("12%", Dimension.Ratio, "0.12")]
    [InlineData("-750 ppm", Dimension.Ratio, "-0.00075")]
    [InlineData("35 mAh", Dimension.Charge, "126")]
    [InlineData("42", Dimension.Number, "42")]
    [InlineData("0 V", Dimension.Voltage, "0")]
    public void A_value_is_read_with_its_unit_as_a_person_writes_it(string text, Dimension dimension, string expected) =>
        Assert.Equal(new Quantity(Decimal(expected), dimension), QuantityText.Parse(text, dimension).Value);

    [Theory] // IEC 60062: the letter stands for the decimal point and carries the multiplier.
    [InlineData("4k7", Dimension.Resistance, "4700")]
    [InlineData("4R7", Dimension.Resistance, "4.7")]
    [InlineData("2M2", Dimension.Resistance, "2200000")]
    [InlineData("1M5", Dimension.Resistance, "1500000")]
    [InlineData("R47", Dimension.Resistance, "0.47")]
    [InlineData("4k7 Ω", Dimension.Resistance, "4700")]
    [InlineData("2n2", Dimension.Capacitance, "0.0000000022")]
    [InlineData("p47", Dimension.Capacitance, "0.00000000000047")]
    [InlineData("1\u03BC5", Dimension.Capacitance, "0.0000015")]
    [InlineData("3V3", Dimension.Voltage, "3.3")]
    public void A_letter_in_place_of_the_point_is_read(string text, Dimension dimension, string expected) =>
        Assert.Equal(Decimal(expected), QuantityText.Parse(text, dimension).Value.Value);

    [Theory]
    [InlineData("4,7 uF", 1, "a comma can mean 4.7 or 4700", "4.7 uF or 4700 uF")]
    [InlineData("1,000 uF", 1, "a comma can mean 1.000 or 1000", "1.000 uF or 1000 uF")]
    [InlineData("1.000,5 uF", 5, "a comma can mean 1000.5 or 1.0005", "1000.5 uF or 1.0005 uF")]
    [InlineData("4,7", 1, "a comma can mean 4.7 or 4700", null)]
    public void A_comma_is_never_dropped_and_both_its_meanings_are_named(string text, int offset, string message, string? next) =>
        Assert.Equal(new ParseFault(ParseFaultKind.Comma, offset, 1, message, next), Fault(text, Dimension.Capacitance));

    [Theory]
    [InlineData("\u22125 V", 0, "minus sign U+2212", "-5 V")]
    [InlineData("\uFF14\uFF17 V", 0, "full-width digit U+FF14", "47 V")]
    [InlineData("\u0664\u0667 V", 0, "Arabic-Indic digit U+0664", "47 V")]
    [InlineData("4\u00B77 V", 1, "middle dot U+00B7", "4.7 V")]
    [InlineData("1O0 V", 1, "letter O", "100 V")]
    [InlineData("l00 V", 0, "letter l", "100 V")]
    [InlineData("10O V", 2, "letter O", "100 V")]
    [InlineData("4.7\u200B V", 3, "zero-width space U+200B", "4.7 V")]
    [InlineData("47 \u043CV", 3, "Cyrillic small letter em U+043C", "47 mV")]
    public void A_character_that_only_looks_right_is_named_and_the_right_text_offered(string text, int offset, string name, string next)
    {
        var fault = Fault(text, Dimension.Voltage);
        Assert.Equal((ParseFaultKind.LookAlike, offset, next), (fault.Kind, fault.Offset, fault.NextStep));
        Assert.Contains(name, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0x10 V", ParseFaultKind.NotUnderstood)]
    [InlineData("1_000 V", ParseFaultKind.NotUnderstood)]
    [InlineData("1'000 V", ParseFaultKind.NotUnderstood)]
    [InlineData("1 000 V", ParseFaultKind.NotUnderstood)]
    [InlineData("5. V", ParseFaultKind.NotUnderstood)]
    [InlineData(". V", ParseFaultKind.NotUnderstood)]
    [InlineData("+5 V", ParseFaultKind.NotUnderstood)]
    [InlineData("1e3 V", ParseFaultKind.NotUnderstood)]
    [InlineData("1.2.3 V", ParseFaultKind.NotUnderstood)]
    [InlineData(" 5 V", ParseFaultKind.NotUnderstood)]
    [InlineData("5 V ", ParseFaultKind.NotUnderstood)]
    [InlineData("NaN", ParseFaultKind.NotUnderstood)]
    [InlineData("inf", ParseFaultKind.NotUnderstood)]
    [InlineData("\u221E", ParseFaultKind.NotUnderstood)]
    [InlineData("OL", ParseFaultKind.NotUnderstood)]
    [InlineData("-", ParseFaultKind.NotUnderstood)]
    [InlineData("high", ParseFaultKind.NotUnderstood)]
    [InlineData("1e400 V", ParseFaultKind.OutOfRange)]
    [InlineData("1e-400 V", ParseFaultKind.OutOfRange)]
    [InlineData("-0 V", ParseFaultKind.OutOfRange)]
    [InlineData("-0.00 V", ParseFaultKind.OutOfRange)]
    [InlineData("1234567890.12345678901234567890 mV", ParseFaultKind.OutOfRange)]
    [InlineData("2000000 V", ParseFaultKind.OutOfRange)]
    [InlineData("0.00000000000000000000000000001 V", ParseFaultKind.OutOfRange)]
    [InlineData("", ParseFaultKind.Empty)]
    [InlineData("25", ParseFaultKind.UnitMissing)]
    [InlineData("25 ", ParseFaultKind.NotUnderstood)]
    [InlineData("230 V~", ParseFaultKind.UnitUnknown)]
    [InlineData("47 µF", ParseFaultKind.WrongDimension)]
    [InlineData("4k7", ParseFaultKind.WrongDimension)]
    public void One_grammar_refuses_the_same_things_in_every_field(string text, ParseFaultKind kind)
    {
        var fault = Fault(text, Dimension.Voltage);
        Assert.Equal(kind, fault.Kind);
        Assert.InRange(fault.Offset, 0, text.Length);
        Assert.InRange(fault.Offset + fault.Length, fault.Offset, text.Length);
    }

    [Theory]
    [InlineData("-5 µF", Dimension.Capacitance)]
    [InlineData("-1 Ω", Dimension.Resistance)]
    [InlineData("101 F", Dimension.Capacitance)]
    [InlineData("1.1 TΩ", Dimension.Resistance)]
    [InlineData("-300 °C", Dimension.Temperature)]
    public void A_value_that_cannot_be_is_out_of_range(string text, Dimension dimension) =>
        Assert.Equal(ParseFaultKind.OutOfRange, Fault(text, dimension).Kind);

    [Fact]
    public void Twenty_eight_digits_are_read_exactly_and_zeros_at_the_end_are_kept()
    {
        Assert.Equal(1.234567890123456789012345678m, QuantityText.Parse("1.234567890123456789012345678 V", Dimension.Voltage).Value.Value);
        Assert.Equal("0.10", QuantityText.Parse("0.10 V", Dimension.Voltage).Value.Value.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void A_small_m_before_the_farad_is_ambiguous_until_the_print_is_known()
    {
        var fault = Fault("10 mF", Dimension.Capacitance);
        Assert.Equal((ParseFaultKind.Ambiguous, "'mF' is microfarad on old print and millifarad by SI"), (fault.Kind, fault.Message));
        Assert.Equal(1e-5m, QuantityText.Parse("10 mF", Dimension.Capacitance, UnitPrint.Old).Value.Value);
        Assert.Equal(1e-2m, QuantityText.Parse("10 mF", Dimension.Capacitance, UnitPrint.International).Value.Value);
    }

    [Fact]
    public void Both_meanings_of_a_small_m_are_worked_out() =>
        Assert.Equal("500 nF or 500 µF", Fault("0.5 mF", Dimension.Capacitance).NextStep);

    [Theory]
    [InlineData("4m7", "4.7 mΩ or 4.7 MΩ")]
    [InlineData("4E7", "4R7")]
    public void Both_meanings_of_a_letter_in_a_resistance_are_worked_out(string text, string next) =>
        Assert.Equal(next, Fault(text, Dimension.Resistance).NextStep);

    [Theory]
    [InlineData("1 y", Dimension.Duration)]
    [InlineData("-5 µF", Dimension.Capacitance)]
    public void Nothing_is_offered_that_would_change_what_was_meant(string text, Dimension dimension) =>
        Assert.Null(Fault(text, dimension).NextStep);

    [Theory]
    [InlineData("47 µF, 25 V", "', 25 V' after '47 µF' is not understood, expected nothing more")]
    [InlineData("100 nF 20 %", "' 20 %' after '100 nF' is not understood, expected nothing more")]
    public void What_follows_a_good_value_is_pointed_at(string text, string message) =>
        Assert.Equal(message, Fault(text, Dimension.Capacitance).Message);

    [Fact]
    public void A_small_m_where_a_time_is_expected_can_be_two() =>
        Assert.Equal("5 min or 5 months", Fault("5 m", Dimension.Duration).NextStep);

    // NIST SP 811: an inch is 25.4 mm; 212 °F are 100 °C. IEC 60062: 104 is 10 and four zeros, in picofarad.
    [Theory]
    [InlineData("212 °F", Dimension.Temperature, "100 °C")]
    [InlineData("70 °F", Dimension.Temperature, "21.1 °C")]
    [InlineData("0.2\"", Dimension.Length, "5.08 mm")]
    [InlineData("12 pct", Dimension.Ratio, "12 %")]
    [InlineData("40 V DC", Dimension.Voltage, "40 V")]
    [InlineData("4 mVpp", Dimension.Voltage, "4 mV")]
    [InlineData("1.01e-7 F", Dimension.Capacitance, "101 nF")]
    [InlineData("104", Dimension.Capacitance, "104 pF, 104 nF or 104 µF, or 100 nF where 104 is the code of its print")]
    [InlineData("2k2", Dimension.Capacitance, "2200 pF or 2200 µF")]
    [InlineData("4k75", Dimension.Capacitance, "4750 pF or 4750 µF")]
    [InlineData("101 n F", Dimension.Capacitance, "101 nF")]
    [InlineData("1/2 V", Dimension.Voltage, "0.5 V")]
    [InlineData("1/3 V", Dimension.Voltage, null)]
    [InlineData("–", Dimension.Resistance, null)]
    [InlineData("15.0-15.1 V", Dimension.Voltage, "15.0 V or 15.1 V")]
    [InlineData("approx. 15 V", Dimension.Voltage, "15 V")]
    public void What_people_write_around_a_value_is_told_with_the_value(string text, Dimension dimension, string? next) =>
        Assert.Equal(next, Fault(text, dimension).NextStep);

    [Fact]
    public void A_large_M_before_the_farad_is_micro_on_old_print_and_never_mega()
    {
        Assert.Equal(ParseFaultKind.Ambiguous, Fault("20 MF", Dimension.Capacitance).Kind);
        Assert.Equal(2e-5m, QuantityText.Parse("20 MF", Dimension.Capacitance, UnitPrint.Old).Value.Value);
        Assert.Equal(ParseFaultKind.OutOfRange, QuantityText.Parse("20 MF", Dimension.Capacitance, UnitPrint.International).Fault?.Kind);
    }

    [Theory]
    [InlineData("4E7", Dimension.Resistance)]
    [InlineData("4m7", Dimension.Resistance)]
    [InlineData("47m", Dimension.Resistance)]
    [InlineData(".01M", Dimension.Capacitance)]
    public void A_letter_with_two_meanings_is_not_guessed(string text, Dimension dimension) =>
        Assert.Equal(ParseFaultKind.Ambiguous, Fault(text, dimension).Kind);

    [Fact]
    public void A_missing_unit_lists_the_units_that_fit()
    {
        var fault = Fault("47", Dimension.Capacitance);
        Assert.Equal("'47' has no unit, expected a capacitance in pF, nF, µF or F", fault.Message);
        Assert.Equal("47 pF, 47 nF, 47 µF or 47 F", fault.NextStep);
    }

    [Fact]
    public void An_unknown_unit_names_the_nearest_one()
    {
        Assert.Equal(
            ("unit 'watz' is not known, nearest is watt", "12 watt"),
            (Fault("12 watz", Dimension.Power).Message, Fault("12 watz", Dimension.Power).NextStep)
        );
        Assert.Equal("230 V", Fault("230 V~", Dimension.Voltage).NextStep);
    }

    [Theory]
    [InlineData("100 ohm", Dimension.Capacitance, "resistance given, capacitance expected")]
    [InlineData("2M2", Dimension.Capacitance, "resistance given, capacitance expected")]
    [InlineData("4n7", Dimension.Resistance, "capacitance given, resistance expected")]
    [InlineData("8 mfd", Dimension.Resistance, "capacitance given, resistance expected")]
    public void A_unit_of_another_quantity_says_which(string text, Dimension expected, string message)
    {
        Assert.Equal(ParseFaultKind.WrongDimension, Fault(text, expected).Kind);
        Assert.EndsWith(message, Fault(text, expected).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("47\u00A0µF")]
    [InlineData("47\u2009µF")]
    [InlineData("47\u202FµF")]
    public void A_no_break_or_thin_space_before_the_unit_is_a_space(string text) =>
        Assert.Equal(0.000047m, QuantityText.Parse(text, Dimension.Capacitance).Value.Value);

    [Fact]
    public void Sixty_thousand_digits_are_refused_without_being_read()
    {
        var fault = Fault(new string('9', 60_000), Dimension.Capacitance);
        Assert.Equal(ParseFaultKind.OutOfRange, fault.Kind);
        Assert.True(fault.Message.Length < 120);
    }

    [Fact]
    public void A_tolerance_letter_behind_a_code_is_pointed_out() => Assert.Equal("4K7", Fault("4K7J", Dimension.Resistance).NextStep);

    [Theory]
    [InlineData("0.000391", Dimension.Capacitance, "391 µF")]
    [InlineData("0.00176", Dimension.Capacitance, "1760 µF")]
    [InlineData("0.022", Dimension.Capacitance, "22000 µF")]
    [InlineData("0.00000000000047", Dimension.Capacitance, "0.47 pF")]
    [InlineData("0.110", Dimension.Resistance, "110 mΩ")]
    [InlineData("4700", Dimension.Resistance, "4.7 kΩ")]
    [InlineData("0", Dimension.Resistance, "0 Ω")]
    [InlineData("-12", Dimension.Voltage, "-12 V")]
    [InlineData("86400", Dimension.Duration, "24 h")]
    [InlineData("5400", Dimension.Duration, "90 min")]
    [InlineData("31557600", Dimension.Duration, "1 year")]
    [InlineData("47336400", Dimension.Duration, "18 months")]
    [InlineData("0.0125", Dimension.Length, "12.5 mm")]
    [InlineData("0.12", Dimension.Ratio, "0.12")]
    [InlineData("38", Dimension.Temperature, "38 °C")]
    public void A_quantity_is_written_with_a_fitting_prefix_and_all_its_digits(string value, Dimension dimension, string expected) =>
        Assert.Equal(expected, QuantityText.Format(new Quantity(Decimal(value), dimension)));

    [Theory]
    [InlineData("1.397", Dimension.Resistance, 3, "1.40 Ω")]
    [InlineData("999.96", Dimension.Resistance, 3, "1.00 kΩ")]
    [InlineData("0.001764", Dimension.Capacitance, 3, "1760 µF")]
    [InlineData("0.21220659", Dimension.Resistance, 4, "212.2 mΩ")]
    [InlineData("-0.0045", Dimension.Voltage, 1, "-5 mV")]
    public void A_quantity_can_be_written_to_a_number_of_significant_digits(
        string value,
        Dimension dimension,
        int digits,
        string expected
    ) => Assert.Equal(expected, QuantityText.Format(new Quantity(Decimal(value), dimension), digits));

    // 200 characters are read, one more is not.
    [Theory]
    [InlineData(200, true)]
    [InlineData(201, false)]
    public void A_quantity_has_200_characters_at_most(int length, bool isRead)
    {
        var parsed = QuantityText.Parse("1 V".PadLeft(length, '0'), Dimension.Voltage);
        Assert.Equal(isRead, parsed.Fault is null);
        Assert.Equal(isRead, parsed.Fault?.Message.EndsWith("has 201 characters, expected 200 at most", StringComparison.Ordinal) != true);
    }

    private static ParseFault Fault(string text, Dimension expected)
    {
        Assert.False(QuantityText.Parse(text, expected).Is(out _, out var fault), text);
        Assert.False(fault.Message.EndsWith('.') || fault.Message.Contains('\n', StringComparison.Ordinal), fault.Message);
        return fault;
    }

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
