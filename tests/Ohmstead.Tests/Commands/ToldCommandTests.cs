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

    [Fact]
    public void A_board_asks_for_nothing_from_the_day_on_and_its_record_has_one_line_more()
    {
        using var copy = Old();
        var before = copy.Read("boards/QX-1.md");
        var run = Told(copy, "2020-01-01", "QX-1");
        Assert.Equal(
            (0, "boards/QX-1.md:5: added told_before: 2020-01-01\n  QX-1 is now: taken as told\n", string.Empty),
            (run.Exit, run.Out, run.Error)
        );
        Assert.Equal(
            before.Replace("serial: \"11\"\n", "serial: \"11\"\ntold_before: 2020-01-01\n", StringComparison.Ordinal),
            copy.Read("boards/QX-1.md")
        );
    }

    [Fact]
    public void The_day_of_the_collection_stands_in_its_file_and_counts_for_its_boards()
    {
        using var copy = Old();
        var run = Told(copy, "2020-01-01");
        Assert.Equal((0, "collection.yaml: added told_before: 2020-01-01\n", string.Empty), (run.Exit, run.Out, run.Error));
        Assert.Equal("# Ours.\ncollection: Lantern Yard\ntold_before: 2020-01-01\n", copy.Read("collection.yaml"));
        Assert.Contains("1 taken as told", Run.Of("check", copy.Root, "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_entered_again_takes_the_place_of_the_one_before_and_what_stands_beside_it_stays()
    {
        using var copy = Old();
        copy.Write("collection.yaml", "collection: Lantern Yard\ntold_before: 2020-01-01 # when we moved\nkeeper: RK\n");
        Assert.Equal(0, Told(copy, "2021-06-30").Exit);
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
            Told(copy, "2020-01-01", "QX-1", "--trial").Out.Split("  QX-1")[0]
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
