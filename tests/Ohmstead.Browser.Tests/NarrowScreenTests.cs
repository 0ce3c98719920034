namespace Ohmstead.Browser.Tests;

public sealed class NarrowScreenTests(ReportFixture report)
{
    // WCAG 2.2, success criterion 1.4.10 Reflow: 320 CSS pixels without scrolling in two directions. Tables may scroll inside a frame of their own.
    [Theory]
    // 640 is a screen of 1280 at twice the size (1.4.4 Resize Text).
    [InlineData(320, false)]
    [InlineData(320, true)]
    [InlineData(375, false)]
    [InlineData(640, true)]
    [InlineData(1280, false)]
    public async Task No_page_scrolls_sideways(int width, bool scripts)
    {
        await using var view = await report.ViewAsync(width, scripts: scripts);
        var wide = new List<string>();
        foreach (var page in report.Opened)
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
