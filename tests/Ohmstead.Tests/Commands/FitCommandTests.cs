using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What would fit a place, asked of the demo collection.</summary>
public sealed class FitCommandTests
{
    [Fact]
    public void The_drawer_is_told_with_what_is_left_and_why_it_fits()
    {
        var run = Fit("SP-0013", "C1");
        Assert.Equal(0, run.Exit);
        Assert.StartsWith(
            "SP-0013 C1: aluminium electrolytic 1000 µF ±20 % 25 V 85 °C\nin the drawer, the best first:\n  L-012, 3 left: ",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("\n    for, voltage: 25 V is not under the mark of 25 V\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n  pitch: holes 5 mm apart: cans of 10 or 12.5 mm [", run.Out, StringComparison.Ordinal);
    }

    // 2 x 47 µF 200 V in series: 23.5 µF, counted as 0.9 x 400 V = 360 V; the place asks for 10 µF 350 V.
    [Fact]
    public void Two_parts_in_series_are_proposed_where_no_lot_fits()
    {
        var run = Fit("SP-0010", "C9");
        Assert.Contains("in the drawer: nothing that fits\ntwo together:\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n  2 x L-018 in series, 2 left: ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_gets_one_document()
    {
        using var document = JsonDocument.Parse(Fit("SP-0010", "C9", "--json").Out);
        var root = document.RootElement;
        Assert.Equal(
            ("SP-0010", "C9", 0),
            (root.GetProperty("board").GetString(), root.GetProperty("part").GetString(), root.GetProperty("fits").GetArrayLength())
        );
        Assert.NotEqual(0, root.GetProperty("look_for").GetArrayLength());
        Assert.All(root.GetProperty("together").EnumerateArray().SelectMany(pair => pair.GetProperty("reasons").EnumerateArray()), reason =>
            Assert.NotEqual("", reason.GetProperty("source").GetString())
        );
    }

    [Theory]
    [InlineData("SP-0O13", "C1", "there is no board 'SP-0O13', 'SP-0013' is the nearest\n")]
    [InlineData("SP-0013", "C1O", "SP-0013 has no part 'C1O', 'C1' is the nearest\n")]
    public void A_misspelt_name_is_answered_with_the_nearest(string board, string part, string expected)
    {
        var run = Fit(board, part);
        Assert.Equal((2, expected), (run.Exit, run.Error));
    }

    private static Run Fit(params string[] words) => Run.Of(["fit", .. words, "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25"]);
}
