namespace Ohmstead.Browser.Tests;

/// <summary>The report on a host that trusts nobody: strict headers, below a path of its own.</summary>
public sealed class ServedTests(ReportFixture report)
{
    [Theory]
    [InlineData(StaticServer.Strict, true)]
    [InlineData(StaticServer.Strict, false)]
    [InlineData(StaticServer.NoScripts, false)]
    public async Task Every_page_is_read_under_a_strict_policy_without_an_error_and_without_a_request_outside(string policy, bool scripts)
    {
        await using var server = StaticServer.Start(report.Folder, policy);
        var complaints = await report.LookAsync(
            report.Opened,
            async (view, page) =>
            {
                IReadOnlyList<string> words = [];
                var complaints = await view.ComplaintsAsync(server.At(page), server.Root, async () =>
                    words = await view.Page.Locator("h1").AllInnerTextsAsync()
                );
                return words.All(string.IsNullOrWhiteSpace) ? [.. complaints, $"{page} says nothing"] : complaints;
            },
            scripts,
            strict: true
        );
        Complaint.None(complaints.SelectMany(words => words));
    }

    [Fact]
    public async Task A_host_that_forbids_every_script_only_takes_the_buttons_away()
    {
        await using var server = StaticServer.Start(report.Folder, StaticServer.NoScripts);
        await using var refused = await report.ViewAsync(scripts: true, strict: true);
        await using var without = await report.ViewAsync(strict: true);
        await refused.OpenAsync(server.At(report.Index));
        await without.OpenAsync(server.At(report.Index));
        Assert.Equal(0, await refused.Page.Locator("button, input").CountAsync());
        Assert.Equal(await without.Page.Locator("main").InnerTextAsync(), await refused.Page.Locator("main").InnerTextAsync());
    }

    [Fact]
    public async Task Nothing_of_a_page_is_hidden_or_moved_by_the_script_until_somebody_asks()
    {
        await using var server = StaticServer.Start(report.Folder, StaticServer.Strict);
        await using var with = await report.ViewAsync(scripts: true, strict: true);
        await using var without = await report.ViewAsync(strict: true);
        foreach (var page in new[] { report.Index, report.LongestBoard, report.LongestDesign })
        {
            await with.OpenAsync(server.At(page));
            await without.OpenAsync(server.At(page));
            const string rows =
                "tables => tables.map(table => [...table.rows].filter(row => row.getClientRects().length > 0).map(row => "
                + "row.textContent).join('|'))";
            Assert.Equal(
                await without.Page.Locator("main table").EvaluateAllAsync<string[]>(rows),
                await with.Page.Locator("main table").EvaluateAllAsync<string[]>(rows)
            );
        }
    }
}
