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
        Assert.Contains(report.Opened, page => page.Says("class=danger"));

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

    // WCAG 2.2, 1.4.12 Text Spacing: what a person sets so loses nothing.
    [Theory]
    [InlineData(1280)]
    [InlineData(320)]
    public async Task Wider_spacing_of_the_text_cuts_nothing_off(int width)
    {
        const string spacing =
            "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } "
            + "p { margin-bottom: 2em !important }";
        ReportPage[] pages =
        [
            report.Index,
            report.LongestBoard,
            report.LongestDesign,
            report.Pages.Single(page => page.Name == "drawer.html"),
        ];
        var cut = await report.LookAsync(
            pages,
            async (view, page) =>
            {
                await view.ShowAsync(new(ColorScheme.Light, width));
                await view.OpenAsync(page);
                await view.Page.AddStyleTagAsync(new() { Content = spacing });
                var words = await view.Page.EvaluateAsync<string[]>(
                    """
                    () => [...document.querySelectorAll('main :is(td, th, dd, li, p, h2, button, summary)')]
                      .filter(box => box.checkVisibility() && getComputedStyle(box).overflow !== 'visible')
                      .filter(box => box.scrollHeight > box.clientHeight + 1)
                      .map(box => box.innerText)
                    """
                );
                var room = await view.Page.EvaluateAsync<int[]>(
                    "() => [document.scrollingElement.scrollWidth, document.scrollingElement.clientWidth]"
                );
                return words
                    .Append(room[0] > room[1] ? $"is {room[0]} wide on a screen of {room[1]}" : "")
                    .Where(text => text.Length > 0)
                    .Select(text => $"{page}: {text}");
            },
            scripts: true
        );
        Complaint.None(cut.SelectMany(words => words));
    }

    [Fact]
    public async Task The_first_stop_of_the_keyboard_leads_past_what_all_pages_have()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.LongestBoard);
        await view.Page.Keyboard.PressAsync("Tab");
        var link = view.Page.GetByRole(AriaRole.Link, new() { Name = "To what this page says" });
        await Assertions.Expect(link).ToBeFocusedAsync();
        await Assertions.Expect(link).ToBeInViewportAsync();
        await view.Page.Keyboard.PressAsync("Enter");
        await view.Page.Keyboard.PressAsync("Tab");
        Assert.True(await view.Page.EvaluateAsync<bool>("() => document.activeElement.closest('main') !== null"));
    }

    [Fact]
    public async Task The_trail_says_which_of_its_pages_is_open()
    {
        await using var view = await report.ViewAsync();
        foreach (
            var (name, words) in new[]
            {
                ("drawer.html", "Drawer"),
                ("ahead.html", "Year ahead"),
                ("about.html", "How verdicts are reached"),
            }
        )
        {
            await view.OpenAsync(report.Pages.Single(page => page.Name == name));
            await Assertions.Expect(view.Page.Locator("nav [aria-current=page]")).ToHaveTextAsync(words);
        }
    }

    // On a telephone the name of its column stands before each cell for the eye; for the ear the head of the table has said it.
    [Fact]
    public async Task The_name_of_a_column_is_said_once_on_a_telephone()
    {
        await using var view = await report.ViewAsync(360);
        await view.OpenAsync(report.Index);
        var names = await view.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('main td[data-column]')].map(cell => getComputedStyle(cell, '::before').content)"
                + ".filter(name => name !== 'none')"
        );
        Assert.NotEmpty(names);
        Assert.All(names, content => Assert.EndsWith(" / \"\"", content, StringComparison.Ordinal));
    }
}
