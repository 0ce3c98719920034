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
        ReportPage[] pages =
        [
            report.Pages.Single(page => page.Name == "families.html"),
            report.Pages.Single(page => page.Name == "instruments.html"),
            report.Designs[0],
        ];
        var astray = await report.LookAsync(
            pages,
            async (view, page) =>
            {
                await view.ShowAsync(new(ColorScheme.Light, width));
                if (!scripts)
                {
                    await view.Page.RouteAsync("**/ohmstead.js", route => route.AbortAsync());
                }

                await view.OpenAsync(page);
                return await AstrayAsync(view, page);
            },
            scripts: true
        );
        Complaint.None(astray.SelectMany(words => words));
    }

    [Fact]
    public async Task A_table_is_sorted_without_a_mouse_and_the_focus_stays()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        var button = view.Page.Locator("table[aria-label='All boards'] th button").First;
        await button.FocusAsync();
        await view.Page.Keyboard.PressAsync("Enter");
        await Assertions
            .Expect(view.Page.Locator("table[aria-label='All boards'] th").First)
            .ToHaveAttributeAsync("aria-sort", "ascending");
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

    // The page itself keeps account of where the focus came, so that nothing is asked between two presses.
    private static async Task<IEnumerable<string>> AstrayAsync(View view, ReportPage page)
    {
        var wanted = await view.Page.EvaluateAsync<string[]>(
            $$"""
            () => {
              const stops = [...document.querySelectorAll("{{Stops}}")].filter(stop => stop.checkVisibility());
              const name = stop => stops.indexOf(stop) + " " + stop.outerHTML.slice(0, 120);
              window.reached = [];
              addEventListener("focusin", event => {
                const style = getComputedStyle(event.target), box = event.target.getBoundingClientRect();
                const seen = style.outlineStyle === "solid" && parseFloat(style.outlineWidth) >= 2 && box.width > 1 && box.height > 1;
                window.reached.push(name(event.target) + (seen ? "" : " without showing it"));
              });
              return stops.map(name);
            }
            """
        );
        Assert.NotEmpty(wanted);
        foreach (var _ in wanted)
        {
            await view.Page.Keyboard.PressAsync("Tab");
        }

        var reached = await view.Page.EvaluateAsync<string[]>("() => window.reached");
        return wanted
            .Select((stop, place) => (Stop: stop, At: reached.ElementAtOrDefault(place) ?? "nothing"))
            .Where(step => step.Stop != step.At)
            .Select(step => $"{page}: the tabulator should reach {step.Stop} and reaches {step.At}");
    }
}
