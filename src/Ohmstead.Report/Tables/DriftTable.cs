using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The parts of a board that were read three times or more in the same way: where they are going, and when they may meet their
/// limits.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class DriftTable(BoardOnPage page)
{
    private readonly HtmlWriter html = page.Html;

    /// <summary>Writes the table, or nothing.</summary>
    /// <param name="drifts">The drifts of the board.</param>
    public void Write(ImmutableArray<Drift> drifts)
    {
        if (drifts.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "drift", "Drift", DriftWords.Estimate);
        new Ledger<Drift>(
            new("Place", (_, drift) => page.Link(drift.Reference)) { IsShort = true },
            new("Quantity", drift => VerdictWords.Describe(drift.Measured)),
            new("Readings", drift => drift.Readings),
            new("Pace", (_, drift) => Pace(drift)),
            new("Limit", drift => drift.IsTold ? DriftWords.Meeting(drift) : null)
        ).Write(html, "Drift", drifts);
    }

    private void Pace(Drift drift)
    {
        using var fold = html.Open(Tag.Details);
        html.Open(Tag.Summary).Text(DriftWords.Pace(drift));
        using var list = html.Open(Tag.Ul);
        html.Open(Tag.Li)
            .Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{drift.Readings} like readings, {drift.First:yyyy-MM-dd} to {drift.Last:yyyy-MM-dd}"
                )
            );
        foreach (var line in DriftWords.Working(drift, page.Board.LookAgain))
        {
            html.Open(Tag.Li).Text(line);
        }
    }
}
