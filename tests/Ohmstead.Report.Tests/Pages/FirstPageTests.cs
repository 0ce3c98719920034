using AngleSharp.Dom;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>The page of the collection answers first: figures that lead to what they count, and what to do by name.</summary>
public sealed class FirstPageTests(DemoPages demo) : IClassFixture<DemoPages>
{
    private readonly IDocument index = demo.Pages["index.html"];

    [Fact]
    public void Every_figure_leads_to_what_it_counts() => Assert.All(index.QuerySelectorAll(".tiles li > a"), link =>
        {
            var target = index.GetElementById(link.GetAttribute("href")![1..])!;
            var state = link.QuerySelector(".state")!.TextContent.Trim();
            var count =
                target.Id == "s-boards"
                    ? index
                        .QuerySelectorAll("tr[id^=board-] td[data-column=State]")
                        .Count(cell => cell.TextContent.Contains(state, StringComparison.Ordinal))
                    : target.Closest("tbody")!.QuerySelectorAll("th:not([scope])").Length;
            Assert.Equal(link.QuerySelector("b")!.TextContent, count.ToString(System.Globalization.CultureInfo.InvariantCulture));
        });

    [Fact]
    public void The_two_states_that_press_most_name_their_boards() =>
        Assert.Equal([3, 2, 0, 0], index.QuerySelectorAll(".tiles li").Select(tile => tile.QuerySelectorAll("a.reference").Length));

    [Fact]
    public void The_bar_says_in_words_what_it_shows_and_has_a_box_for_each_state()
    {
        var bar = index.QuerySelector("svg.states")!;
        Assert.Equal(
            "All boards by state: 3 make safe first, 2 a fault stands, 2 proof due, 13 fit to run",
            bar.QuerySelector("title")!.TextContent
        );
        Assert.Equal(4, bar.QuerySelectorAll("rect").Length);
    }

    // What the records of SP-0008 and of order PO-08 say.
    [Fact]
    public void What_to_do_is_told_by_name_with_why_and_the_rest_is_folded()
    {
        var row = index
            .QuerySelector("#s-next")!
            .Closest("section")!
            .QuerySelectorAll("tbody tr")
            .Single(row => row.QuerySelector("th a")?.TextContent == "SP-0008");
        Assert.Equal(
            "Remove C1, crazed suppressor; for C1: suppression capacitor 100 nF ±20 % 250 V 85 °C class X2, PO-08 is placed",
            row.QuerySelector("p.act")!.Words()
        );
        Assert.StartsWith("C1: crazed suppressor not made safe; ", row.QuerySelector("p.act + p")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(row.QuerySelector("details.fold:not([open]) li"));
    }

    [Fact]
    public void A_board_that_is_fit_to_run_has_nothing_outside_now_whatever_was_read_of_parts_that_have_gone()
    {
        var fit = index.QuerySelectorAll("tr[id^=board-]").Where(row => row.TextContent.Contains("fit to run", StringComparison.Ordinal));
        Assert.All(fit, row => Assert.Empty(row.QuerySelector("td[data-column='Outside now']")!.TextContent));
        Assert.Contains("C9", index.QuerySelector("#board-SP-0010 td[data-column='Outside now']")!.TextContent, StringComparison.Ordinal);
    }
}
