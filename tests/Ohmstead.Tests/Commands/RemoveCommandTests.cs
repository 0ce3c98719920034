using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>An entry of today that was a slip goes, and leaves the record as it was before it.</summary>
public sealed class RemoveCommandTests
{
    private const string Board = "boards/SP-0007.md";

    [Fact]
    public void The_only_entry_of_the_day_goes_with_its_list_and_its_visit()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        Assert.Equal(0, On(copy, "enter", "SP-0007", "C3", "31.8uF", "--lifted").Exit);
        var run = On(copy, "remove", "SP-0007", "C3");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains(": removed { part: C3, circuit: out, capacitance: 31.8 µF }\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("  SP-0007 is now: ", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void One_of_two_in_a_list_goes_alone()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "found", "SP-0007", "C3 C4", "flux around the leads", "minor").Exit);
        Assert.Equal(0, On(copy, "remove", "SP-0007", "C3").Exit);
        const string visit = """
              - date: 2026-11-25
                found:
                  - { at: C4, what: flux around the leads, severity: minor }
            waiting:

            """;
        Assert.Contains(visit, copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_of_a_list_takes_the_list_along_and_leaves_the_visit()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "found", "SP-0007", "C4", "flux around the leads", "minor").Exit);
        var before = copy.Read(Board);
        Assert.Equal(0, On(copy, "decide", "SP-0007", "C3", "watch", "a little low").Exit);
        Assert.Equal(0, On(copy, "remove", "SP-0007", "C3").Exit);
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void A_remark_of_the_keeper_beside_the_entry_stays()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "found", "SP-0007", "C3 C4", "flux", "minor").Exit);
        var said = copy.Read(Board);
        copy.Write(
            Board,
            said.Replace("      - { at: C4, what: flux,", "      # under the lamp\n      - { at: C4, what: flux,", StringComparison.Ordinal)
        );
        Assert.Equal(0, On(copy, "remove", "SP-0007", "C3").Exit);
        Assert.Contains("    found:\n      # under the lamp\n      - { at: C4,", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_several_could_be_meant_none_goes_until_it_is_said_which()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "found", "SP-0007", "C3", "flux", "minor").Exit);
        Assert.Equal(0, On(copy, "decide", "SP-0007", "C3", "watch", "a little low").Exit);
        var both = copy.Read(Board);
        var run = On(copy, "remove", "SP-0007");
        Assert.Equal((1, both), (run.Exit, copy.Read(Board)));
        Assert.Contains(
            "1: found { at: C3, what: flux, severity: minor }; 2: decided { part: C3, decision: watch, because: a little low }\n",
            run.Error,
            StringComparison.Ordinal
        );
        Assert.Contains("  = say which: --entry NUMBER\n", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, On(copy, "remove", "SP-0007", "--entry", "2").Exit);
        Assert.DoesNotContain("a little low", copy.Read(Board), StringComparison.Ordinal);
        Assert.Contains("what: flux,", copy.Read(Board), StringComparison.Ordinal);
    }

    // What was read on another day may have been acted on since.
    [Fact]
    public void What_stands_of_another_day_stays()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "enter", "SP-0007", "C3", "31.8uF", "--lifted").Exit);
        var before = copy.Read(Board);
        var run = Run.Of("remove", "SP-0007", "C3", "--in", copy.Root, "--as-of", "2026-11-26");
        Assert.Equal((1, before), (run.Exit, copy.Read(Board)));
        Assert.Contains("SP-0007 has no entry of 2026-11-26; what stands of another day stays", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_somebody_else_entered_stays()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "found", "SP-0007", "C3", "flux", "minor", "--by", "TS").Exit);
        var before = copy.Read(Board);
        Assert.Equal(1, On(copy, "remove", "SP-0007", "C3", "--by", "RK").Exit);
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void One_end_of_a_part_that_went_to_another_board_does_not_go_alone()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "work", "SP-0011", "replaced", "C2", "--from", "SP-0020 C2", "--polarity", "schematic").Exit);
        var both = copy.Read("boards/SP-0011.md");
        var run = On(copy, "remove", "SP-0011", "C2");
        Assert.Equal((1, both), (run.Exit, copy.Read("boards/SP-0011.md")));
        Assert.Contains("SP-0020 C2 says the same, and one cannot go without the other", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trial_tells_and_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, On(copy, "found", "SP-0007", "C3", "flux", "minor").Exit);
        var before = copy.Read(Board);
        var run = On(copy, "remove", "SP-0007", "C3", "--trial");
        Assert.Equal((0, before), (run.Exit, copy.Read(Board)));
        Assert.Contains(": would remove { at: C3, what: flux, severity: minor }\n", run.Out, StringComparison.Ordinal);
    }

    private static Run On(CollectionCopy copy, params string[] words) => Run.Of([.. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
