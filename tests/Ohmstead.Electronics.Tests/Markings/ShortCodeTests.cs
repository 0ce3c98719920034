using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

/// <summary>Codes of two to seven characters on small parts: E96 resistors, chip capacitors, tantalum chips, film capacitors.</summary>
public sealed class ShortCodeTests
{
    // Places of the E96 series (IEC 60063) times the letter. Copied tables that give 68A as 4.87 kΩ or 24 as 178 are misprints.
    [Theory(DisplayName = "SV38 the three-character code of the E96 series")]
    [InlineData("01C", "10 kΩ")]
    [InlineData("68X", "49.9 Ω")]
    [InlineData("12C", "13 kΩ")]
    [InlineData("30A", "200 Ω")]
    [InlineData("51B", "3.32 kΩ")]
    [InlineData("96D", "976 kΩ")]
    [InlineData("01F", "10 MΩ")]
    [InlineData("24E", "1.74 MΩ")]
    [InlineData("85Z", "750 mΩ")]
    [InlineData("01S", "10 Ω")]
    [InlineData("10R", "1.24 Ω")]
    [InlineData("68A", "499 Ω")]
    public void Two_digits_are_a_place_in_the_series(string code, string expected) =>
        Assert.Equal(expected, Nominal(ThreeCharacterCode.Parse(code)));

    [Theory]
    [InlineData("00A")]
    [InlineData("97A")]
    [InlineData("01K")]
    [InlineData("1A")]
    [InlineData("")]
    public void What_is_no_three_character_code_is_a_fault(string code) => Assert.NotNull(ThreeCharacterCode.Parse(code).Fault);

    // On a resistor 10R is 10 Ω by its letter and 1.24 Ω by E96: only a meter tells.
    [Fact]
    public void The_R_of_10R_keeps_both_its_meanings() =>
        Assert.Equal(
            ["10 Ω", "1.24 Ω ±1 %"],
            PrintReader.Read("10R", new YearRange(1990, 1990), PrintedOn.Resistor).Select(meaning => meaning.Meaning).Take(2)
        );

    // EIA-198, quoted from NIC Components' marking sheet.
    [Theory(DisplayName = "SV39 the two-character code of chip capacitors")]
    [InlineData("S3", "4.7 nF")]
    [InlineData("A2", "100 pF")]
    [InlineData("T6", "5.1 µF")]
    [InlineData("Y2", "820 pF")]
    [InlineData("X2", "750 pF")]
    [InlineData("A9", "0.1 pF")]
    public void A_letter_is_two_figures_and_a_digit_the_power(string code, string expected) =>
        Assert.Equal(expected, Nominal(ChipCapacitorCode.Parse(code)));

    [Fact]
    public void Lists_disagree_about_the_small_b() =>
        Assert.Equal(
            ["300 pF", "350 pF"],
            ChipCapacitorCode.Parse("b2").Value.Readings.Select(reading => QuantityText.Format(reading.Value.Nominal))
        );

    [Theory]
    [InlineData("I2")]
    [InlineData("O2")]
    [InlineData("A")]
    [InlineData("AA")]
    public void What_is_no_two_character_code_is_a_fault(string code) => Assert.NotNull(ChipCapacitorCode.Parse(code).Fault);

    // The letters from memory, the digits by EIA-198; polymer chips print the code of voltage: the cover of a maker's catalogue, quoted.
    [Theory(DisplayName = "SV40 prints of tantalums and polymer chips")]
    [InlineData("G106", "10 µF 4 V")]
    [InlineData("A475", "4.7 µF 10 V")]
    [InlineData("226 16", "22 µF 16 V")]
    [InlineData("225 35", "2.2 µF 35 V")]
    [InlineData("476 25", "47 µF 25 V")]
    [InlineData("107 10", "100 µF 10 V")]
    [InlineData("476 1C", "47 µF 16 V")]
    [InlineData("336 1E", "33 µF 25 V")]
    [InlineData("337 0J", "330 µF 6.3 V")]
    public void A_value_and_a_voltage_are_read(string print, string expected) =>
        Assert.Equal(expected, Assert.Single(PrintReader.Read(print, new YearRange(1990, 1990), PrintedOn.Tantalum)).Meaning);

    [Theory]
    [InlineData("B106")]
    [InlineData("G103")]
    [InlineData("G108")]
    [InlineData("G10")]
    public void What_is_no_print_of_a_tantalum_chip_is_a_fault(string print) => Assert.NotNull(TantalumChipCode.Parse(print).Fault);

    // Value and tolerance by IEC 60062, then the voltage: common practice.
    [Theory(DisplayName = "SV41 value, tolerance and voltage run together")]
    [InlineData("100nJ63", "100 nF ±5 % 63 V")]
    [InlineData("6n8J100", "6.8 nF ±5 % 100 V")]
    [InlineData("4n7K400", "4.7 nF ±10 % 400 V")]
    [InlineData("104K400", "100 nF ±10 % 400 V")]
    [InlineData(".47K250", "470 nF ±10 % 250 V")]
    public void A_film_capacitor_tells_all_three(string print, string expected) =>
        Assert.Equal(expected, PrintReader.Read(print, new YearRange(1990, 1990))[0].Meaning);

    [Theory]
    [InlineData("2N2222")]
    [InlineData("1K100")]
    [InlineData("6n8J")]
    [InlineData("6n8J5")]
    [InlineData("J100")]
    public void What_is_no_print_of_a_film_capacitor_is_a_fault(string print) => Assert.NotNull(FilmPrint.Parse(print).Fault);

    // IEC 60127-1, from memory. T5 is a date code, a chip capacitor or a slow fuse of 5 A: without its unit it is no fuse here.
    [Theory]
    [InlineData("T5")]
    [InlineData("T106")]
    [InlineData("1A")]
    [InlineData("10mH")]
    [InlineData("630mA")]
    [InlineData("1A6")]
    [InlineData("T1.6A X")]
    [InlineData("F")]
    public void What_is_no_print_of_a_fuse_is_a_fault(string print) => Assert.NotNull(FuseMark.Parse(print).Fault);

    private static string Nominal(Parsed<Marking<MarkedValue>> marking) =>
        QuantityText.Format(Assert.Single(marking.Value.Readings).Value.Nominal);
}
