using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The parts of a board that were read three times or more in the same way: where they are going, and when they may meet their
/// limits.</summary>
internal static class DriftTable
{
    private static readonly Column[] Columns = [new("Place", IsShort: true), "Quantity", new("Readings", IsNumber: true), "Pace", "Limit"];

    /// <summary>Writes the table, or nothing.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board, ImmutableArray<Drift> drifts)
    {
        if (drifts.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "drift", "Drift", DriftWords.Estimate);
        using var table = Ledger.Open(html, "Drift", Columns);
        using var body = html.Open(Tag.TBody);
        foreach (var drift in drifts)
        {
            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                PartLink.Write(html, board, drift.Reference);
            }

            table.Cell(1).Text(VerdictWords.Describe(drift.Measured));
            table.Cell(2).Text(drift.Readings);
            using (table.Cell(3))
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
                foreach (var line in DriftWords.Working(drift, board.LookAgain))
                {
                    html.Open(Tag.Li).Text(line);
                }
            }

            table.Cell(4).Text(drift.IsTold ? DriftWords.Meeting(drift) : string.Empty);
        }
    }
}
