using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>The form for programs: one document whatever happens, with names that stay.</summary>
public sealed class JsonFindingsTests
{
    private static readonly string[] Top = ["version", "exit", "problem", "files", "boards", "findings"];

    [Fact]
    public void The_names_of_all_members_are_as_programs_know_them()
    {
        using var document = JsonDocument.Parse(Check(CollectionCopy.Untouched).Out);
        var root = document.RootElement;
        Assert.Equal(Top, Names(root));
        Assert.All(root.GetProperty("boards").EnumerateArray(), board =>
            Assert.Equal(["board", "path", "state", "look_overdue", "reasons"], Names(board))
        );
        Assert.All(root.GetProperty("boards").EnumerateArray().SelectMany(board => board.GetProperty("reasons").EnumerateArray()), reason =>
            Assert.Equal(["state", "at", "text", "next"], Names(reason))
        );
        Assert.All(root.GetProperty("findings").EnumerateArray(), finding =>
            Assert.Equal(
                ["check", "severity", "path", "line", "column", "end_column", "message", "next", "more", "related"],
                Names(finding)
            )
        );
    }

    [Fact]
    public void States_are_told_in_the_words_of_the_pages()
    {
        using var document = JsonDocument.Parse(Check(CollectionCopy.Untouched).Out);
        var states = document
            .RootElement.GetProperty("boards")
            .EnumerateArray()
            .ToDictionary(board => board.GetProperty("board").GetString()!, board => board.GetProperty("state").GetString());
        Assert.Equal(CollectionCopy.Boards, states.Count);
        Assert.Equal("fit to run", states["SP-0001"]);
        Assert.Equal("proof due", states["SP-0002"]);
        Assert.Equal("make safe first", states["SP-0008"]);
        Assert.Equal("a fault stands", states["SP-0015"]);
    }

    [Theory]
    [InlineData("clean", 0)]
    [InlineData("mistake", 1)]
    [InlineData("nothing", 2)]
    [InlineData("no folder", 2)]
    [InlineData("link", 1)]
    [InlineData("too large", 3)]
    public void However_a_run_ends_there_is_one_document_that_says_the_same_as_the_exit_code(string situation, int exit)
    {
        using var copy = situation is "nothing" ? CollectionCopy.Empty() : CollectionCopy.Make();
        if (situation is "mistake" or "link" or "too large")
        {
            File.Delete(copy.At("designs/valve-receiver.md"));
        }

        if (situation is "link")
        {
            File.CreateSymbolicLink(copy.At("designs/valve-receiver.md"), copy.At("designs/rain-counter.md"));
        }

        if (situation is "too large")
        {
            using var file = File.Create(copy.At("designs/valve-receiver.md"));
            file.SetLength(1L << 30);
        }

        var run = Check(situation is "no folder" ? copy.At("nowhere") : copy.Root);
        using var document = JsonDocument.Parse(run.Out);
        Assert.Equal(exit, run.Exit);
        Assert.Equal(exit, document.RootElement.GetProperty("exit").GetInt32());
        Assert.Equal(Top, Names(document.RootElement));
        Assert.Equal(exit == 2, document.RootElement.GetProperty("problem").ValueKind == JsonValueKind.String);
        Assert.Equal(exit is 1 or 3, ShownFinding.FromJson(run.Out).Any(finding => finding.Severity == "error"));
    }

    [Fact]
    public void Hostile_text_comes_back_exactly_and_stands_in_the_document_as_plain_ascii()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0099.md", "---\nboard: SP-0099\ntitle: \"Rain\\u202E counter\"\ndesign: \"x</script>\\\"\"\n---\n");
        var run = Check(copy.Root);
        Assert.All(run.Out, c => Assert.InRange(c, '\n', '~'));
        Assert.Contains(ShownFinding.FromJson(run.Out), finding => finding.Message.Contains("x</script>\"", StringComparison.Ordinal));
    }

    private static Run Check(string root) => Run.Of("check", root, "--form", "json", "--as-of", "2026-11-25");

    private static IEnumerable<string> Names(JsonElement element) => element.EnumerateObject().Select(member => member.Name);
}
