using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Old history is taken as told by a command: of one board, of the whole collection, and again on another day.</summary>
public sealed class ToldCommandTests
{
    private const string Text = """
        ---
        board: QX-1
        title: Tide recorder
        serial: "11"
        parts:
          - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }
        bench:
          - date: 2019-03-14
            by: RK
            readings:
              - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 312 µF }
        ---

        """;

    private const string Found = """
            found:
              - { at: Q2, what: collector pad lifted, severity: major }
              - { at: chassis, what: the chassis is live, severity: safety }

        """;

    [Fact]
    public void A_board_asks_for_nothing_from_the_day_on_and_its_record_has_one_line_more()
    {
        using var copy = Old();
        var before = copy.Read("boards/QX-1.md");
        var run = Told(copy, "2020-01-01", "QX-1", "--sure");
        Assert.Equal(
            (0, "boards/QX-1.md:5: added told_before: 2020-01-01\n  QX-1 is now: taken as told\n", string.Empty),
            (run.Exit, run.Out, run.Error)
        );
        Assert.Equal(
            before.Replace("serial: \"11\"\n", "serial: \"11\"\ntold_before: 2020-01-01\n", StringComparison.Ordinal),
            copy.Read("boards/QX-1.md")
        );
    }

    [Theory]
    [InlineData("QX-1")]
    [InlineData]
    public void Faults_that_it_would_ask_for_no_more_are_named_and_nothing_is_written(params string[] board)
    {
        using var copy = Old();
        copy.Write("boards/QX-1.md", Text.Replace("    readings:", Found + "    readings:", StringComparison.Ordinal));
        var before = (copy.Read("boards/QX-1.md"), copy.Read("collection.yaml"));
        var run = Told(copy, ["2020-01-01", .. board]);
        Assert.Equal((1, string.Empty), (run.Exit, run.Out));
        Assert.Equal(before, (copy.Read("boards/QX-1.md"), copy.Read("collection.yaml")));
        var lines = run.Error.Split('\n');
        Assert.Equal("QX-1: a fault stands: Q2: collector pad lifted", lines[0]);
        Assert.StartsWith("QX-1: a fault stands: C1: capacitance 312 µF", lines[1], StringComparison.Ordinal);
        Assert.EndsWith(": 2 faults would be asked for no more; nothing was written", lines[2], StringComparison.Ordinal);
        Assert.Equal("  = answer what stands above, or write it with --sure: they are asked for again at the next visit", lines[3]);
        // What must be made safe stays asked for, and is not named among what is not.
        Assert.DoesNotContain("the chassis is live", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, Told(copy, ["2020-01-01", .. board, "--sure"]).Exit);
    }

    [Fact]
    public void A_board_on_which_nothing_stands_is_taken_as_told_without_a_question()
    {
        using var copy = Old();
        copy.Write("boards/QX-1.md", Text.Replace("312 µF", "468 µF", StringComparison.Ordinal));
        Assert.Equal((0, string.Empty), Told(copy, "2020-01-01", "QX-1") is var run ? (run.Exit, run.Error) : default);
    }

    [Fact]
    public void The_day_of_the_collection_stands_in_its_file_and_counts_for_its_boards()
    {
        using var copy = Old();
        var run = Told(copy, "2020-01-01", "--sure");
        Assert.Equal((0, "collection.yaml: added told_before: 2020-01-01\n", string.Empty), (run.Exit, run.Out, run.Error));
        Assert.Equal("# Ours.\ncollection: Lantern Yard\ntold_before: 2020-01-01\n", copy.Read("collection.yaml"));
        Assert.Contains("1 taken as told", Run.Of("check", copy.Root, "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_entered_again_takes_the_place_of_the_one_before_and_what_stands_beside_it_stays()
    {
        using var copy = Old();
        copy.Write("collection.yaml", "collection: Lantern Yard\ntold_before: 2020-01-01 # when we moved\nkeeper: RK\n");
        Assert.Equal(0, Told(copy, "2021-06-30", "--sure").Exit);
        Assert.Equal("collection: Lantern Yard\ntold_before: 2021-06-30 # when we moved\nkeeper: RK\n", copy.Read("collection.yaml"));
    }

    [Theory]
    [InlineData("2026-11-26 has not come yet: today is 2026-11-25", "2026-11-26")]
    [InlineData("there is no board 'QX-2', 'QX-1' is the nearest", "2020-01-01", "QX-2")]
    [InlineData("there is no such day as '2020-02-30'", "2020-02-30")]
    public void What_cannot_be_is_told_and_nothing_is_written(string told, params string[] words)
    {
        using var copy = Old();
        var run = Told(copy, words);
        Assert.Equal(2, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
        Assert.Equal(Text, copy.Read("boards/QX-1.md"));
        Assert.DoesNotContain("told_before", copy.Read("collection.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trial_writes_nothing()
    {
        using var copy = Old();
        Assert.Equal(
            "boards/QX-1.md:5: would add told_before: 2020-01-01\n",
            Told(copy, "2020-01-01", "QX-1", "--trial", "--sure").Out.Split("  QX-1")[0]
        );
        Assert.Equal(Text, copy.Read("boards/QX-1.md"));
    }

    private static CollectionCopy Old()
    {
        var copy = CollectionCopy.Empty();
        copy.Write("collection.yaml", "# Ours.\ncollection: Lantern Yard\n");
        copy.Write("boards/QX-1.md", Text);
        return copy;
    }

    private static Run Told(CollectionCopy copy, params string[] words) =>
        Run.Of(["told", .. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
