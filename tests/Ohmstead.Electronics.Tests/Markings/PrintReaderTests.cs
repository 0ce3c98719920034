using CsCheck;
using Ohmstead.Electronics.Markings;

namespace Ohmstead.Electronics.Tests.Markings;

/// <summary>What a print can say, as a bench hand would look it up in several tables at once.</summary>
public sealed class PrintReaderTests
{
    private static readonly YearRange Years = new(1930, 2026);

    // 4.7 kΩ ±5 %: 4465 Ω to 4935 Ω, by hand.
    [Fact]
    public void A_letter_code_gives_value_tolerance_and_limits()
    {
        var meaning = Assert.Single(Read("4K7J"));
        Assert.Equal(("resistor, letter code", "4.7 kΩ ±5 %", "4.465 kΩ … 4.935 kΩ"), (meaning.As, meaning.Meaning, meaning.Limits));
    }

    // The K of a capacitor's digit code is ±10 %, that of a resistor is kilo.
    [Fact]
    public void A_K_is_kilo_on_a_resistor_and_ten_per_cent_on_a_capacitor() =>
        Assert.Equal(["47 kΩ", "47 pF ±10 %"], Read("47K").Select(meaning => meaning.Meaning));

    [Fact]
    public void Three_digits_can_be_a_capacitor_a_resistor_or_a_date() =>
        Assert.Equal(["capacitor, digit code: 10 nF", "resistor, digit code: 10 kΩ", "date code: 1981-W03"], Read("103", new YearRange(1975, 1985)).Select(meaning => $"{meaning.As}: {meaning.Meaning}"));

    // Year letters run A for 1970 to X for 1989 without G, I, O, Q, Y and Z, and again: IEC 60062, from memory.
    [Fact]
    public void A_letter_and_a_figure_come_back_every_twenty_years() =>
        Assert.Equal(["1985-05", "2005-05", "2025-05"], Read("T5").Where(meaning => meaning.As == "date code").Select(meaning => meaning.Meaning));

    [Theory]
    [InlineData("brown black red gold", "1 kΩ ±5 %")]
    [InlineData("yellow violet brown", "470 µF")]
    [InlineData("yellow violet brown", "170 kΩ ±20 %")]
    [InlineData("8+8 mfd 450 V", "8 µF + 8 µF 450 V")]
    [InlineData("100 mmf", "100 pF")]
    [InlineData("100 µµF", "100 pF")]
    [InlineData("2A104J", "100 nF ±5 % 100 V")]
    [InlineData("X7R", "-55 to 125 °C within ±15 %")]
    [InlineData("N750", "-750 × 10^-6/K")]
    [InlineData("1H", "50 V")]
    [InlineData("J", "±5 %")]
    [InlineData("MKT", "metallised polyester")]
    [InlineData("1377432", "maker 137, 1974-W32")]
    public void Every_code_that_is_known_is_asked(string print, string meaning) => Assert.Contains(meaning, Read(print).Select(read => read.Meaning));

    // 1 cm is 1.112 65 pF (c = 299 792 458 m/s): 500 cm is 556.325 pF.
    [Fact]
    public void A_centimetre_of_capacitance_is_told_to_six_figures() => Assert.Equal("556.325 pF", Assert.Single(Read("500 cm")).Meaning);

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("zz")]
    public void What_no_code_knows_has_no_meaning(string print) => Assert.Empty(Read(print));

    [Fact]
    public void Every_meaning_says_how_it_was_read_and_by_what_source() =>
        Gen.String[Gen.Char["0123456789JKMRnpµ.+ /VW"], 0, 12].Sample(print => Read(print).All(meaning => meaning is { Meaning.Length: > 0, Rule.Length: > 0, As.Length: > 0 } && meaning.Source.Text.Length > 0));

    private static IReadOnlyList<PrintMeaning> Read(string print, YearRange? years = null) => PrintReader.Read(print, years ?? Years);
}
