using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What a print says, in a table.</summary>
public sealed class MarkingCommandTests
{
    [Fact]
    public void Colours_are_read_as_bands_with_limits_and_source()
    {
        var run = Marking("brown", "black", "red", "gold");
        Assert.Equal(0, run.Exit);
        Assert.StartsWith("brown black red gold: 2 meanings: the print alone does not decide", run.Out, StringComparison.Ordinal);
        Assert.Matches(
            @"\n  resistor, colour bands +1 kΩ ±5 % +950 Ω … 1.05 kΩ +two digits, multiplier red, ±5 % +\[IEC 60062, colour code table\]\n",
            run.Out
        );
    }

    [Fact]
    public void A_date_code_is_told_with_every_year_it_can_mean() =>
        Assert.Matches(@"\n  date code +1985-05 or 2005-05 or 2025-05 ", Marking("T5").Out);

    [Fact]
    public void The_years_can_be_narrowed()
    {
        using var document = JsonDocument.Parse(Marking("T5", "--years", "1980-1990", "--json").Out);
        var print = Assert.Single(document.RootElement.GetProperty("prints").EnumerateArray());
        Assert.Equal(
            ["1985-05"],
            print
                .GetProperty("meanings")
                .EnumerateArray()
                .Where(meaning => meaning.GetProperty("as").GetString() == "date code")
                .Select(meaning => meaning.GetProperty("meaning").GetString())
        );
    }

    [Fact]
    public void The_groups_of_a_print_that_no_code_knows_as_a_whole_are_read_one_by_one()
    {
        var run = Marking("2A104J", "7834");
        Assert.Contains("2A104J: one meaning only", run.Out, StringComparison.Ordinal);
        Assert.Contains("7834: 3 meanings", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_print_of_no_known_code_is_said_to_be_so_and_exits_with_1()
    {
        var run = Marking("zz\u202Ez");
        Assert.Equal((1, "zz<U+202E>z: no code that is known; look for the maker's own list\n"), (run.Exit, run.Out));
    }

    [Theory]
    [InlineData("1990-1980")]
    [InlineData("1980")]
    [InlineData("80-90")]
    public void Years_that_are_no_range_are_refused(string years) => Assert.Equal(2, Marking("T5", "--years", years).Exit);

    // IEC 60384-14 on a mains part, EIA-198 on a chip: without the kind nothing decides.
    [Fact]
    public void The_kind_of_part_decides_between_a_class_and_a_value()
    {
        Assert.Contains("Y2: one meaning only", Marking("Y2", "--kind", "suppression capacitor").Out, StringComparison.Ordinal);
        Assert.Matches("Y2: 2 meanings[^\n]*\n  safety class[^\n]*\n  chip capacitor", Marking("Y2").Out);
        Assert.Equal(2, Marking("Y2", "--kind", "biscuit").Exit);
    }

    [Fact]
    public void A_digit_code_before_a_voltage_is_no_value_in_microfarad() =>
        Assert.Matches(@"^226 16: one meaning only[^\n]*\n  capacitor, as printed  22 µF 16 V  ", Marking("226", "16").Out);

    private static Run Marking(params string[] words) => Run.Of(["marking", .. words, "--as-of", "2026-11-25"]);
}
