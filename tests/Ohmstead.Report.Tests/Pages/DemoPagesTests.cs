using System.Reflection;
using AngleSharp.Dom;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tests.Html;
using Ohmstead.Report.Tests.Markdown;

namespace Ohmstead.Report.Tests.Pages;

public sealed class DemoPagesTests(DemoPages demo) : IClassFixture<DemoPages>
{
    private static readonly string[] Plain =
    [
        "Part",
        "Readings",
        "How",
        "Verdicts",
        "Result",
        "Reading",
        "Verdict",
        "On the calendar",
        "How it was reached",
        "What lies there",
        "Incoming readings",
        "What",
        "What to do",
        "Met by",
        "Day",
    ];

    [Fact]
    public void Every_class_is_used_by_a_page_or_by_a_story()
    {
        var known = typeof(ClassName)
            .GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Select(property => ((ClassName)property.GetValue(null)!).Name);
        const string story = "[a](https://tide.example/log), [surge.example](https://tide.example/)\n\n| a | b |\n|--:|:-:|\n| 1 | 2 |\n";
        var asWritten = string.Concat(Enumerable.Repeat("> ", 100_000));
        var used = demo
            .Pages.Values.SelectMany(Classes)
            .Concat(Classes(Written.From(story).Box))
            .Concat(Classes(Written.From(asWritten).Box))
            // The links between the pages of a long table: the demo is no long one.
            .Append("pages")
            .Distinct(StringComparer.Ordinal);
        Assert.Equal(known.Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_page_of_the_demo_can_run_or_load_anything() =>
        Assert.All(demo.Pages.Values, page => Harmless.Check(page.DocumentElement));

    [Fact]
    public void Every_page_has_one_heading_of_the_first_rank_and_no_id_twice() => Assert.All(demo.Pages, page =>
        {
            Assert.Single(page.Value.QuerySelectorAll("h1"));
            var ids = page.Value.QuerySelectorAll("[id]").Select(element => element.Id!).ToArray();
            Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        });

    [Fact]
    public void Every_cell_that_is_not_the_head_of_its_row_names_its_column() =>
        Assert.All(demo.Pages.Values.SelectMany(page => page.QuerySelectorAll("table.ledger")), table =>
        {
            var columns = table.QuerySelectorAll("thead th").Select(head => head.Words()).ToArray();
            // A column whose cells explain themselves has no name before any of them.
            var plain = table
                .QuerySelectorAll("tbody td:not([data-column]):not([colspan])")
                .Select(cell => cell.ParentElement!.Children.Index(cell))
                .ToHashSet();
            Assert.All(table.QuerySelectorAll("tbody td:not([colspan])"), cell =>
                Assert.Equal(plain.Contains(Column(cell)) ? null : columns[Column(cell)], cell.GetAttribute("data-column"))
            );
            Assert.All(plain, column => Assert.Contains(columns[column], Plain));
        });

    [Fact]
    public void The_collection_answers_first_how_many_boards_are_fit_to_run_and_what_the_others_want()
    {
        var index = demo.Pages["index.html"];
        var states = index.QuerySelectorAll("tr[id^=board-] td[data-column=State]").Select(cell => cell.Words().Trim()).ToArray();
        var lead = index.QuerySelector("main p.lead")!.Words();
        Assert.StartsWith(
            $"{states.Count(state => state == "fit to run")} of {states.Length} boards are fit to run; "
                + $"{states.Count(state => state == "make safe first")} must be made safe first, ",
            lead,
            StringComparison.Ordinal
        );
        Assert.Equal(
            "make safe first",
            index.QuerySelector("#s-next")!.Closest("section")!.QuerySelector("th[scope=rowgroup]")!.Words().Trim()
        );
    }

    [Fact]
    public void A_suppressor_that_is_on_order_is_not_bought_again()
    {
        var row = demo.Pages["index.html"]
            .QuerySelectorAll("#s-buy")
            .Single()
            .Closest("section")!
            .QuerySelectorAll("tbody tr")
            .Single(row => row.Words().Contains("class X2", StringComparison.Ordinal));
        Assert.Equal(["1", "0", "1", "0", "SP-0008 C1"], row.QuerySelectorAll("td").Select(cell => cell.Words().Trim()));
    }

    [Fact]
    public void A_place_that_needs_a_part_is_told_what_would_fit_and_what_to_look_for()
    {
        var fold = demo.Pages["boards/SP-0010.html"].QuerySelector("#p-C9 details.fold")!;
        Assert.StartsWith("Fits from the drawer: 2 x L-018 in series", fold.QuerySelector("summary")!.Words(), StringComparison.Ordinal);
        Assert.Contains(fold.QuerySelectorAll("li"), line =>
            line.Words().StartsWith("Look for voltage: 350 V or more", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_part_that_was_fitted_is_told_why_it_fits_or_may_not()
    {
        var fold = demo.Pages["boards/SP-0009.html"].QuerySelector("#p-C7 details.fold")!;
        Assert.Equal("May fit", fold.QuerySelector("summary")!.Words());
        Assert.StartsWith("doubt, form: radial in an axial place", fold.QuerySelector("li")!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_shows_its_units_side_by_side_and_where_parts_were_renewed()
    {
        var design = demo.Pages["designs/bench-supply.html"];
        Assert.Equal(
            ["../boards/SP-0014.html", "../boards/SP-0015.html"],
            design.QuerySelectorAll("tr[id^=board-] th a").Select(link => link.GetAttribute("href"))
        );
        Assert.Equal(["../boards/SP-0015.html#p-C1"], design.QuerySelectorAll("#p-C1 td a").Select(link => link.GetAttribute("href")));
        Assert.Contains("4700 µF", design.QuerySelector("#p-C1")!.Words(), StringComparison.Ordinal);
        Assert.Contains("10 V ±1 %", design.QuerySelector("#point-out-10")!.Words(), StringComparison.Ordinal);
    }

    // L-012 has 1000 h at 85 °C: 1.29 years of 8760 h at 50 °C after it was fitted on 2026-05-16.
    [Fact]
    public void A_board_tells_when_the_lives_of_its_electrolytics_may_be_used_up_and_shows_the_arithmetic()
    {
        var row = demo.Pages["boards/SP-0011.html"].QuerySelector("#s-life")!.Closest("section")!.QuerySelector("tbody tr")!;
        Assert.Equal("C1", row.QuerySelector("th a[href='#p-C1']")!.Words());
        Assert.Equal(["fitted 2026-05-16", "2027-08-30"], row.QuerySelectorAll("td").Take(2).Select(cell => cell.Words()));
        Assert.Contains("1000 h x 2^((85 - 50) / 10) = 11313.71 h", row.QuerySelector("details")!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_without_a_rated_life_has_no_dates_to_show() =>
        Assert.Null(demo.Pages["boards/SP-0005.html"].QuerySelector("#s-life"));

    [Fact]
    public void The_collection_shows_the_next_five_dates_and_leads_to_the_year_ahead()
    {
        var section = demo.Pages["index.html"].QuerySelector("#s-ahead")!.Closest("section")!;
        Assert.NotNull(section.QuerySelector("a[href='ahead.html']"));
        Assert.Equal(
            ["2026-12-09", "2027-01-19", "2027-02-09", "2027-03-03", "2027-03-16"],
            section.QuerySelector("table[aria-label='What comes next']")!.QuerySelectorAll("tbody th").Select(cell => cell.Words())
        );
        Assert.Equal("SP-0011 C1", section.QuerySelectorAll("table")[^1].QuerySelector("tbody th")!.Words());
    }

    [Fact]
    public void The_year_ahead_tells_first_what_is_overdue_then_what_comes()
    {
        var page = demo.Pages["ahead.html"];
        Assert.Equal(["Overdue", "Coming"], page.QuerySelectorAll("h2").Take(2).Select(heading => heading.Words()));
        Assert.NotNull(page.QuerySelector("a[href='boards/SP-0008.html']"));
        Assert.NotNull(page.QuerySelector("a[href='ahead.ics']"));
    }

    [Fact]
    public void A_board_leads_to_its_design_and_back() =>
        Assert.NotNull(demo.Pages["boards/SP-0015.html"].QuerySelector("a[href='../designs/bench-supply.html']"));

    [Fact]
    public void What_must_be_made_safe_is_told_loudest_and_what_was_made_safe_most_quietly()
    {
        Assert.Contains("leaking cell", demo.Pages["boards/SP-0003.html"].QuerySelector(".danger")!.Words(), StringComparison.Ordinal);
        Assert.Contains("mains", demo.Pages["boards/SP-0009.html"].QuerySelector(".caution")!.Words(), StringComparison.Ordinal);
        Assert.Null(demo.Pages["boards/SP-0001.html"].QuerySelector(".caution, .danger"));
    }

    // Four figures are the most that a column leaves room for: 2213 needs no room before it, 62 needs that of two.
    [Theory]
    [InlineData("5.2 Ω", "w1")]
    [InlineData("-12 V", "w3")]
    [InlineData("62 mΩ", "w2")]
    [InlineData("2213 µF", "w4")]
    [InlineData("26", "w2")]
    [InlineData("12345 Hz", null)]
    [InlineData("", null)]
    public void A_number_is_set_by_what_stands_before_its_point(string number, string? expected) =>
        Assert.Equal(expected, ClassName.Whole(number)?.Name);

    private static int Column(IElement cell) => cell.ParentElement!.Children.Index(cell);

    private static IEnumerable<string> Classes(IParentNode node) =>
        node.QuerySelectorAll("[class]").SelectMany(element => element.ClassList);

    // Of the tide-gauge loggers SP-0001 and SP-0002 have a new C4, and SP-0003 was not looked at: nothing is known of its C4.
    [Fact]
    public void The_same_place_stands_unit_beside_unit_on_the_page_of_the_design()
    {
        var table = demo.Pages["designs/tide-logger.html"].QuerySelector("table[aria-label='The same place, unit by unit']")!;
        Assert.Equal(["Place", "SP-0001", "SP-0002", "SP-0003"], table.QuerySelectorAll("thead th").Select(head => head.Words()));
        var row = table.QuerySelectorAll("tbody tr").Single(row => row.QuerySelector("th")!.Words() == "C4");
        var cells = row.QuerySelectorAll("td").ToArray();
        Assert.StartsWith("renewed", cells[0].Words(), StringComparison.Ordinal);
        Assert.StartsWith("renewed", cells[1].Words(), StringComparison.Ordinal);
        Assert.Empty(cells[2].Words());
        Assert.Equal("../boards/SP-0002.html#p-C4", cells[1].QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("inside capacitance", cells[1].Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_with_one_unit_compares_nothing() =>
        Assert.All(demo.Pages.Where(page => page.Key.StartsWith("designs/", StringComparison.Ordinal)), page =>
            Assert.Equal(
                page.Value.QuerySelectorAll("table[aria-label=Units] tbody tr").Length > 1,
                page.Value.QuerySelector("#s-places") is not null
            )
        );
}
