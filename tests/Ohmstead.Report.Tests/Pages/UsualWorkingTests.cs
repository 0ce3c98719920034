using System.Text;
using AngleSharp.Dom;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Tests.Html;
using Ohmstead.Yaml;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>What most workings of a board's page have in common stands once above them, and a working tells what is its own.</summary>
public sealed class UsualWorkingTests
{
    private const string Instruments = """
        instruments:
          - id: meter-1
            what: multimeter
            calibrations: [{ date: 2026-01-05, valid: 12 months, certificate: K-1 }]
            accuracy: [{ measures: resistance, error: 0.1 % }]
          - id: meter-2
            what: multimeter
            calibrations: [{ date: 2026-01-05, valid: 12 months, certificate: K-2 }]
            accuracy: [{ measures: resistance, error: 1 % }]
          - id: bridge-1
            what: component bridge
            calibrations: [{ date: 2026-01-05, valid: 12 months, certificate: K-3 }]
            accuracy: [{ measures: esr, error: 1 %, fixed: 10 mΩ }]
          - id: loop-1
            what: ESR tester for use in circuit
            calibrations: [{ date: 2026-01-05, valid: 12 months, certificate: K-4 }]
            accuracy: [{ measures: esr, error: 5 %, fixed: 20 mΩ }]

        """;

    // JCGM 100:2008, 4.3.7: U = 2 x a / sqrt(3), of 0.1 % of 1.01 kΩ 1.17 Ω and of 1 % of 3.96 kΩ 45.7 Ω. Room: 40 of 1050 Ω, 160 of
    // 3800 Ω.
    [Fact]
    public void The_limit_and_the_error_that_most_have_stand_above_and_another_error_in_its_working()
    {
        var page = Resistors(4);
        var above = page.QuerySelector("section:has(#s-parts) p.fine:has(a[href^='#q-'])")!.Words();
        Assert.Contains(" Where a working names no a, it is: resistance 0.1 %. ", above, StringComparison.Ordinal);
        Assert.Contains(" Where a working names no limit, it is delivery limit 1, the marking. ", above, StringComparison.Ordinal);
        Assert.Equal("1 kΩ 5 %. Room 3.8 %. U = 1.17 Ω.", Working(page, "R1"));
        Assert.Equal("4 kΩ 5 %. Room 4.2 %. U = 45.7 Ω, a = 1 %.", Working(page, "R4"));
    }

    [Fact]
    public void Of_few_readings_each_tells_its_limit_and_its_error()
    {
        var page = Resistors(2);
        Assert.DoesNotContain("Where ", page.QuerySelector("section:has(#s-parts) p.fine")!.Words()[6..], StringComparison.Ordinal);
        Assert.Equal("Delivery limit 1: 1 kΩ 5 %. Room 3.8 %. U = 1.17 Ω, a = 0.1 %.", Working(page, "R1"));
    }

    // U of 5 % of 0.1 Ω and 20 mΩ: 28.9 mΩ; of 5 % of 0.2 Ω and 20 mΩ: 34.6 mΩ.
    [Fact]
    public void Readings_that_prove_nothing_share_a_line_in_which_each_has_its_figures_and_its_address()
    {
        var page = Page(
            """
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V }
              - { ref: C2, kind: aluminium electrolytic, capacitance: 220 µF, tolerance: ±20 %, rated_voltage: 25 V }
            bench:
              - date: 2026-03-14
                instrument: loop-1
                readings:
                  - { part: C1, circuit: in, frequency: 100 kHz, esr: 0.1 Ω }
                  - { part: C2, circuit: in, frequency: 100 kHz, esr: 0.2 Ω }
              - date: 2026-03-15
                instrument: bridge-1
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, esr: 0.1 Ω }
                  - { part: C2, circuit: out, frequency: 120 Hz, esr: 0.2 Ω }

            """
        );
        var visit = page.QuerySelector("#v-2026-03-14")!;
        Assert.Null(visit.QuerySelector("table"));
        var line = visit.QuerySelector("p.told.quiet")!;
        Assert.Matches(
            @"^proves nothing: ESR \(a = 5 % \+ 20 mΩ; .*\): C1 0\.1 Ω, at most .* U = 28\.9 mΩ; C2 0\.2 Ω, at most .* U = 34\.6 mΩ$",
            line.Words()
        );
        Assert.Equal(
            [("#p-C1", "r-C1-260314-esr-i"), ("#p-C2", "r-C2-260314-esr-i")],
            line.QuerySelectorAll("a").Select(link => (link.GetAttribute("href")!, link.Id!))
        );
        Assert.Matches("limit 1: .* / \\(2 pi x 120 Hz x 470 µF\\)", Working(page, "C1"));
    }

    private static string Working(IDocument page, string part) => page.QuerySelector($"#p-{part} details.v p")!.Words();

    private static IDocument Resistors(int count)
    {
        var numbers = Enumerable.Range(1, count).ToArray();
        var parts = numbers.Select(number =>
            $"  - {{ ref: R{number}, kind: metal film resistor, resistance: {number} kΩ, tolerance: 5 % }}\n"
        );
        var readings = numbers.Select(number =>
            number == 4
                ? "      - { part: R4, circuit: out, resistance: 3.96 kΩ, instrument: meter-2 }\n"
                : $"      - {{ part: R{number}, circuit: out, resistance: {number}.01 kΩ }}\n"
        );
        return Page(
            $"{string.Concat(parts)}bench:\n  - date: 2026-03-14\n    instrument: meter-1\n    readings:\n{string.Concat(readings)}"
        );
    }

    private static IDocument Page(string record)
    {
        var text = Encoding.UTF8.GetBytes(Instruments);
        var nodes = new YamlNodeReader().Read("instruments.yaml", text, FileForm.Yaml, ReadingLimits.Usual);
        var instruments = FileBinding.Instruments("instruments.yaml", nodes);
        Assert.Empty(instruments.Findings);
        return OneBoard.Page(
            $"---\nboard: X-1\ntitle: Bench supply\nparts:\n{record}---\n",
            new Workshop(CollectionFile.Nameless, instruments.File, null, [])
        );
    }
}
