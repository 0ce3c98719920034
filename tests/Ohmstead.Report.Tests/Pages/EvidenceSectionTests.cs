using AngleSharp.Dom;
using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>Why a board may be switched on, on its page: entry by entry, and where each of them stands.</summary>
public sealed class EvidenceSectionTests
{
    internal const string Sound = """
        ---
        board: X-1
        title: Bench supply
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V }
          - { ref: C2, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V }
          - { ref: R1, kind: carbon film resistor, resistance: 1 kΩ, tolerance: ±5 % }
        points:
          - { point: +12V, measures: voltage, nominal: 12 V, tolerance: ±5 %, required: yes }
        bench:
          - date: 2026-03-14
            by: RK
            readings:
              - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }
              - { part: C2, circuit: out, frequency: 120 Hz, capacitance: 460 µF }
            work:
              - { part: R1, did: replaced, new_part: { kind: carbon film resistor, resistance: 1 kΩ, tolerance: ±5 % } }
          - date: 2026-03-15
            by: RK
            readings:
              - { part: R1, state: as left, circuit: out, resistance: 1.01 kΩ }
            proof:
              - { point: +12V, voltage: 12.03 V }
        ---

        """;

    /// <summary>The same board: C1 was read a little low, was to be watched by decision, and was read again.</summary>
    internal static string ReadAgain(string capacitance) =>
        Sound
            .Replace("capacitance: 451 µF }", "capacitance: 371 µF }", StringComparison.Ordinal)
            .Replace(
                "    work:\n",
                "    decided:\n      - { part: C1, decision: watch, because: it was 380 µF when new }\n    work:\n",
                StringComparison.Ordinal
            )
            .Replace("---\n\n", string.Empty, StringComparison.Ordinal)
            .TrimEnd('-', '\n')
        + $"\n  - date: 2026-10-03\n    by: RK\n    readings:\n      - {{ part: C1, circuit: out, frequency: 120 Hz, capacitance: "
        + $"{capacitance} }}\n---\n";

    [Fact]
    public void A_board_that_is_fit_to_run_says_why_it_may_be_switched_on_right_after_its_state()
    {
        var page = OneBoard.Page(Sound);
        var section = Section(page);
        Assert.Equal("Why it may be switched on", section.QuerySelector("h2")!.Words());
        // Between them the line that leads on.
        Assert.Equal(page.QuerySelector("nav.jump"), section.PreviousElementSibling);
        Assert.Equal(page.QuerySelector("main header.opening"), section.PreviousElementSibling!.PreviousElementSibling);
        Assert.Equal("s-cautions", section.NextElementSibling!.QuerySelector("h2")!.Id);
        Assert.Null(section.QuerySelector("details")!.GetAttribute("open"));
    }

    // Where a figure stands, the closing line of the cautions stands too.
    [Fact]
    public void What_it_says_is_no_permission_to_touch() =>
        Assert.Contains("never permission to touch", Section(OneBoard.Page(Sound)).NextElementSibling!.Words(), StringComparison.Ordinal);

    [Fact]
    public void What_a_kind_asks_is_told_once_and_each_reading_is_led_to()
    {
        var page = OneBoard.Page(Sound);
        var kind = Section(page)
            .QuerySelectorAll("tbody")
            .Single(body => body.Words().Contains("nothing that was read of it is outside", StringComparison.Ordinal));
        Assert.StartsWith(
            "No reading of what sits there is outside its limit",
            Assert.Single(kind.QuerySelectorAll("th[scope=rowgroup]")).Words(),
            StringComparison.Ordinal
        );
        var rows = kind.QuerySelectorAll("tr").Skip(1).ToArray();
        Assert.Equal(["C1, C2", "R1"], rows.Select(row => row.QuerySelector("th")!.Words()));
        Assert.Equal(["2026-03-14", "2026-03-15"], rows.Select(row => row.QuerySelector("td:last-child")!.Words()));
        // A verdict that stands is told in full in the row of its part.
        Assert.Contains("451 µF", Entry(page, rows[0].QuerySelector("th a")!).Words(), StringComparison.Ordinal);
        Assert.Equal("v-2026-03-14", Entry(page, rows[0].QuerySelector("td:last-child a")!).Id);
    }

