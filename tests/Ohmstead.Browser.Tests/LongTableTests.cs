using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

/// <summary>A table on several pages is sorted and filtered as one.</summary>
public sealed partial class LongTableTests(ReportFixture report, GrownReport grown) : IClassFixture<GrownReport>
{
    // How many rows are laid out before more are asked for.
    private const int AtOnce = 100;
    private const int Many = 10_000;

    [Fact]
    public async Task Without_scripts_each_page_leads_to_the_other_and_all_boards_are_on_them()
    {
        await using var view = await report.ViewAsync();
        await view.OpenAsync(grown.Boards[0]);
        var first = await NamesAsync(view);
        await view.Page.Locator("nav.pages a").First.ClickAsync();
        Assert.EndsWith("boards~2.html", view.Page.Url, StringComparison.Ordinal);
        string[] all = [.. first, .. await NamesAsync(view)];
        Assert.Equal(
            grown
                .Pages.Where(page => page.Name.StartsWith("boards/", StringComparison.Ordinal))
                .Select(page => Path.GetFileNameWithoutExtension(page.Name)),
            all
        );
    }

    [Fact]
    public async Task A_head_sorts_the_rows_of_all_pages()
    {
        var readings = new List<int>();
        await using var view = await report.ViewAsync(scripts: true);
        foreach (var page in grown.Boards)
        {
            await view.OpenAsync(page);
            readings.AddRange(await ReadingsAsync(view));
        }

        await view.OpenAsync(grown.Boards[1]);
        await Head(view, "Readings").ClickAsync();
        await Assertions.Expect(view.Page.Locator("th[aria-sort=ascending]")).ToHaveTextAsync("Readings");
        Assert.Equal(readings.Order().Take(AtOnce), await ReadingsAsync(view));
        await Head(view, "Readings").ClickAsync();
        await Assertions.Expect(view.Page.Locator("th[aria-sort=descending]")).ToHaveTextAsync("Readings");
        Assert.Equal(readings.OrderDescending().Take(AtOnce), await ReadingsAsync(view));
        await Assertions.Expect(view.Page.Locator("nav.pages").First).ToBeHiddenAsync();
    }

