using System.Globalization;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Processes;

/// <summary>Two people at two benches enter into one shared folder at once. Each has temporary files of their own, where the other does not
/// look.</summary>
public sealed class TwoWritersTests
{
    private static readonly int Readings = TestExtent.Times(usual: 15, all: 60);

    [Fact]
    public async Task Two_users_who_share_nothing_but_the_folder_of_the_records_wait_for_each_other()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "starts the writers with a shell");
        using var copy = CollectionCopy.Make();
        using var first = CollectionCopy.Empty();
        using var second = CollectionCopy.Empty();
        const string board = "boards/SP-0007.md";
        var before = Count(copy.Read(board));
        var runs = await Task.WhenAll(Enter(copy, first, "RK", "46.1"), Enter(copy, second, "TN", "46.2"));
        Assert.All(runs, run => Assert.Equal((0, string.Empty), (run.Exit, run.Error)));
        Assert.Equal(before + (2 * Readings), Count(copy.Read(board)));
        Assert.Equal(
            Directory.GetFiles(CollectionCopy.Untouched + "/boards").Select(Path.GetFileName).ToHashSet(),
            Directory.GetFiles(copy.At("boards")).Select(Path.GetFileName).ToHashSet()
        );
        Assert.Empty(Directory.GetFiles(copy.Root, ".*"));
    }

    // Each has a visit of their own, for they have other initials.
    private static async Task<Run> Enter(CollectionCopy copy, CollectionCopy temporary, string by, string value)
    {
        using var process = Child.Start($"exec $ohmstead bench SP-0007 --by {by} --in .", copy.Root, ("TMPDIR", temporary.Root));
        var typed = process.StandardInput.WriteAsync(
            string.Concat(
                Enumerable.Range(100, Readings).Select(one => string.Create(CultureInfo.InvariantCulture, $"C3 {value}{one}uF\n"))
            ) + "quit\n"
        );
        var run = await Child.EndAsync(process);
        await typed;
        return run;
    }

    private static int Count(string text) => text.Split("part: C3, ").Length - 1;
}
