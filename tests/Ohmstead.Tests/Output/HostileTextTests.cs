using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>Whatever a record, a file name or a command line holds, a terminal gets no raw control or bidirectional character.</summary>
public sealed class HostileTextTests
{
    private const string Escapes = "\u001b]8;;http://x\u0007\u001b[2J\r\u009b31m\u202e\u200b";

    [Theory]
    [InlineData("check", "{0}")]
    [InlineData("check", "{0}", "--form", "annotations")]
    [InlineData("check", "{0}/boards/SP-0099.md")]
    [InlineData("report", "{0}", "--to", "{0}/pages")]
    [InlineData("why", "SP-0099", "--in", "{0}")]
    [InlineData("why", "SP-0099" + Escapes, "--in", "{0}")]
    [InlineData("why", "SP-0001", "C1" + Escapes, "--in", "{0}")]
    [InlineData("check", "{0}/" + Escapes)]
    [InlineData("check", "--" + Escapes)]
    [InlineData("check", "{0}", "--as-of", Escapes)]
    [InlineData("report", "{0}", "--to", "{0}/" + Escapes)]
    [InlineData("report", "{0}/" + Escapes)]
    [InlineData("explain", Escapes)]
    [InlineData(Escapes)]
    public void No_raw_control_character_reaches_the_terminal(params string[] words)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0098" + Escapes + ".md", "---\nboard: SP-0098\n" + Escapes + ": 1\n---\n");
        copy.Write(
            "boards/SP-0099.md",
            $"---\nboard: SP-0099\ntitle: \"{Escapes}\\u001b[31m\\u202e\"\ndesign: \"a\\u001b[31m\\u0085\\u202e\"\nwaiting:\n  - {{ "
                + $"since: 2026-11-01, for: \"\\u001b[31m\\u202e\", blocks: {Escapes} }}\n---\n{Escapes}\n"
        );
        var run = Run.Of([
            .. words.Select(word => word.Replace("{0}", copy.Root, StringComparison.Ordinal)),
            .. words[0] is "explain" || words.Contains("--as-of") ? Array.Empty<string>() : ["--as-of", "2026-11-25"],
        ]);
        Assert.NotEqual(4, run.Exit);
        Assert.DoesNotContain(run.Out + run.Error, c => (char.IsControl(c) && c != '\n') || c is '\u202e' or '\u200b');
    }
}
