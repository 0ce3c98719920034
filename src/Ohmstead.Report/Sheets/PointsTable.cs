using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>The points that prove the board: what to measure there, inside which limits, and room for it.</summary>
internal static class PointsTable
{
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        if (board.Points.Length == 0)
        {
            return;
        }

        using var table = SheetTable.Open(html, board.Board.Id.Value, "Points to prove", "point", "Measure", "Inside", "Reads", "Passed");
        foreach (var point in board.Points)
        {
            using var body = html.Open(Tag.TBody);
            var expected = ToMeasure.At(point);
            var rows = Math.Max(expected.Count, 1);
            for (var i = 0; i < rows; i++)
            {
                using var row = html.Open(Tag.Tr);
                if (i == 0)
                {
                    Name(html, board, point, rows);
                }

                html.Open(Tag.Td)
                    .Text(
                        i < expected.Count ? VerdictWords.Describe(expected[i].Measured)
                        : point.Measures == PointMeasure.Result ? "test of its function"
                        : Vocabulary.PointMeasures.WordFor(point.Measures)
                    );
                html.Open(Tag.Td, SheetClass.Whole)
                    .Text(
                        i < expected.Count && expected[i].Limit is { } limit ? VerdictWords.Range(limit.Interval)
                        : point.Measures == PointMeasure.Result ? "works as it should"
                        : "no limit known"
                    );
                html.Open(Tag.Td, SheetClass.Write).Close();
                using var passed = html.Open(Tag.Td);
                html.Open(Tag.Span, SheetClass.Tick).Text("yes");
                html.Text(" ");
                html.Open(Tag.Span, SheetClass.Tick).Text("no");
            }
        }
    }

    private static void Name(HtmlWriter html, BoardAssessment board, TestPoint point, int rows)
    {
        using var head = html.Open(Tag.Th).With(FixedAttribute.ScopeRow).With(NumberAttribute.RowSpan, rows);
        html.Text(point.Name.Value);
        html.Open(Tag.Br).Close();
        var last = board.ProofsAt(point.Name.Value).LastOrDefault();
        html.Open(Tag.Span, SheetClass.Fine)
            .Text((point.IsRequired ? "required, " : string.Empty) + (last is null ? "never proved" : $"last {last.Visit.Date.Text}"));
    }
}
