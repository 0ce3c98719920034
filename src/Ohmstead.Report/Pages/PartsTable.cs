using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Pages;

/// <summary>The parts of a board: what belongs in each place, what sits there now, and what its readings say.</summary>
internal static class PartsTable
{
    private static readonly Column[] Columns = [new("Place", IsShort: true), "Part", "Readings"];

    /// <summary>Writes the table.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        if (board.Places.Count == 0)
        {
            return;
        }

        var renewed = board.Places.Count(place => place.FittedBy is not null);
        using var entry = Entry.Open(html, "parts", "Parts", renewed == 0 ? $"{board.Places.Count} places, all original" : $"{board.Places.Count} places, {renewed} renewed");
        using var table = Ledger.Open(html, "Parts", Columns);
        using var body = html.Open(Tag.TBody);
        foreach (var place in board.Places)
        {
            Row(html, table, place);
        }
    }

    private static void Row(HtmlWriter html, Ledger table, PlaceHistory place)
    {
        var reference = place.Part.Ref.Value;
        using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Part, reference));
        table.Head().Text(reference);
        using (table.Cell(1))
        {
            html.Text(PartWords.Describe(place.Part.Values));
            if (place.Part.Values.Role is { } role)
            {
                html.Text(" ");
                html.Open(Tag.Small).Text(role.Value);
            }

            Sitting(html, place);
        }

        using (table.Cell(2))
        {
            foreach (var verdict in place.Standing)
            {
                VerdictCell.Write(html, verdict);
            }

            if (place.PassedTest is { } passed)
            {
                using var test = html.Open(Tag.P);
                VerdictMark.Test(html, passed);
            }

            if (place.Decision is { } decision)
            {
                html.Open(Tag.P).Text($"Decided: {decision.What.Value}, because {decision.Because.Value}");
            }
        }
    }

    // The original in its place is the rule and is not said on every row.
    private static void Sitting(HtmlWriter html, PlaceHistory place)
    {
        if (place.IsEmpty)
        {
            html.Open(Tag.P).Text("Now: nothing, removed");
            return;
        }

        if (place.FittedBy is not { } work)
        {
            return;
        }

        using var line = html.Open(Tag.P, ClassName.Fine);
        var lot = work.Lot?.Value;
        html.Text("Now: " + (place.Sitting is { } known ? $"{PartWords.Describe(known.Values)}, lot {known.Id.Value}" : lot is null ? "a new part" : $"lot {lot}"));
        html.Text($", since {place.FittedOn!.Date.Text}");
        if (work.Polarity.Count > 0)
        {
            html.Text($"; way round by {string.Join(" and ", work.Polarity.Select(evidence => evidence.Value))}");
        }

        if (work.Kept is { } kept)
        {
            html.Text($"; the original: {kept.Value}");
        }
    }
}
