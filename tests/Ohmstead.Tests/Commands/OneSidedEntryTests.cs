using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What is no figure, as it is said at the bench and as it stands in the record: a part that reads open or short can be
/// entered.</summary>
public sealed class OneSidedEntryTests
{
    private const string Board = "boards/SP-0007.md";

    [Theory]
    [InlineData("{ part: R3, circuit: out, resistance: open }", "outside", "R3", "open")]
    [InlineData("{ part: R3, circuit: out, resistance: over range }", "undecided", "R3", "over", "range")]
    [InlineData("{ part: R3, circuit: out, resistance: over range }", "undecided", "R3", "over range")]
    [InlineData("{ part: R3, circuit: out, resistance: \"> 20 MΩ\" }", "outside", "R3", ">20Mohm")]
    [InlineData("{ part: R3, circuit: out, resistance: \"> 20 MΩ\" }", "outside", "R3", "over", "20Mohm")]
    [InlineData("{ part: R3, circuit: out, resistance: \"> 20 MΩ\" }", "outside", "R3", "resistance=over 20Mohm")]
    [InlineData("{ part: R3, circuit: out, resistance: ≥ 20 MΩ }", "outside", "R3", ">=20Mohm")]
    [InlineData("{ part: R3, circuit: out, resistance: < 0.1 Ω }", "outside", "R3", "under", "0.1ohm")]
    [InlineData("{ part: C3, circuit: out, esr: \"> 20 MΩ\" }", "ESR > 20 MΩ", "C3", "esr=> 20 Mohm")]
    [InlineData("{ part: C3, circuit: out, esr: \"> 20 MΩ\" }", "ESR > 20 MΩ", "C3", "esr>20Mohm")]
    [InlineData("{ part: C3, circuit: out, capacitance: open }", "outside", "C3", "open")]
    [InlineData("{ part: C3, circuit: out, resistance: short }", "outside", "C3", "short")]
    [InlineData("{ part: C3, circuit: out, capacitance: 46.1 µF, esr: < 0.1 Ω }", "inside", "C3", "46.1uF", "<0.1ohm")]
    [InlineData("{ part: C1, circuit: out, insulation: \"> 20 GΩ\" }", "insulation resistance > 20 GΩ", "C1", "insulation=>20Gohm")]
    public void What_is_no_figure_is_said_in_one_way_or_another_and_written_in_one(string line, string told, params string[] said)
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of(["enter", "SP-0007", .. said, "--lifted", "--by", "RK", "--as-of", "2026-11-25", "--in", copy.Root]);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("      - " + line + "\n", copy.Read(Board), StringComparison.Ordinal);
        Assert.Contains(told, run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "[schema-refused]",
            Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(
        "'esr=' says no value; a shell takes > and < for itself: write it in quotes, as in \"esr=>20Mohm\", or say esr=over 20Mohm\n",
        "C3",
        "esr="
    )]
    [InlineData("'>20Mohm' can be an ESR or an insulation; say which, as in \"insulation=>20Mohm\"\n", "C3", ">20Mohm")]
    [InlineData("'over range' can be of more than one quantity; say which, as in resistance=\"over range\"\n", "C3", "over range")]
    [InlineData("'open' can be of more than one quantity; say which, as in resistance=open\n", "+80V", "open")]
    public void What_could_mean_more_than_one_thing_is_asked_about(string message, params string[] said)
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of(["enter", "SP-0007", .. said, "--as-of", "2026-11-25", "--in", copy.Root]);
        Assert.Equal((2, message), (run.Exit, run.Error));
    }

    [Fact]
    public void What_displays_show_is_refused_with_the_word_to_say()
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of("enter", "SP-0007", "R3", "resistance=OL", "--as-of", "2026-11-25", "--in", copy.Root);
        Assert.Equal(1, run.Exit);
        Assert.Contains("'OL' is no reading; the word for it is 'over range'", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("> 100", "{ part: C3, capacitance: \"> 100 µF\" }")]
    [InlineData("46.1 open", "{ part: C3, capacitance: 46.1 µF, esr: open }")]
    [InlineData("46.1 < 0.5", "{ part: C3, capacitance: 46.1 µF, esr: < 0.5 Ω }")]
    [InlineData("over range", "{ part: C3, capacitance: over range }")]
    [InlineData("short", "{ part: C3, capacitance: short }")]
    [InlineData("insulation=> 20 MΩ", "{ part: C3, insulation: \"> 20 MΩ\" }")]
    public void At_the_bench_a_sign_before_a_number_takes_the_unit_shown(string typed, string line)
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Typing($"C3 {typed}\nquit\n", "bench", "SP-0007", "--by", "RK", "--as-of", "2026-11-25", "--in", copy.Root);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("      - " + line + "\n", copy.Read(Board), StringComparison.Ordinal);
    }

    // A fuse has nothing to measure against, so the walk does not stop at it.
    [Fact]
    public void At_the_bench_a_part_that_is_not_stopped_at_is_entered_by_name_and_the_walk_stays()
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Typing("F1 open\nquit\n", "bench", "SP-0016", "--by", "RK", "--as-of", "2026-11-25", "--in", copy.Root);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("      - { part: F1, resistance: open }\n", copy.Read("boards/SP-0016.md"), StringComparison.Ordinal);
        Assert.Contains(": outside, the fuse is blown: its wire is open\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_incoming_reading_may_be_one_sided()
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of(
            "incoming",
            "L-008",
            "insulation=>200Gohm",
            "at_voltage=100V",
            "after=1min",
            "--by",
            "RK",
            "--as-of",
            "2026-11-25",
            "--in",
            copy.Root
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("insulation: \"> 200 GΩ\"", copy.Read("stock.yaml"), StringComparison.Ordinal);
    }
}
