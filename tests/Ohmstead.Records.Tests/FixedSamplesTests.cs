using CsCheck;

namespace Ohmstead.Records.Tests;

public sealed class FixedSamplesTests
{
    [Fact]
    public void A_test_sees_the_same_samples_each_time_it_runs()
    {
        var (first, second) = (new List<string>(), new List<string>());
        Gen.Select(Gen.Int, Gen.String).Sample((number, text) => first.Add($"{number} {text}"), iter: 50);
        Gen.Select(Gen.Int, Gen.String).Sample((number, text) => second.Add($"{number} {text}"), iter: 50);

        Assert.NotEmpty(first);
        Assert.Equal(first, second);
        Assert.Equal(first.Count, first.Distinct().Count());
    }

    [Fact]
    public void A_sample_that_fails_is_told_with_the_seed_that_repeats_it()
    {
        var failure = Assert.Throws<CsCheckException>(() => Gen.Int[5, 7].Sample(number => number < 5));

        Assert.Contains("CsCheck_Seed=", failure.Message, StringComparison.Ordinal);
    }
}
