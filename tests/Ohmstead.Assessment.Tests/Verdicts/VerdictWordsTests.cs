using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

public sealed class VerdictWordsTests
{
    // Rounded half away from zero to four decimals (arithmetic).
    [Theory]
    [InlineData(1.0, "1.0000")]
    [InlineData(0.99995, "1.0000")]
    [InlineData(0.99994, "0.9999")]
    [InlineData(0.97725, "0.9773")]
    [InlineData(0.5, "0.5000")]
    [InlineData(0.00006, "0.0001")]
    [InlineData(0.00004, "0.0000")]
    [InlineData(0.00003, "0.0000")]
    [InlineData(0.0, "0.0000")]
    public void AProbabilityHasFourDecimals(double probability, string words) => Assert.Equal(words, VerdictWords.Probability(probability));
}