    [Fact]
    public async Task What_was_asked_for_is_kept_in_the_address_and_taken_back_with_it()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(grown.Boards[1]);
        var written = await NamesAsync(view);
        await view.Page.GetByLabel("Filter All boards").FillAsync("SP-0003");
        await Assertions.Expect(view.Page).ToHaveURLAsync(new Regex("#all-boards\\.only=SP-0003$"));
        await Assertions.Expect(view.Page.Locator("main tbody tr")).ToHaveCountAsync(1);
        Assert.Equal(["SP-0003"], await NamesAsync(view));
        await Assertions.Expect(view.Page.Locator("main output")).ToHaveTextAsync($"1 of {BoardPages} rows");
        await view.Page.ReloadAsync();
        await Assertions.Expect(view.Page.Locator("main tbody tr")).ToHaveCountAsync(1);
        await view.Page.GetByLabel("Filter All boards").FillAsync("");
        await Assertions.Expect(view.Page.Locator("nav.pages").First).ToBeVisibleAsync();
        Assert.Equal(written, await NamesAsync(view));
    }

    [Fact]
    public async Task States_are_sorted_by_how_much_they_press_and_not_by_their_letters()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(grown.Boards[0], "#all-boards.by=-state");
        await Assertions.Expect(view.Page.Locator("th[aria-sort=descending]")).ToHaveTextAsync("State");
        var states = await view
            .Page.Locator("main tbody td:nth-child(2)")
            .EvaluateAllAsync<string[]>("cells => cells.map(cell => cell.textContent.trim())");
        string[] worstFirst = ["make safe first", "a fault stands", "work waits", "not looked at yet", "proof due", "fit to run"];
        Assert.Equal(states.OrderBy(state => Array.IndexOf(worstFirst, state)), states);
        Assert.Equal("make safe first", states[0]);
    }

    // The rows of ten thousand boards, as the report writes them. The result is asserted; how long it took is told with -showLiveOutput.
    [Fact]
    public async Task Ten_thousand_rows_are_sorted_as_numbers_and_shown_some_at_a_time()
    {
        var file = Path.Combine(grown.Folder, "boards.rows.js");
        var written = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        try
        {
            await File.WriteAllTextAsync(file, Multiplied(written), TestContext.Current.CancellationToken);
            await using var view = await report.ViewAsync(scripts: true);
            // Names, dates and numbers: each is sorted, and laid out, before the next is asked for.
            await view.OpenAsync(grown.Boards[0], "#all-boards.only=SP");
            await Assertions.Expect(view.Page.Locator("main output")).ToHaveTextAsync($"{Many} of {Many} rows, the first 100 of them:");
            var took = await view.Page.EvaluateAsync<double[]>(
                """
                async () => {
                  const times = [], heads = [...document.querySelectorAll("main th button")];
                  for (const head of [heads[0], heads[1], heads[7], heads[5]]) {
                    document.body.offsetHeight;
                    const start = performance.now();
                    const done = new Promise(then => addEventListener("hashchange", then, { once: true }));
                    head.click();
                    await done;
                    document.body.offsetHeight;
                    times.push(performance.now() - start);
                  }
                  return times;
                }
                """
            );
            TestContext.Current.TestOutputHelper?.WriteLine(
                "10,000 rows by name, by state, by date, by number, each sorted and laid out, in ms: "
                    + string.Join(", ", took.Select(time => time.ToString("0", CultureInfo.InvariantCulture)))
            );
            await Assertions.Expect(view.Page.Locator("th[aria-sort=ascending]")).ToHaveTextAsync("Readings");
            Assert.Equal(Enumerable.Range(0, 100), await ReadingsAsync(view));
            await view.Page.GetByRole(AriaRole.Button, new() { Name = "Show 100 more" }).ClickAsync();
            Assert.Equal(Enumerable.Range(0, 200), await ReadingsAsync(view));
            Assert.True(
                await view.Page.EvaluateAsync<bool>(
                    "() => document.querySelectorAll('main tbody tr')[100].contains(document.activeElement)"
                )
            );
        }
        finally
        {
            await File.WriteAllTextAsync(file, written, CancellationToken.None);
        }
    }

    [Fact]
    public async Task Its_pages_keep_every_rule_of_axe_in_every_form_and_complain_of_nothing()
    {
        ReportPage[] pages = [grown.Boards[1], grown.Page("next.html"), grown.Pages[0]];
        var folder = new Uri(grown.Boards[0].Address, ".");
        await using var view = await report.ViewAsync(scripts: true);
        foreach (var page in pages)
        {
            Assert.Empty(await view.ComplaintsAsync(page, folder, () => Task.CompletedTask));
            foreach (var form in Form.All)
            {
                Complaint.None(await Axe.BrokenAsync(view, page, form));
            }
        }

        await view.OpenAsync(grown.Boards[0], "#all-boards.by=readings");
        await Assertions.Expect(view.Page.Locator("th[aria-sort=ascending]")).ToHaveTextAsync("Readings");
        Assert.Empty(await Axe.BrokenAsync(view, grown.Boards[0], Form.All[0]));
    }

    private int BoardPages => grown.Pages.Count(page => page.Name.StartsWith("boards/", StringComparison.Ordinal));

    // Every row again and again with a name and a number for 'Inside' of its own, scattered over the file.
    private static string Multiplied(string script)
    {
        const string start = "globalThis.ohmsteadRows = ";
        var rows = JsonSerializer.Deserialize<string[]>(script[start.Length..].TrimEnd('\n', ';'))!;
        return start
            + JsonSerializer.Serialize(
                Enumerable
                    .Range(0, Many)
                    .Select(place =>
                    {
                        var own = place * 7919 % Many;
                        return Number()
                            .Replace(
                                ReadingsCell().Replace(rows[place % rows.Length], $"${{1}}{own}"),
                                string.Create(CultureInfo.InvariantCulture, $"${{1}}SP-{own:00000}"),
                                1
                            );
                    })
            )
            + ";\n";
    }

    [GeneratedRegex("(data-column=Readings>)[0-9]+")]
    private static partial Regex ReadingsCell();

    [GeneratedRegex("(<th [^>]*><a [^>]*>)[^<]+")]
    private static partial Regex Number();

    private static ILocator Head(View view, string column) =>
        view.Page.Locator("main th", new() { HasText = column }).GetByRole(AriaRole.Button);

    private static Task<string[]> NamesAsync(View view) =>
        view.Page.Locator("main tbody th a").EvaluateAllAsync<string[]>("links => links.map(link => link.textContent)");

    private static Task<int[]> ReadingsAsync(View view) =>
        view.Page.Locator("main tbody td:nth-child(6)").EvaluateAllAsync<int[]>("cells => cells.map(cell => Number(cell.textContent))");
}
