using AngleSharp.Dom;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>The page of a board at a glance: what is outside now, its life on one line, the way to its parts and its neighbours.</summary>
public sealed class BoardHeadTests(DemoPages demo) : IClassFixture<DemoPages>
{
    // Two electrolytics and two resistors of SP-0007 read outside on 2026-02-28, and were replaced that day.
    [Fact]
    public void A_board_that_is_fit_to_run_says_that_nothing_is_outside_now_and_tells_apart_what_was()
    {
        var head = Of("SP-0007").QuerySelector("header.opening")!;
        Assert.Equal("fit to run", head.QuerySelector(".lead")!.TextContent.Trim());
        Assert.Contains("Nothing that sits in it now reads outside its limits.", head.TextContent, StringComparison.Ordinal);
        Assert.Contains("4 earlier readings were outside", head.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_on_which_a_fault_stands_names_what_is_outside_now() =>
        Assert.Contains("Outside now: C9.", Of("SP-0010").QuerySelector("header.opening")!.TextContent, StringComparison.Ordinal);

    [Fact]
    public void Its_life_is_told_from_the_day_it_came_to_the_next_look_and_each_visit_is_the_way_to_it()
    {
        var page = Of("SP-0007");
        Assert.Equal(
            [
                "2026-02-20 came from signals room",
                "2026-02-28 3 found, 10 readings, 6 parts changed",
                "2026-05-02 2 readings, 2 parts changed",
                "2026-05-09 5 proofs tried",
                "2027-11-09 look again",
            ],
            page.QuerySelectorAll(".steps li").Select(step => step.TextContent.Trim())
        );
        Assert.Equal(
            page.QuerySelectorAll("section.visit").Select(visit => "#" + visit.Id),
            page.QuerySelectorAll(".steps a").Select(link => link.GetAttribute("href"))
        );
    }

    // The list of words has the same links: whoever hears the page or goes by keys meets them once.
    [Fact]
    public void The_marks_of_the_drawing_lead_to_visits_too_and_are_hidden_from_keys_and_ears() =>
        Assert.All(demo.Pages.Values.SelectMany(page => page.QuerySelectorAll("svg.years")), drawing =>
        {
            Assert.Equal("true", drawing.GetAttribute("aria-hidden"));
            Assert.NotEmpty(drawing.QuerySelectorAll("a"));
            Assert.All(drawing.QuerySelectorAll("a"), link =>
            {
                Assert.Equal("-1", link.GetAttribute("tabindex"));
                Assert.NotNull(drawing.Owner!.QuerySelector($".steps a[href='{link.GetAttribute("href")}']"));
            });
        });

    [Fact]
    public void The_line_that_stays_leads_to_parts_of_the_page_and_to_the_boards_beside_it()
    {
        var links = Of("SP-0007").QuerySelectorAll("nav.jump a").Select(link => (link.TextContent, link.GetAttribute("href"))).ToArray();
        Assert.Contains(("Parts", "#s-parts"), links);
        Assert.Equal(("Previous: SP-0006", "../boards/SP-0006.html"), links[^2]);
        Assert.Equal(("Next: SP-0008", "../boards/SP-0008.html"), links[^1]);
        Assert.DoesNotContain("Previous", Of("SP-0001").QuerySelector("nav.jump")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_open_comes_first_and_the_order_of_the_list_is_a_line_of_links_without_any_script()
    {
        var section = Of("SP-0010").QuerySelector("#s-parts")!.Closest("section")!;
        Assert.Equal(
            ["V4", "C9"],
            section.QuerySelectorAll("tbody")[0].QuerySelectorAll("th:not([scope])").Select(cell => cell.TextContent)
        );
        var order = section
            .QuerySelectorAll("p.fine")
            .Single(line => line.TextContent.StartsWith("What stands open", StringComparison.Ordinal));
        Assert.Equal(["C1A", "C1B", "C2", "C5", "V4", "C9"], order.QuerySelectorAll("a").Select(link => link.TextContent));
        Assert.Null(Of("SP-0007").QuerySelector("#s-parts")!.Closest("section")!.QuerySelector("th[scope=rowgroup]"));
    }

    [Fact]
    public void Parts_of_which_nothing_was_read_share_one_line_in_which_each_can_be_found()
    {
        var line = Of("SP-0007").QuerySelector("p.unread")!;
        Assert.StartsWith(
            "Never read: C5 polyester film 100 nF ±10 % 400 V (snubber); R1, R2 wire-wound resistor 1.5 kΩ ±5 % 10 W (load); ",
            line.Words(),
            StringComparison.Ordinal
        );
        Assert.Equal("R2", line.QuerySelector("#p-R2")!.TextContent);
    }

    [Fact]
    public void A_hazard_is_one_line_and_what_must_be_made_safe_first_is_told_whole_at_once()
    {
        Assert.All(Of("SP-0007").QuerySelectorAll(".caution details"), fold => Assert.False(fold.HasAttribute("open")));
        Assert.StartsWith(
            "hot parts at V4: envelopes reach 150 to 250 degrees",
            Of("SP-0010")
                .QuerySelectorAll(".caution li")
                .Single(line => line.TextContent.StartsWith("hot", StringComparison.Ordinal))
                .TextContent,
            StringComparison.Ordinal
        );
        Assert.True(Of("SP-0003").QuerySelector(".danger li details")!.HasAttribute("open"));
    }

    [Fact]
    public void A_board_leads_to_the_other_units_of_its_design() =>
        Assert.NotNull(Of("SP-0015").QuerySelector("a[href='../designs/bench-supply.html#s-units']"));

    private IDocument Of(string board) => demo.Pages[$"boards/{board}.html"];
}
