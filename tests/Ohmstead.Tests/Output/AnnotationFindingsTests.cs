using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>Findings on the lines of a pull request. A command is a line that begins with two colons; nothing from a record may become
/// one.</summary>
public sealed class AnnotationFindingsTests
{
    [Fact]
    public void A_finding_becomes_a_command_with_file_line_column_and_the_next_step()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0008.md", copy.Read("boards/SP-0008.md").Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        Assert.Equal(
            "::error file=boards/SP-0008.md,line=28,col=75,title=order-unknown::there is no order 'PO-0B', 'PO-08' is the nearest; "
                + "write order: PO-08, or add order PO-0B to stock.yaml",
            Commands(copy)[0].Replace(Prefix(copy), string.Empty, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Percent_signs_commas_colons_and_line_ends_are_escaped()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/a,b:c%0A.md", "---\nboard: SP-0099\ntitle: Rain counter\ndesign: \"x%0A::error::y\\n::set-output\"\n---\n");
        var command = Assert.Single(Commands(copy), line => line.StartsWith("::error ", StringComparison.Ordinal));
        Assert.Contains(
            "file=boards/a%2Cb%3Ac%250A.md,line=4,",
            command.Replace(Prefix(copy), string.Empty, StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.Contains("x%250A::error::y<U+000A>::set-output", command, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_in_a_record_becomes_a_command_in_the_log()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0099.md", "---\nboard: SP-0099\n::error::all is lost\n##[error]all is lost\n::stop-commands::x\n---\n");
        copy.Write("::warning::x.md/SP-0098.md", "x");
        copy.Write("boards/::error::z/SP-0098.md", "x");
        var lines = Annotated(copy).Split('\n');
        Assert.All(lines.Where(line => line.TrimStart().StartsWith("::", StringComparison.Ordinal)), line =>
            Assert.Matches("^::(error|warning|notice) file=[^:]+,line=[0-9]+,col=[0-9]+,title=[a-z0-9-]+::", line)
        );
        Assert.DoesNotContain(lines, line =>
            !line.StartsWith("::", StringComparison.Ordinal)
            && (line.Contains("::", StringComparison.Ordinal) || line.Contains("##[", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Of_many_findings_the_worst_nine_are_shown_and_the_rest_is_counted()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            "boards/SP-0099.md",
            "---\nboard: SP-0099\ntitle: Rain counter\nparts:\n"
                + string.Concat(Enumerable.Range(1, 30).Select(i => $"  - {{ ref: C{i}, kind: capacitor }}\n"))
                + "---\n"
        );
        var commands = Commands(copy);
        Assert.Equal(10, commands.Count);
        Assert.All(commands.Take(9), command => Assert.StartsWith("::error ", command, StringComparison.Ordinal));
        Assert.Equal("::warning::26 more findings are in the log of this step", commands[9]);
    }

    private static string Annotated(CollectionCopy copy) =>
        Run.Of("check", copy.Root, "--form", "annotations", "--as-of", "2026-11-25").Out;

    private static List<string> Commands(CollectionCopy copy) =>
        [.. Annotated(copy).Split('\n').Where(line => line.StartsWith("::", StringComparison.Ordinal))];

    // The tests may run in a folder above the copy, and then paths begin there.
    private static string Prefix(CollectionCopy copy) =>
        Path.GetRelativePath(Environment.CurrentDirectory, copy.Root) is var relative && relative.StartsWith("..", StringComparison.Ordinal)
            ? "\0"
            : relative + "/";
}
