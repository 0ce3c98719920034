using System.Globalization;
using System.Text;
using AngleSharp.Dom;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Tests.Html;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>One thing stands in one place of a board's page; what else speaks of it leads there.</summary>
public sealed class ToldOnceTests
{
    private const string InCircuit = "in circuit it reads inside its limits: what lies beside it may hide a bad one; so it proves nothing";

    private const string Values = "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, temperature: 105 °C, life: 2000 h";

    private const string Start = """
        ---
        board: X-1
        title: Bench supply
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V }
          - { ref: C2, kind: aluminium electrolytic, capacitance: 220 µF, tolerance: ±20 %, rated_voltage: 25 V }
          - { ref: Q1, kind: transistor, type: TN-474 }
          - { ref: Q2, kind: transistor, type: TN-474 }
        bench:

        """;

    [Fact]
    public void How_all_readings_of_a_visit_were_taken_is_told_once_and_a_row_tells_what_is_its_own()
    {
        var visit = Visit(
            "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }",
            "{ part: C2, circuit: out, frequency: 1 kHz, capacitance: 210 µF, note: read twice }"
        );
        Assert.Equal("All readings: as found, out of circuit.", visit.QuerySelector("p.fine")!.Words());
        Assert.Equal("inside capacitance (120 Hz): C1 451 µF", visit.QuerySelector("p.told")!.Words());
        Assert.Equal(["Of", "How", "Verdicts"], visit.QuerySelectorAll("thead th").Select(head => head.Words()));
        Assert.Equal(["1 kHz"], visit.QuerySelectorAll("tbody tr").Select(row => row.QuerySelector("td")!.Words()));
    }

    [Fact]
    public void Where_no_row_has_anything_of_its_own_there_is_no_column_for_it()
    {
        var visit = Visit(
            "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF, note: read twice }",
            "{ part: C2, circuit: out, frequency: 120 Hz, capacitance: 210 µF, note: read twice }"
        );
        Assert.Equal("All readings: as found, out of circuit, 120 Hz.", visit.QuerySelector("p.fine")!.Words());
        Assert.Equal(["Of", "Verdicts"], visit.QuerySelectorAll("thead th").Select(head => head.Words()));
    }

    // Both are told in full with their parts. Q1 has no limit, and says something else.
    [Fact]
    public void Readings_that_say_the_same_and_are_told_with_their_parts_share_a_line()
    {
        var visit = Visit(
            "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }",
            "{ part: C2, circuit: out, frequency: 120 Hz, capacitance: 210 µF }"
        );
        Assert.Null(visit.QuerySelector("table"));
        var line = Assert.Single(visit.QuerySelectorAll("p.told"));
        Assert.Equal("inside capacitance: C1 451 µF; C2 210 µF", line.Words());
        Assert.Equal(["#p-C1", "#p-C2"], line.QuerySelectorAll("a").Select(link => link.GetAttribute("href")));
    }

    [Fact]
    public void Readings_that_were_taken_in_different_ways_have_a_line_for_each()
    {
        var visit = Visit(
            "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }",
            "{ part: C2, circuit: out, frequency: 1 kHz, capacitance: 210 µF }"
        );
        Assert.Null(visit.QuerySelector("table"));
        Assert.Equal(
            ["inside capacitance (120 Hz): C1 451 µF", "inside capacitance (1 kHz): C2 210 µF"],
            visit.QuerySelectorAll("p.told").Select(line => line.Words())
        );
    }

    [Fact]
    public void A_reading_that_still_stands_has_its_address_in_the_row_of_its_part()
    {
        const string found = "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }";
        var part = Page(Day("2026-03-14", found)).QuerySelector("#r-C1-260314-c-o")!;
        Assert.Equal("p-C1", part.Closest("tr")!.Id);
        var later = Page(Day("2026-03-14", found) + Day("2026-03-15", found.Replace("451", "452", StringComparison.Ordinal)));
        Assert.Equal("v-2026-03-14", later.QuerySelector("#r-C1-260314-c-o")!.Closest("section")!.Id);
    }

    [Fact]
    public void What_a_limit_is_and_its_source_stand_once_and_each_verdict_leads_there()
    {
        var page = Page(
            Day(
                "2026-03-14",
                "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }",
                "{ part: C2, circuit: out, frequency: 120 Hz, capacitance: 210 µF }"
            )
        );
        var links = page.QuerySelectorAll("details.v p a").Where(link => link.Words().Contains("limit", StringComparison.Ordinal));
        Assert.Equal(["Delivery limit 1", "Delivery limit 1"], links.Select(link => link.Words()));
        Assert.All(links, link => Assert.Equal("#l-1", link.GetAttribute("href")));
        var limit = page.QuerySelector("#l-1")!;
        Assert.StartsWith("delivery limit, the marking (source ", limit.Words(), StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector(limit.QuerySelector("a")!.GetAttribute("href")!));
    }

    [Fact]
    public void A_reading_alone_tells_in_its_row_how_it_was_taken()
    {
        var visit = Visit("{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF, note: read twice }");
        Assert.Null(visit.QuerySelector("p.fine"));
        Assert.Equal("as found, out of circuit, 120 Hz", visit.QuerySelector("tbody td")!.Words());
    }

