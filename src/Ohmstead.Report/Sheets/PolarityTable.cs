using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>Polarised parts whose right way round is not established yet, with a box for each way to establish it. The print alone does
/// not: it has no box of its own weight.</summary>
internal static class PolarityTable
{
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        var places = board.Places.Where(place => PartKind.IsPolarised(place.Part.Values) && !IsEstablished(place)).ToArray();
        if (places.Length == 0)
        {
            return;
        }

        using var table = SheetTable.Open(
            html,
            board.Board.Id.Value,
            "Which way round, before anything is lifted",
            "part",
            "Established by (the print alone does not count)",
            "Plus goes to"
        );
        foreach (var place in places)
        {
            using var body = html.Open(Tag.TBody);
            using var row = html.Open(Tag.Tr);
            html.Open(Tag.Th).With(FixedAttribute.ScopeRow).Text(place.Part.Ref.Value);
            using (html.Open(Tag.Td))
            {
                foreach (var way in Vocabulary.PolarityWays.Where(way => way != Vocabulary.PolarityWays.WordFor(PolarityEvidence.Print)))
                {
                    html.Open(Tag.Span, SheetClass.Tick).Text(way);
                    html.Text(" ");
                }

                if (place.FittedBy is { Polarity.Length: > 0 })
                {
                    html.Text("so far by the print alone");
                }
            }

            html.Open(Tag.Td, SheetClass.Write).Close();
        }
    }

    private static bool IsEstablished(PlaceHistory place) =>
        place.FittedBy is { } work && work.Polarity.Any(way => way.Value != PolarityEvidence.Print);
}
