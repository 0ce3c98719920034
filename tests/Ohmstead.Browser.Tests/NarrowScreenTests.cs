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
}
