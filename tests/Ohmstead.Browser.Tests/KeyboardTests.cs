using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

public sealed class KeyboardTests(ReportFixture report)
{
    private const string Stops = "a[href], button, input, summary, [tabindex='0']";

    // WCAG 2.2, 2.1.1 Keyboard and 2.4.7 Focus Visible.
    [Theory]
    [InlineData(1280, true)]
    [InlineData(1280, false)]
    [InlineData(320, true)]
    public async Task The_tabulator_reaches_every_link_and_button_in_order_and_shows_where_it_is(int width, bool scripts)
    {
        await using var view = await report.ViewAsync(width, scripts: true);
        await view.Page.RouteAsync("**/ohmstead.js", route => scripts ? route.ContinueAsync() : route.AbortAsync());
        foreach (var page in new[] { report.Pages.Single(page => page.Name == "families.html"), report.Pages.Single(page => page.Name == "instruments.html"), report.Designs[0] })
        {
            await view.OpenAsync(page);
            var wanted = await view.Page.EvaluateAsync<int>($$"""
                () => {
                  const stops = [...document.querySelectorAll("{{Stops}}")].filter(stop => stop.checkVisibility());
                  stops.forEach((stop, place) => { stop.place = place; });
                  return stops.length;
                }
                """);
            Assert.NotEqual(0, wanted);
            for (var place = 0; place < wanted; place++)
            {
                await view.Page.Keyboard.PressAsync("Tab");
                var seen = await view.Page.EvaluateAsync<string>("""
                    () => {
                      const at = document.activeElement, style = getComputedStyle(at), box = at.getBoundingClientRect();
                      return `${at.place} ${style.outlineStyle} ${parseFloat(style.outlineWidth) >= 2} ${box.width > 1 && box.height > 1}`;
                    }
                    """);
                Assert.Equal($"{place} solid true true", seen);
            }
        }
    }

    [Fact]
    public async Task A_table_is_sorted_without_a_mouse_and_the_focus_stays()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        var button = view.Page.Locator("table[aria-label='All boards'] th button").First;
        await button.FocusAsync();
        await view.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(view.Page.Locator("table[aria-label='All boards'] th").First).ToHaveAttributeAsync("aria-sort", "ascending");
        await Assertions.Expect(button).ToBeFocusedAsync();
    }

    [Theory]
    [InlineData(ReducedMotion.Reduce, "auto")]
    [InlineData(ReducedMotion.NoPreference, "smooth")]
    public async Task The_page_glides_only_for_those_who_do_not_mind(ReducedMotion wish, string behaviour)
    {
        await using var view = await report.ViewAsync(motion: wish);
        await view.OpenAsync(report.Index);
        Assert.Equal(behaviour, await view.Page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).scrollBehavior"));
        Assert.Equal(0, await view.Page.EvaluateAsync<int>("() => document.getAnimations().length"));
    }
}
