using Ohmstead.Commands;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Documents;

/// <summary>Every example of the help does what it says, typed in the demo: those of one command in their order, each command in a fresh
/// copy.</summary>
[Collection(InAFolder.Name)]
public sealed class HelpExampleTests
{
    [Fact]
    public void Every_example_works_when_it_is_typed_in_the_demo()
    {
        var failed = new List<string>();
        var seen = 0;
        foreach (var page in Pages())
        {
            using var folder = new ScratchFolder();
            foreach (
                var line in Run.Of([.. page, "--help"])
                    .Out.Split('\n')
                    .Where(line => line.StartsWith("  ohmstead ", StringComparison.Ordinal))
            )
            {
                seen++;
                var typed = TypedLine.Of(line)!;
                if (typed.Words[0] == "preview")
                {
                    // It ends with Ctrl-C alone; PreviewTests run it. Here its words are understood.
                    Assert.Equal(ExitCode.Clean, folder.Type([.. typed.Words, "--help"]).Exit);
                    continue;
                }

                var run = folder.Type(typed.Words);
                if (run.Exit != typed.Exit)
                {
                    failed.Add($"{line.Trim()} ends with {run.Exit}:\n{run.Out}");
                }
            }
        }

        Assert.True(failed.Count == 0, string.Join('\n', failed));
        Assert.InRange(seen, 60, 300);
    }

    [Fact]
    public void Every_command_shows_how_it_is_typed() =>
        Assert.All(CommandTree.All, one =>
            Assert.Contains(HelpText.Parse(one.Command.Description).Examples.Split('\n'), line =>
                $"{line} ".StartsWith($"  ohmstead {string.Join(' ', one.Path)} ", StringComparison.Ordinal)
            )
        );

    // The overview, and a page for each command.
    private static IEnumerable<string[]> Pages() =>
        [
            [],
            .. CommandTree.All.Select(one => one.Path),
        ];
}
