using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

public sealed class LinkTests(ReportFixture report)
{
    [Fact]
    public async Task Every_link_inside_the_report_leads_to_a_page_and_a_place_that_exist()
    {
        // Links and places are in the file as it is written; the browser reads all files without showing one.
        await using var view = await report.ViewAsync();
        var links = new List<(ReportPage From, Uri To)>();
        var places = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var page in report.Pages)
        {
            var found = await view.Page.EvaluateAsync<string[][]>(
                """
                ([html, address]) => {
                  const page = new DOMParser().parseFromString(html, "text/html");
                  return [
                    [...page.querySelectorAll("[id]")].map(place => place.id),
                    [...page.querySelectorAll("a[href]")].map(link => new URL(link.getAttribute("href"), address).href),
                    [...page.querySelectorAll("base")].map(base => base.href),
                  ];
                }
                """,
                new[] { page.Text, page.Address.AbsoluteUri }
            );
            Assert.Empty(found[2]);
            places[page.Address.AbsolutePath] = [.. found[0]];
            links.AddRange(found[1].Select(address => (page, new Uri(address))));
        }

        var inside = links.Where(link => link.To.IsFile).ToArray();
        Assert.NotEmpty(inside);
        Complaint.None(inside.Where(link => !Leads(link.To, places)).Select(link => $"{link.From} links to {link.To.AbsoluteUri}"));
    }

    [Fact]
    public async Task A_part_named_in_a_story_leads_to_the_row_of_that_part()
    {
        ReportPage[] boards = [.. report.Opened.Intersect(report.Boards).Where(page => page.Says("<a href=#p-"))];
        Assert.NotEmpty(boards);
        var astray = await report.LookAsync(boards, async (view, page) =>
        {
            await view.OpenAsync(page);
            var link = view.Page.Locator("a[href^='#p-']").Last;
            var wanted = Uri.UnescapeDataString((await link.GetAttributeAsync("href"))![1..]);
            await link.ClickAsync();
            var reached = await view.Page.EvaluateAsync<string?>("() => document.querySelector(':target')?.id");
            return reached == wanted ? "" : $"{page}: the link to {wanted} leads to '{reached}'";
        });
        Complaint.None(astray.Where(words => words.Length > 0));
    }

    // WCAG 2.2, 2.4.11 Focus Not Obscured: what is jumped to is not behind the line that stays.
    [Theory]
    [InlineData(1280)]
    [InlineData(900)]
    [InlineData(360)]
    public async Task What_is_jumped_to_stands_below_the_line_that_stays(int width)
    {
        await using var view = await report.ViewAsync();
        await view.ShowAsync(new(ColorScheme.Light, width));
        await view.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        await view.OpenAsync(report.Boards[0]);
        var astray = await view.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('[id^="p-"], [id^="s-"], [id^="v-"]')].flatMap(place => {
              place.scrollIntoView();
              // What holds the line cannot lie behind it: that is the whole of the page.
              const jump = document.querySelector('.jump'), line = jump.getBoundingClientRect();
              return place.contains(jump) || place.getBoundingClientRect().top >= line.bottom - 1 ? [] : [place.id];
            })
            """
        );
        Complaint.None(astray.Select(id => $"{id} is behind the line that stays"));
    }

    [Fact]
    public async Task Every_board_and_every_design_can_be_reached_from_the_index()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.Index);
        var reached = await view.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('a[href]')].map(link => link.href.split('#')[0])"
        );
        Complaint.None(
            report
                .Boards.Concat(report.Designs)
                .Where(page => !reached.Contains(page.Address.AbsoluteUri))
                .Select(page => $"no link leads to {page}")
        );
    }

    private static bool Leads(Uri to, Dictionary<string, HashSet<string>> places)
    {
        if (!places.TryGetValue(to.AbsolutePath, out var known))
        {
            // A picture, a style sheet or a copy of the record: there are no places in it.
            return File.Exists(to.LocalPath);
        }

        return to.Fragment.Length <= 1 || known.Contains(Uri.UnescapeDataString(to.Fragment[1..]));
    }
}
