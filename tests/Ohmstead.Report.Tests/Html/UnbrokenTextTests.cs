using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

/// <summary>Figures, days and numbers that no line may end in.</summary>
public sealed class UnbrokenTextTests
{
    private const string Tie = "\u00A0";

    // The International System of Units, 9th edition, 5.4.3: a space between the figure and its unit, which typographers make one that does
    // not break.
    [Theory]
    [InlineData("2200 µF ±20 % 25 V 85 °C", $"2200{Tie}µF ±20{Tie}% 25{Tie}V 85{Tie}°C")]
    [InlineData("at most 84.40 mΩ", $"at most 84.40{Tie}mΩ")]
    [InlineData("1760 … 2640 µF", $"1760 … 2640{Tie}µF")]
    [InlineData("shelf life 36 months", $"shelf life 36{Tie}months")]
    [InlineData("0.05 mg/m³ over 8 h", $"0.05{Tie}mg/m³ over 8{Tie}h")]
    [InlineData("5 x 20 mm", $"5{Tie}x 20{Tie}mm")]
    [InlineData("30 000 s above", $"30{Tie}000{Tie}s above")]
    [InlineData("8.50 EUR each", $"8.50{Tie}EUR each")]
    [InlineData("4 left of 6", "4 left of 6")]
    [InlineData("1 in the drawer", "1 in the drawer")]
    [InlineData("lot 3 C12", "lot 3 C12")]
    [InlineData("20 kΩ/V meter", $"20{Tie}kΩ/V meter")]
    [InlineData("470 Fuses", "470 Fuses")]
    public void A_figure_keeps_its_unit(string text, string written) => Assert.Equal($"<p>{written}</p>\n", Source(text));

    [Theory]
    [InlineData("since 2026-08-22;", "since <i>2026-08-22</i>;")]
    [InlineData("made 2025-W41", "made <i>2025-W41</i>")]
    [InlineData("bag SP-0002/1, order PO-01.", "bag <i>SP-0002/1</i>, order <i>PO-01</i>.")]
    [InlineData("with bridge-1", "with <i>bridge-1</i>")]
    [InlineData("a tide-gauge logger", "a tide-gauge logger")]
    [InlineData("boards/SP-0002.md:40:9", "boards/SP-0002.md:40:9")]
    public void A_day_or_a_number_stays_on_one_line(string text, string written) => Assert.Equal($"<p>{written}</p>\n", Source(text));

    [Theory]
    [InlineData("-7.2 %", $"\u22127.2{Tie}%")]
    [InlineData("10 µF -10/+50 %", $"10{Tie}µF \u221210/+50{Tie}%")]
    [InlineData("10 µF +80/-20 %", $"10{Tie}µF +80/\u221220{Tie}%")]
    [InlineData("(-5 V)", $"(\u22125{Tie}V)")]
    public void A_negative_figure_has_a_minus(string text, string written) => Assert.Equal($"<p>{written}</p>\n", Source(text));

    [Theory]
    [InlineData("IEC 60384-15 and -24 (from memory)", "IEC 60384-15 and -24 (from memory)")]
    [InlineData("3 to -2 below", "3 to -2 below")]
    public void A_hyphen_without_a_quantity_is_none(string text, string written) =>
        Assert.Equal($"<p>{written.Replace("60384-15", "<i>60384-15</i>", StringComparison.Ordinal)}</p>\n", Source(text));

    // The point is named so in the record, and is looked for by that name.
    [Fact]
    public void A_name_that_begins_with_a_hyphen_stays_as_it_is() => Assert.Equal("<p>point -12V</p>\n", Source("point -12V"));

    [Fact]
    public void A_figure_that_is_written_by_itself_keeps_the_unit_behind_it()
    {
        const int hours = 24;
        Assert.Equal($"<p>dry for 24{Tie}h</p>\n", Probe.Source(html => html.Open(Tag.P).Text($"dry for {hours} h")));
        Assert.Equal("<p>\u221224</p>\n", Probe.Source(html => html.Open(Tag.P).Text(-hours)));
    }

    [Fact]
    public void A_hyphen_behind_a_word_that_is_written_by_itself_is_no_minus() =>
        Assert.Equal(
            "<p>SP-12</p>\n",
            Probe.Source(html =>
            {
                using var text = html.Open(Tag.P);
                html.Text("SP");
                html.Text("-12");
            })
        );

    [Fact]
    public void Code_is_shown_character_by_character() =>
        Assert.Equal(
            "<code>{ at: 2026-03-14, esr: 1.3 Ω, limit: -5 V }</code>",
            Probe.Source(html => html.Open(Tag.Code).Text("{ at: 2026-03-14, esr: 1.3 Ω, limit: -5 V }"))
        );

    private static string Source(string text) => Probe.Source(html => html.Open(Tag.P).Text(text));
}
