using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>The parts to measure: what sits in each place, what it read last, its limits, and room for the reading.</summary>
internal static class MeasureTable
{
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        var places = board
            .Places.Where(place => !place.IsEmpty)
            .Select(place => (Place: place, Expected: ToMeasure.At(place)))
            .Where(pair => pair.Expected.Count > 0)
            .ToArray();
        if (places.Length == 0)
        {
            return;
        }

        using var table = SheetTable.Open(
            html,
            board.Board.Id.Value,
            "Parts to measure",
            "part",
            "What sits there",
            "Measure",
            "Inside",
            "Reads",
            "Circuit"
        );
        foreach (var (place, expected) in places)
        {
            // One body a place: its rows stay together on one page.
            using var body = html.Open(Tag.TBody);
            for (var i = 0; i < expected.Count; i++)
            {
                using var row = html.Open(Tag.Tr);
                if (i == 0)
                {
                    html.Open(Tag.Th)
                        .With(FixedAttribute.ScopeRow)
                        .With(NumberAttribute.RowSpan, expected.Count)
                        .Text(place.Part.Ref.Value);
                    html.Open(Tag.Td).With(NumberAttribute.RowSpan, expected.Count).Text(PartWords.Describe(place.Values));
                }

                Row(html, place, expected[i]);
            }
        }
    }

    private static void Row(HtmlWriter html, PlaceHistory place, Expected expected)
    {
        using (html.Open(Tag.Td))
        {
            html.Text(VerdictWords.Describe(expected.Measured));
            if (expected.How.Frequency is { } frequency && expected.Measured is not Records.Model.Measured.Leakage)
            {
                html.Text(" ");
                html.Open(Tag.Span, SheetClass.Whole).Text($"at {QuantityText.Format(frequency)}");
            }

            if (expected.Measured is Records.Model.Measured.Leakage && expected.How.AtVoltage is { } volts)
            {
                html.Text($" at {QuantityText.Format(volts)}");
            }
        }

        using (html.Open(Tag.Td))
        {
            html.Open(Tag.Span, SheetClass.Whole).Text(expected.Limit is { } limit ? VerdictWords.Range(limit.Interval) : "no limit known");
            if (place.LastOfThisPart(expected.Measured) is { } last)
            {
                html.Open(Tag.Br).Close();
                html.Open(Tag.Span, SheetClass.Fine).Text($"last: {last.Reading.Text}, {VerdictWords.Describe(last.Outcome)}");
            }
        }

        html.Open(Tag.Td, SheetClass.Write).Close();
        using var circuit = html.Open(Tag.Td, SheetClass.Whole);
        html.Open(Tag.Span, SheetClass.Tick).Text("in");
        html.Text(" ");
        html.Open(Tag.Span, SheetClass.Tick).Text("out");
    }
}
