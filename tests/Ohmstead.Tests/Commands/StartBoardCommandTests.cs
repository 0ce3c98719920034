using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A board that comes in: its record begins with what is known, and repeats nothing.</summary>
public sealed class StartBoardCommandTests
{
    [Fact]
    public void A_board_of_a_design_names_it_and_repeats_none_of_its_parts()
    {
        using var copy = CollectionCopy.Make();
        var run = Start(
            copy,
            "SP-0021",
            "--design",
            "bench-supply",
            "--serial",
            "0731",
            "--made",
            "1976",
            "--from",
            "lookout hut",
            "--complaint",
            "hums: loudly",
            "--on",
            "2026-11-02"
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Equal(
            """
            ---
            board: SP-0021
            title: "Bench supply, 0 to 30 V, 1 A"
            design: bench-supply
            serial: "0731"
            made: 1976
            arrived: { date: 2026-11-02, from: lookout hut, complaint: "hums: loudly" }
            format: 1
            ---

            ## Story

            """,
            copy.Read("boards/SP-0021.md")
        );
        Assert.Contains("21 parts, 6 points and 3 hazards come from designs/bench-supply.md", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("SP-0021", Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_board_needs_to_be_called_something()
    {
        using var copy = CollectionCopy.Make();
        var unnamed = Start(copy, "SP-0021");
        Assert.Equal(2, unnamed.Exit);
        Assert.StartsWith("nothing says what it is; write --name ", unnamed.Error, StringComparison.Ordinal);
        Assert.Equal(0, Start(copy, "SP-0021", "--name", "Rain gauge clock").Exit);
        Assert.Contains(
            "title: Rain gauge clock\narrived: { date: 2026-11-25 }\n",
            copy.Read("boards/SP-0021.md"),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("SP-0007", "SP-0007 is taken: boards/SP-0007.md; free is SP-0021\n")]
    [InlineData("SP-O007", "SP-O007 looks like SP-0007, boards/SP-0007.md: it has U+004F where the other has U+0030\n")]
    [InlineData("SP 21", "'SP 21' cannot be the number of a board: it has a space\n")]
    [InlineData("../SP-0021", "'../SP-0021' cannot be the number of a board: it cannot be the name of a page\n")]
    public void A_number_that_is_taken_or_cannot_be_one_is_refused(string number, string message)
    {
        using var copy = CollectionCopy.Make();
        var run = Start(copy, number, "--name", "Clock");
        Assert.Equal((2, message), (run.Exit, run.Error));
        Assert.Equal(CollectionCopy.Boards, Directory.GetFiles(copy.At("boards")).Length);
    }

    [Fact]
    public void An_unknown_design_is_told_with_the_nearest()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(
            (2, "there is no design 'bench-suply', 'bench-supply' is the nearest\n"),
            (Start(copy, "SP-0021", "--design", "bench-suply").Exit, Start(copy, "SP-0021", "--design", "bench-suply").Error)
        );
    }

    [Fact]
    public void What_the_check_would_refuse_is_not_written()
    {
        using var copy = CollectionCopy.Make();
        var run = Start(copy, "SP-0021", "--name", "Clock", "--made", "1976-13");
        Assert.Equal(1, run.Exit);
        Assert.Contains("there is no such day as '1976-13' [date-unreadable]", run.Error, StringComparison.Ordinal);
        Assert.EndsWith("nothing was written\n", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("boards/SP-0021.md")));
    }

    [Fact]
    public void A_trial_shows_the_record_and_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        Assert.StartsWith(
            "boards/SP-0021.md: would be written\n  ---\n  board: SP-0021\n",
            Start(copy, "SP-0021", "--name", "Clock", "--dry").Out,
            StringComparison.Ordinal
        );
        Assert.False(File.Exists(copy.At("boards/SP-0021.md")));
    }

    private static Run Start(CollectionCopy copy, params string[] words) =>
        Run.Of(["start", "board", .. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
