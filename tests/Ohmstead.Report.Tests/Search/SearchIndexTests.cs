using System.Text;
using System.Text.Json;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Search;

namespace Ohmstead.Report.Tests.Search;

public sealed class SearchIndexTests
{
    private static readonly string[] Own = ["C1", "C2"];

    [Fact]
    public void It_is_one_assignment_of_plain_data()
    {
        using var index = Index([Board("SP-1", "Servo", Own)], []);
        Assert.Equal("SP-1", index.RootElement.GetProperty("boards")[0][0].GetString());
        Assert.Equal("fit to run", index.RootElement.GetProperty("states")[0].GetString());
    }

    [Fact]
    public void A_board_whose_look_is_overdue_is_found_with_that_beside_its_state()
    {
        using var index = Index([Board("SP-1", "Servo", Own), Board("SP-2", "Servo", Own) with { IsLookOverdue = true }], []);
        var states = index.RootElement.GetProperty("states").EnumerateArray().Select(state => state.GetString()).ToArray();
        Assert.Equal(
            ["fit to run", "fit to run; its inspection is overdue"],
            index.RootElement.GetProperty("boards").EnumerateArray().Select(board => states[board[2].GetInt32()])
        );
    }

    // Boards 0, 1 and 2 have C2, board 3 has not, board 4 has it again: after no gap three, after a gap of one another one.
    [Fact]
    public void A_part_on_many_boards_is_kept_as_gaps_and_lengths()
    {
        BoardSummary[] boards =
        [
            Board("a", "t", ["C2"]),
            Board("b", "t", ["C2", "C2"]),
            Board("c", "t", ["C2"]),
            Board("d", "t", ["R1"]),
            Board("e", "t", ["C2"]),
        ];
        using var index = Index(boards, []);
        var parts = index
            .RootElement.GetProperty("parts")
            .EnumerateArray()
            .ToDictionary(part => part[0].GetString()!, part => part[3].EnumerateArray().Select(number => number.GetInt32()).ToArray());
        Assert.Equal([0, 3, 1, 1], parts["C2"]);
        Assert.Equal([3, 1], parts["R1"]);
    }

    [Theory]
    [InlineData("</script><script>alert(1)</script>")]
    [InlineData("\";alert(1);//")]
    [InlineData("`${alert(1)}`\u2028\u2029\u0000\u202e\ud800")]
    public void Hostile_text_cannot_end_the_script_or_hide_in_it(string hostile)
    {
        var finding = new Finding("a-check", Severity.Error, new Place("boards/a.md", 1, 1), hostile);
        using var index = Index([Board("a", hostile, Own)], [finding], out var script);
        Assert.DoesNotContain('<', script);
        Assert.All(script, c => Assert.False((char.IsControl(c) && c != '\n') || c is '\u2028' or '\u2029' or '\u202e', $"U+{(int)c:X4}"));
        Assert.NotEqual(0, index.RootElement.GetProperty("boards")[0][1].GetString()!.Length);
    }

    // What a person types letter by letter must be looked through between two letters.
    [Fact]
    public void Ten_thousand_boards_of_forty_parts_take_less_than_two_megabytes()
    {
        string[] parts = [.. Enumerable.Range(1, 40).Select(number => $"C{number}")];
        BoardSummary[] boards =
        [
            .. Enumerable
                .Range(1, 10_000)
                .Select(number =>
                    Board(
                        $"SP-{number:00000}",
                        "Barograph servo amplifier, lookout hut",
                        [.. parts.Where((_, place) => (number + place) % 3 != 0)]
                    )
                ),
        ];
        using var index = Index(boards, [], out var script);
        Assert.InRange(script.Length, 1, 2_000_000);
    }

    private static BoardSummary Board(string number, string title, IReadOnlyList<string> parts) =>
        new($"boards/{number}.md", new(number, number, default!), title, null, BoardState.FitToRun, []) { OwnParts = parts };

    private static JsonDocument Index(IReadOnlyList<BoardSummary> boards, IReadOnlyList<Finding> findings) =>
        Index(boards, findings, out _);

    private static JsonDocument Index(IReadOnlyList<BoardSummary> boards, IReadOnlyList<Finding> findings, out string script)
    {
        using var buffer = new PageBuffer();
        SearchIndex.Write(
            buffer,
            new ReportContext(Workshop.Empty, new HashSet<string>(), new DateOnly(2026, 11, 25), "0.0.0"),
            boards,
            [.. findings]
        );
        script = Encoding.UTF8.GetString(buffer.Written);
        const string start = "globalThis.ohmsteadIndex = ";
        Assert.StartsWith(start, script, StringComparison.Ordinal);
        Assert.EndsWith(";\n", script, StringComparison.Ordinal);
        return JsonDocument.Parse(script[start.Length..^2]);
    }
}
