using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The parts of a board: what belongs in each place, what sits there now, and what its readings say.</summary>
public static class PartsTable
{
    /// <summary>Writes the table.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        if (board.Places.Count == 0)
        {
            return;
        }

        PageFrame.Heading(html, "parts", "Parts");
        using var scroll = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.RoleRegion).With(FixedAttribute.TabStop).With(TextAttribute.AriaLabel, "Parts");
        using var table = html.Open(Tag.Table, ClassName.Ledger);
        PageFrame.Head(html, "Place", "What belongs there", "What sits there", "Readings");
        using var body = html.Open(Tag.TBody);
        foreach (var place in board.Places)
        {
            Row(html, place);
        }
    }

    private static void Row(HtmlWriter html, PlaceHistory place)
    {
        var reference = place.Part.Ref.Value;
        using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Part, reference));
        html.Open(Tag.Th).With(FixedAttribute.ScopeRow).Text(reference);
        using (html.Open(Tag.Td))
        {
            html.Text(PartWords.Describe(place.Part.Values));
            if (place.Part.Values.Role is { } role)
            {
                html.Open(Tag.Small).Text($" ({role.Value})");
            }
        }

        using (html.Open(Tag.Td))
        {
            Sitting(html, place);
        }

        using (html.Open(Tag.Td))
        {
            foreach (var verdict in place.Standing)
            {
                VerdictCell.Write(html, verdict);
            }

            if (place.PassedTest is { } passed)
            {
                html.Open(Tag.P).Text(passed ? "passed its test" : "failed its test");
            }

            if (place.Decision is { } decision)
            {
                html.Open(Tag.P).Text($"Decided: {decision.What.Value}, because {decision.Because.Value}");
            }
        }
    }

    private static void Sitting(HtmlWriter html, PlaceHistory place)
    {
        if (place.IsEmpty)
        {
            html.Text("nothing: removed");
            return;
        }

        if (place.FittedBy is not { } work)
        {
            html.Text("the original");
            return;
        }

        var lot = work.Lot?.Value;
        html.Text(place.Sitting is { } known ? $"{PartWords.Describe(known.Values)}, lot {known.Id.Value}" : lot is null ? "a new part" : $"lot {lot}");
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
