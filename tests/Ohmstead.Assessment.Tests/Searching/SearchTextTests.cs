using System.Collections.Immutable;
using Ohmstead.Assessment.Searching;

namespace Ohmstead.Assessment.Tests.Searching;

public sealed class SearchTextTests
{
    // Worked by hand: 47 µF is 47 times ten to the minus sixth farad; 0.00047 F is 47e-5, 4k7 is 47e2 ohm, 72 h are 2592e2 seconds.
    [Theory]
    [InlineData("47 µF", "=47e-6F")]
    [InlineData("47 μF", "=47e-6F")]
    [InlineData("47uF", "=47e-6F")]
    [InlineData("47UF", "=47e-6F")]
    [InlineData("47u", "=47e-6F")]
    [InlineData("47.0 µF", "=47e-6F")]
    [InlineData("0.000047 F", "=47e-6F")]
    [InlineData(".047 µF", "=47e-9F")]
    [InlineData("47000n", "=47e-6F")]
    [InlineData("470 µF", "=47e-5F")]
    [InlineData("4k7", "=47e2\u03A9")]
    [InlineData("4.7k", "=47e2\u03A9")]
    [InlineData("4700 ohm", "=47e2\u03A9")]
    [InlineData("4.7 K\u2126", "=47e2\u03A9")]
    [InlineData("4R7", "=47e-1\u03A9")]
    [InlineData("2n2", "=22e-10F")]
    [InlineData("25V", "=25e0V")]
    [InlineData("25v", "=25e0V")]
    [InlineData("3V3", "=33e-1V")]
    [InlineData("0.25A", "=25e-2A")]
    [InlineData("250 mA", "=25e-2A")]
    [InlineData("0 V", "=0V")]
    [InlineData("72 h", "=2592e2s")]
    [InlineData("22 °C", "=22e0°")]
    [InlineData("20 %", "=2e-1%")]
    [InlineData("32.768 kHz", "=32768e0Hz")]
    [InlineData("-12 V", "-=12e0V")]
    [InlineData("\u221212 V", "-=12e0V")]
    [InlineData("+15V", "=15e0V")]
    public void A_quantity_is_one_token_however_it_is_written(string text, string token) =>
        Assert.Equal(token, Assert.Single(SearchText.Read(text)).Token);

    [Fact]
    public void All_meanings_of_a_quantity_are_asked_for()
    {
        // An m before a farad is a thousandth in SI and a millionth on old print; a letter in the place of the point may be of an inductor.
        Assert.Equal(["=47e-9F", "=47e-6F"], Asked("0.047 mF").Take(2));
        Assert.Equal(["=47e-7F", "=47e-7H", "4u7"], Asked("4u7"));
        Assert.Equal(["=1e-2F", "=1e1m"], Asked("10m"));
    }

    [Theory]
    [InlineData("SP-0007", "sp7")]
    [InlineData("SP0007", "sp7")]
    [InlineData("sp-7", "sp7")]
    [InlineData("SP‑0007", "sp7")]
    [InlineData("bridge-1", "bridge1")]
    [InlineData("LB4-0173", "lb4-173")]
    [InlineData("SPC-24-006", "spc24-6")]
    [InlineData("C12", "c12")]
    [InlineData("2N3055", "2n3055")]
    [InlineData("0117", "117")]
    [InlineData("0.50", "0.5")]
    [InlineData("100.0", "100")]
    [InlineData("1000", "1000")]
    public void A_name_loses_its_hyphen_and_the_zeros_before_a_number(string text, string token) =>
        Assert.Equal(token, Assert.Single(SearchText.Read(text)).Token);

    [Fact]
    public void A_name_is_found_by_its_pieces_and_a_longer_one_by_what_it_begins_with()
    {
        Assert.Equal(["sp7", "sp", "7"], SearchText.Read("SP-0007")[0].Held);
        Assert.Equal(["spc24-6", "spc", "24", "6", "spc24", "24-6"], SearchText.Read("SPC-24-006")[0].Held);
        Assert.Equal(["blue", "green"], SearchText.Read("blue-green")[0].Held);
    }

    [Theory]
    [InlineData("2021-05-14", "@2021-05-14")]
    [InlineData("14 May 2021", "@2021-05-14")]
    [InlineData("14th may 2021", "@2021-05-14")]
    [InlineData("May 14, 2021", "@2021-05-14")]
    [InlineData("14.5.2021", "@2021-05-14")]
    [InlineData("14/05/2021", "@2021-05-14")]
    [InlineData("May 2021", "@2021-05")]
    [InlineData("2021-05", "@2021-05")]
    [InlineData("9 March", "@-03-09")]
    [InlineData("Sept 3", "@-09-03")]
    [InlineData("2021", "2021")]
    public void A_day_is_one_token_however_it_is_written(string text, string token) =>
        Assert.Equal(token, Assert.Single(SearchText.Read(text)).Token);

    [Fact]
    public void A_day_is_found_by_its_month_its_year_and_in_any_year() =>
        Assert.Equal(["@2021-05-14", "2021", "@2021-05", "@-05-14"], SearchText.Read("2021-05-14")[0].Held);

    [Theory]
    [InlineData("it may well have", "it may well have")]
    [InlineData("2021-13-01", "2021-13-1")]
    [InlineData("32 May", "32 may")]
    [InlineData("5 x 20 mm", "5 x =2e-2m")]
    [InlineData("80-0-80 V", "80-0-80 v")]
    [InlineData("4k7 in circuit", "=47e2\u03A9 in circuit")]
    [InlineData("Tállis “tide” don’t café", "tallis tide dont cafe")]
    [InlineData("cafe\u0301", "cafe")]
    [InlineData("a.b,c", "a b c")]
    [InlineData("lid. The 2. C4", "lid the 2 c4")]
    [InlineData("", "")]
    [InlineData("… !?", "")]
    public void Everything_else_is_words(string text, string tokens) =>
        Assert.Equal(tokens, string.Join(' ', SearchText.Read(text).Select(item => item.Token)));

    [Fact]
    public void A_word_is_asked_for_whole_and_a_number_behind_a_unit_by_itself()
    {
        Assert.Equal(["=47e-6F", "47"], SearchText.Read("47 µF")[0].Held);
        Assert.Equal(["=72e0V", "72", "volts"], SearchText.Read("72 volts")[0].Held);
        ImmutableArray<string> apart = ["10", "in"];
        Assert.Equal(apart, SearchText.Read("10 in")[0].Asked[^1]);
    }

    [Fact]
    public void A_whole_name_is_what_it_is_asked_by()
    {
        Assert.Equal("!fit_run", SearchText.Name("fit to run"));
        Assert.Equal("!sp7", SearchText.Name("SP-0007"));
        Assert.Equal("!tide_logger", SearchText.Name("tide-logger"));
    }

    private static IEnumerable<string> Asked(string text) =>
        Assert.Single(SearchText.Read(text)).Asked.Select(all => string.Join(' ', all));
}
