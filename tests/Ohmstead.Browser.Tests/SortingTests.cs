using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

public sealed class SortingTests(ReportFixture report)
{
    private const string Numbers = "rows => rows.map(row => row.cells[0].querySelector('a').textContent)";

    [Fact]
    public async Task A_head_sorts_its_column_up_then_down_then_as_the_records_have_it()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        var head = Boards(view).Locator("th", new() { HasText = "Readings" });
        var written = await ColumnAsync(view, 5);
        await head.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(head).ToHaveAttributeAsync("aria-sort", "ascending");
        // As numbers: 9 stands before 10.
        Assert.Equal(written.Order(), await ColumnAsync(view, 5));
        await head.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(head).ToHaveAttributeAsync("aria-sort", "descending");
        Assert.Equal(written.OrderDescending(), await ColumnAsync(view, 5));
        await head.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(head).Not.ToHaveAttributeAsync("aria-sort", "descending");
        Assert.Equal(written, await ColumnAsync(view, 5));
    }

    [Fact]
    public async Task States_are_sorted_by_how_much_they_press_and_not_by_their_letters()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index, "#all-boards.by=-state");
        var states = await Boards(view)
            .Locator("tbody td:nth-child(2)")
            .EvaluateAllAsync<string[]>("cells => cells.map(cell => cell.textContent.trim())");
        string[] worstFirst = ["make safe first", "a fault stands", "work waits", "not looked at yet", "proof due", "fit to run"];
        Assert.Equal(states.OrderBy(state => Array.IndexOf(worstFirst, state)), states);
        Assert.Equal("make safe first", states[0]);
    }

    [Fact]
    public async Task The_address_keeps_what_was_asked_for_and_the_way_back_takes_it_back()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        var before = await ShownAsync(view);
        await Boards(view).Locator("th", new() { HasText = "Board" }).GetByRole(AriaRole.Button).ClickAsync();
        await view.Page.GetByLabel("Filter All boards").FillAsync("fit to run");
        await Assertions
            .Expect(view.Page)
            .ToHaveURLAsync(new System.Text.RegularExpressions.Regex("all-boards\\.by=board&all-boards\\.only=fit\\+to\\+run$"));
        var filtered = await ShownAsync(view);
        Assert.InRange(filtered.Length, 1, before.Length - 1);
        await view.Page.ReloadAsync();
        Assert.Equal(filtered, await ShownAsync(view));
        await Assertions.Expect(view.Page.GetByLabel("Filter All boards")).ToHaveValueAsync("fit to run");
        await view.Page.GoBackAsync();
        await Assertions.Expect(view.Page.GetByLabel("Filter All boards")).ToHaveValueAsync("");
        Assert.Equal(before.Order(StringComparer.Ordinal), await ShownAsync(view));
    }

    [Fact]
    public async Task What_was_done_is_said_politely()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        await Boards(view).Locator("th", new() { HasText = "Last seen" }).GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(view.Page.Locator("output[data-said]")).ToHaveTextAsync("All boards: by Last seen, ascending");
        await view.Page.GetByLabel("Filter All boards").FillAsync("no such thing");
        await Assertions
            .Expect(view.Page.Locator("main output").Filter(new() { HasText = "of" }))
            .ToHaveTextAsync($"0 of {report.Boards.Count} rows");
    }

    [Fact]
    public async Task Findings_stay_under_the_file_they_are_of()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Pages.Single(page => page.Name == "findings.html"), "#findings.by=-line");
        var groups = await view
            .Page.Locator("table[aria-label=Findings] tbody")
            .EvaluateAllAsync<string[]>("bodies => bodies.map(body => body.rows[0].cells[0].scope)");
        Assert.NotEmpty(groups);
        Assert.All(groups, scope => Assert.Equal("rowgroup", scope));
    }

    private static ILocator Boards(View view) => view.Page.Locator("table[aria-label='All boards']");

    private static Task<string[]> ShownAsync(View view) =>
        Boards(view).Locator("tbody tr:not([hidden])").EvaluateAllAsync<string[]>(Numbers);

    private static Task<int[]> ColumnAsync(View view, int column) =>
        Boards(view)
            .Locator("tbody tr")
            .EvaluateAllAsync<int[]>("(rows, column) => rows.map(row => Number(row.cells[column].textContent))", column);
}
