namespace Ohmstead.Browser.Tests;

public sealed class LinkTests(ReportFixture report)
{
    [Fact]
    public async Task Every_link_inside_the_report_leads_to_a_page_and_a_place_that_exist()
    {
        await using var view = await report.ViewAsync();
        var links = new List<(ReportPage From, Uri To)>();
        var places = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var page in report.Pages)
        {
            await view.OpenAsync(page);
            places[page.Address.AbsolutePath] = [.. await view.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('[id]')].map(place => place.id)")];
            var addresses = await view.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('a[href]')].map(link => link.href)");
            links.AddRange(addresses.Select(address => (page, new Uri(address))));
        }

        var inside = links.Where(link => link.To.IsFile).ToArray();
        Assert.NotEmpty(inside);
        Complaint.None(inside.Where(link => !Leads(link.To, places)).Select(link => $"{link.From} links to {link.To.AbsoluteUri}"));
    }

    [Fact]
    public async Task A_part_named_in_a_story_leads_to_the_row_of_that_part()
    {
        await using var view = await report.ViewAsync();
        var followed = 0;
        foreach (var board in report.Boards)
        {
            await view.OpenAsync(board);
            var links = view.Page.Locator("a[href^='#part-']");
            if (await links.CountAsync() == 0)
            {
                continue;
            }

            var wanted = Uri.UnescapeDataString((await links.Last.GetAttributeAsync("href"))![1..]);
            await links.Last.ClickAsync();
            Assert.Equal(wanted, await view.Page.EvaluateAsync<string?>("() => document.querySelector(':target')?.id"));
            followed++;
        }

        Assert.NotEqual(0, followed);
    }

    [Fact]
    public async Task Every_board_and_every_design_can_be_reached_from_the_index()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(report.Index);
        var reached = await view.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('a[href]')].map(link => link.href.split('#')[0])");
        Complaint.None(report.Boards.Concat(report.Designs).Where(page => !reached.Contains(page.Address.AbsoluteUri)).Select(page => $"no link leads to {page}"));
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
