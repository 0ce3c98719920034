using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>
/// Why a board may be switched on, or what of that is missing: what stands open first, with the next step; behind a fold everything that is
/// met, each with the entry that meets it, and what does not apply.
/// </summary>
internal static class EvidenceSection
{
    private const string Board = "board";
    private static readonly Column[] Reasons = ["At", "Why", "What next"];
    private static readonly Column[] Shown = ["Where", new("Met by", IsPlain: true), new("Day", IsShort: true, IsPlain: true)];

    /// <summary>Writes the section.</summary>
    /// <param name="html">The page.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="board">The board.</param>
    /// <param name="anchors">The addresses of the readings.</param>
    public static void Write(HtmlWriter html, ReportContext context, JudgedBoard board, ReadingAnchors anchors)
    {
        var isFit = board.State == BoardState.FitToRun;
        using var entry = Entry.Open(html, "evidence", isFit ? "Why it may be switched on" : "What stands open, and what is met");
        if (isFit)
        {
            html.Open(Tag.P)
                .Text(
                    "Everything that must be shown is shown by a named entry of its record."
                        + (board.IsLookOverdue ? " What was proved then is not known to hold now: nobody has looked since." : string.Empty)
                );
        }

        Open(html, board);
        Kept(html, board);
        Again(html, board);
        Fold(html, context, board, anchors);
    }

    private static void Open(HtmlWriter html, JudgedBoard board)
    {
        if (board.Reasons.Length == 0)
        {
            return;
        }

        using var table = Ledger.Open(html, "Why, and what next", Reasons);
        using var body = html.Open(Tag.TBody);
        foreach (var reason in board.Reasons)
        {
            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                PartLink.Write(html, board, reason.At ?? Board);
            }

            table.Cell(1).Text(reason.Text);
            table.Cell(2).Text(reason.NextStep);
        }
    }

    private static void Kept(HtmlWriter html, JudgedBoard board)
    {
        foreach (var place in board.Overruled)
        {
            using var line = html.Open(Tag.P);
            PartLink.Write(html, board, place.Part.Ref.Value);
            html.Text($" is outside its limit and stays by decision ({place.Decision!.What.Text}): {place.Decision.Because.Value}.");
        }
    }

    private static void Again(HtmlWriter html, JudgedBoard board)
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
            PartLink.Write(html, board, open.At);
            html.Text($": {open.Text}");
        }
    }

    private static void Fold(HtmlWriter html, ReportContext context, JudgedBoard board, ReadingAnchors anchors)
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
            var places = new EvidencePlaces(context, board, anchors);
            using var table = Ledger.Open(html, "What is met, and by what", Shown);
            foreach (var group in groups.Where(group => group.Met.Length > 0))
            {
                Met(html, table, places, group);
            }
        }

        Excused(html, groups);
    }

    // What a kind asks is told once, and so is what meets several places on one day.
    private static void Met(HtmlWriter html, Ledger table, EvidencePlaces places, ObligationGroup group)
    {
        using var body = html.Open(Tag.TBody);
        using (html.Open(Tag.Tr))
        {
            var asks = html.Open(Tag.Th).With(FixedAttribute.ScopeRowGroup).With(NumberAttribute.ColSpan, Shown.Length);
            asks.Text(Sentence(group.Rule.Asks));
        }

        foreach (var same in group.Met.GroupBy(one => (one.Text.Text, one.MetBy!.Day, one.MetBy.Path)))
        {
            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                var byName = same.ToLookup(one => one.At ?? Board, StringComparer.Ordinal);
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

            table.Cell(1).Text(Words([.. same]));
            using var day = table.Cell(2);
            places.Day(html, same.First());
        }
    }

    private static void Excused(HtmlWriter html, IReadOnlyList<ObligationGroup> groups)
    {
        if (groups.All(group => group.Excused.Length == 0))
        {
            return;
        }

        html.Open(Tag.P).Text("What does not apply, and why:");
        using var list = html.Open(Tag.Ul);
        foreach (var same in groups.SelectMany(group => group.Excused.GroupBy(one => one.Text.Text, StringComparer.Ordinal)))
        {
            html.Open(Tag.Li).Text($"{PlaceRuns.Words([.. same.Select(one => one.At ?? Board)])}: {same.Key}");
        }
    }

    // The values of a reading stand where its place leads to. What differs from place to place is told with the names that share it.
    private static string Words(Obligation[] same)
    {
        if (same[0].MetBy!.Kind == EvidenceKind.Reading)
        {
            return same[0].Text;
        }

        var byWords = same.ToLookup(one => one.MetBy!.Words.Text, one => one.At ?? Board, StringComparer.Ordinal);
        return byWords.Count == 1 ? same[0].Shown : $"{same[0].Text}: {string.Join("; ", byWords.Select(Shared))}";
    }

    private static string Shared(IGrouping<string, string> places) =>
        $"{PlaceRuns.Words([.. places.Distinct(StringComparer.Ordinal)])} {places.Key}";

    private static string Sentence(string asks) => char.ToUpperInvariant(asks[0]) + asks[1..];
}
