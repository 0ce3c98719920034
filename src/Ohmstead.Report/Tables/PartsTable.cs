using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The parts of a board: what belongs in each place, what sits there now, and what its readings say.</summary>
internal static class PartsTable
{
    private static readonly Column[] Columns = ["Place", new("Part", IsPlain: true), new("Readings", IsPlain: true)];

    /// <summary>Writes the table.</summary>
    /// <param name="html">The page.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="board">The board.</param>
    /// <param name="working">What the verdicts of the page have in common.</param>
    /// <param name="anchors">The addresses of the readings.</param>
    /// <param name="open">Takes the places whose fitting lots are told later, or null when they are told now.</param>
    public static void Write(
        HtmlWriter html,
        ReportContext context,
        JudgedBoard board,
        SharedWorking working,
        ReadingAnchors anchors,
        ICollection<OpenPlace>? open
    )
    {
        if (board.Places.Length == 0)
        {
            return;
        }

        var renewed = board.Places.Count(place => place.FittedBy is not null);
        using var entry = Entry.Open(
            html,
            "parts",
            "Parts",
            renewed == 0 ? $"{board.Places.Length} places, all original" : $"{board.Places.Length} places, {renewed} renewed"
        );
        working.Rule(html, 1);
        using var table = Ledger.Open(html, "Parts", Columns);
        using var body = html.Open(Tag.TBody);
        var fits = board
            .Replacements.Where(replacement => ReferenceEquals(replacement.Place.FittedBy, replacement.Work))
            .ToDictionary(replacement => replacement.Place.Part.Ref.Value, StringComparer.Ordinal);
        var needs = board.Needs.Select(need => need.Reference).ToHashSet(StringComparer.Ordinal);
        foreach (var place in board.Places)
        {
            var here = new PageAnchor(place.Part.Ref.Value, ElementId.Of(IdPrefix.Part, place.Part.Ref.Value));
            using var row = html.Open(Tag.Tr).With(here.Id);
            table.Head().Text(here.Name);
            using (table.Cell(1))
            {
                What(html, place);
                Fit(html, context, working, board, place, fits.GetValueOrDefault(here.Name), needs.Contains(here.Name), open);
            }

            using var readings = table.Cell(2);
            Readings(html, working, anchors, board, place, here);
        }
    }

    private static void What(HtmlWriter html, PlaceHistory place)
    {
        html.Text(place.What);
        if (place.Part.Values.Role is { } role)
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(role.Text);
        }

        Sitting(html, place);
    }

    private static void Readings(
        HtmlWriter html,
        SharedWorking working,
        ReadingAnchors anchors,
        BoardAssessment board,
        PlaceHistory place,
        PageAnchor here
    )
    {
        var found = FoundBefore.Of(place);
        foreach (var verdict in place.Standing)
        {
            VerdictCell.Write(html, working, verdict, here, before: found.GetValueOrDefault(verdict.Measured));
        }

        AsFound(html, anchors, found);
        if (place.PassedTest is { } passed)
        {
            using var test = html.Open(Tag.P);
            VerdictMark.Test(html, passed);
        }

        if (DecisionWords.Told(place) is { } decided)
        {
            html.Open(Tag.P).Text($"Decided: {decided}");
        }
    }

    // The old part in words, each reading with the way to it; the strip of the new one shows it as a cross.
    private static void AsFound(HtmlWriter html, ReadingAnchors anchors, IReadOnlyDictionary<Measured, Verdict> found)
    {
        if (found.Count == 0)
        {
            return;
        }

        using var line = html.Open(Tag.P, ClassName.Fine);
        html.Text("The part before (cross): ");
        var commas = new Commas(html);
        foreach (var (measured, verdict) in found)
        {
            commas.Next();
            var words = $"{VerdictWords.Describe(measured)} {verdict.Reading.Text} {VerdictWords.Describe(verdict.Outcome)}";
            if (anchors.Of(verdict) is { } anchor)
            {
                html.Open(Tag.A).To(anchor).Text(words);
            }
            else
            {
                html.Text(words);
            }
        }
    }

    private static void Fit(
        HtmlWriter html,
        ReportContext context,
        SharedWorking working,
        BoardAssessment board,
        PlaceHistory place,
        Replacement? replacement,
        bool isWanted,
        ICollection<OpenPlace>? open
    )
    {
        if (replacement is not null)
        {
            FitFold.Replacement(html, replacement.Fit, working.Sources);
        }

        if (isWanted && context.Drawer is { } drawer)
        {
            FitFold.Wanted(html, FitReport.For(board, place, drawer));
        }
        else if (isWanted && open is not null)
        {
            open.Add(new(html.Here(), FitPlace.From(board, place)));
        }
        else if (isWanted)
        {
            FitFold.Wanted(html, PlaceNeed.Describe(FitPlace.From(board, place)));
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
        html.Text(
            "Now: "
                + (
                    place.FittedLot is { } known ? $"{PartWords.Describe(known.Values)}, lot {known.Id.Value}"
                    : lot is null ? "a new part"
                    : $"lot {lot}"
                )
        );
        html.Text($", since {place.FittedOn!.Date.Text}");
        if (work.Polarity.Length > 0)
        {
            html.Text($"; way round by {string.Join(" and ", work.Polarity.Select(evidence => evidence.Text))}");
        }

        if (work.Kept is { } kept)
        {
            html.Text($"; the original: {kept.Value}");
        }
    }
}
