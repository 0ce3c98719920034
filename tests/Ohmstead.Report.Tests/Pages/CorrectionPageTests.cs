using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>An entry that was written wrongly and its correction, on the page of the board.</summary>
public sealed class CorrectionPageTests
{
    [Fact]
    public void The_page_tells_beside_what_counts_what_counts_no_more_and_why()
    {
        var page = OneBoard.Page(
            """
            ---
            board: X-1
            title: A board
            parts:
              - { ref: C12, kind: aluminium electrolytic, capacitance: 390 µF, tolerance: 20 %, rated_voltage: 25 V }
            points:
              - { point: +5V, nominal: 5 V, tolerance: 5 % }
            bench:
              - date: 2026-03-14
                readings:
                  - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 39.1 µF }
                proof:
                  - { point: +5V, voltage: 50.2 V }
              - date: 2026-03-21
                readings:
                  - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 391 µF, corrects: 2026-03-14, because: a <b>slip</b> }
                proof:
                  - { point: +5V, voltage: 5.02 V, corrects: 2026-03-14, because: the same }
            ---

            """
        );
        var text = page.Body!.Words();
        Assert.Contains(
            "corrected, it had said capacitance 39.1 µF out of circuit (outside): a <b>slip</b>",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("+5V: corrected, it had said voltage 50.2 V (outside): the same", text, StringComparison.Ordinal);
        // The second visit was no look at the board.
        Assert.Contains("one visit", text, StringComparison.Ordinal);
    }
}
