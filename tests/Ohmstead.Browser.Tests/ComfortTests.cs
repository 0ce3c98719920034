using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>What the script adds for a person at the page: colours by choice, keys, links that open what they lead to.</summary>
public sealed class ComfortTests(ReportFixture report)
{
    private const string Paper = "() => getComputedStyle(document.body).backgroundColor";

    [Fact]
    public async Task The_colours_are_chosen_by_a_button_and_remembered_on_the_next_page()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        var light = await view.Page.EvaluateAsync<string>(Paper);
        await view.Page.GetByRole(AriaRole.Button, new() { Name = "Dark", Exact = true }).ClickAsync();
        var dark = await view.Page.EvaluateAsync<string>(Paper);
        Assert.NotEqual(light, dark);
        await view.OpenAsync(report.LongestBoard);
        Assert.Equal(dark, await view.Page.EvaluateAsync<string>(Paper));
        await view.ShowAsync(new(ColorScheme.Dark, 1280));
        Assert.Equal(dark, await view.Page.EvaluateAsync<string>(Paper));
        await view.Page.GetByRole(AriaRole.Button, new() { Name = "Light", Exact = true }).ClickAsync();
        Assert.Equal(light, await view.Page.EvaluateAsync<string>(Paper));
        await view.Page.EvaluateAsync("() => localStorage.clear()");
    }

    [Fact]
    public async Task Whoever_chose_dark_prints_black_on_white()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        await view.Page.GetByRole(AriaRole.Button, new() { Name = "Dark", Exact = true }).ClickAsync();
        await view.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Equal("rgb(255, 255, 255)", await view.Page.EvaluateAsync<string>(Paper));
        await view.Page.EvaluateAsync("() => localStorage.clear()");
    }

    [Fact]
    public async Task Two_photographs_of_a_place_are_laid_over_each_other_as_far_as_a_slider_says()
    {
        var pair = report.Boards.Single(page => page.Name == "boards/SP-0007.html");
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(pair);
        await view.Page.GetByText("One over the other").ClickAsync();
        var slider = view.Page.GetByRole(AriaRole.Slider);
        async Task<string> Cut() =>
            await view.Page.Locator("[data-over] img").Nth(1).EvaluateAsync<string>("one => getComputedStyle(one).clipPath");
        Assert.Equal("inset(0px 0px 0px 50%)", await Cut());
        await slider.PressAsync("Home");
        Assert.Equal("inset(0px)", (await Cut()).Replace("inset(0px 0px 0px 0%)", "inset(0px)", StringComparison.Ordinal));
        await slider.PressAsync("End");
        Assert.Equal("inset(0px 0px 0px 100%)", await Cut());
        Complaint.None(await Axe.BrokenAsync(view, pair, new(ColorScheme.Light, 1280)));
        // On paper, and without the script, they stand side by side.
        await view.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(view.Page.Locator("[data-over]")).ToBeHiddenAsync();
        Assert.Equal(2, await view.Page.Locator(".pair img:visible").CountAsync());
    }

    [Fact]
    public async Task Without_scripts_two_photographs_stand_side_by_side_and_there_is_no_slider()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.Boards.Single(page => page.Name == "boards/SP-0007.html"));
        Assert.Equal(0, await view.Page.GetByRole(AriaRole.Slider).CountAsync());
        Assert.Equal(2, await view.Page.Locator(".pair img:visible").CountAsync());
    }

    [Fact]
    public async Task Without_scripts_there_is_no_button_that_does_nothing()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.Index);
        Assert.Equal(0, await view.Page.Locator("button").CountAsync());
    }

    // WCAG 2.2, 2.1.4 Character Key Shortcuts: they can be switched off.
    [Fact]
    public async Task A_question_mark_shows_the_keys_and_they_can_be_switched_off()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.LongestBoard);
        await view.Page.Keyboard.PressAsync("?");
        var panel = view.Page.GetByRole(AriaRole.Dialog, new() { Name = "Keys" });
        await Assertions.Expect(panel).ToBeVisibleAsync();
        Complaint.None(await Axe.BrokenAsync(view, report.LongestBoard, new(ColorScheme.Light, 1280)));
        await panel.GetByRole(AriaRole.Checkbox).UncheckAsync();
        await view.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(panel).ToBeHiddenAsync();
        await view.Page.Keyboard.PressAsync("?");
        await view.Page.Keyboard.PressAsync("/");
        await Assertions.Expect(panel).ToBeHiddenAsync();
        await Assertions.Expect(view.Page.GetByRole(AriaRole.Searchbox).First).Not.ToBeFocusedAsync();
        await view.Page.EvaluateAsync("() => localStorage.clear()");
    }

    [Fact]
    public async Task A_link_to_a_reading_opens_its_fold_and_marks_it()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.LongestBoard);
        var id = await view.Page.Locator("details.v[id]").First.GetAttributeAsync("id");
        await view.OpenAsync(report.LongestBoard, "#" + Uri.EscapeDataString(id!));
        var fold = view.Page.Locator("details.v:target");
        await Assertions.Expect(fold).ToHaveAttributeAsync("open", "");
        Assert.NotEqual("none", await fold.EvaluateAsync<string>("fold => getComputedStyle(fold).boxShadow"));
        Assert.Equal(1, await view.Page.Locator("details.v[open]").CountAsync());
    }

    [Fact]
    public async Task A_table_of_a_few_rows_has_no_buttons_over_it()
    {
        await using var view = await report.ViewAsync(scripts: true);
        foreach (var page in new[] { report.Index, report.LongestBoard, report.LongestDesign })
        {
            await view.OpenAsync(page);
            Assert.Equal(
                0,
                await view.Page.EvaluateAsync<int>(
                    "() => [...document.querySelectorAll('main table:has(thead button)')]"
                        + ".filter(table => table.querySelectorAll('tbody tr').length < 5).length"
                )
            );
        }
    }
}
