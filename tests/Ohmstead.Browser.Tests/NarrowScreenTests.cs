namespace Ohmstead.Browser.Tests;

public sealed class NarrowScreenTests(ReportFixture report)
{
    // WCAG 2.2, success criterion 1.4.10 Reflow: 320 CSS pixels without scrolling in two directions. Tables may scroll inside a frame of
    // their own.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_page_scrolls_sideways_on_a_screen_of_any_width(bool scripts) =>
        Complaint.None((await report.WalkAsync(scripts)).Wide);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_cell_of_a_table_runs_into_the_row_below(bool scripts) => Complaint.None((await report.WalkAsync(scripts)).Spilled);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_columns_of_a_verdict_stand_apart_on_a_wide_screen(bool scripts) =>
        Complaint.None((await report.WalkAsync(scripts)).Crowded);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_figure_is_parted_from_its_unit_and_no_day_or_number_is_broken(bool scripts) =>
        Complaint.None((await report.WalkAsync(scripts)).Parted);

    // A tablet held upright has room for columns; a telephone does not.
    [Theory]
    [InlineData(768, "table")]
    [InlineData(360, "block")]
    public async Task A_tablet_keeps_its_tables_and_a_telephone_sets_cells_below_each_other(int width, string display)
    {
        await using var view = await report.ViewAsync(width);
        foreach (var page in new[] { report.Index, report.LongestBoard })
        {
            await view.OpenAsync(page);
            Assert.Equal(
                [display],
                await view.Page.EvaluateAsync<string[]>(
                    "() => [...new Set([...document.querySelectorAll('table.ledger')].map(table => getComputedStyle(table).display))]"
                )
            );
        }
    }

    // A telephone of 360 by 740 CSS pixels: the state of the board is there without scrolling, and what is to be done begins there.
    [Fact]
    public async Task The_first_screen_of_a_telephone_says_how_a_board_stands()
    {
        await using var view = await report.ViewAsync(360, scripts: true);
        foreach (var page in report.Boards)
        {
            await view.OpenAsync(page);
            Assert.InRange(
                await view.Page.EvaluateAsync<double>("() => document.querySelector('main .state').getBoundingClientRect().bottom"),
                1,
                740 / 2
            );
        }
    }
}
