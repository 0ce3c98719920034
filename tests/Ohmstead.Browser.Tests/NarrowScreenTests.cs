namespace Ohmstead.Browser.Tests;

public sealed class NarrowScreenTests(ReportFixture report)
{
    // WCAG 2.2, success criterion 1.4.10 Reflow: 320 CSS pixels without scrolling in two directions. Tables may scroll inside a frame of their own.
    [Theory]
    [InlineData(320)]
    [InlineData(375)]
    [InlineData(1280)]
    public async Task No_page_scrolls_sideways(int width)
    {
        await using var view = await report.ViewAsync(width);
        var wide = new List<string>();
        foreach (var page in report.Pages)
        {
            await view.OpenAsync(page);
            var room = await view.Page.EvaluateAsync<int[]>("() => [document.scrollingElement.scrollWidth, document.scrollingElement.clientWidth]");
            if (room[0] > room[1])
            {
                wide.Add($"{page} is {room[0]} wide on a screen of {room[1]}");
            }
        }

        Complaint.None(wide);
    }
}
