using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics.Hazards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Sheets;

/// <summary>The collection on one sheet of paper, for whoever decides about it once a year: how it stands now and stood a year ago, what
/// was done since, what waits and what presses most.</summary>
public sealed class CollectionSheet
{
    private const int MostPressing = 8;
    private const int MostWaits = 5;
    private const int MostWanted = 6;
    private const int LongLine = 110;
    private const int ShortLine = 60;

    private readonly HtmlWriter html;
    private readonly ReportContext context;
    private readonly IReadOnlyList<BoardSummary> boards;

    private CollectionSheet(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        (this.html, this.context, this.boards) = (html, context, boards);

    /// <summary>Writes the sheet.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="boards">The boards.</param>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        PageFrame
            .Page(
                context,
                new(SiteAddress.CollectionSheet, $"{context.Workshop.Collection.Name} on one sheet", CollectionWords.Lead(boards, "board")),
                BoardSheet.StyleName
            )
            .Write(buffer, (context, boards), static (html, all) => new CollectionSheet(html, all.context, all.boards).Content());

    private void Content()
    {
        var collection = context.Workshop.Collection;
        using (html.Open(Tag.Nav))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Collection, 1)).Text("To the pages of the collection");
        }

        using var main = html.Open(Tag.Main);
        if (context.Published is { } published)
        {
            var address = published.Of(LocalLink.ToFile(SiteAddress.Collection));
            using var figure = html.Open(Tag.Figure, SheetClass.Code);
            QrCode.Of(address).Write(html, address);
        }

        html.Open(Tag.H1).Text(BriefWords.Of(collection.Name, LongLine));
        html.Open(Tag.P, SheetClass.Lead).Text(CollectionWords.Lead(boards, "board"));
        States();
        Done();
        Pressing();
        using (html.Open(Tag.Div, SheetClass.Beside))
        {
            using (html.Open(Tag.Div))
            {
                Waits();
            }

            using (html.Open(Tag.Div))
            {
                Wanted();
            }
        }

        var invented = collection.IsInvented ? " Everything in this collection is invented." : string.Empty;
        html.Open(Tag.P, SheetClass.Fine)
            .Text(
                $"As of {PageFrame.Iso(context.Today)}, by the rules of that day; a year ago by what had happened until then and the same "
                    + $"rules. This sheet is as old as its day.{invented} {SafetyNotice.Defer}"
            );
    }

    private void States()
    {
        using var table = html.Open(Tag.Table).With(TextAttribute.AriaLabel, "Now and a year ago");
        using (html.Open(Tag.THead))
        {
            using var row = html.Open(Tag.Tr);
            html.Open(Tag.Th).With(FixedAttribute.ScopeColumn).Text("Boards");
            html.Open(Tag.Th, SheetClass.Figure).With(FixedAttribute.ScopeColumn).Text(PageFrame.Iso(context.Today));
            if (context.YearAgo is { } then)
            {
                html.Open(Tag.Th, SheetClass.Figure).With(FixedAttribute.ScopeColumn).Text(PageFrame.Iso(then.Day));
            }
        }

        using var body = html.Open(Tag.TBody);
        foreach (var state in BoardStates.WorstFirst)
        {
            var (now, before) = (boards.Count(board => board.State == state), context.YearAgo?.States.GetValueOrDefault(state) ?? 0);
            if (now + before > 0)
            {
                Row(() => StateMark.Write(html, state), now, before);
            }
        }

        Row(() => html.Text("all together"), boards.Count, context.YearAgo?.Boards ?? 0);
    }

    private void Row(Action name, int now, int before)
    {
        using var row = html.Open(Tag.Tr);
        using (html.Open(Tag.Th).With(FixedAttribute.ScopeRow))
        {
            name();
        }

        html.Open(Tag.Td, SheetClass.Figure).Text(now);
        if (context.YearAgo is not null)
        {
            html.Open(Tag.Td, SheetClass.Figure).Text(before);
        }
    }

    private void Done()
    {
        if (context.YearAgo is not { Work: var work })
        {
            return;
        }

        html.Open(Tag.H2).Text("What was done in the year");
        html.Open(Tag.P)
            .Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{work.Visits} visits to the bench, {work.Readings} readings and proofs, {work.Done} pieces of work."
                )
            );
    }

    private void Pressing()
    {
        BoardSummary[] open =
        [
            .. BoardOrders.Sorted(boards.Where(board => BoardStates.IsWorkedOn(board.State) && board.Reasons.Length > 0), BoardOrder.State),
        ];
        if (open.Length == 0)
        {
            return;
        }

        html.Open(Tag.H2).Text("What presses most");
        using var list = html.Open(Tag.Ul);
        foreach (var board in open.Take(MostPressing))
        {
            var reason = board.Reasons[0];
            using var item = html.Open(Tag.Li);
            html.Open(Tag.Strong).Text(board.Id.Value);
            html.Text(
                $" {BriefWords.Of(board.Title, ShortLine)}, {BoardStates.Words(board.State)}: "
                    + $"{BriefWords.Sentence(reason.Told, LongLine)} Next: {BriefWords.Sentence(reason.NextStep, LongLine)}"
            );
        }

        More(open.Length - MostPressing, "boards more");
    }

    private void Waits()
    {
        var waits = boards.SelectMany(board => board.Waits.Select(wait => (board, wait))).OrderBy(pair => pair.wait.Since.Value).ToArray();
        html.Open(Tag.H2).Text("What waits, the longest first");
        using var list = html.Open(Tag.Ul);
        foreach (var (board, wait) in waits.Take(MostWaits))
        {
            html.Open(Tag.Li).Text($"{board.Id.Value} since {wait.Since.Text} for {BriefWords.Of(wait.For.Value, ShortLine)}");
        }

        if (waits.Length == 0)
        {
            html.Open(Tag.Li).Text("nothing");
        }

        More(waits.Length - MostWaits, "waits more");
    }

    private void Wanted()
    {
        var wanted = context.Buying ?? BuyingList.Compute(context.Workshop, boards, context.Today);
        html.Open(Tag.H2).Text("What must be found");
        using var list = html.Open(Tag.Ul);
        foreach (var line in wanted.Take(MostWanted))
        {
            html.Open(Tag.Li).Text(string.Create(CultureInfo.InvariantCulture, $"{line.Needed} × {BriefWords.Of(line.What, ShortLine)}"));
        }

        if (wanted.Count == 0)
        {
            html.Open(Tag.Li).Text("nothing");
        }

        More(wanted.Count - MostWanted, "kinds more");
    }

    private void More(int left, string words)
    {
        if (left > 0)
        {
            html.Open(Tag.Li).Text(string.Create(CultureInfo.InvariantCulture, $"{left} {words}, in the pages"));
        }
    }
}
