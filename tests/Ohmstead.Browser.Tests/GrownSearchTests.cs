namespace Ohmstead.Browser.Tests;

/// <summary>The search over a collection whose index has several files of each kind.</summary>
public sealed class GrownSearchTests(GrownReport grown, ReportFixture report) : IClassFixture<GrownReport>
{
    // Where one file ends and the next begins is where a search most likely overlooks something.
    private const string AtTheEdges = """
        async () => {
          const { find, read } = ohmsteadSearch;
          const { index } = ohmsteadPieces;
          const missed = [];
          for (let piece = 1; piece <= index.words.length; piece++) {
            await new Promise(resolve => {
              const file = document.createElement("script");
              file.src = `search/w${piece}.js`;
              file.addEventListener("load", resolve);
              document.head.append(file);
            });
            const [text] = ohmsteadPieces[`w${piece}`];
            const words = JSON.parse(`"${text}"`)
              .split(" ")
              .filter((token, place) => place % 2 === 0 && /^[a-z0-9]+$/u.test(token));
            for (const word of [...words.slice(0, 2), ...words.slice(-2)]) {
              const [item, ...others] = await read(word);
              if (item.token === word && others.length === 0 && !((await find(word))?.count > 0)) {
                missed.push(word);
              }
            }
          }
          return [String(index.words.length), String(index.pages.length), ...missed];
        }
        """;

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
    public async Task Every_board_is_found_by_its_number_and_no_word_falls_between_two_files()
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.OpenAsync(grown.Page("index.html"));
        await SearchTests.SearchAsync(view, "sp");
        var edges = await view.Page.EvaluateAsync<string[]>(AtTheEdges);
        Assert.InRange(int.Parse(edges[0], System.Globalization.CultureInfo.InvariantCulture), 2, 100);
        Assert.InRange(int.Parse(edges[1], System.Globalization.CultureInfo.InvariantCulture), 2, 100);
        Complaint.None(edges[2..]);
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
