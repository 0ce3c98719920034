using System.Text.Json;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>A run that was asked for JSON prints one whole document, however it ends: it says the same exit code as the process, and
/// why.</summary>
public sealed class DocumentRunTests
{
    [Theory]
    [InlineData("there is no folder 'nowhere'", "failures", "nowhere", "--json")]
    [InlineData("there is no folder 'nowhere'", "ahead", "nowhere", "--json")]
    [InlineData("there is no folder 'nowhere'", "drawer", "nowhere", "--form", "json")]
    [InlineData("there is no folder 'nowhere'", "buy", "nowhere", "--form=json")]
    [InlineData("there is no file or folder 'nowhere'", "check", "nowhere", "--form", "json")]
    [InlineData("TEXT is missing: the print", "marking", "--json")]
    [InlineData("'yesterday' is no ISO date", "check", ".", "--as-of", "yesterday", "--form", "json")]
    public void A_command_line_that_is_wrong_is_a_document_with_the_reason(string reason, params string[] words)
    {
        var run = Run.Of(words);
        Assert.Equal(2, run.Exit);
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Contains(reason, Problem(run.Out, 2), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("there is no board 'SP-0099'", "fit", "SP-0099", "C1", "--json")]
    [InlineData("there is no board or lot 'SP-0099'", "why", "SP-0099", "--form", "json")]
    public void A_board_that_is_not_there_is_a_document_with_the_reason(string reason, params string[] words)
    {
        var run = Run.Of([.. words, "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25"]);
        Assert.Equal(2, run.Exit);
        Assert.StartsWith(reason, Problem(run.Out, 2), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bug_is_a_document_too_and_what_was_printed_before_it_is_not_half_of_one()
    {
        // The list is printed, and telling that a record has an error fails.
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0008.md", copy.Read("boards/SP-0008.md").Replace("PO-08", "PO-0B", StringComparison.Ordinal));
        using var output = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(output, new OnceBrokenWriter(), showsProgress: false);
        using var interruption = new Interruption();
        Assert.Equal(4, CommandLine.Run(["failures", copy.Root, "--json", "--as-of", "2026-11-25"], terminal, interruption));
        Assert.StartsWith(
            "this is a bug of the program, your records were not touched; InvalidOperationException in ",
            Problem(output.ToString(), 4),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("nobody's business", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check . --form json", "/dev/full")]
    [InlineData("check . --form json", "&-")]
    [InlineData("check nowhere --form json", "/dev/full")]
    [InlineData("failures . --json", "/dev/full")]
    [InlineData("calculate --form json", "/dev/full")]
    public async Task Where_the_output_takes_nothing_the_document_stands_in_one_line_on_the_error_stream(string command, string output)
    {
        Assert.SkipUnless(TestExtent.IsAll || output == "&-", TestExtent.LeftOut);
        Assert.SkipUnless(OperatingSystem.IsLinux(), "has a device that is always full");
        var run = await Child.ShellAsync(
            $"$ohmstead {command} > {output}".Replace("> &-", ">&-", StringComparison.Ordinal),
            CollectionCopy.Untouched
        );
        var lines = run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal((3, string.Empty), (run.Exit, run.Out));
        Assert.StartsWith("could not read or write: ", Problem(lines[^1], 3), StringComparison.Ordinal);
        Assert.Equal(command.Contains("nowhere", StringComparison.Ordinal) ? 2 : 1, lines.Length);
    }

    private static string Problem(string text, int exit)
    {
        using var document = JsonDocument.Parse(text);
        Assert.Equal(
            (1, exit),
            (document.RootElement.GetProperty("version").GetInt32(), document.RootElement.GetProperty("exit").GetInt32())
        );
        return document.RootElement.GetProperty("problem").GetString()!;
    }

    private sealed class OnceBrokenWriter : StringWriter
    {
        private bool isBroken = true;

        public override void WriteLine(string? value)
        {
            if (isBroken)
            {
                isBroken = false;
                throw new InvalidOperationException("SP-0001 is nobody's business");
            }

            base.WriteLine(value);
        }
    }
}
