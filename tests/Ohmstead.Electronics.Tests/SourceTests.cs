namespace Ohmstead.Electronics.Tests;

public sealed class SourceTests
{
    [Theory]
    [InlineData("JCGM 100:2008", "4.3.7", SourceBasis.Published, "JCGM 100:2008, 4.3.7")]
    [InlineData("IEC 60384-4:2016", "2.2.7", SourceBasis.Memory, "IEC 60384-4:2016, 2.2.7 (from memory)")]
    [InlineData("common practice", null, SourceBasis.CommonPractice, "common practice")]
    [InlineData("workshop habit", null, SourceBasis.CommonPractice, "workshop habit (common practice)")]
    public void A_source_says_how_well_it_is_known(string title, string? clause, SourceBasis basis, string text) =>
        Assert.Equal(text, new Source(title, clause, basis).Text);
}
