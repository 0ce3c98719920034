using Ohmstead.Assessment.Searching;

namespace Ohmstead.Assessment.Tests.Searching;

public sealed class SearchQueryTests
{
    private static readonly string?[] Told = ["SP-0007", "Teleprinter line unit", null, "C1: crazed suppressor, 47 µF, seen on 2026-05-09"];

    [Theory]
    [InlineData("sp 7", true)]
    [InlineData("SP0007", true)]
    [InlineData("sp 70", false)]
    [InlineData("tele line", true)]
    [InlineData("tel line", false)]
    [InlineData("47uF crazed", true)]
    [InlineData("470 µF", false)]
    [InlineData("9 May 2026", true)]
    [InlineData("the unit", true)]
    [InlineData("the 7", true)]
    [InlineData("the", false)]
    [InlineData("eleprinter", false)]
    [InlineData("", true)]
    public void Words_are_met_as_on_the_pages(string words, bool isMet) => Assert.Equal(isMet, SearchQuery.Of(words).IsMetBy(Told));
}
