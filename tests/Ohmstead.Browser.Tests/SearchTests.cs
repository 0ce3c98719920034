using Microsoft.Playwright;

namespace Ohmstead.Browser.Tests;

public sealed class SearchTests(ReportFixture report)
{
    [Fact]
    public async Task A_board_is_found_by_its_number_from_disk_under_the_policy_of_the_pages()
    {
        await using var view = await report.ViewAsync(scripts: true, strict: true);
        await view.OpenAsync(report.LongestDesign);
        await Field(view).FillAsync("sp-0007");
        await Assertions.Expect(Hits(view).First).ToHaveTextAsync("SP-0007");
        await Hits(view).First.ClickAsync();
        await Assertions.Expect(view.Page).ToHaveURLAsync(new Uri(report.Index.Address, "boards/SP-0007.html").AbsoluteUri);
        await view.Page.GoBackAsync();
        await Assertions.Expect(Field(view)).ToHaveValueAsync("sp-0007");
        await Assertions.Expect(Hits(view).First).ToHaveTextAsync("SP-0007");
    }

    [Theory]
    [InlineData("C3 SP-0007", "SP-0007 C3", "boards/SP-0007.html#part-C3")]
    [InlineData("bench-supply", "bench-supply", "designs/bench-supply.html")]
    [InlineData("L-018", "L-018", "drawer.html#lot-L-018")]
    [InlineData("calibration-expired", "calibration-expired", "checks/calibration-expired.html")]
    public async Task A_part_a_design_a_lot_and_a_check_are_found(string words, string name, string address)
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        await Field(view).FillAsync(words);
        var hit = Hits(view).GetByText(name, new() { Exact = true }).First;
        Assert.Equal(new Uri(report.Index.Address, ".").AbsoluteUri + address, await hit.EvaluateAsync<string>("link => link.href"));
    }

    [Fact]
    public async Task What_is_found_nowhere_is_said_so_and_escape_empties_the_field()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        await Field(view).FillAsync("no board has this");
        await Assertions.Expect(view.Page.GetByRole(AriaRole.Search).Locator("output").First).ToHaveTextAsync("nothing found");
        await Field(view).PressAsync("Escape");
        await Assertions.Expect(Field(view)).ToHaveValueAsync("");
        await Assertions.Expect(view.Page.GetByRole(AriaRole.Search).Locator("output").First).ToHaveTextAsync("");
    }

    [Fact]
    public async Task Every_address_of_the_index_leads_to_a_page_of_the_report()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(report.Index);
        await Field(view).FillAsync("sp");
        await Assertions.Expect(Hits(view).First).ToBeVisibleAsync();
        var addresses = await view.Page.EvaluateAsync<string[]>(
            "() => [...ohmsteadIndex.things.map(thing => thing[3]), ...ohmsteadIndex.boards.map(board => `boards/${board[0]}.html`)]"
        );
        Complaint.None(addresses.Where(address => !File.Exists(new Uri(report.Index.Address, address.Split('#')[0]).LocalPath)));
    }

    private static ILocator Field(View view) => view.Page.GetByRole(AriaRole.Searchbox, new() { Name = "Search boards" });

    private static ILocator Hits(View view) => view.Page.GetByRole(AriaRole.Search).Locator("ol a");
}
