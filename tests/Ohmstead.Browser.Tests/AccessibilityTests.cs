using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

public sealed class AccessibilityTests(ReportFixture report)
{
    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, 320)]
    [InlineData(ColorScheme.Dark, 320)]
    public async Task The_index_breaks_no_rule_of_axe(ColorScheme colours, int width) => Complaint.None(await ViolationsAsync(report.Index, colours, width));

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, 320)]
    [InlineData(ColorScheme.Dark, 320)]
    public async Task The_longest_board_breaks_no_rule_of_axe(ColorScheme colours, int width) => Complaint.None(await ViolationsAsync(report.LongestBoard, colours, width));

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, 320)]
    [InlineData(ColorScheme.Dark, 320)]
    public async Task A_board_that_must_be_made_safe_breaks_no_rule_of_axe(ColorScheme colours, int width) => Complaint.None(await ViolationsAsync(report.UnsafeBoard, colours, width));

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, 320)]
    [InlineData(ColorScheme.Dark, 320)]
    public async Task The_longest_design_breaks_no_rule_of_axe(ColorScheme colours, int width) => Complaint.None(await ViolationsAsync(report.LongestDesign, colours, width));

    [Theory]
    [InlineData("about.html")]
    [InlineData("ahead.html")]
    [InlineData("boards/SP-0020.html")]
    [InlineData("checks.html")]
    [InlineData("checks/calibration-expired.html")]
    [InlineData("drawer.html")]
    [InlineData("families.html")]
    [InlineData("findings.html")]
    [InlineData("instruments.html")]
    public async Task A_page_about_the_collection_breaks_no_rule_of_axe_in_light_dark_wide_and_narrow(string name)
    {
        var page = report.Pages.Single(page => page.Name == name);
        var violations = new List<string>();
        foreach (var colours in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            violations.AddRange(await ViolationsAsync(page, colours, 1280));
            violations.AddRange(await ViolationsAsync(page, colours, 320));
        }

        Complaint.None(violations);
    }

    [Fact]
    public async Task What_is_folded_away_breaks_no_rule_of_axe_when_it_is_opened()
    {
        await using var view = await report.ViewAsync(1280, ColorScheme.Light, scripts: true);
        var violations = new List<string>();
        foreach (var page in new[] { report.LongestBoard, report.Pages.Single(page => page.Name == "drawer.html") })
        {
            await view.OpenAsync(page);
            await view.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(fold => { fold.open = true; })");
            var result = await view.Page.RunAxe();
            violations.AddRange(result.Violations.SelectMany(violation => violation.Nodes.Select(node => Told(page, violation, node))));
        }

        Complaint.None(violations);
    }

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 320)]
    public async Task A_page_that_is_sorted_filtered_and_searched_breaks_no_rule_of_axe(ColorScheme colours, int width)
    {
        await using var view = await report.ViewAsync(width, colours, scripts: true);
        await view.OpenAsync(report.Index, "#find=sp&all-boards.by=-state&all-boards.only=fit");
        await Assertions.Expect(view.Page.GetByRole(AriaRole.Search).Locator("ol a").First).ToBeVisibleAsync();
        var result = await view.Page.RunAxe();
        Complaint.None(result.Violations.SelectMany(violation => violation.Nodes.Select(node => Told(report.Index, violation, node))));
    }

    // WCAG 2.2, 1.4.4 Resize Text: a screen of 1280 pixels at 200 % has room for 640.
    [Fact]
    public async Task At_twice_the_size_no_kind_of_page_breaks_a_rule_of_axe()
    {
        var violations = new List<string>();
        foreach (var page in new[] { report.Index, report.LongestBoard, report.LongestDesign, report.Pages.Single(page => page.Name == "findings.html") })
        {
            violations.AddRange(await ViolationsAsync(page, ColorScheme.Light, 640));
        }

        Complaint.None(violations);
    }

    private async Task<IReadOnlyList<string>> ViolationsAsync(ReportPage page, ColorScheme colours, int width)
    {
        await using var view = await report.ViewAsync(width, colours, scripts: true);
        await view.OpenAsync(page);
        var result = await view.Page.RunAxe();
        // A run in which no rule found anything to look at proves nothing.
        Assert.NotEmpty(result.Passes);
        return [.. result.Violations.SelectMany(violation => violation.Nodes.Select(node => Told(page, violation, node)))];
    }

    private static string Told(ReportPage page, AxeResultItem violation, AxeResultNode node) => $"{page} {violation.Id} ({violation.Impact}): {violation.Help}: {node.Html}";
}
