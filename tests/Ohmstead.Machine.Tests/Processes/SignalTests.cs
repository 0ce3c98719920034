using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Processes;

/// <summary>A run that is told to stop ends with 128 and the number of the signal, and leaves the report as it was.</summary>
public sealed class SignalTests
{
    [Theory]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    [InlineData("HUP", 129)]
    public async Task A_signal_ends_the_run_and_leaves_no_half_written_report(string signal, int exit)
    {
        Assert.SkipUnless(TestExtent.IsAll || signal == "TERM", TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        AddBoards(copy, 400);

        // The signal is sent once pages are waiting to be put in place, and long before the last of them.
        using var process = Child.Start("exec $ohmstead report . --to pages --workers 1", copy.Root);
        while (!Directory.Exists(copy.At(".pages.ohmstead-new/boards")) && !process.HasExited)
        {
            await Task.Delay(TimeSpan.FromMilliseconds(5), TestContext.Current.CancellationToken);
        }

        await Child.ShellAsync($"kill -{signal} {process.Id}", copy.Root);
        var run = await Child.EndAsync(process);
        Assert.Equal(exit, run.Exit);
        Assert.Empty(run.Out);
        Assert.Empty(run.Error);
        Assert.False(Directory.Exists(copy.At("pages")));
        Assert.False(Directory.Exists(copy.At(".pages.ohmstead-new")));
    }

    private static void AddBoards(CollectionCopy copy, int count)
    {
        for (var i = 1000; i < 1000 + count; i++)
        {
            copy.Write(
                $"boards/many/SP-{i}.md",
                copy.Read("boards/SP-0001.md").Replace("board: SP-0001", $"board: SP-{i}", StringComparison.Ordinal)
            );
        }
    }
}
