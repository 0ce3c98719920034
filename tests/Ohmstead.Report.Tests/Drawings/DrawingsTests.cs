using Ohmstead.Report.Tests.Html;
using Ohmstead.Report.Tests.Pages;

namespace Ohmstead.Report.Tests.Drawings;

/// <summary>The drawings on the pages of the demo collection: what they say in words, and the tables that hold their numbers.</summary>
public sealed class DrawingsTests(DemoPages demo) : IClassFixture<DemoPages>
{
    [Fact]
    public void Every_drawing_that_is_read_out_has_a_title_that_says_something() =>
        Assert.All(demo.Pages.Values.SelectMany(page => page.QuerySelectorAll("svg[role=img]")), drawing =>
            Assert.NotEmpty(drawing.Children[0].Words().Trim())
        );

    [Fact]
    public void Every_drawing_is_read_out_or_hidden_from_those_who_hear_the_page() =>
        Assert.All(demo.Pages.Values.SelectMany(page => page.QuerySelectorAll("svg")), drawing =>
            Assert.True(drawing.GetAttribute("role") == "img" ^ (drawing.GetAttribute("aria-hidden") == "true" || IsSilent(drawing)))
        );

    private static bool IsSilent(AngleSharp.Dom.IElement drawing) =>
        drawing.GetAttribute("role") == "none" && drawing.TextContent.Length == 0;

    [Fact]
    public void Every_shape_that_is_used_stands_in_its_page() =>
        Assert.All(demo.Pages.Values, page =>
            Assert.All(page.QuerySelectorAll("use"), use => Assert.NotNull(page.GetElementById(use.GetAttribute("href")![1..])))
        );

    [Fact]
    public void Every_drawing_with_two_scales_says_in_words_what_it_shows() =>
        Assert.All(demo.Pages.Values.SelectMany(page => page.QuerySelectorAll("svg.plot")), drawing =>
            Assert.NotEmpty(drawing.QuerySelector("desc")!.Words())
        );

    [Fact]
    public void Every_drawing_over_time_has_a_table_of_as_many_readings_as_it_shows() =>
        Assert.All(demo.Pages["boards/SP-0020.html"].QuerySelector("#s-time")!.Closest("section")!.QuerySelectorAll("figure"), figure =>
            Assert.Equal(figure.QuerySelectorAll("use").Length, figure.QuerySelectorAll("tbody tr").Length)
        );

    // Three springs: 936.4, 899.0 and 862.1 µF.
    [Fact]
    public void The_table_beside_a_drawing_leads_to_each_reading()
    {
        var page = demo.Pages["boards/SP-0020.html"];
        var figure = page.QuerySelector("#s-time")!.Closest("section")!.QuerySelector("figure")!;
        Assert.Equal(["936.4 µF", "899.0 µF", "862.1 µF"], figure.QuerySelectorAll("tbody a").Select(link => link.Words()));
        Assert.All(figure.QuerySelectorAll("tbody a"), link => Assert.NotNull(page.GetElementById(link.GetAttribute("href")![1..])));
    }

    [Fact]
    public void What_a_new_part_replaced_is_a_cross_on_its_strip_and_stands_in_words_below()
    {
        var row = demo.Pages["boards/SP-0007.html"].QuerySelector("#p-C3")!;
        Assert.Equal(2, row.QuerySelectorAll("use[href='#x']").Length);
        Assert.Contains("The part before (cross): capacitance 31.8 µF outside, ESR 9.4 Ω outside", row.Words(), StringComparison.Ordinal);
    }

