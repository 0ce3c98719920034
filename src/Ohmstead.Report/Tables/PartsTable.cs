using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The parts of a board: what belongs in each place, what sits there now, and what its readings say.</summary>
/// <param name="page">The board on its page.</param>
/// <param name="open">Takes the places whose fitting lots are told later, or null when they are told now.</param>
internal sealed class PartsTable(BoardOnPage page, ICollection<OpenPlace>? open)
{
    private readonly HtmlWriter html = page.Html;
    private readonly JudgedBoard board = page.Board;

    /// <summary>Writes the table; nothing for a board without parts.</summary>
    public void Write()
    {
        if (board.Places.Length == 0)
        {
            return;
        }

        var renewed = board.Places.Count(place => place.FittedBy is not null);
        using var section = Section.Open(
            html,
            "parts",
            "Parts",
            renewed == 0 ? $"{board.Places.Length} places, all original" : $"{board.Places.Length} places, {renewed} renewed"
        );
        page.Working.Rule(html, 1, UsualWorking.Of(board));
        html.Open(Tag.P, ClassName.Fine)
            .Text(
                "On the strips: \u25cf inside, \u25c6 outside, \u25a1 too close to call, \u00d7 the part before; the bar is what the "
                    + "limits leave. Room: from the reading to its limit, as a share of the limit."
            );
        var fits = board
            .Replacements.Where(replacement => ReferenceEquals(replacement.Place.FittedBy, replacement.Work))
            .ToDictionary(replacement => replacement.Place.Part.Ref.Value, StringComparer.Ordinal);
        var needs = board.Needs.Select(need => need.Reference).ToHashSet(StringComparer.Ordinal);
        void WhatAndFit(HtmlWriter cell, PlaceHistory place)
        {
            What(place);
            Fit(place, fits.GetValueOrDefault(place.Part.Ref.Value), needs.Contains(place.Part.Ref.Value));
        }

        Column<PlaceHistory> part = new("Part", WhatAndFit) { IsPlain = true };
        Column<PlaceHistory> readings = new("Readings", (_, place) => Readings(place)) { IsPlain = true };
        PlaceHistory[] unread = [.. board.Places.Where(place => IsOnlyListed(place, needs))];
        PlaceHistory[] told = [.. board.Places.Except(unread)];
        var asked = board.Reasons.Select(reason => reason.At).ToHashSet(StringComparer.Ordinal);
        bool IsPressing(PlaceHistory place) => asked.Contains(place.Part.Ref.Value) || needs.Contains(place.Part.Ref.Value);
        Ledger<PlaceHistory> table = new(new("Place", place => place.Part.Ref.Value), part, readings) { Anchor = AnchorOf };
        if (told.Length > 0 && told.Zip(told.Skip(1)).Any(pair => !IsPressing(pair.First) && IsPressing(pair.Second)))
        {
            InOrder(told);
            table.WriteGroups(html, "Parts", told.GroupBy(IsPressing).OrderByDescending(group => group.Key), static (cell, isPressing) =>
                cell.Text(isPressing ? "What stands open" : "All others")
            );
        }
        else if (told.Length > 0)
        {
            table.Write(html, "Parts", told);
        }

        Unread(unread);
    }

    // Nothing was read of it, done to it or decided about it, and nothing is asked of it.
    private static bool IsOnlyListed(PlaceHistory place, HashSet<string> needs) =>
        HoldsNow.IsNeverRead(place)
        && place.FittedBy is null
        && place.Readings.Length == 0
        && place.Decision is null
        && !needs.Contains(place.Part.Ref.Value);

    // What stands open comes first; this leads to the rows as the list of parts has them, with no script.
    private void InOrder(PlaceHistory[] told)
    {
        using var line = html.Open(Tag.P, ClassName.Fine);
        html.Text("What stands open first. In the order of the list of parts: ");
        var commas = new Commas(html);
        foreach (var (first, last) in PlaceRuns.Join([.. told.Select(place => place.Part.Ref.Value)]))
        {
            commas.Next();
            page.Link(first);
            if (first != last)
            {
                html.Text(" to ");
                page.Link(last);
            }
        }
    }

    private void Unread(PlaceHistory[] unread)
    {
        if (unread.Length == 0)
        {
            return;
        }

        using var line = html.Open(Tag.P, ClassName.Unread);
        html.Text("Never read: ");
        for (var at = 0; at < unread.Length; at++)
        {
            html.Open(Tag.B).With(AnchorOf(unread[at])).Text(unread[at].Part.Ref.Value);
            var isSame = at + 1 < unread.Length && Listed(unread[at]) == Listed(unread[at + 1]);
            html.Text(
                isSame ? ", "
                : at + 1 < unread.Length ? $" {Listed(unread[at])}; "
                : $" {Listed(unread[at])}."
            );
        }
    }

    private static string Listed(PlaceHistory place) => place.Part.Values.Role is { } role ? $"{place.What} ({role.Text})" : place.What;

    private static ElementId AnchorOf(PlaceHistory place) => ElementId.For(IdPrefix.Part, place.Part.Ref.Value);

    private void What(PlaceHistory place)
    {
        html.Text(place.What);
        if (place.Part.Values.Role is { } role)
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(role.Text);
        }

        Occupant(place);
    }

    private void Readings(PlaceHistory place)
    {
        var here = new PageAnchor(place.Part.Ref.Value, ElementId.For(IdPrefix.Part, place.Part.Ref.Value));
        var found = FoundBefore.Find(place);
        foreach (var verdict in place.Standing)
        {
            VerdictCell.Write(
                html,
                page.Working,
                verdict,
                here,
                page.Anchors.Find(verdict),
                before: found.GetValueOrDefault(verdict.Measured)
            );
        }

        AsFound(found);
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
    private void AsFound(IReadOnlyDictionary<Measured, Verdict> found)
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
            if (page.Anchors.Find(verdict) is { } anchor)
            {
                html.Open(Tag.A).To(anchor).Text(words);
            }
            else
            {
                html.Text(words);
            }
        }
    }

    private void Fit(PlaceHistory place, Replacement? replacement, bool isWanted)
    {
        if (replacement is not null)
        {
            FitFold.Replacement(
                html,
                replacement.Fit,
                page.Working,
                new(place.Part.Ref.Value, ElementId.For(IdPrefix.Part, place.Part.Ref.Value))
            );
        }

        if (isWanted && page.Context.Drawer is { } drawer)
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
    private void Occupant(PlaceHistory place)
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
