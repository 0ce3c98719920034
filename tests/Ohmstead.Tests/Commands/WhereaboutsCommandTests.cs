using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Where a board went is entered at the prompt: one line in its record, and every list follows.</summary>
public sealed class WhereaboutsCommandTests
{
    private const string Board = "boards/SP-0012.md";

    [Fact]
    public void A_loan_is_one_line_and_the_list_says_who_has_it()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Enter(copy, "SP-0012", "lent", "--to", "Two Weirs museum", "--until", "2027-03-31", "--by", "RK");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.EndsWith("  SP-0012 is now: fit to run\n", run.Out, StringComparison.Ordinal);
        const string line = "whereabouts:\n  - { date: 2026-11-25, did: lent, to: Two Weirs museum, until: 2027-03-31, by: RK }\n";
        Assert.Equal(before.Replace("\n---\n", $"\n{line}---\n", StringComparison.Ordinal), copy.Read(Board));
        Assert.Contains(
            "    on loan to Two Weirs museum since 2026-11-25, until 2027-03-31\n",
            Run.Of("boards", "--where", "two weirs", "--in", copy.Root, "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
        Assert.Matches("2027-03-31 +loan +SP-0012 +have it back from", Run.Of("ahead", copy.Root, "--as-of", "2026-11-25").Out);
        Assert.Contains(
            "on loan to Two Weirs museum",
            Run.Of("why", "SP-0012", "--in", copy.Root, "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_board_that_was_sold_takes_no_entry_more_and_falls_due_no_more()
    {
        using var copy = CollectionCopy.Make();
        var run = Enter(copy, "SP-0012", "sold", "--to", "Lantern Yard Spares", "--on", "2026-11-20");
        Assert.EndsWith("  SP-0012 is now: gone\n", run.Out, StringComparison.Ordinal);
        var sold = copy.Read(Board);
        var late = Run.Of("found", "SP-0012", "J1", "dust", "note", "--in", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal(1, late.Exit);
        Assert.Contains(
            "a visit of 2026-11-25, but it was sold to Lantern Yard Spares on 2026-11-20",
            late.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(sold, copy.Read(Board));
        Assert.DoesNotContain(
            "SP-0012",
            Run.Of("ahead", copy.Root, "--as-of", "2026-11-25", "--until", "2032-01-01").Out,
            StringComparison.Ordinal
        );
        var list = Run.Of("boards", "SP-0012", "--in", copy.Root, "--as-of", "2026-11-25").Out;
        Assert.Contains("  gone  ", list, StringComparison.Ordinal);
        Assert.DoesNotContain("SP-0012  fit to run", list, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("came back on 2026-11-25, but it had neither been lent nor gone", "came back")]
    [InlineData("lent until 2026-11-01, before it was lent on 2026-11-25", "lent", "--to", "museum", "--until", "2026-11-01")]
    [InlineData("2026-12-24 is in the future, today is 2026-11-25", "sold", "--on", "2026-12-24")]
    public void A_step_that_cannot_be_is_refused_and_nothing_is_written(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Enter(copy, ["SP-0012", .. words]);
        Assert.Equal(1, run.Exit);
        Assert.Contains(message, run.Error, StringComparison.Ordinal);
        Assert.EndsWith("nothing was written\n", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
    }

    [Theory]
    [InlineData("lent, but not who has it; write --to and the name of who has it\n", "lent")]
    [InlineData("moved, but not where it stands now; write --at and the place\n", "moved")]
    [InlineData("changed hands, but not who owns it now; write --owner and the name\n", "changed hands")]
    public void What_a_step_lacks_is_told_by_the_option_that_says_it(string message, string step)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Enter(copy, "SP-0012", step);
        Assert.Equal((2, message), (run.Exit, run.Error));
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void What_stands_there_already_is_entered_twice_only_by_somebody_who_is_sure()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "SP-0012", "moved", "--at", "store").Exit);
        var once = copy.Read(Board);
        Assert.Contains("word for word", Enter(copy, "SP-0012", "moved", "--at", "store").Error, StringComparison.Ordinal);
        Assert.Equal(once, copy.Read(Board));
    }

    [Fact]
    public void A_trial_shows_the_line_and_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        Assert.Contains(
            "would add { date: 2026-11-25, did: retired }",
            Enter(copy, "SP-0012", "retired", "--trial").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(before, copy.Read(Board));
    }

    private static Run Enter(CollectionCopy copy, params string[] words) =>
        Run.Of(["whereabouts", .. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
