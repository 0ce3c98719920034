namespace Ohmstead.Browser.Tests;

public sealed class OfflineTests(ReportFixture report)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Every_page_opens_from_disk_without_an_error_and_asks_for_nothing_outside_the_report(bool scripts)
    {
        await using var view = await report.ViewAsync(scripts: scripts);
        var folder = new Uri(report.Index.Address, ".");
        var complaints = new List<string>();
        foreach (var page in report.Opened)
        {
            complaints.AddRange(await view.ComplaintsAsync(page, folder));
        }

        Complaint.None(complaints);
    }

    [Fact]
    public async Task Every_page_says_what_it_is_about_with_scripts_off()
    {
        await using var view = await report.ViewAsync();
        var silent = new List<string>();
        foreach (var page in report.Opened)
        {
            await view.OpenAsync(page);
            var heading = view.Page.Locator("h1");
            if (string.IsNullOrWhiteSpace(await view.Page.TitleAsync()) || await heading.CountAsync() != 1 || string.IsNullOrWhiteSpace(await heading.InnerTextAsync()))
            {
                silent.Add($"{page} has no title, or not one heading of the first level");
            }
        }

        Complaint.None(silent);
    }

    [Fact]
    public async Task Every_picture_is_drawn_and_described()
    {
        await using var view = await report.ViewAsync();
        var missing = new List<string>();
        foreach (var page in report.Opened)
        {
            await view.OpenAsync(page);
            foreach (var picture in await view.Page.Locator("img").AllAsync())
            {
                // A picture far down may wait until it is scrolled to.
                await picture.ScrollIntoViewIfNeededAsync();
                var isDrawn = await picture.EvaluateAsync<bool>("async picture => { try { await picture.decode(); } catch { } return picture.naturalWidth > 0 && picture.alt.trim() !== ''; }");
                if (!isDrawn)
                {
                    missing.Add($"{page} shows no picture or no words for {await picture.GetAttributeAsync("src")}");
                }
            }
        }

        Complaint.None(missing);
    }
}
