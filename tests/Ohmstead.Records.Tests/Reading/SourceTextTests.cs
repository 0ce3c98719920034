using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests.Reading;

public sealed class SourceTextTests
{
    [Theory]
    [InlineData("", 1)]
    [InlineData("one", 1)]
    [InlineData("one\n", 2)]
    [InlineData("one\ntwo", 2)]
    [InlineData("one\r\ntwo\r\n", 3)]
    [InlineData("one\rtwo\r", 3)]
    [InlineData("one\r\rtwo", 3)]
    [InlineData("one\n\r\ntwo", 3)]
    public void Lines_are_counted_as_an_editor_counts_them(string text, int lines) =>
        Assert.Equal(lines, new SourceText("a.md", text).LineCount);

    [Theory]
    [InlineData("one\u0085two")]
    [InlineData("one\u2028two")]
    [InlineData("one\u2029two")]
    [InlineData("one\ftwo")]
    [InlineData("one\vtwo")]
    public void Characters_that_only_some_tools_take_for_a_line_end_do_not_end_a_line(string text) =>
        Assert.Equal(1, new SourceText("a.md", text).LineCount);

    [Theory]
    [InlineData("C12\nesr", 4, 2, 1)]
    [InlineData("C12\r\nesr", 5, 2, 1)]
    [InlineData("C12\resr", 5, 2, 2)]
    [InlineData("µF\nΩ 1", 5, 2, 3)]
    [InlineData("😀😀C12", 4, 1, 3)]
    [InlineData("é\u0301x", 2, 1, 3)]
    public void A_column_counts_code_points(string text, int offset, int line, int column) =>
        Assert.Equal(new Spot(line, column), new SourceText("a.md", text).SpotAt(offset));

    [Fact]
    public void An_offset_past_the_end_is_the_end() => Assert.Equal(new Spot(2, 3), new SourceText("a.md", "one\ntw").SpotAt(500));

    [Fact]
    public void A_stretch_over_several_lines_is_cut_at_the_end_of_its_first() =>
        Assert.Equal(new Spot(1, 3, 2), new SourceText("a.md", "ab😀d\r\nsecond").SpotAt(2, 8));

    [Fact]
    public void A_line_is_given_without_its_line_end()
    {
        var source = new SourceText("a.md", "one\r\ntwo\rthree\n\nfive");

        Assert.Equal(
            ["one", "two", "three", "", "five"],
            Enumerable.Range(1, source.LineCount).Select(line => source.Line(line).ToString())
        );
    }

    [Theory]
    [InlineData("one\ntwo 😀 three\n")]
    [InlineData("Ω\r\nµF\rlast")]
    public void Every_offset_is_found_again_from_its_spot(string text)
    {
        var source = new SourceText("a.md", text);
        var offsets = Enumerable.Range(0, text.Length).Where(at => !char.IsLowSurrogate(text[at]) && text[at] is not '\n').ToArray();

        Assert.Equal(offsets, offsets.Select(at => source.OffsetOf(source.SpotAt(at))));
    }
}