    [Fact]
    public void Work_and_proofs_lead_to_their_visit_and_say_what_was_done()
    {
        var page = OneBoard.Page(Sound);
        // The way to a visit is told where its day is named first.
        var ways = Section(page).QuerySelectorAll("details td:last-child a");
        Assert.Equal(["2026-03-14", "2026-03-15"], ways.Select(way => way.Words()));
        Assert.All(ways, way => Assert.StartsWith(way.Words(), Entry(page, way).QuerySelector("h3")!.Words(), StringComparison.Ordinal));
        var proof = Row(page, "+12V proved: 12.03 V");
        Assert.Equal(("+12V", "2026-03-15"), (proof.QuerySelector("th")!.Words(), proof.QuerySelector("td:last-child")!.Words()));
        Assert.Equal("2026-03-14", Row(page, "a part sits there: replaced").QuerySelector("td:last-child")!.Words());
    }

    [Fact]
    public void What_does_not_apply_stands_with_the_reason() =>
        Assert.Contains(Section(OneBoard.Page(Sound)).QuerySelectorAll("details li"), line =>
            line.Words().Trim() == "R1: carbon film resistor: either way round is right"
        );

    [Fact]
    public void A_board_that_may_not_run_tells_first_what_stands_open_with_the_next_step_and_what_is_met_behind_a_fold()
    {
        var section = Section(
            OneBoard.Page(Sound.Replace("{ point: +12V, voltage: 12.03 V }", "{ point: +12V, voltage: 14.2 V }", StringComparison.Ordinal))
        );
        Assert.Equal("What stands open, and what is met", section.QuerySelector("h2")!.Words());
        var open = section.QuerySelector("table")!;
        Assert.Null(open.Closest("details"));
        Assert.Contains(
            "find the fault, mend it, prove it again",
            open.QuerySelector("td[data-column='What next']")!.Words(),
            StringComparison.Ordinal
        );
        Assert.NotNull(section.QuerySelector("details table"));
    }

    // Looked at on 2026-03-15 and to be looked at every six months: by 2026-09-15.
    [Theory]
    [InlineData(15, "fit to run")]
    [InlineData(16, "fit to run; its inspection is overdue since 2026-09-15")]
    public void A_look_that_is_overdue_stands_beside_the_state(int day, string expected)
    {
        var page = OneBoard.Page(Sound, Judged.LookEvery("6 months"), new(2026, 9, day));
        Assert.Equal(expected, page.QuerySelector("p.lead")!.Words().Trim());
        Assert.Equal(day == 16, Section(page).Words().Contains("nobody has looked since", StringComparison.Ordinal));
    }

    [Fact]
    public void The_collection_counts_the_boards_whose_look_is_overdue_beside_those_that_are_fit_to_run()
    {
        var workshop = Judged.LookEvery("6 months");
        BoardSummary Of(string record, string number) =>
            BoardSummary.From(Judged.Board(record.Replace("X-1", number, StringComparison.Ordinal), workshop));
        BoardSummary[] boards = [Of(Sound, "X-1"), Of(Sound.Replace("2026-03", "2026-10", StringComparison.Ordinal), "X-2")];
        using var buffer = new PageBuffer();
        CollectionPage.Write(
            buffer,
            new ReportContext(workshop, new HashSet<string>(StringComparer.Ordinal), Judged.Today, "0.0.0"),
            boards
        );
        var page = new AngleSharp.Html.Parser.HtmlParser().ParseDocument(System.Text.Encoding.UTF8.GetString(buffer.Written));
        Assert.Equal("All 2 boards are fit to run, 1 of them with the inspection overdue.", page.QuerySelector("p.lead")!.Words());
        Assert.Equal("1 of them with the inspection overdue", page.QuerySelector(".tiles li p")!.Words());
        Assert.Equal("fit to run; its inspection is overdue since 2026-09-15", page.QuerySelector("#board-X-1 td")!.Words().Trim());
        Assert.Equal("fit to run", page.QuerySelector("#board-X-2 td")!.Words().Trim());
    }

