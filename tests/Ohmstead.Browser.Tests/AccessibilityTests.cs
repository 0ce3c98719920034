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