    // More than 20 MΩ has no place on a scale: the shape stands alone, the limits in words beside it.
    [Fact]
    public void A_bound_is_never_drawn_as_if_it_were_the_value()
    {
        var page = OneBoard.Page(
            """
            ---
            board: X-1
            title: Bench supply
            format: 1
            parts:
              - { ref: R1, kind: carbon film resistor, resistance: 1 kΩ, tolerance: ±5 % }
            points:
              - { point: +5V, nominal: 5 V, tolerance: ±5 %, ripple_limit: 50 mV }
              - { point: +12V, nominal: 12 V, tolerance: ±5 %, ripple_limit: 50 mV }
            bench:
              - date: 2026-10-02
                readings:
                  - { part: R1, circuit: out, resistance: 1.01 kΩ }
              - date: 2026-10-03
                readings:
                  - { part: R1, circuit: out, resistance: "> 20 MΩ" }
              - date: 2026-10-04
                readings:
                  - { part: R1, circuit: out, resistance: 1.02 kΩ }
              - date: 2026-10-05
                readings:
                  - { part: R1, circuit: out, resistance: "> 20 MΩ" }
                proof:
                  - { point: +5V, voltage: 5.01 V, ripple: < 2 mV }
                  - { point: +12V, voltage: 12.02 V, ripple: 4 mV }
            ---

            """
        );
        var strips = page.QuerySelectorAll("details.v")
            .Where(verdict => verdict.QuerySelector("b")!.Words() is "> 20 MΩ" or "< 2 mV")
            .Select(verdict => verdict.QuerySelector("svg")!)
            .ToArray();
        Assert.Equal(3, strips.Length);
        Assert.All(strips, strip =>
        {
            Assert.Equal("no figure, so no place on a scale", strip.QuerySelector("title")!.Words());
            Assert.Equal(1, strip.QuerySelectorAll("use").Length);
            Assert.Empty(strip.QuerySelectorAll("path"));
        });
        var time = page.QuerySelector("#s-time")!.Closest("section")!;
        Assert.Contains("2 more readings gave no figure and are left out.", time.Words(), StringComparison.Ordinal);
        Assert.DoesNotContain("20 MΩ", time.Words(), StringComparison.Ordinal);
    }

    // Reading and limits stand in words beside the strip, its uncertainty in the working below: told twice, nobody would hear the page to
    // its end. The line of an uncertainty is the only stroke that runs along the strip.
    [Fact]
    public void A_strip_is_silent_where_words_say_all_of_it_and_the_uncertainty_that_it_draws_stands_in_the_working()
    {
        var strips = demo
            .Pages.Values.SelectMany(page => page.QuerySelectorAll("details.v > summary svg"))
            .Where(strip => strip.GetAttribute("role") != "img")
            .ToArray();
        Assert.All(strips, strip => Assert.Equal(("none", string.Empty), (strip.GetAttribute("role"), strip.Words())));
        var drawn = strips
            .Where(strip => strip.QuerySelectorAll("path").Any(path => path.GetAttribute("d")!.Contains('H', StringComparison.Ordinal)))
            .ToArray();
        Assert.InRange(drawn.Length, 1, strips.Length - 1);
        Assert.All(drawn, strip => Assert.Matches("U = [0-9.]+", strip.Closest("details")!.QuerySelector("p")!.Words()));
        // In the legend of the drawings no words stand beside them.
        Assert.All(demo.Pages["about.html"].QuerySelectorAll("table[aria-label=Shapes] tbody th svg"), strip =>
            Assert.Matches("^[0-9]", strip.QuerySelector("title")!.Words())
        );
    }

    [Fact]
    public void The_rails_of_a_board_are_drawn_above_the_table_of_their_proof()
    {
        var section = demo.Pages["boards/SP-0007.html"].QuerySelector("#s-proof")!.Closest("section")!;
        Assert.Equal(["voltage", "ripple", "+80V", "-80V"], section.QuerySelectorAll("svg.plot text").Select(label => label.Words()));
        Assert.Equal(
            ["i", "i", "i", "i"],
            section.QuerySelectorAll("svg.plot use").Select(use => use.GetAttribute("href")![1..]).Where(shape => shape == "i")
        );
    }

    [Fact]
    public void A_life_on_the_calendar_has_its_dates_in_its_row() =>
        Assert.All(demo.Pages["boards/SP-0011.html"].QuerySelector("#s-life")!.Closest("section")!.QuerySelectorAll("tbody tr"), row =>
            Assert.Equal(1, row.QuerySelectorAll("svg.bar[role=img]").Length)
        );

    [Fact]
    public void Ages_at_failure_are_drawn_beside_their_table() =>
        Assert.NotEmpty(demo.Pages["families.html"].QuerySelector("#s-ages")!.Closest("section")!.QuerySelectorAll("figure svg.plot"));
}
