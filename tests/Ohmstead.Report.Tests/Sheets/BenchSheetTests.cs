using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Html;
using Ohmstead.Report.Sheets;
using Ohmstead.Report.Tests.Html;
using Ohmstead.Report.Tests.Pages;

namespace Ohmstead.Report.Tests.Sheets;

public sealed partial class BenchSheetTests
{
    private const string Supply = """
        ---
        board: X-1
        title: Bench supply
        format: 1
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: ±20 %, rated_voltage: 40 V }
          - { ref: R1, kind: carbon film resistor, resistance: 1 kΩ, tolerance: ±5 % }
        points:
          - { point: +12V, measures: voltage, nominal: 12 V, tolerance: ±5 %, ripple_limit: 50 mV, required: yes }
          - { point: lamp, measures: result }
        hazards:
          - { hazard: charged capacitor, at: C1, voltage: 325 V, capacitance: 2200 µF, bleed: 100 kΩ }
        bench:
          - date: 2026-11-24
            by: RK
            work:
              - { at: J1, did: cleaned, with: isopropanol, dry: 48 h }
        waiting:
          - { since: 2026-11-20, for: a fuse, blocks: power }
        ---

        """;

    private static readonly DateOnly Today = new(2026, 11, 25);

    [Fact]
    public void What_can_hurt_comes_before_everything_else_and_a_figure_is_no_permission()
    {
        var body = Sheet(Supply).Body!;
        var caution = body.QuerySelector(".caution")!;
        Assert.True(caution.Index() < body.QuerySelector("table")!.Index());
        // 2200 µF ±20 % may be 2640 µF: t = RC ln(U/60 V) = 100 kΩ × 2640 µF × ln(325/60) = 446.02 s, worked by hand.
        Assert.Contains("447 s", caution.Words(), StringComparison.Ordinal);
        Assert.Contains("defer to local codes", caution.Words(), StringComparison.Ordinal);
    }

    // 2200 µF ±20 % ends at exactly 1760 µF and 2640 µF; 1 kΩ ±5 % at 950 Ω and 1.05 kΩ; 12 V ±5 % at 11.4 V and 12.6 V.
    [Theory]
    [InlineData("C1", "1760 µF … 2640 µF")]
    [InlineData("R1", "950 Ω … 1.05 kΩ")]
    [InlineData("+12V", "11.4 V … 12.6 V")]
    [InlineData("+12V", "at most 50 mV")]
    public void The_limits_are_worked_out_beforehand_with_room_for_the_reading(string place, string limit)
    {
        var rows = Sheet(Supply)
            .QuerySelectorAll("tbody")
            .First(body => body.QuerySelector("th")!.Words().StartsWith(place, StringComparison.Ordinal))
            .QuerySelectorAll("tr");
        var row = Assert.Single(rows, row => row.Words().Contains(limit, StringComparison.Ordinal));
        Assert.Equal(string.Empty, row.QuerySelector("td.write")!.Words());
    }

    [Fact]
    public void The_last_reading_is_that_of_the_part_that_sits_there()
    {
        const string replaced = """
              - date: 2026-10-02
                readings:
                  - { part: C1, circuit: out, capacitance: 1204 µF }
                  - { part: R1, circuit: out, resistance: open }
                work:
                  - { part: C1, did: replaced, lot: L-1, polarity: schematic }
              - date: 2026-11-24
            """;
        var sheet = Sheet(Supply.Replace("  - date: 2026-11-24", replaced, StringComparison.Ordinal)).Body!.Words();
        Assert.DoesNotContain("1204 µF", sheet, StringComparison.Ordinal);
        Assert.Contains("last: open, outside", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_polarised_part_has_a_box_for_each_way_of_evidence_and_none_for_the_print()
    {
        var ways = Sheet(Supply).QuerySelectorAll("table[aria-label^='Which way round'] .tick").Select(tick => tick.Words());
        Assert.Equal(["schematic", "continuity to ground plane", "measured in circuit", "photograph before removal", "other unit"], ways);
    }

    [Theory]
    [InlineData(25, true)]
    [InlineData(26, false)]
    public void A_wash_of_two_days_ago_is_dry_and_one_of_yesterday_is_not(int day, bool isDrying)
    {
        var text = Sheet(Supply, new DateOnly(2026, 11, day)).Body!.Words();
        Assert.Equal(
            isDrying,
            text.Contains("Still drying: J1, wet on 2026-11-24, to dry for 48 h; no power before 2026-11-26.", StringComparison.Ordinal)
        );
        Assert.Contains("for a fuse", text, StringComparison.Ordinal);
    }

    // Looked at on 2026-03-15 and to be looked at every six months: by 2026-09-15.
    [Fact]
    public void A_look_that_is_overdue_stands_beside_the_state() =>
        Assert.Equal(
            "Where it stands: fit to run; its inspection is overdue since 2026-09-15",
            Sheet(EvidenceSectionTests.Sound, workshop: Judged.LookEvery("6 months"))
                .QuerySelectorAll("h2")
                .Select(heading => heading.Words())
                .First(text => text.StartsWith("Where", StringComparison.Ordinal))
        );

    [Fact]
    public void A_decision_that_did_not_know_a_later_reading_is_told_with_that_reading() =>
        Assert.Contains(
            "'watch': decided before the reading of 2026-10-03, which it does not answer. Next: replace it",
            Sheet(EvidenceSectionTests.ReadAgain("47 µF")).Body!.Words(),
            StringComparison.Ordinal
        );

    [Fact]
    public void It_stands_alone_and_follows_no_style_but_its_own()
    {
        var page = Sheet(Supply);
        Assert.Empty(page.QuerySelectorAll("script, link, img, iframe, object, [src], [href], [style]"));
        var style = page.QuerySelector("style")!.Words();
        Assert.DoesNotContain("url(", style, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", style, StringComparison.Ordinal);
        var policy = page.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content");
        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'",
            policy
        );
    }

    [Fact]
    public void It_styles_every_class_that_it_uses()
    {
        var page = Sheet(Supply);
        var styled = Selector()
            .Matches(page.QuerySelector("style")!.Words())
            .Select(match => match.Groups["name"].Value)
            .ToHashSet(StringComparer.Ordinal);
        Assert.Subset(styled, page.All.SelectMany(element => element.ClassList).ToHashSet(StringComparer.Ordinal));
    }

    [Fact]
    public void Words_of_a_record_stay_words()
    {
        var page = Sheet(Supply.Replace("title: Bench supply", "title: \"</style><script>alert(1)</script>\"", StringComparison.Ordinal));
        Assert.Empty(page.QuerySelectorAll("script"));
        Assert.Contains("<script>alert(1)</script>", page.QuerySelector("h1")!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_paper_is_named_to_the_printer()
    {
        Assert.Contains("size: A4", Sheet(Supply).QuerySelector("style")!.Words(), StringComparison.Ordinal);
        Assert.Contains("size: letter", Sheet(Supply, paper: Paper.Letter).QuerySelector("style")!.Words(), StringComparison.Ordinal);
    }

    private static IDocument Sheet(string record, DateOnly? today = null, Paper? paper = null, Workshop? workshop = null)
    {
        using var buffer = new PageBuffer();
        BenchSheet.Write(
            buffer,
            Judged.Board(record, workshop, today ?? Today),
            paper ?? Paper.A4,
            today ?? Today,
            Workshop.Empty.Collection
        );
        return new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(Encoding.UTF8.GetString(buffer.Written));
    }

    [GeneratedRegex(@"\.(?<name>[a-z]+)(?=[ ,:{.])", RegexOptions.ExplicitCapture)]
    private static partial Regex Selector();
}