    // 470 µF -20 % ends at 376 µF: 371 µF was known when it was decided to watch the part, 47 µF was not.
    [Theory]
    [InlineData("47 µF", true)]
    [InlineData("380 µF", false)]
    public void A_decision_is_told_with_the_later_reading_that_it_does_not_answer(string capacitance, bool isUnanswered)
    {
        var page = OneBoard.Page(ReadAgain(capacitance));
        var decided = page.QuerySelectorAll("#p-C1 td p")
            .Single(line => line.Words().StartsWith("Decided", StringComparison.Ordinal))
            .Words();
        Assert.Equal(
            "Decided: watch, because it was 380 µF when new"
                + (isUnanswered ? "; decided before the reading of 2026-10-03, which it does not answer" : string.Empty),
            decided
        );
        Assert.Equal(
            isUnanswered,
            Section(page).QuerySelector("table")!.Words().Contains("decided before the reading of 2026-10-03", StringComparison.Ordinal)
        );
    }

    // Twice 371 µF: the decision knew the first of them only.
    [Fact]
    public void A_part_whose_decision_does_not_answer_a_later_reading_is_needed_again()
    {
        Assert.Empty(Judged.Board(ReadAgain("380 µF")).Needs);
        Assert.Equal("C1", Assert.Single(Judged.Board(ReadAgain("47 µF")).Needs).Reference);
    }

    // A fuse is never mended: nothing but another one answers it, so one is needed.
    [Fact]
    public void A_part_whose_obligation_nothing_but_another_part_meets_is_needed()
    {
        var bridged = Sound
            .Replace(
                "{ ref: R1, kind: carbon film resistor, resistance: 1 kΩ, tolerance: ±5 % }",
                "{ ref: R1, kind: fuse, current: 250 mA, rated_voltage: 250 V }",
                StringComparison.Ordinal
            )
            .Replace(
                "{ part: R1, did: replaced, new_part: { kind: carbon film resistor, resistance: 1 kΩ, tolerance: ±5 % } }",
                "{ part: R1, did: DONE, with: a strand of wire }",
                StringComparison.Ordinal
            )
            .Replace("resistance: 1.01 kΩ", "resistance: 0.5 Ω", StringComparison.Ordinal);
        Assert.Equal("R1", Assert.Single(Judged.Board(bridged.Replace("DONE", "repaired", StringComparison.Ordinal)).Needs).Reference);
        Assert.Empty(Judged.Board(bridged.Replace("DONE", "cleaned", StringComparison.Ordinal)).Needs);
    }

    // The state follows from a wait whose end cannot be, and so does the list of what waits. The day of the run is 2026-11-25.
    [Theory]
    [InlineData("2026-11-24", 0)]
    [InlineData("2026-11-25", 0)]
    [InlineData("2026-11-26", 1)]
    [InlineData("2026-10-31", 1)]
    public void A_wait_that_is_said_to_end_on_a_day_that_cannot_be_is_still_waited_for(string until, int waits) =>
        Assert.Equal(
            waits,
            Judged
                .Board(
                    Sound.Replace(
                        "bench:\n",
                        $"waiting:\n  - {{ since: 2026-11-01, for: a fuse, until: {until} }}\nbench:\n",
                        StringComparison.Ordinal
                    )
                )
                .OpenWaits.Length
        );

    [Fact]
    public void Words_of_a_record_stay_words()
    {
        var page = OneBoard.Page(
            ReadAgain("371 µF")
                .Replace("it was 380 µF when new", "\"<img src=x onerror=alert(1)>\"", StringComparison.Ordinal)
                .Replace(
                    "    readings:\n      - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 371 µF }\n      - { part: C2",
                    "    found:\n      - { at: \"J1<script>\", what: \"</details><script>alert(1)</script>\", severity: major }\n    "
                        + "readings:\n      - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 371 µF }\n      - { part: C2",
                    StringComparison.Ordinal
                )
        );
        Harmless.Check(page.DocumentElement);
        Assert.Contains("</details><script>alert(1)</script>", Section(page).Words(), StringComparison.Ordinal);
    }

    private static IElement Section(IDocument page) => page.QuerySelector("#s-evidence")!.Closest("section")!;

    private static IElement Row(IDocument page, string words) =>
        Section(page).QuerySelectorAll("details tr").Single(row => row.Words().Contains(words, StringComparison.Ordinal));

    private static IElement Entry(IDocument page, IElement link) => page.GetElementById(link.GetAttribute("href")![1..])!;
}
