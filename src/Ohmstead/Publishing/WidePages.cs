using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Families;
using Ohmstead.Collections;
using Ohmstead.Output;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;
using Ohmstead.Report.Script;
using Ohmstead.Report.Search;
using Ohmstead.Report.Sheets;
using Ohmstead.Report.Style;

namespace Ohmstead.Publishing;

/// <summary>The files of a report that are about more than one board, as jobs that do not depend on each other.</summary>
internal static class WidePages
{
    /// <summary>The jobs.</summary>
    /// <param name="target">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="result">The run.</param>
    /// <param name="site">Where the pages will be found.</param>
    /// <param name="changes">What changed last.</param>
    /// <param name="compared">The units that are set side by side.</param>
    /// <param name="search">What is searched of all boards.</param>
    public static IEnumerable<Action<Draft>> List(
        ReportFolder target,
        ReportContext context,
        RunResult result,
        Site site,
        LatestChanges changes,
        ComparedUnits compared,
        SearchCollector search
    )
    {
        var checks = Checks();
        var collection = result.Workshop.Collection;
        var until = context.Today.AddYears(1);

        yield return draft =>
        {
            var families = CollectionFamilies.Count(result.Boards);
            FamiliesPage.Write(draft.Buffer, context, families);
            draft.Put(SiteAddress.Families);
            FamiliesPage.WriteRest(target, context, families);
        };
        yield return Page(AheadPage.CalendarName, buffer =>
        {
            buffer.Clear();
            AheadCalendar.Write(buffer, collection.Name, context.Ahead ?? [], context.Today);
        });
        yield return draft => Badges.Write(draft, collection.Name, result.Boards);
        yield return Page(PlateIcon.FileName, PlateIcon.Write);
        yield return _ => search.Write(target, context, result.Boards, result.Findings, checks);
        yield return _ => CollectionPage.WriteRest(target, context, result.Boards);
        yield return _ => DrawerPage.WriteRest(target, context, result.Boards);
        yield return _ => AheadPage.WriteRest(target, context, context.Ahead ?? []);
        yield return _ => FindingsPage.WriteRest(target, context, result.Findings, result.Boards);
        yield return Page(SiteAddress.Collection, buffer => CollectionPage.Write(buffer, context, result.Boards));
        yield return Page(SiteAddress.CollectionSheet, buffer => CollectionSheet.Write(buffer, context, result.Boards));
        if (context.Since is { } since)
        {
            yield return Page(SiteAddress.Changes, buffer => ChangesPage.Write(buffer, context, since));
        }

        yield return Page(SiteAddress.Drawer, buffer => DrawerPage.Write(buffer, context, result.Boards));
        yield return Page(SiteAddress.Ahead, buffer => AheadPage.Write(buffer, context, context.Ahead ?? [], until));
        yield return Page(SiteAddress.Instruments, buffer => InstrumentsPage.Write(buffer, context, result.Boards));
        yield return Page(SiteAddress.Findings, buffer => FindingsPage.Write(buffer, context, result.Findings, result.Boards));
        foreach (var (number, board) in FormerNumbers.Leading(result.Boards))
        {
            yield return Page(SiteAddress.Board(number), buffer => FormerPage.Write(buffer, context, number, board));
        }

        foreach (var units in DesignUnits.Group(result.Workshop.Designs.Values, result.Boards))
        {
            var design = units with { Compared = compared.For(units.Design.Id.Value) };
            yield return Page(SiteAddress.Design(design.Design.Id.Value), buffer => DesignPage.Write(buffer, context, design));
            yield return _ => DesignPage.WriteRest(target, context, design);
        }

        yield return Page(SiteAddress.Checks, buffer => ChecksPage.Write(buffer, context, checks));
        foreach (var check in checks)
        {
            yield return Page(SiteAddress.Check(check.Name), buffer => CheckPage.Write(buffer, context, check));
        }

        yield return Page(SiteAddress.About, buffer => AboutPage.Write(buffer, context));
        yield return _ => target.Put(AtomFeed.PathName, AtomFeed.Write(collection, site, changes.All()));
        yield return _ => target.Put(StyleSheet.FileName, StyleSheet.Read());
        yield return _ => target.Put(BoardSheet.StyleName, BoardSheet.Style());
        yield return _ => target.Put(PageScript.FileName, PageScript.Read(PageScript.FileName));
        yield return _ => target.Put(PageScript.SearchName, PageScript.Read(PageScript.SearchName));

        static Action<Draft> Page(string path, Action<PageBuffer> write) =>
            draft =>
            {
                write(draft.Buffer);
                draft.Put(path);
            };
    }

    private static CheckText[] Checks()
    {
        var severities = CheckCatalogue.Descriptions.ToDictionary(check => check.Name, check => check.Severity, StringComparer.Ordinal);
        return
        [
            .. CheckPages
                .All()
                .OrderBy(page => page.Key, StringComparer.Ordinal)
                .Select(page =>
                    CheckText.Read(
                        page.Key,
                        CheckPages.Text(page.Value),
                        severities.TryGetValue(page.Key, out var severity) ? severity : null
                    )
                ),
        ];
    }
}
