namespace Ohmstead.Browser.Tests;

public sealed class OfflineTests(ReportFixture report)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Every_page_opens_from_disk_without_an_error_and_asks_for_nothing_outside_the_report(bool scripts) =>
        Complaint.None((await report.WalkAsync(scripts)).Complaints);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Every_page_says_what_it_is_about(bool scripts) => Complaint.None((await report.WalkAsync(scripts)).Silent);

    [Fact]
    public async Task Every_picture_is_drawn_and_described()
    {
        ReportPage[] illustrated = [.. report.Pages.Where(page => page.Says("<img"))];
        Assert.NotEmpty(illustrated);
        var missing = await report.LookAsync(illustrated, async (view, page) =>
        {
            await view.OpenAsync(page);
            // A picture far down may wait until it is scrolled to.
            var sources = await view.Page.EvaluateAsync<string[]>(
                """
                async () => {
                  const missing = [];
                  for (const picture of document.images) {
                    picture.scrollIntoView();
                    try { await picture.decode(); } catch { }
                    if (picture.naturalWidth === 0 || picture.alt.trim() === "") {
                      missing.push(picture.getAttribute("src"));
                    }
                  }
                  return missing;
                }
                """
            );
            return sources.Select(source => $"{page} shows no picture or no words for {source}");
        });
        Complaint.None(missing.SelectMany(words => words));
    }
}
