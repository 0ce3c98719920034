using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A verdict told in full.</summary>
public sealed class WhyCommandTests
{
    // 2200 µF ±20 %: 1760 µF to 2640 µF, worked out by hand from the marking.
    [Fact]
    public void A_reading_is_told_with_its_limit_the_arithmetic_and_the_source()
    {
        var run = Why("SP-0014", "C2");
        Assert.Equal(0, run.Exit);
        Assert.Contains("2026-07-04 (as found, out of circuit, 120 Hz) boards/SP-0014.md:23\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("limit: 1760 µF … 2640 µF, delivery limit from the marking", run.Out, StringComparison.Ordinal);
        Assert.Matches("source: .+", run.Out);
    }

    [Fact]
    public void A_board_is_told_with_every_reason_and_its_next_step()
    {
        var run = Why("SP-0002");
        Assert.StartsWith("SP-0002 Tide-gauge logger, west well: proof due\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n    = ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_is_told_with_what_can_hurt_and_to_whom_the_figures_defer()
    {
        var run = Why("SP-0009");
        Assert.Contains("  caution, charged capacitor at C1A\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("a bleeder may be open", run.Out, StringComparison.Ordinal);
        Assert.Contains("never permission to touch: defer to local codes", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_verdict_names_the_rule_that_decided_it() =>
        Assert.Contains("decided by: guard band of U, accept only what is proved inside (ILAC-G8:09/2019, table 1 (from memory)); U = 2.76 µF", Why("SP-0005", "C1").Out, StringComparison.Ordinal);

    // 5 V / (0.2 x 2 A) = 12.5 ohm: common practice.
    [Fact]
    public void A_point_is_told_with_a_load_to_test_it_with() => Assert.Contains("5 V / 0.4 A = 12.5 Ω", Why("SP-0016", "+5V").Out, StringComparison.Ordinal);

    [Fact]
    public void A_test_is_told_with_how_it_was_made() => Assert.Contains("test: pass, every cell written and read", Why("SP-0001", "U3").Out, StringComparison.Ordinal);

    // 377.5 µF against 376 µF with U = 2.757 µF: Phi(1.5 / 1.378) = 0.862, JCGM 106:2012, from memory.
    [Fact]
    public void Verdicts_are_told_as_data_with_rule_uncertainty_and_probability()
    {
        var run = Why("SP-0005", "C1", "--form", "json");
        using var json = System.Text.Json.JsonDocument.Parse(run.Out);
        var verdict = json.RootElement.GetProperty("verdicts")[0];
        Assert.Equal("undecided", verdict.GetProperty("outcome").GetString());
        Assert.Equal("guard band of U", verdict.GetProperty("rule").GetString());
        Assert.Equal(0.862, verdict.GetProperty("probability_inside").GetDouble(), 0.001);
        Assert.Equal("376 µF … 564 µF", verdict.GetProperty("limit").GetProperty("range").GetString());
    }

    [Theory]
    [InlineData("SP-0O14", "C2", "there is no board 'SP-0O14', 'SP-0014' is the nearest\n")]
    [InlineData("SP-0014", "C22", "SP-0014 has no reading of 'C22', 'C2' is the nearest name\n")]
    public void A_misspelt_name_is_answered_with_the_nearest(string board, string place, string expected)
    {
        var run = Why(board, place);
        Assert.Equal(2, run.Exit);
        Assert.Equal(expected, run.Error);
    }

    [Fact]
    public void A_board_is_found_when_its_file_has_another_name()
    {
        using var copy = CollectionCopy.Make();
        File.Move(copy.At("boards/SP-0014.md"), copy.At("boards/left bench.md"));
        Assert.Equal(0, Run.Of("why", "SP-0014", "C2", "--in", copy.Root).Exit);
    }

    private static Run Why(params string[] words) => Run.Of(["why", .. words, "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25"]);
}
