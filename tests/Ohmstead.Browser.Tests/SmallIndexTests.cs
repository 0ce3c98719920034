using System.Globalization;
using System.Text.Json;

namespace Ohmstead.Browser.Tests;

/// <summary>The script over an index that is written by hand: three files of two words each, three of two pages each.</summary>
public sealed class SmallIndexTests(ReportFixture report)
{
    // Page 0 is told by a gap of 1. The sentence of "far" is number 27: Z for twenty-five, and three more are C.
    private static readonly Dictionary<string, string> Files = new(StringComparer.Ordinal)
    {
        ["index"] = """
            {"groups":[["Boards",0]],"count":6,"designs":[],"words":["a1","c3","e5"],"pages":[0,2,4],"spellings":[3,5],
            "starts":"+&","ends":"!#","stops":["the"],"plain":{"ä":"a"},"units":[],"codes":[],"most":{}}
            """,
        ["w1"] = """["a1 1A b2 2A"]""",
        ["w2"] = """["c3 3A d4 4A"]""",
        ["w3"] = """["e5 5A f6 6A far 1ZC lamps 2*2* other 1A"]""",
        ["s1"] = """["far"]""",
        ["s2"] = """["lamps other"]""",
        ["p1"] = Pages("A1", "B2"),
        ["p2"] = Pages("C3", "D4"),
        ["p3"] = Pages("E5", "F6"),
    };

    [Theory]
    [InlineData("a1", "A1")]
    [InlineData("b2", "B2")]
    [InlineData("c3", "C3")]
    [InlineData("d4", "D4")]
    [InlineData("e5", "E5")]
    [InlineData("f6", "F6")]
    [InlineData("A-0001", "A1")]
    [InlineData("fär", "A1: the 27 lamps far away")]
    [InlineData("the far a1", "A1")]
    [InlineData("lamp", "B2, D4")]
    [InlineData("lampd", "B2, D4")]
    [InlineData("lamqd", "")]
    [InlineData("lam", "")]
    [InlineData("a0", "")]
    [InlineData("b3", "")]
    [InlineData("g7", "")]
    public async Task No_word_and_no_page_falls_between_two_files(string query, string found)
    {
        await using var view = await report.ViewAsync(scripts: true);
        await view.Page.RouteAsync("**/search/*.js", route =>
        {
            var name = Path.GetFileNameWithoutExtension(new Uri(route.Request.Url).LocalPath);
            return route.FulfillAsync(
                new() { ContentType = "text/javascript", Body = $"(globalThis.ohmsteadPieces ??= {{}}).{name} = {Files[name]};" }
            );
        });
        await view.OpenAsync(report.Index);
        await SearchTests.SearchAsync(view, query);
        var hits = await view.Page.EvaluateAsync<string[]>(
            """
            async query => (await ohmsteadSearch.find(query))
              .groups.flatMap(group => group.hits.map(hit => `${hit.name}: ${hit.best.text}`))
            """,
            query
        );
        Assert.Equal(
            found,
            found.Contains(':', StringComparison.Ordinal) ? string.Join(", ", hits) : string.Join(", ", hits.Select(hit => hit[..2]))
        );
    }

    // A sign of two characters stands for the piece behind the text.
    private static string Pages(params string[] names) =>
        JsonSerializer.Serialize<string[]>([
            string.Join(
                ',',
                names.Select(name =>
                    JsonSerializer
                        .Serialize(
                            new object[]
                            {
                                name,
                                "invented",
                                "",
                                "index.html",
                                new[] { "", "" },
                                Enumerable
                                    .Range(0, 29)
                                    .SelectMany(place =>
                                        new object[]
                                        {
                                            0,
                                            string.Create(
                                                CultureInfo.InvariantCulture,
                                                $"the {place} lamps {(place == 27 ? "far away" : "near")}"
                                            ),
                                        }
                                    )
                                    .ToArray(),
                            }
                        )
                        .Replace("the ", "+!", StringComparison.Ordinal)
                        .Replace(" lamps ", "&#", StringComparison.Ordinal)
                )
            ),
            "the ",
            "unused",
            "unused",
            " lamps ",
        ]);
}