    // Both were read again out of circuit, so that the readings in circuit are told at the bench and nowhere else.
    [Fact]
    public void Why_all_of_a_visit_prove_nothing_is_told_once_above_their_table()
    {
        var visit = InThenOut("frequency: 100 kHz, esr: 0.2 Ω", "frequency: 120 Hz, esr: 0.2 Ω");
        Assert.Equal(1, Times(visit.Words(), InCircuit));
        Assert.Equal($"Each that proves nothing: {InCircuit}.", visit.QuerySelectorAll("p.fine")[^1].Words());
        var told = visit.QuerySelectorAll("td p.told.quiet").Select(line => line.Words()).ToArray();
        Assert.Equal(2, told.Length);
        Assert.All(told, line => Assert.Matches("^proves nothing: ESR 0\\.[12] Ω, at most .*Ω\\. (End-of-life l|L)imit ", line));
    }

    // What lies beside a part may hide a bad ESR, and it raises a capacitance: two reasons.
    [Fact]
    public void A_reason_that_not_all_share_stays_with_its_reading()
    {
        var visit = InThenOut("frequency: 120 Hz, capacitance: 215 µF", "frequency: 120 Hz, capacitance: 215 µF");
        Assert.DoesNotContain("Each that", visit.Words(), StringComparison.Ordinal);
        var verdicts = visit.QuerySelectorAll("td p.told.quiet").Select(verdict => verdict.Words()).ToArray();
        Assert.Equal(2, verdicts.Length);
        Assert.All(verdicts, verdict => Assert.Contains("n circuit it reads", verdict, StringComparison.Ordinal));
    }

