using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Tests.Fit;

/// <summary>Looking through the drawer for a place. Sums done by hand.</summary>
public sealed class FitReportTests
{
    private const string Filter =
        "kind: aluminium electrolytic, role: decoupling, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V";

    [Fact]
    public void The_nearest_lot_comes_first_and_one_with_a_doubt_last()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: tantalum, capacitance: 100 µF, rated_voltage: 63 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 35 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-3, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-4, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
            """;
        Assert.Equal(["L-4", "L-3", "L-2", "L-1"], Report(Filter, lots).Fitting.Select(candidate => candidate.Verdict.Lot));
    }

    [Fact]
    public void What_other_boards_took_is_not_there_any_more()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, received: 2026-01-28, quantity: 1 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, received: 2026-01-28, quantity: 3 }
            """;
        var other =
            $"parts:\n  - {{ ref: C1, {Filter} }}\n  - {{ ref: C2, {Filter} }}\nbench:\n  - date: 2026-03-14\n    work:\n      - {{ "
            + $"part: C1, did: replaced, lot: L-1 }}\n      - {{ part: C2, did: replaced, lot: L-2 }}";
        Assert.Equal([("L-2", 2)], Report(Filter, lots, other).Fitting.Select(candidate => (candidate.Verdict.Lot, candidate.Left)));
    }

    [Fact]
    public void A_lot_that_failed_or_lay_too_long_is_told_and_not_hidden()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2019-01-28, quantity: 2 }
            bench:
              - date: 2026-01-30
                readings:
                  - { lot: L-1, state: new, frequency: 120 Hz, capacitance: 61 µF }
            """;
        var report = Report(Filter, lots);
        var old = Assert.Single(report.Fitting);
        Assert.Equal(("L-2", "shelf", ReasonWeight.Doubt), (old.Verdict.Lot, old.Verdict.Reasons[0].Aspect, old.Verdict.Reasons[0].Weight));
        Assert.Equal(
            "reading: a piece failed its incoming reading of 2026-01-30 and was not scrapped",
            FitWords.Weightiest(Assert.Single(report.Refused).Verdict)
        );
    }

    // Nothing says what voltage L-2 bears.
    [Fact]
    public void A_lot_whose_rating_is_not_written_stands_apart()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, received: 2026-01-28, quantity: 2 }
            """;
        var report = Report(Filter, lots);
        Assert.Equal(["L-1"], report.Fitting.Select(candidate => candidate.Verdict.Lot));
        Assert.Equal(["L-2"], report.Unknown.Select(candidate => candidate.Verdict.Lot));
        Assert.Empty(report.Refused);
    }

    // Two 47 µF 200 V in series: 23.5 µF, 400 V, of which 0.9 is counted: 360 V for a mark of 350 V; 23.5 µF for 10 µF is 2.35 x, and
    // decoupling stands 3 x.
    [Fact]
    public void Two_in_series_serve_where_no_single_part_has_the_voltage()
    {
        const string lots =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 200 V, received: 2026-01-28, "
            + "quantity: 2 }";
        var report = Report(
            "kind: aluminium electrolytic, role: decoupling, capacitance: 10 µF, tolerance: ±20 %, rated_voltage: 350 V",
            lots
        );
        Assert.Empty(report.Fitting);
        var pair = Assert.Single(report.Together).Verdict;
        Assert.Equal("2 x L-1 in series", pair.Lot);
        Assert.Contains(pair.Reasons, reason => reason.Words.Text == "360 V is not under the mark of 350 V");
        Assert.Contains(pair.Reasons, reason => reason is { Aspect: "size", Weight: ReasonWeight.Doubt });
    }

    // Two 22 µF back to back: 11 µF bipolar.
    [Fact]
    public void Two_polar_ones_back_to_back_make_a_bipolar_one()
    {
        const string lots =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 22 µF, rated_voltage: 50 V, received: 2026-01-28, "
            + "quantity: 2 }";
        var report = Report("kind: bipolar electrolytic, role: coupling, capacitance: 10 µF, tolerance: ±20 %, rated_voltage: 50 V", lots);
        Assert.Equal(["2 x L-1 back to back"], report.Together.Select(pair => pair.Verdict.Lot));
    }

    [Fact]
    public void Nothing_is_put_together_across_the_mains()
    {
        const string lots =
            "lots:\n  - { lot: L-1, kind: suppression capacitor, capacitance: 220 nF, rated_voltage: 150 V, safety_class: X2, received: "
            + "2026-01-28, quantity: 2 }";
        Assert.Empty(
            Report(
                "kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2",
                lots
            ).Together
        );
    }

    [Fact]
    public void A_single_part_of_a_lot_is_not_two() =>
        Assert.Empty(
            Report(
                "kind: aluminium electrolytic, role: decoupling, capacitance: 10 µF, rated_voltage: 350 V",
                "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 200 V, received: 2026-01-28, "
                    + "quantity: 1 }"
            ).Together
        );

    // Bought again and again: judged once, told each by its own name, age and count. L-3 has lain longer than its shelf life.
    [Fact]
    public void Lots_that_are_alike_are_told_each_by_its_own()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 35 V, received: 2026-01-28, quantity: 9 }
              - { lot: L-3, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2019-01-28, quantity: 5 }
              - { lot: L-4, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2018-03-01, quantity: 7 }
              - { lot: L-5, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V, received: 2026-02-01, quantity: 3 }
            """;
        var report = Report(Filter, lots);
        Assert.Equal(
            [("L-1", 2), ("L-5", 3), ("L-2", 9), ("L-3", 5), ("L-4", 7)],
            report.Fitting.Select(candidate => (candidate.Verdict.Lot, candidate.Left))
        );
        Assert.Equal([0, 0, 0, 1, 1], report.Fitting.Select(candidate => candidate.Verdict.Doubts));
        Assert.Contains("2019-01-28", report.Fitting[3].Verdict.Reasons[0].Words, StringComparison.Ordinal);
        Assert.Contains("2018-03-01", report.Fitting[4].Verdict.Reasons[0].Words, StringComparison.Ordinal);
    }

    // Nothing is asked of the leads, so 2.5 mm are as good as 5 mm: then the name decides.
    [Fact]
    public void Lots_that_are_as_good_as_each_other_come_by_name()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, lead_pitch: 5 mm, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, lead_pitch: 2.5 mm, received: 2026-01-28, quantity: 2 }
              - { lot: L-3, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, lead_pitch: 5 mm, received: 2026-01-28, quantity: 2 }
            """;
        Assert.Equal(["L-1", "L-2", "L-3"], Report(Filter, lots).Fitting.Select(candidate => candidate.Verdict.Lot));
    }

    [Fact]
    public void Lots_that_were_measured_apart_are_judged_apart()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V, received: 2026-01-28, quantity: 2 }
            bench:
              - date: 2026-01-30
                readings:
                  - { lot: L-1, state: new, frequency: 100 kHz, esr: 0.8 Ω }
                  - { lot: L-2, state: new, frequency: 100 kHz, esr: 0.2 Ω }
            """;
        var report = Report(Filter + ", esr_limit: 0.5 Ω", lots);
        Assert.Equal("L-2", Assert.Single(report.Fitting).Verdict.Lot);
        Assert.Equal("ESR: 800 mΩ where at most 500 mΩ work", FitWords.Weightiest(Assert.Single(report.Refused).Verdict));
    }

    [Fact]
    public void Two_of_each_lot_that_is_alike_serve_as_long_as_it_has_two()
    {
        const string lots = """
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 200 V, received: 2026-01-28, quantity: 2 }
              - { lot: L-2, kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 200 V, received: 2026-01-28, quantity: 1 }
              - { lot: L-3, kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 200 V, received: 2026-01-28, quantity: 3 }
            """;
        var report = Report(
            "kind: aluminium electrolytic, role: decoupling, capacitance: 10 µF, tolerance: ±20 %, rated_voltage: 350 V",
            lots
        );
        Assert.Equal([("2 x L-1 in series", 2), ("2 x L-3 in series", 3)], report.Together.Select(pair => (pair.Verdict.Lot, pair.Left)));
    }

    private static FitReport Report(string part, string stock, string? other = null)
    {
        var collection = new SmallCollection([
            new(
                "markdown",
                "boards/SP-0001.md",
                0,
                $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nparts:\n  - {{ ref: X1, {part} }}\n---\n"
            ),
            .. other is null
                ? []
                : new[]
                {
                    new CaseBlock("markdown", "boards/SP-0002.md", 0, $"---\nboard: SP-0002\ntitle: Tide-gauge logger\n{other}\n---\n"),
                },
            new("yaml", "stock.yaml", 0, stock + "\n"),
        ]);
        Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        var board = collection.Boards[0];
        return FitReport.For(
            board,
            board.Place("X1")!,
            Drawer.Count(
                collection.Workshop,
                BoardSummary.UseOfLots(collection.Boards.Select(board => BoardSummary.From(board))),
                SmallCollection.Today
            )
        );
    }
}
