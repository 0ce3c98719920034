using System.Text;

namespace Ohmstead.Browser.Tests;

public sealed class PrintTests(ReportFixture report)
{
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task The_index_a_board_and_a_design_print_more_than_an_empty_sheet(string paper)
    {
        await using var view = await report.ViewAsync();
        await view.Page.GotoAsync("about:blank");
        var empty = await view.Page.PdfAsync(new() { Format = paper });
        foreach (var page in new[] { report.Index, report.LongestBoard, report.LongestDesign })
        {
            await view.OpenAsync(page);
            var printed = await view.Page.PdfAsync(new() { Format = paper });
            Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(printed, 0, 8), StringComparison.Ordinal);
            Assert.True(printed.Length > 4 * empty.Length, $"{page} prints {printed.Length} bytes, an empty sheet {empty.Length}");
        }
    }

    [Fact]
    public async Task What_the_screen_says_of_the_parts_is_on_paper_too()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.LongestBoard);
        await view.Page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        var hidden = await view.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('[id^=\"part-\"]')].filter(row => row.getClientRects().length === 0).map(row => row.id)");
        Assert.NotEqual(0, await view.Page.Locator("[id^='part-']").CountAsync());
        Complaint.None(hidden);
    }
}
