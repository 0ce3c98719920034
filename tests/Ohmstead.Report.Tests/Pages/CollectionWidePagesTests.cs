using Ohmstead.Records.Findings;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>The drawer, the instruments, the findings, the checks, and the page about the verdicts.</summary>
public sealed class CollectionWidePagesTests(DemoPages demo) : IClassFixture<DemoPages>
{
    [Fact]
    public void Every_page_leads_to_the_collection_and_to_all_pages_about_it() => Assert.All(demo.Pages, page =>
        {
            var up = page.Key.Contains('/', StringComparison.Ordinal) ? "../" : string.Empty;
            Assert.Equal(
                new[]
                {
                    "index.html",
                    "ahead.html",
                    "drawer.html",
                    "instruments.html",
                    "families.html",
                    "findings.html",
                    "checks.html",
                    "about.html",
                }.Select(path => up + path),
                page.Value.QuerySelectorAll("nav.trail a").Select(link => link.GetAttribute("href"))
            );
        });

    [Fact]
    public void Every_link_inside_leads_to_a_page_and_a_place_that_exist() =>
        Assert.All(demo.Pages.Concat(demo.Sheets), page =>
            Assert.All(
                page.Value.QuerySelectorAll("a[href]")
                    .Select(link => link.GetAttribute("href")!)
                    .Where(address =>
                        !address.Contains(':', StringComparison.Ordinal)
                        && !address.EndsWith(".ics", StringComparison.Ordinal)
                        && !address.Contains("/photos/", StringComparison.Ordinal)
                    ),
                address =>
                {
                    var parts = address.Split('#');
                    var path =
                        parts[0].Length == 0 ? page.Key
                        : parts[0].StartsWith("../", StringComparison.Ordinal) ? parts[0][3..]
                        : parts[0];
                    Assert.True(
                        demo.Pages.TryGetValue(path, out var target) || demo.Sheets.TryGetValue(path, out target),
                        $"{page.Key} leads to {address}"
                    );
                    Assert.True(
                        parts.Length == 1 || target.GetElementById(Uri.UnescapeDataString(parts[1])) is not null,
                        $"{page.Key} leads to {address}"
                    );
                }
            )
        );

