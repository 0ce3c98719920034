using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A part that goes from one board to another is entered once, on both boards or on none.</summary>
public sealed class TakenFromTests
{
    private const string Receiver = "boards/SP-0011.md";
    private const string Giver = "boards/SP-0020.md";

    [Fact]
    public void Both_ends_are_written_and_what_it_is_need_not_be_typed_again()
    {
        using var copy = CollectionCopy.Make();
        var run = Work(copy, "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic", "--by", "RK");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("taken_from: SP-0020 C2, polarity: schematic }", OneLine(copy.Read(Receiver)), StringComparison.Ordinal);
        Assert.Contains(
            "{ part: C2, did: replaced, new_part: { kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, ",
            OneLine(copy.Read(Receiver)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "  - date: 2026-11-25\n    by: RK\n    work:\n      - { part: C2, did: removed, went_to: SP-0011 C2 }\n",
            copy.Read(Giver),
            StringComparison.Ordinal
        );
        Assert.Contains("  SP-0020 is now: a fault stands\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit);
    }

    [Fact]
    public void What_was_taken_once_is_not_taken_again()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Work(copy, "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic").Exit);
        var other = copy.Read("boards/SP-0012.md");
        var run = Work(copy, "SP-0012", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic");
        Assert.Equal(1, run.Exit);
        Assert.Contains("SP-0020 C2 gave its part to SP-0011 C2, so it cannot be here too", run.Error, StringComparison.Ordinal);
        Assert.Equal(other, copy.Read("boards/SP-0012.md"));
    }

    [Fact]
    public void One_file_alone_is_judged_by_the_other_end()
    {
        using var copy = CollectionCopy.Make();
        var giver = copy.Read(Giver);
        Assert.Equal(0, Work(copy, "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic").Exit);
        copy.Write(Giver, giver);
        Assert.Contains("proof due", Run.Of("check", copy.At(Giver), "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
        var receiver = Run.Of("check", copy.At(Receiver), "--as-of", "2026-11-25");
        Assert.Equal(1, receiver.Exit);
        Assert.Contains("SP-0020 C2 still has its part on 2026-11-25", receiver.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        "'SP-0020' is no board and place; write --from \"BOARD PLACE\" with the number of the board and its place, as in \"SP-0003 C4\"\n",
        "C2",
        "SP-0020"
    )]
    [InlineData("there is no board 'SP-0220', 'SP-0020' is the nearest\n", "C2", "SP-0220 C2")]
    [InlineData("SP-0020 has no part 'C22', 'C2' is the nearest\n", "C2", "SP-0020 C22")]
    [InlineData("SP-0011 C1 is on the same board; enter there 'removed', and here --new-part with what it is\n", "C2", "SP-0011 C1")]
    [InlineData("one part went to one place; enter each by itself\n", "C1-C2", "SP-0020 C2")]
    [InlineData("SP-0011 has no part 'C22', 'C2' is the nearest\n", "C22", "SP-0020 C2")]
    public void An_origin_that_cannot_be_is_refused_and_nothing_is_written(string message, string place, string from)
    {
        using var copy = CollectionCopy.Make();
        var before = (copy.Read(Receiver), copy.Read(Giver));
        var run = Work(copy, "SP-0011", "replaced", place, "--from", from);
        Assert.Equal((2, message), (run.Exit, run.Error));
        Assert.Equal(before, (copy.Read(Receiver), copy.Read(Giver)));
    }

    [Fact]
    public void A_trial_shows_both_ends_and_writes_neither()
    {
        using var copy = CollectionCopy.Make();
        var before = (copy.Read(Receiver), copy.Read(Giver));
        var run = Work(copy, "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic", "--trial");
        Assert.Contains(
            "boards/SP-0020.md: would add { part: C2, did: removed, went_to: SP-0011 C2 }\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(before, (copy.Read(Receiver), copy.Read(Giver)));
    }

    [Fact]
    public void The_pages_of_both_boards_lead_to_each_other()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Work(copy, "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic").Exit);
        Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25");
        Assert.Contains(
            "taken from <a class=reference href=../boards/SP-0020.html><i>SP-0020</i> C2</a>",
            Page(copy, "SP-0011"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "went to <a class=reference href=../boards/SP-0011.html><i>SP-0011</i> C2</a>",
            Page(copy, "SP-0020"),
            StringComparison.Ordinal
        );
    }

    private static string Page(CollectionCopy copy, string board) => copy.Read($"pages/boards/{board}.html");

    private static string OneLine(string text) => string.Join(' ', text.Split('\n').Select(line => line.Trim()));

    private static Run Work(CollectionCopy copy, params string[] words) =>
        Run.Of(["work", .. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