    [Fact]
    public void What_stands_in_the_row_of_its_part_is_one_line_at_the_bench_and_the_name_leads_there()
    {
        var page = Page(Day("2026-03-14", "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }"));
        var line = page.QuerySelector("#v-2026-03-14 p.told")!;
        Assert.Equal("inside capacitance (as found, out of circuit, 120 Hz): C1 451 µF", line.Words());
        Assert.Equal("#p-C1", Assert.Single(line.QuerySelectorAll("a")).GetAttribute("href"));
        Assert.Contains("451 µF", page.QuerySelector("#p-C1 details.v")!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_usually_accepted_of_a_kind_is_told_at_the_first_of_it()
    {
        var page = Page(Day("2026-03-14", "{ part: Q1, circuit: out, gain: 163 }", "{ part: Q2, circuit: out, gain: 277 }"));
        Assert.Equal(1, Times(page.QuerySelector("main")!.Words(), "Usually accepted, "));
        var second = page.QuerySelector("#p-Q2 details.v")!;
        Assert.Equal("As told at Q1.", second.QuerySelector("p")!.Words().Trim());
        Assert.Equal("#p-Q1", second.QuerySelector("p a")!.GetAttribute("href"));
    }

    // 470 µF begins the working of the marking; the limit that is written for the place does not name it.
    [Theory]
    [InlineData("", ". Room 19.9 %.")]
    [InlineData(", low: 300 µF", ". Nominal 470 µF, room 50.3 %.")]
    public void The_nominal_value_is_told_where_the_working_of_the_limit_does_not_begin_with_it(string limit, string expected)
    {
        var page = OneBoard.Page(
            Start.Replace("470 µF, tolerance: ±20 %", $"470 µF, tolerance: ±20 %{limit}", StringComparison.Ordinal)
                + Day("2026-03-14", "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 451 µF }")
                + "---\n"
        );
        Assert.Contains(expected, page.QuerySelector("#p-C1 details.v p")!.Words(), StringComparison.Ordinal);
    }

    [Fact]
    public void Places_that_were_shown_in_the_same_way_are_named_together()
    {
        var start = Start.Replace("ref: Q1, kind: transistor", "ref: C3, kind: aluminium electrolytic", StringComparison.Ordinal);
        var bench = Replaced(("C1", "polarity: schematic"), ("C2", "polarity: other unit"), ("C3", "polarity: schematic"));
        var told = Section(OneBoard.Page($"{start}{bench}---\n"), "evidence").Words();
        Assert.Contains("way round established: C1, C3 by schematic; C2 by other unit", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Lots_that_fit_for_the_same_reasons_and_lots_that_do_not_tell_them_once()
    {
        var workshop = Drawer(Lot("L-1", "25 V", 2), Lot("L-2", "25 V", 5), Lot("L-3", "16 V", 5), Lot("L-4", "16 V", 5));
        var record = Start + Day("2026-03-14", "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 200 µF }") + "---\n";
        var page = OneBoard.Parsed(
            OneBoard.Bytes(record, workshop, drawer: Assessment.Fit.Drawer.Count(workshop, new LotUse([]), Judged.Today))
        );
        var fold = page.QuerySelector("#p-C1 details.fold")!;
        Assert.Equal("Fits from the drawer: L-1 (2 left), L-2 (5 left)", fold.QuerySelector("summary")!.Words());
        var lines = fold.QuerySelectorAll("li").Select(line => line.Words()).ToArray();
        Assert.Single(lines, line => line.StartsWith("L-1, L-2, aluminium electrolytic 470 µF 20 % 25 V ", StringComparison.Ordinal));
        Assert.Single(lines, line => line.StartsWith("L-3, L-4 do not: voltage: 16 V", StringComparison.Ordinal));
        Assert.Equal(1, Times(fold.Words(), "25 V is not under the mark of 25 V"));
        Assert.Equal(1, Times(fold.Words(), "16 V is under the mark of 25 V"));
    }

    // 40 °C, taken 5 K warmer: 2000 h x 2^((105 - 45) / 10) = 2000 h x 64 = 128000 h. The other step asks for the voltage on each.
    [Fact]
    public void The_step_with_which_all_lives_begin_is_told_once()
    {
        var record =
            Start
                .Replace("470 µF, tolerance: ±20 %", "470 µF, tolerance: ±20 %, working_voltage: 12 V", StringComparison.Ordinal)
                .Replace("220 µF, tolerance: ±20 %", "220 µF, tolerance: ±20 %, working_voltage: 15 V", StringComparison.Ordinal)
                .Replace("parts:\n", "duty: { hours_per_year: 2000, temperature: 40 °C }\nparts:\n", StringComparison.Ordinal)
            + Replaced(("C1", "lot: L-1, polarity: schematic"), ("C2", "lot: L-1, polarity: schematic"))
            + "---\n";
        var section = Section(OneBoard.Page(record, Drawer(Lot("L-1", "25 V", 9))), "life");
        const string step = "2000 h x 2^((105 - 45) / 10) = 128000 h";
        Assert.Equal(1, Times(section.Words(), step));
        var fine = section.QuerySelectorAll("p.fine").Select(line => line.Words());
        var common = fine.Single(line => line.StartsWith("For all of them", StringComparison.Ordinal));
        Assert.Contains(step, common, StringComparison.Ordinal);
        // They went in on one day and have one span, so that they share a row; how both end is told once, and the source of both.
        var row = Assert.Single(section.QuerySelectorAll("tbody tr"));
        Assert.Equal("C1, C2", row.QuerySelector("th")!.Words());
        var lines = row.QuerySelectorAll("li").Select(line => line.Words().Trim()).ToArray();
        Assert.Equal(3, lines.Length);
        Assert.Matches(@"^C1: .*linear voltage form: 2000 h x 2\^\(\(105 - 35\) / 10\) / [0-9.]+ = [0-9.]+ h$", lines[0]);
        Assert.Matches(@"^C2: .*linear voltage form: 2000 h x 2\^\(\(105 - 35\) / 10\) / [0-9.]+ = [0-9.]+ h$", lines[1]);
        Assert.Matches(@"^each, at 2000 h a year .* \(source \d+\)$", lines[2]);
        Assert.NotNull(row.QuerySelector("li a[href^='#q-']"));
    }

    private static IElement Visit(params string[] readings) => Page(Day("2026-03-14", readings)).QuerySelector("#v-2026-03-14")!;

    // The first visit, to which a second one is added out of circuit: what was read in circuit is then told at the bench alone.
    private static IElement InThenOut(string first, string second) =>
        Page(
                Day("2026-03-14", "{ part: C1, circuit: in, frequency: 100 kHz, esr: 0.1 Ω }", $"{{ part: C2, circuit: in, {first} }}")
                    + Day(
                        "2026-03-15",
                        "{ part: C1, circuit: out, frequency: 120 Hz, esr: 0.1 Ω }",
                        $"{{ part: C2, circuit: out, {second} }}"
                    )
            )
            .QuerySelector("#v-2026-03-14")!;

    private static IDocument Page(string bench) => OneBoard.Page($"{Start}{bench}---\n");

    private static IElement Section(IDocument page, string name) => page.QuerySelector($"#s-{name}")!.Closest("section")!;

    private static string Day(string day, params string[] readings) =>
        $"  - date: {day}\n    by: RK\n    readings:\n{string.Concat(readings.Select(reading => $"      - {reading}\n"))}";

    private static string Replaced(params (string Part, string Words)[] work) =>
        "  - date: 2026-03-14\n    work:\n"
        + string.Concat(work.Select(one => $"      - {{ part: {one.Part}, did: replaced, {one.Words} }}\n"));

    private static string Lot(string name, string volts, int quantity) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"  - {{ lot: {name}, {Values}, rated_voltage: {volts}, received: 2026-01-28, quantity: {quantity} }}\n"
        );

    private static Workshop Drawer(params string[] lots)
    {
        var text = Encoding.UTF8.GetBytes($"lots:\n{string.Concat(lots)}");
        var stock = FileBinding.Stock("stock.yaml", new YamlNodeReader().Read("stock.yaml", text, FileForm.Yaml, ReadingLimits.Usual));
        Assert.Empty(stock.Findings);
        return new Workshop(CollectionFile.Nameless, null, stock.File, []);
    }

    private static int Times(string text, string words) => text.AsSpan().Count(words);
}
