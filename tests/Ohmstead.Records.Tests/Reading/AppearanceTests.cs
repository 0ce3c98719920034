using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>Names that can be taken for each other. Pairs of letters: Unicode Technical Standard 39, from memory.</summary>
public sealed class AppearanceTests
{
    [Theory]
    [InlineData("C1", "\u04211")]
    [InlineData("P47", "\u042047")]
    [InlineData("TP3", "\u03A4\u03A13")]
    [InlineData("C12", "\uFF23\uFF11\uFF12")]
    [InlineData("C10", "C1O")]
    [InlineData("C01", "CO1")]
    [InlineData("C11", "C1I")]
    [InlineData("C11", "C1l")]
    public void Two_names_that_a_reader_takes_for_one_have_one_appearance(string name, string other) =>
        Assert.Equal(Appearance.Skeleton(name), Appearance.Skeleton(other));

    [Theory]
    [InlineData("C1", "G1")]
    [InlineData("C11", "CI1")]
    [InlineData("C1", "c1")]
    [InlineData("+15V", "-15V")]
    [InlineData("\u04141", "D1")]
    public void Two_names_that_differ_for_the_eye_have_two(string name, string other) =>
        Assert.NotEqual(Appearance.Skeleton(name), Appearance.Skeleton(other));

    [Theory]
    [InlineData("\u04211", "C1", "U+0421 Cyrillic capital letter es where the other has U+0043")]
    [InlineData("C1O", "C10", "U+004F where the other has U+0030")]
    public void The_difference_is_told_as_two_code_points(string name, string other, string difference) =>
        Assert.Equal(difference, Appearance.Difference(name, other));
}
