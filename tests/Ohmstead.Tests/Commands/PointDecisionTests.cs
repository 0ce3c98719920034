using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What a test point must show nobody decides; what was found there is answered as anywhere.</summary>
public sealed class PointDecisionTests
{
    private const string Board = "boards/SP-0007.md";

    [Theory]
    [InlineData("keep")]
    [InlineData("replace")]
    public void A_decision_about_a_point_is_refused_with_the_reason(string decision)
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Board);
        var run = Decide(copy, decision);
        Assert.Equal((2, was), (run.Exit, copy.Read(Board)));
        Assert.Equal(
            "+80V is a test point: what it must show is proved or not, and a decision changes nothing of it\n"
                + "  = decide about the part that is to blame; where the limit of +80V is wrong for this board, write the right one under "
                + "points\n",
            run.Error
        );
    }

    [Fact]
    public void Where_something_was_found_at_the_point_the_decision_answers_that()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(
            0,
            Run.Of("found", "SP-0007", "+80V", "the test pin is bent", "major", "--in", copy.Root, "--as-of", "2026-11-25").Exit
        );
        var run = Decide(copy, "leave alone");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("  SP-0007 is now: fit to run\n", run.Out, StringComparison.Ordinal);
    }

    private static Run Decide(CollectionCopy copy, string decision) =>
        Run.Of("decide", "SP-0007", "+80V", decision, "the circuit is content", "--in", copy.Root, "--as-of", "2026-11-25");
}
