using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Disk;

/// <summary>Files that a command is asked to write: new, its own of an earlier run, or any where the person says so.</summary>
public sealed class OutputFileTests
{
    /// <summary>A command and the file that it writes.</summary>
    public static TheoryData<string, string> Commands { get; } =
        new()
        {
            { "ahead . --calendar", "boards/SP-0007.md" },
            { "ahead . --calendar", "empty.ics" },
            { "sheet SP-0007 --in . --to", "mine.html" },
        };

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_file_that_is_not_ours_is_written_over_only_when_that_is_said(string command, string file)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("mine.html", "<!doctype html><title>My own bench</title>");
        copy.Write("empty.ics", string.Empty);
        var before = copy.Read(file);
        var run = Within(copy, $"{command} {file}");
        Assert.Equal((2, before), (run.Exit, copy.Read(file)));
        Assert.Equal(
            $"'{copy.At(file)}' is there, and this program did not write it: give another name, or say --over to write over it\n",
            run.Error
        );

        run = Within(copy, $"{command} {file} --over");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.NotEqual(before, copy.Read(file));
    }

    [Theory]
    [InlineData("ahead . --calendar", "ahead.ics")]
    [InlineData("sheet SP-0007 --in . --to", "sheet.html")]
    public void What_this_program_wrote_is_written_again_without_a_word(string command, string file)
    {
        using var copy = CollectionCopy.Make();
        for (var time = 0; time < 2; time++)
        {
            var run = Within(copy, $"{command} {file}");
            Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        }

        // Another day is written as well.
        var first = copy.Read(file);
        Assert.Equal(0, Within(copy, $"{command} {file}", "2027-01-15").Exit);
        Assert.NotEqual(first, copy.Read(file));
        Assert.Empty(Directory.GetFiles(copy.Root, ".*.new"));
    }

    [Theory]
    [InlineData("ahead . --calendar pipe.ics", "a pipe, a socket or a device")]
    [InlineData("ahead . --calendar pipe.ics --over", "a pipe, a socket or a device")]
    [InlineData("ahead . --calendar boards --over", "is a folder where a file is wanted")]
    [InlineData("sheet SP-0007 --in . --to pipe.html --over", "a pipe, a socket or a device")]
    [InlineData("sheet SP-0007 --in . --to nowhere/sheet.html", "there is no '")]
    public async Task Where_no_file_can_stand_nothing_is_written_and_nobody_waits(string command, string why)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes pipes with a shell");
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, (await Child.ShellAsync("mkfifo pipe.ics pipe.html", copy.Root)).Exit);
        var run = Within(copy, command);
        Assert.Equal(3, run.Exit);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(letter => letter == '\n'));
    }

    // The line as in the folder of the copy, run inside the tests.
    private static Run Within(CollectionCopy copy, string line, string day = "2026-11-25")
    {
        var words = line.Split(' ');
        return Run.Of([
            .. words.Select(
                (word, at) =>
                    at > 0 && words[at - 1] is "--to" or "--calendar" ? copy.At(word)
                    : word == "." ? copy.Root
                    : word
            ),
            "--as-of",
            day,
        ]);
    }
}
