using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Catalogue;

/// <summary>
/// How much runs is said by one switch, and everybody who says it says the same: the run of each change, the pages, and each test that is
/// left out.
/// </summary>
public sealed class TestExtentTests
{
    private const string Switch = "dotnet test -p:Tests=all";

    [Theory]
    [InlineData(".ci/run")]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    public void Whoever_asks_for_all_tests_does_it_by_the_one_switch(string file) =>
        Assert.Contains(Switch, File.ReadAllText(ProjectFolder.At(file)), StringComparison.Ordinal);

    [Fact]
    public void A_test_that_is_left_out_tells_the_switch() => Assert.EndsWith(": " + Switch, TestExtent.LeftOut, StringComparison.Ordinal);

    // A run of all that leaves one out ends with 1, by these very words in what the runner prints.
    [Fact]
    public void The_run_of_each_change_looks_for_the_words_of_what_is_left_out() =>
        Assert.Contains(
            $"grep -q \"{TestExtent.LeftOut.Split(':')[0]}\"",
            File.ReadAllText(ProjectFolder.At(".ci/run")),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(3, 5, "1 2 3")]
    [InlineData(10, 3, "1 5 10")]
    [InlineData(9, 1, "5")]
    [InlineData(0, 2, "")]
    [InlineData(4, int.MaxValue, "1 2 3 4")]
    public void Some_of_many_are_spread_evenly(int count, int some, string expected) =>
        Assert.Equal(expected, string.Join(' ', TestExtent.Spread(count, some)));
}
