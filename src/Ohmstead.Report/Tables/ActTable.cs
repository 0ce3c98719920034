using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Acts;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Tables;

/// <summary>What to do next, on the page of the collection: the act by name, why in one line, the rest folded. Of many boards those about
/// which the same is to be done stand in one row.</summary>
/// <param name="context">What every page knows.</param>
/// <param name="tables">The tables of the page.</param>
internal sealed class ActTable(ReportContext context, CollectionTables tables)
{
    /// <summary>How many boards are listed one by one; of more only what many share is here.</summary>
    public const int MostBoards = 40;

    private const int MostGroups = 12;
    private const int MostNumbers = 8;

    /// <summary>Where the boards of a state begin.</summary>
    public static ElementId PlaceOf(BoardState state) =>
        ElementId.For(IdPrefix.Section, "next-" + BoardStates.Words(state).Replace(' ', '-'));

    /// <summary>The way to the boards of a state about which something is to be done.</summary>
    public LocalLink AddressOf(BoardState state) =>
        tables.Open.Count <= MostBoards
            ? LocalLink.ToFragment(PlaceOf(state))
            : LocalLink.ToRows(PageOf(act => act.Board.State == state), tables.OfNext.Heading, BoardStates.Words(state));

    /// <summary>Writes the section; nothing where there is nothing to do.</summary>
    public void Write(HtmlWriter html)
    {
        if (tables.Open.Count == 0)
        {
            return;
        }

        using var section = Section.Open(
            html,
            "next",
            "What to do next",
            "what presses most first; what can hurt stands on the page of each board"
        );
        var isLong = tables.Open.Count > MostBoards;
        var groups = ActGroup.Group(tables.Open).ToLookup(group => group.State);
        new Ledger<ActGroup>(new("Board", Whom), new("What to do", Act) { IsPlain = true }).WriteGroups(
            html,
            "What to do next",
            BoardStates
                .WorstFirst.SelectMany(state => groups[state].Take(isLong ? MostGroups : int.MaxValue))
                .GroupBy(group => group.State),
            static (page, state) =>
            {
                using var place = page.Open(Tag.Span).With(PlaceOf(state));
                StateMark.Write(page, state);
            }
        );
        tables.OfNext.WriteRest(
            html,
            tables.Open.Count,
            MostBoards,
            groups.Sum(state => state.Take(MostGroups).Sum(group => group.Acts.Length))
        );
    }

    private string PageOf(Func<BoardAct, bool> isMeant) =>
        tables.OfNext.PathOfRow(Math.Max(0, tables.Open.Index().FirstOrDefault(pair => isMeant(pair.Item)).Index));

    private void Whom(HtmlWriter html, ActGroup group)
    {
        if (group.Acts.Length == 1)
        {
            CollectionTables.NumberAndTitle(html, group.Acts[0].Board);
            return;
        }

        html.Text(string.Create(CultureInfo.InvariantCulture, $"{group.Acts.Length} boards"));
        if (group.Design is { } design)
        {
            html.Text(" of ");
            CollectionTables.DesignLink(html, context, design);
        }
    }

    private void Act(HtmlWriter html, ActGroup group)
    {
        html.Open(Tag.P, ClassName.Act).Text(group.Do);
        html.Open(Tag.P).Text(group.Why);
        if (group.Acts.Length > 1)
        {
            Numbers(html, group);
        }
        else
        {
            Rest(html, group.Acts[0].Others);
        }
    }

    private void Numbers(HtmlWriter html, ActGroup group)
    {
        using var line = html.Open(Tag.P, ClassName.Fine);
        foreach (var act in group.Acts.Take(MostNumbers))
        {
            CollectionTables.BoardLink(html, act.Board, isAlone: true);
            html.Text(" ");
        }

        if (group.Acts.Length > MostNumbers)
        {
            html.Open(Tag.A)
                .To(
                    LocalLink.ToRows(
                        PageOf(act => ReferenceEquals(act, group.Acts[MostNumbers])),
                        tables.OfNext.Heading,
                        string.Join(' ', new[] { BoardStates.Words(group.State), group.Design, group.Do }.OfType<string>())
                    )
                )
                .Text(string.Create(CultureInfo.InvariantCulture, $"and {group.Acts.Length - MostNumbers} more"));
        }
    }

    private static void Rest(HtmlWriter html, ImmutableArray<StateReason> others)
    {
        if (others.Length == 0)
        {
            return;
        }

        using var fold = html.Open(Tag.Details, ClassName.Fold);
        html.Open(Tag.Summary)
            .Text(string.Create(CultureInfo.InvariantCulture, $"{others.Length} more {(others.Length == 1 ? "stands" : "stand")} open"));
        using var list = html.Open(Tag.Ul);
        foreach (var reason in others)
        {
            html.Open(Tag.Li).Text(reason.Told);
        }
    }
}
