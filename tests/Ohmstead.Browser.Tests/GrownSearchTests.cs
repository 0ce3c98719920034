namespace Ohmstead.Browser.Tests;

/// <summary>The search over a collection whose index has several files of each kind.</summary>
public sealed class GrownSearchTests(GrownReport grown, ReportFixture report) : IClassFixture<GrownReport>
{
    private const string HasSeveral = "() => ohmsteadPieces.index.words.length > 1 && ohmsteadPieces.index.pages.length > 1";

    private const string Firsts = """
        async numbers => {
          const wrong = [];
          for (const number of numbers) {
            const { groups } = await ohmsteadSearch.find(number);
            if (groups[0]?.hits[0]?.name !== number) {
              wrong.push(`${number}: ${groups[0]?.hits[0]?.name}`);
            }
          }
          return wrong;
        }
        """;

    [Fact]
    public async Task Every_board_is_found_by_its_number()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(grown.Page("index.html"));
        await SearchTests.SearchAsync(view, "sp");
        Assert.True(await view.Page.EvaluateAsync<bool>(HasSeveral));
        string[] numbers =
        [
            .. grown
                .Pages.Where(page => page.Name.StartsWith("boards/", StringComparison.Ordinal))
                .Select(page => Path.GetFileNameWithoutExtension(page.Name)),
        ];
        Assert.InRange(numbers.Length, 100, 1000);
        Complaint.None(await view.Page.EvaluateAsync<string[]>(Firsts, numbers));
    }
}
