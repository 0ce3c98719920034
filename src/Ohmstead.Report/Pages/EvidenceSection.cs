using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>
/// Why a board may be switched on, or what of that is missing: what stands open first, with the next step; behind a fold everything that is
/// met, each with the entry that meets it, and what does not apply.
/// </summary>
/// <param name="page">The board on its page.</param>
internal sealed class EvidenceSection(BoardOnPage page)
{
    private const string Whole = "board";
    private readonly HtmlWriter html = page.Html;
    private readonly JudgedBoard board = page.Board;

    /// <summary>Writes the section.</summary>
    public void Write()
    {
        var isFit = board.State == BoardState.FitToRun;
        using var section = Section.Open(html, "evidence", isFit ? "Why it may be switched on" : "What stands open, and what is met");
        if (isFit)
        {
            html.Open(Tag.P)
                .Text(
                    "Everything that must be shown is shown by a named entry of its record."
                        + (board.IsLookOverdue ? " What was proved then is not known to hold now: nobody has looked since." : string.Empty)
                );
        }

        Open();
        Kept();
        Again();
        Fold();
    }

    private void Open()
    {
        if (board.Reasons.Length == 0)
        {
            return;
        }

        new Ledger<StateReason>(
            new("At", (_, reason) => page.Link(reason.At ?? Whole)),
            new("Why", reason => reason.Text),
            new("What next", reason => reason.NextStep)
        ).Write(html, "Why, and what next", board.Reasons);
    }

    private void Kept()
    {
        foreach (var place in board.Overruled)
        {
            using var line = html.Open(Tag.P);
            page.Link(place.Part.Ref.Value);
            html.Text($" is outside its limit and stays by decision ({place.Decision!.What.Text}): {place.Decision.Because.Value}.");
        }
    }

    private void Again()
    {
        if (board.MeasureAgain.Length == 0)
        {
            return;
        }

        html.Open(Tag.P).Text("To measure again, since the reading is too close to call:");
        using var list = html.Open(Tag.Ul);
        foreach (var open in board.MeasureAgain)
        {
            using var item = html.Open(Tag.Li);
            page.Link(open.At);
            html.Text($": {open.Text}");
        }
    }

    private void Fold()
    {
        var groups = ObligationGroup.Group(board.Obligations);
        var (met, excused) = (groups.Sum(group => group.Met.Length), groups.Sum(group => group.Excused.Length));
        if (met + excused == 0)
        {
            return;
        }

        using var fold = html.Open(Tag.Details, ClassName.Fold);
        using (html.Open(Tag.Summary))
        {
            html.Text($"{met} {(met == 1 ? "thing" : "things")} shown, each by its entry");
            if (excused > 0)
            {
                html.Text($"; {excused} that {(excused == 1 ? "does" : "do")} not apply");
            }
        }

        if (met > 0)
        {
            var places = new EvidencePlaces(page.Context, board, page.Anchors);
            new Ledger<MetTogether>(
                new("Where", (_, row) => Where(places, row.Same)),
                new("Met by", row => Words(row.Same)) { IsPlain = true },
                new("Day", (_, row) => places.Day(html, row.Same[0])) { IsPlain = true }
            ).WriteGroups(html, "What is met, and by what", MetBy(groups), static (page, asks) => page.Text(asks));
        }

        Excused(groups);
    }

    // What a kind asks is told once, and so is what meets several places on one day.
    private static IEnumerable<IGrouping<string, MetTogether>> MetBy(IReadOnlyList<ObligationGroup> groups) =>
        groups
            .SelectMany(group =>
                group
                    .Met.GroupBy(one => (one.Text.Text, one.MetBy!.Day, one.MetBy.Path))
                    .Select(same => new MetTogether(Sentence(group.Rule.Asks), [.. same]))
            )
            .GroupBy(row => row.Asks, StringComparer.Ordinal);

    private void Where(EvidencePlaces places, Obligation[] same)
    {
        var byName = same.ToLookup(one => one.At ?? Whole, StringComparer.Ordinal);
        var commas = new Commas(html);
        foreach (var (first, last) in PlaceRuns.Join([.. byName.Select(place => place.Key)]))
        {
            commas.Next();
            places.Where(html, byName[first].First());
            if (last != first)
            {
                html.Text(" to ");
                places.Where(html, byName[last].First());
            }
        }
    }

    private void Excused(IReadOnlyList<ObligationGroup> groups)
    {
        if (groups.All(group => group.Excused.Length == 0))
        {
            return;
        }

        html.Open(Tag.P).Text("What does not apply, and why:");
        using var list = html.Open(Tag.Ul);
        foreach (var same in groups.SelectMany(group => group.Excused.GroupBy(one => one.Text.Text, StringComparer.Ordinal)))
        {
            html.Open(Tag.Li).Text($"{PlaceRuns.Words([.. same.Select(one => one.At ?? Whole)])}: {same.Key}");
        }
    }

    // The values of a reading stand where its place leads to. What differs from place to place is told with the names that share it.
    private static string Words(Obligation[] same)
    {
        if (same[0].MetBy!.Kind == EvidenceKind.Reading)
        {
            return same[0].Text;
        }

        var byWords = same.ToLookup(one => one.MetBy!.Words.Text, one => one.At ?? Whole, StringComparer.Ordinal);
        return byWords.Count == 1 ? same[0].Shown : $"{same[0].Text}: {string.Join("; ", byWords.Select(Shared))}";
    }

    private static string Shared(IGrouping<string, string> places) =>
        $"{PlaceRuns.Words([.. places.Distinct(StringComparer.Ordinal)])} {places.Key}";

    private static string Sentence(string asks) => char.ToUpperInvariant(asks[0]) + asks[1..];

    private readonly record struct MetTogether(string Asks, Obligation[] Same);
}
