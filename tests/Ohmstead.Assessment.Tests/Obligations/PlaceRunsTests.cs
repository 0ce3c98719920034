using Ohmstead.Assessment.Obligations;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>Many places in few words, and never a place that was not given.</summary>
public sealed class PlaceRunsTests
{
    [Theory]
    [InlineData("C5 C6 C7 C8", "C5 to C8")]
    [InlineData("C5 C6 C7", "C5 to C7")]
    [InlineData("C5 C6 R1", "C5, C6, R1")]
    [InlineData("C5 C6 C8 C9", "C5, C6, C8, C9")]
    [InlineData("C8 C9 C10 C11 R1", "C8 to C11, R1")]
    [InlineData("C5 R6 C7 R8", "C5, R6, C7, R8")]
    [InlineData("C01 C02 C03 C04", "C01, C02, C03, C04")]
    [InlineData("1 2 3 4", "1, 2, 3, 4")]
    public void A_run_of_three_or_more_is_told_by_its_ends(string names, string expected) =>
        Assert.Equal(expected, PlaceRuns.Words(names.Split(' ')));
}
