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
        Assert.Equal(
            ["capacitor, digit code: 10 nF", "resistor, digit code: 10 kΩ", "date code: 1981-W03"],
            Read("103", new YearRange(1975, 1985)).Select(meaning => $"{meaning.As}: {meaning.Meaning}")
        );

    // Year letters run A for 1970 to X for 1989 without G, I, O, Q, Y and Z, and again: IEC 60062, from memory.
    [Fact]
    public void A_letter_and_a_figure_come_back_every_twenty_years() =>
        Assert.Equal(
            ["1985-05", "2005-05", "2025-05"],
            Read("T5").Where(meaning => meaning.As == "date code").Select(meaning => meaning.Meaning)
        );

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
    public void Every_code_that_is_known_is_asked(string print, string meaning) =>
        Assert.Contains(meaning, Read(print).Select(read => read.Meaning));

    // 1 cm is 1.112 65 pF (c = 299 792 458 m/s): 500 cm is 556.325 pF.
    [Fact]
    public void A_centimetre_of_capacitance_is_told_to_six_figures() => Assert.Equal("556.325 pF", Assert.Single(Read("500 cm")).Meaning);

    // 4 nF 7 V is no part: the figure behind the unit belongs to the value.
    [Theory]
    [InlineData("4n7", "4.7 nF")]
    [InlineData("2u2", "2.2 µF")]
    [InlineData("2200u16", "2200 µF 16 V")]
    [InlineData("100n63", "100 nF 63 V")]
    [InlineData("226 16", "22 µF 16 V")]
    [InlineData("220 16", "220 µF 16 V")]
    public void A_meaning_of_which_a_part_is_senseless_is_left_out(string print, string meaning) =>
        Assert.Equal(meaning, Assert.Single(Read(print)).Meaning);

    // The code of voltage is a figure and a letter, and so is a rating in words.
    [Theory]
    [InlineData("3A", "1 kV", "3 A")]
    [InlineData("2W", "450 V", "2 W")]
    [InlineData("1H", "50 V", "1 H")]
    [InlineData("1V", "35 V", "1 V")]
    public void A_code_of_voltage_is_told_beside_the_rating_that_it_looks_like(string print, string code, string rating)
    {
        var meanings = Read(print).Select(meaning => meaning.Meaning).ToArray();
        Assert.Contains(code, meanings);
        Assert.Contains(rating, meanings);
    }

    // The class by IEC 60384-14; the chip code by EIA-198 (X 7.5, Y 8.2).
    [Theory]
    [InlineData("X2", "class X2", "750 pF")]
    [InlineData("Y2", "class Y2, to 300 V a.c.", "820 pF")]
    public void A_class_is_told_before_the_value_of_a_chip(string print, string safety, string chip) =>
        Assert.Equal([safety, chip], Read(print).Where(meaning => meaning.As != "date code").Select(meaning => meaning.Meaning));

    [Theory]
    [InlineData("X1Y2")]
    [InlineData("X1/Y2")]
    [InlineData("Y2/X1")]
    public void Two_classes_are_told_as_two(string print) =>
        Assert.Contains(Read(print), meaning =>
            meaning.Meaning == "classes X1/Y2: X1 across the line, Y2, to 300 V a.c. to earth, each with a voltage of its own"
        );

    [Theory]
    [InlineData("Y2", PrintedOn.Suppression, "class Y2, to 300 V a.c.")]
    [InlineData("226", PrintedOn.Tantalum, "22 µF")]
    [InlineData("G106", PrintedOn.Tantalum, "10 µF 4 V")]
    [InlineData("01C", PrintedOn.Resistor, "10 kΩ ±1 %")]
    [InlineData("BP", PrintedOn.Electrolytic, "bipolar: either way round")]
    [InlineData("BP", PrintedOn.Ceramic, "BP, a stable one of class 1")]
    [InlineData("3A", PrintedOn.Fuse, "3 A")]
    public void The_part_that_it_stands_on_decides(string print, PrintedOn on, string meaning) =>
        Assert.Equal(
            meaning,
            Assert.Single(PrintReader.Read(print, new YearRange(1990, 1990), on), read => read.As != "date code").Meaning
        );

    [Theory]
    [InlineData("BP")]
    [InlineData("NP")]
    public void Letters_of_polarity_are_known(string print) =>
        Assert.Contains("bipolar: either way round", Read(print).Select(meaning => meaning.Meaning));

    // Brown 100 V: colour code table of the Universidade de Brasilia; 273 GΩ is no resistor.
    [Fact]
    public void A_brown_foot_of_a_polyester_capacitor_is_100_volts() =>
        Assert.Equal(["27 nF ±10 % 100 V"], Read("red violet orange white brown").Select(meaning => meaning.Meaning));

    // IEC 60127-1, from memory: the letter of speed before the current, that of breaking capacity behind it.
    [Theory]
    [InlineData("T1.6A L 250V", "T 1.6 A L 250 V")]
    [InlineData("F500mAH250V", "F 500 mA H 250 V")]
    [InlineData("TT 2 A", "TT 2 A")]
    public void The_cap_of_a_fuse_is_read(string print, string meaning) =>
        Assert.Equal(meaning, Assert.Single(Read(print), read => read.As == "fuse").Meaning);

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("zz")]
    public void What_no_code_knows_has_no_meaning(string print) => Assert.Empty(Read(print));

    [Fact]
    public void Every_meaning_says_how_it_was_read_and_by_what_source() =>
        Gen.String[Gen.Char["0123456789JKMRnpµ.+ /VW"], 0, 12]
            .Sample(print =>
                Read(print)
                    .All(meaning => meaning is { Meaning.Length: > 0, Rule.Length: > 0, As.Length: > 0 } && meaning.Source.Text.Length > 0)
            );

    private static IReadOnlyList<PrintMeaning> Read(string print, YearRange? years = null) => PrintReader.Read(print, years ?? Years);
}
