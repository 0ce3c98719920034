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
    public void A_replacement_is_told_with_every_reason_for_and_against_and_the_date_of_its_lot()
    {
        var run = Why("SP-0009", "C7");
        Assert.Contains("\nfitted 2026-04-27 from lot L-003: may fit\n  doubt, form: radial in an axial place: lay it down, insulate and fix the leads\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n  date code '2544' is 2025-W44 (", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_is_told_with_every_reason_and_its_next_step()
    {
        var run = Why("SP-0002");
        Assert.StartsWith("SP-0002 Tide-gauge logger, west well: proof due\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n    = ", run.Out, StringComparison.Ordinal);
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