    // L-018 came as ten; C3 and C4 of SP-0007 were fitted from it.
    [Fact]
    public void A_lot_tells_what_is_left_of_it_its_age_its_readings_and_who_took_from_it()
    {
        var row = demo.Pages["drawer.html"].QuerySelector("#lot-L-018")!;
        Assert.Contains("left of", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("shelf life", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("boards/SP-0007.html#p-C3", row.QuerySelectorAll("a.reference").Select(link => link.GetAttribute("href")));
        Assert.NotEmpty(row.QuerySelectorAll("details.v svg"));
    }

    [Fact]
    public void A_lot_past_its_shelf_life_tells_how_to_form_it_again_and_defers_to_those_who_may() =>
        Assert.Contains(demo.Pages["drawer.html"].QuerySelectorAll("tr[id^=lot-]"), row =>
            row.QuerySelector("strong")?.TextContent == "over"
            && row.TextContent.Contains("Forming again is due", StringComparison.Ordinal)
            && row.TextContent.Contains("never permission to touch", StringComparison.Ordinal)
        );

    [Fact]
    public void A_check_says_on_its_page_what_it_does_to_the_state() =>
        Assert.Equal(
            "What it does to the state: it holds the board back from fit to run: what sits there was known to be bad when it was fitted.",
            demo.Pages["checks/fitted-part-fails.html"].QuerySelector("p.lead")!.NextElementSibling!.TextContent
        );

    [Fact]
    public void The_drawer_holds_the_buying_list() => Assert.NotNull(demo.Pages["drawer.html"].QuerySelector("#s-buy"));

    // bridge-2: calibrated 2024-11-04 for 12 months and again 2026-06-22; used on SP-0011 on 2026-05-16, in between.
    [Fact]
    public void An_instrument_tells_which_readings_were_taken_while_no_calibration_held()
    {
        var row = demo.Pages["instruments.html"].QuerySelector("#instrument-bridge-2")!;
        Assert.Contains("next by 2027-06-22", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("1 while no calibration held: SP-0011 on 2026-05-16 (1)", row.TextContent, StringComparison.Ordinal);
        // A figure and its unit are not parted at the end of a line.
        Assert.Contains(
            "capacitance up to 10\u00A0µF: 1\u00A0% of reading + 3\u00A0x\u00A01\u00A0nF",
            row.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_finding_tells_its_line_its_weight_the_next_step_and_leads_to_the_page_of_its_check()
    {
        var row = demo.Pages["findings.html"]
            .QuerySelectorAll("tr")
            .Single(row => row.TextContent.Contains("bridge-2 was used on 2026-05-16", StringComparison.Ordinal));
        Assert.Matches("^[0-9]+:[0-9]+$", row.QuerySelector("th")!.TextContent);
        Assert.Equal("warning", row.QuerySelector("td[data-column=Weight]")!.TextContent);
        Assert.StartsWith(
            "take the readings again",
            row.QuerySelector("td[data-column='What next']")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("checks/calibration-expired.html", row.QuerySelector("td[data-column=Check] a")!.GetAttribute("href"));
    }

    [Fact]
    public void A_finding_stands_on_the_page_of_its_board_too()
    {
        var row = Assert.Single(demo.Pages["boards/SP-0011.html"].QuerySelectorAll("table[aria-label=Findings] tbody tr"));
        Assert.Contains("bridge-2 was used on 2026-05-16", row.TextContent, StringComparison.Ordinal);
        Assert.Equal("../checks/calibration-expired.html", row.QuerySelector("td[data-column=Check] a")!.GetAttribute("href"));
        Assert.Null(demo.Pages["boards/SP-0004.html"].QuerySelector("#s-findings"));
    }

    [Fact]
    public void The_findings_lead_to_the_boards_they_are_about() =>
        Assert.NotNull(demo.Pages["findings.html"].QuerySelector("th[scope=rowgroup] a[href='boards/SP-0011.html']"));

    [Fact]
    public void The_cautions_begin_with_what_must_be_made_safe_first_and_defer_to_those_who_may()
    {
        var section = demo.Pages["findings.html"].QuerySelector("#s-cautions")!.Closest("section")!;
        Assert.Contains("must be made safe first", section.QuerySelector("tbody tr")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("never permission to touch", section.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_check_has_a_page_with_why_wrong_right_what_to_do_and_source() =>
        Assert.All(demo.Pages.Where(page => page.Key.StartsWith("checks/", StringComparison.Ordinal)), page =>
        {
            Assert.Superset(
                new HashSet<string>(["Why", "Wrong", "Right", "What to do", "Source"], StringComparer.Ordinal),
                page.Value.QuerySelectorAll("h3").Select(heading => heading.TextContent).ToHashSet(StringComparer.Ordinal)
            );
            Assert.NotNull(demo.Pages["checks.html"].QuerySelector($"a[href='{page.Key}']"));
        });

    [Fact]
    public void A_page_of_explanation_is_split_into_its_summary_and_the_rest()
    {
        var check = CheckText.Read(
            "lot-too-old",
            "# lot-too-old\n\nA part lay too long\nbefore it was fitted.\n\n## Why\n\nSeals age.\n",
            Severity.Warning
        );
        Assert.Equal(("A part lay too long before it was fitted.", "\n## Why\n\nSeals age.\n"), (check.Summary, check.Body));
    }

    [Fact]
    public void The_page_about_the_verdicts_tells_the_kinds_of_limit_the_rule_chosen_and_the_commit()
    {
        var page = demo.Pages["about.html"];
        Assert.Equal(
            ["Delivery limit", "End-of-life limit", "Circuit limit"],
            page.QuerySelector("#s-limits")!.Closest("section")!.QuerySelectorAll("dt").Select(term => term.TextContent)
        );
        Assert.Single(page.QuerySelectorAll("#s-decision")[0].Closest("section")!.QuerySelectorAll("tbody th"), rule =>
            rule.TextContent.EndsWith("chosen here", StringComparison.Ordinal)
        );
        Assert.Contains("commit 0123abc", page.QuerySelector("#s-made")!.Closest("section")!.TextContent, StringComparison.Ordinal);
    }
}
