using Ohmstead.Assessment.Families.Statistics;

namespace Ohmstead.Assessment.Tests.Families.Statistics;

/// <summary>Shares of few parts, and how sure they are.</summary>
public sealed class ShareFailedTests
{
    // Newcombe, Statistics in Medicine 17 (1998) 857, method 3, from memory: 81 of 263 gives 0.2553 to 0.3662, 15 of 148 gives 0.0624 to
    // 0.1605.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662, "31 % (26 % to 37 %)")]
    [InlineData(15, 148, 0.0624, 0.1605, "10 % (6.2 % to 16 %)")]
    public void A_share_has_the_published_interval(int failed, int measured, double low, double high, string words)
    {
        var family = Family(failed, measured);
        Assert.Equal(low, family.Share!.Low, 5e-5);
        Assert.Equal(high, family.Share.High, 5e-5);
        Assert.Equal(words, FamilyWords.Share(family));
    }

    // 1 - 0.05^(1/5) = 1 - exp(-2.9957 / 5) = 1 - 0.5493 = 0.4507.
    [Fact]
    public void Of_five_parts_of_which_none_failed_at_most_45_per_cent_are_bad()
    {
        var family = Family(0, 5);
        Assert.True(family.Share!.IsUpperLimit);
        Assert.Equal(0.4507, family.Share.High, 5e-5);
        Assert.Equal("none, at most 45 %", FamilyWords.Share(family));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(4)]
    public void Of_four_parts_no_share_is_printed(int failed)
    {
        var family = Family(failed, 4);
        Assert.Null(family.Share);
        Assert.Equal("too few to say", FamilyWords.Share(family));
    }

    private static FamilyStatistics Family(int failed, int measured) =>
        new(new("paper", null, null), measured, measured, 1, failed, 0, 0, AgesAtFailure.Compute([]));
}
