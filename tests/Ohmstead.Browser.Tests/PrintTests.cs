using System.Text;

namespace Ohmstead.Browser.Tests;

public sealed class PrintTests(ReportFixture report)
{
    private static readonly string[] Papers = ["A4", "Letter"];

    private ReportPage Drawer => report.Pages.Single(page => page.Name == "drawer.html");

    [Fact]
    public async Task The_index_a_board_and_a_design_print_more_than_an_empty_sheet()
    {
        var poor = await report.LookAsync([report.Index, report.LongestBoard, report.LongestDesign], async (view, page) =>
        {
            await view.OpenAsync(page);
            var sheets = new List<(string Paper, byte[] Printed)>();
            foreach (var paper in Papers)
            {
                sheets.Add((paper, await view.Page.PdfAsync(new() { Format = paper })));
            }

            // What stands around each page would be printed even if the page itself were not.
            await view.Page.EvaluateAsync("() => document.querySelector('main').replaceChildren()");
            var empty = (await view.Page.PdfAsync(new() { Format = Papers[0] })).Length;
            return sheets
                .Where(sheet =>
                    !Encoding.Latin1.GetString(sheet.Printed, 0, 8).StartsWith("%PDF-", StringComparison.Ordinal)
                    || sheet.Printed.Length <= 2 * empty
                )
                .Select(sheet => $"{page} prints {sheet.Printed.Length} bytes on {sheet.Paper}, an empty sheet has {empty}");
        });
        Complaint.None(poor.SelectMany(words => words));
    }

    [Fact]
    public async Task What_the_screen_says_of_the_parts_is_on_paper_too()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.LongestBoard);
        await view.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        var hidden = await view.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('[id^=\"p-\"]')].filter(row => row.getClientRects().length === 0).map(row => row.id)"
        );
        Assert.NotEqual(0, await view.Page.Locator("[id^='p-']").CountAsync());
        Complaint.None(hidden);
    }

    // As wide as the paper less its margins of 14 mm each, at 96 pixels an inch: A4 has 210 mm, Letter 215.9 mm.
    [Fact]
    public async Task Nothing_is_cut_off_at_the_edge_of_the_paper_no_figure_runs_into_the_next_and_none_is_broken()
    {
        var poor = await report.LookAsync(report.Opened, async (view, page) =>
        {
            var words = new List<string>();
            await view.OpenAsync(page);
            await view.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
            foreach (var (paper, wide) in new[] { (Papers[0], 687), (Papers[1], 710) })
            {
                await view.Page.SetViewportSizeAsync(wide, 900);
                words.AddRange((await Crowding.OfAsync(view)).Select(text => $"{page} on {paper}: {text}"));
                words.AddRange((await Parting.OfAsync(view)).Select(text => $"{page} on {paper}: {text}"));
            }

            return words;
        });
        Complaint.None(poor.SelectMany(words => words));
    }

    // CSS 2.2, 17.2: the head of a table comes again on each sheet. With scripts on the heads hold buttons.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_heads_of_a_long_table_come_again_on_every_sheet(bool scripts)
    {
        await using var view = await report.ViewAsync(scripts: scripts);
        await view.OpenAsync(Drawer);
        foreach (var paper in Papers)
        {
            var withLots = (await PrintedSheets.OfAsync(view, paper)).Where(sheet =>
                sheet.Any(line => line.StartsWith("L-0", StringComparison.Ordinal))
            );
            Assert.InRange(withLots.Count(), 3, int.MaxValue);
            Assert.All(withLots, sheet => Assert.Contains("Lot What lies there Incoming readings", sheet));
        }
    }

    [Fact]
    public async Task Every_sheet_says_what_it_is_of_and_which_of_how_many()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.LongestBoard);
        var number = Path.GetFileNameWithoutExtension(report.LongestBoard.Name);
        foreach (var paper in Papers)
        {
            var sheets = await PrintedSheets.OfAsync(view, paper);
            Assert.InRange(sheets.Count, 2, 20);
            for (var at = 0; at < sheets.Count; at++)
            {
                Assert.StartsWith(number, sheets[at][^1], StringComparison.Ordinal);
                Assert.EndsWith($"{at + 1} of {sheets.Count}", sheets[at][^1], StringComparison.Ordinal);
            }
        }
    }

    // 22 lots, each with what was read of it: a page of five sheets is not taken to the drawer.
    [Fact]
    public async Task The_drawer_is_three_sheets()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(Drawer);
        Assert.Equal(3, (await PrintedSheets.OfAsync(view, Papers[0])).Count);
    }

    [Fact]
    public async Task What_proves_a_board_is_printed_though_it_is_folded_away_and_the_working_of_a_figure_is_left_out()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.LongestBoard);
        Assert.Equal(0, await view.Page.Locator("details[open]").CountAsync());
        var printed = (await PrintedSheets.OfAsync(view, Papers[0])).SelectMany(sheet => sheet).ToArray();
        Assert.Contains("Where Met by Day", printed);
        Assert.DoesNotContain(printed, line => line.Contains("arithmetic and source", StringComparison.Ordinal));
    }

    [Fact]
    public async Task No_row_and_no_photograph_is_broken_over_two_sheets()
    {
        await using var view = await report.ViewAsync(scripts: true);
        foreach (var page in new[] { report.Index, report.LongestBoard, report.Boards.First(page => page.Says("class=photos")) })
        {
            await view.OpenAsync(page);
            await view.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
            Assert.Equal(
                ["avoid"],
                await view.Page.EvaluateAsync<string[]>(
                    "() => [...new Set([...document.querySelectorAll('main tr, main figure')]"
                        + ".map(row => getComputedStyle(row).breakInside))]"
                )
            );
        }
    }

    [Fact]
    public async Task Fields_to_type_into_are_not_printed()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        await view.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        Assert.NotEqual(0, await view.Page.Locator("input").CountAsync());
        Assert.Equal(0, await view.Page.Locator("input:visible").CountAsync());
    }
}
