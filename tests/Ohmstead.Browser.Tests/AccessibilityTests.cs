using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

public sealed class AccessibilityTests(ReportFixture report)
{
    private static readonly Form Wide = new(ColorScheme.Light, 1280);

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, 320)]
    [InlineData(ColorScheme.Dark, 320)]
    [InlineData(ColorScheme.Light, 640)]
    public async Task No_page_breaks_a_rule_of_axe(ColorScheme colours, int width)
    {
        var form = new Form(colours, width);
        Assert.Contains(form, Form.All);
        Complaint.None((await report.WalkAsync(scripts: true)).Broken[form]);
    }

    [Fact]
    public void A_board_that_must_be_made_safe_is_among_the_pages_that_are_looked_at() =>
        Assert.Contains(report.Opened, page => page.Says("class=\"danger\""));

    [Fact]
    public async Task What_is_folded_away_breaks_no_rule_of_axe_when_it_is_opened()
    {
        ReportPage[] pages = [report.LongestBoard, report.Pages.Single(page => page.Name == "drawer.html")];
        var broken = await report.LookAsync(
            pages,
            async (view, page) =>
            {
                await view.OpenAsync(page);
                Assert.NotEqual(
                    0,
                    await view.Page.EvaluateAsync<int>(
                        "() => [...document.querySelectorAll('details')].map(fold => { fold.open = true; }).length"
                    )
                );
                return await Axe.BrokenAsync(view, page, Wide);
            },
            scripts: true
        );
        Complaint.None(broken.SelectMany(words => words));
    }

    [Fact]
    public async Task A_page_that_is_sorted_filtered_and_searched_breaks_no_rule_of_axe()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index, "#find=sp&all-boards.by=-state&all-boards.only=fit");
        await Assertions.Expect(view.Page.GetByRole(AriaRole.Search).Locator("li a").First).ToBeVisibleAsync();
        Complaint.None([
            .. await Axe.BrokenAsync(view, report.Index, Wide),
            .. await Axe.BrokenAsync(view, report.Index, new(ColorScheme.Dark, 320)),
        ]);
    }
}
