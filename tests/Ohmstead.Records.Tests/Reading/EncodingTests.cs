using System.Text;
using Ohmstead.Records.Decoding;

namespace Ohmstead.Records.Tests.Reading;

public sealed class EncodingTests
{
    private const string Record = "---\nboard: SP-0007\ntitle: Barograph\n---\nThe pen drifts.\n";

    [Fact]
    public void A_byte_order_mark_is_accepted_and_moves_no_column()
    {
        var reading = ReadText.Markdown([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("---\nboard: *x\n---\n")]);

        Assert.Equal("2:8 alias-used", reading.Found());
        Assert.Empty(ReadText.Markdown([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Record)]).Findings);
    }

    [Fact]
    public void A_byte_order_mark_is_remembered_for_whoever_rewrites_the_file()
    {
        Assert.True(SourceDecoder.Decode("a.md", [0xEF, 0xBB, 0xBF, (byte)'a']).Source!.HasByteOrderMark);
        Assert.False(SourceDecoder.Decode("a.md", [(byte)'a']).Source!.HasByteOrderMark);
    }

    [Theory]
    [InlineData("utf-16", true, "UTF-16")]
    [InlineData("utf-16BE", true, "UTF-16")]
    [InlineData("utf-32", true, "UTF-32")]
    [InlineData("utf-16", false, "UTF-16 without a byte order mark")]
    [InlineData("utf-16BE", false, "UTF-16 without a byte order mark")]
    public void Another_unicode_encoding_is_named(string name, bool hasMark, string expected)
    {
        var encoding = Encoding.GetEncoding(name);
        byte[] bytes = [.. hasMark ? encoding.GetPreamble() : [], .. encoding.GetBytes(Record)];

        var finding = Assert.Single(ReadText.Markdown(bytes).Findings);

        Assert.Equal("1:1+0 not-utf8", $"{finding.At()} {finding.Check}");
        Assert.Equal($"the file looks like {expected}; expected UTF-8", finding.Message);
    }

    [Theory]
    [InlineData("FF", "byte FF at offset 17 is not UTF-8: no character begins with it")]
    [InlineData("80", "byte 80 at offset 17 is not UTF-8: it can only continue a character, and none was begun")]
    [InlineData("C080", "byte C0 at offset 17 is not UTF-8: it begins an overlong form; 1 more in this file")]
    [InlineData("EDA080", "byte ED at offset 17 is not UTF-8: it begins half of a surrogate pair; 2 more in this file")]
    [InlineData("F4908080", "byte F4 at offset 17 is not UTF-8: no character begins with it; 3 more in this file")]
    [InlineData("E282", "byte E2 at offset 17 is not UTF-8: the character it begins is not finished")]
    public void An_invalid_byte_is_reported_with_line_column_and_offset(string hex, string message)
    {
        byte[] bytes = [.. "---\nboard: C1\na: "u8, .. Convert.FromHexString(hex), .. "\n---\n"u8];

        var finding = Assert.Single(ReadText.Markdown(bytes).Findings);

        Assert.Equal("3:4+0 not-utf8", $"{finding.At()} {finding.Check}");
        Assert.Equal(message, finding.Message);
    }

    [Fact]
    public void An_invalid_byte_behind_wide_characters_stands_in_the_column_an_editor_shows()
    {
        byte[] bytes = [.. "---\nnote: 漢😀e\u0301"u8, 0xFF, .. "\n---\n"u8];

        Assert.Equal("2:11 not-utf8", ReadText.Markdown(bytes).Found());
    }

    [Fact]
    public void A_byte_order_mark_counts_in_the_byte_offset()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. "---\na: "u8, 0xFF];

        var finding = Assert.Single(ReadText.Markdown(bytes).Findings);

        Assert.Equal("2:4+0", finding.At());
        Assert.StartsWith("byte FF at offset 10 ", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_cut_inside_a_character_is_reported_on_its_last_line()
    {
        var whole = Encoding.UTF8.GetBytes("---\nboard: C1\n---\nESR 1.4 Ω");

        var finding = Assert.Single(ReadText.Markdown(whole[..^1]).Findings);

        Assert.Equal("4:9+0 not-utf8", $"{finding.At()} {finding.Check}");
        Assert.Contains("the file ends inside a character", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0xB5, "µ")]
    [InlineData(0x80, "€")]
    [InlineData(0xE9, "é")]
    public void A_file_in_an_old_western_encoding_is_recognised(byte value, string character)
    {
        byte[] bytes = [.. "---\ncapacitance: 470 "u8, value, .. "F\n---\n"u8];

        var finding = Assert.Single(ReadText.Markdown(bytes).Findings);

        Assert.Equal("2:18+0 not-utf8", $"{finding.At()} {finding.Check}");
        Assert.Equal(
            $"the file looks like Latin-1 or Windows-1252, where this byte is '{character}': save it again as UTF-8",
            finding.NextStep
        );
    }

    [Fact]
    public void A_damaged_file_that_is_otherwise_utf8_is_not_called_latin1()
    {
        byte[] bytes = [.. "---\nesr: 1.4 Ω\na: "u8, 0xB5, .. "\n---\n"u8];

        Assert.DoesNotContain("Latin-1", Assert.Single(ReadText.Markdown(bytes).Findings).NextStep, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("89504E470D0A1A0A0000000D49484452", "a PNG picture")]
    [InlineData("FFD8FFE000104A464946", "a JPEG picture")]
    [InlineData("504B0304140000000800", "a ZIP archive")]
    [InlineData("255044462D312E37", "a PDF document")]
    public void A_file_that_is_no_text_gets_one_message(string hex, string thing)
    {
        var finding = Assert.Single(ReadText.Markdown([.. Convert.FromHexString(hex), .. Enumerable.Repeat((byte)0xFE, 4000)]).Findings);

        Assert.Equal("1:1+0 binary-file", $"{finding.At()} {finding.Check}");
        Assert.Equal($"the file is {thing}; expected text", finding.Message);
    }

    [Fact]
    public void A_file_full_of_control_bytes_gets_one_message() =>
        Assert.Equal("1:1 binary-file", ReadText.Markdown([.. Enumerable.Range(0, 4000).Select(number => (byte)(number % 32))]).Found());

    [Fact]
    public void A_null_in_the_front_matter_is_reported_where_it_stands_and_the_front_matter_is_not_read()
    {
        var reading = ReadText.Markdown("---\nboard: SP\0-0007\n---\n");

        Assert.Equal("2:10 control-character", reading.Found());
        Assert.Null(reading.Root);
    }

    [Fact]
    public void A_null_in_the_body_is_reported_and_the_front_matter_is_read()
    {
        var reading = ReadText.Markdown("---\nboard: SP-0007\n---\nThe\0pen\n");

        Assert.Equal("4:4 control-character", reading.Found());
        Assert.Equal("{board: 'SP-0007'}", reading.Root.Shape());
    }

    [Theory]
    [InlineData('\u001B', "control character U+001B escape")]
    [InlineData('\u0007', "control character U+0007 bell")]
    [InlineData('\u007F', "control character U+007F delete")]
    [InlineData('\u009B', "control character U+009B")]
    public void A_control_character_is_an_error_where_it_stands(char control, string message)
    {
        var finding = Assert.Single(ReadText.Markdown($"---\nboard: Ωm{control}x\n---\n").Findings);

        Assert.Equal("2:10+1 control-character Error", $"{finding.At()} {finding.Check} {finding.Severity}");
        Assert.Equal(message, finding.Message);
    }

    [Theory]
    [InlineData('\u202E', "right-to-left override")]
    [InlineData('\u2066', "left-to-right isolate")]
    public void A_change_of_direction_is_a_warning_in_front_matter_and_body(char mark, string name)
    {
        var reading = ReadText.Markdown($"---\nref: C{mark}12\n---\nsee {mark}here\n");

        Assert.Equal("2:7 hidden-character (Warning), 4:5 hidden-character (Warning)", reading.Found());
        Assert.EndsWith(name, reading.Findings[0].Message, StringComparison.Ordinal);
        Assert.NotNull(reading.Root);
    }

    [Theory]
    [InlineData('\u200B')]
    [InlineData('\u2060')]
    [InlineData('\uFEFF')]
    [InlineData('\u00AD')]
    [InlineData('\u200D')]
    public void An_invisible_character_in_an_id_is_an_error(char invisible) =>
        Assert.Equal("2:10 hidden-character", ReadText.Markdown($"---\nboard: SP{invisible}-0007\n---\n").Found());

    [Theory]
    [InlineData("می\u200Cخواهم")]
    [InlineData("👩\u200D🔧")]
    public void A_joiner_between_letters_that_need_it_is_no_error(string text) =>
        Assert.Empty(ReadText.FrontMatter($"by: {text}").Findings);

    [Fact]
    public void An_invisible_character_in_the_body_is_the_writers_own_business() =>
        Assert.Empty(ReadText.Markdown("---\na: 1\n---\nsoft\u00ADhyphen and zero\u200Bwidth\n").Findings);

    [Theory]
    [InlineData('\uFFFE', "not-a-character")]
    [InlineData('\uFFFF', "not-a-character")]
    [InlineData('\uFDD0', "not-a-character")]
    public void A_code_that_is_no_character_is_an_error(char code, string check) =>
        Assert.Equal($"2:5 {check}", ReadText.Markdown($"---\na: x{code}\n---\n").Found());

    [Theory]
    [InlineData('\u0085')]
    [InlineData('\u2028')]
    [InlineData('\u2029')]
    public void A_separator_that_only_some_tools_know_is_accepted_in_the_body_and_ends_no_line(char separator)
    {
        var reading = ReadText.Markdown($"---\na: 1\n---\none{separator}two\n\u202E\n");

        Assert.Equal("5:1 hidden-character (Warning)", reading.Found());
    }

    [Theory]
    [InlineData('\u0085', "control-character")]
    [InlineData('\u2028', "hidden-character")]
    public void A_separator_that_only_some_tools_know_is_refused_in_the_front_matter(char separator, string check)
    {
        var reading = ReadText.Markdown($"---\na: one{separator}two\nb: 2\n---\n");

        Assert.Equal($"2:7 {check}", reading.Found());
        Assert.Null(reading.Root);
    }

    [Fact]
    public void Thousands_of_control_characters_are_twenty_findings_and_a_number()
    {
        var reading = ReadText.Markdown($"---\na: 1\n---\n{string.Concat(Enumerable.Repeat("some text \u0001\n", 500))}");

        Assert.Equal(20, reading.Findings.Length);
        Assert.Equal("control character U+0001; 480 more in this file", reading.Findings[^1].Message);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Every_kind_of_line_end_gives_the_same_places(string lineEnd)
    {
        var reading = ReadText.Markdown(
            "---\nboard: SP-0007\nparts:\n  - { ref: C1, ref: C2 }\n---\nThe pen\ndrifts \u202E\n".ReplaceLineEndings(lineEnd)
        );

        Assert.Equal("4:16 key-repeated, 7:8 hidden-character (Warning)", reading.Found());
        Assert.Equal(6, reading.BodyLine);
        Assert.Equal($"The pen{lineEnd}drifts \u202E{lineEnd}", reading.Body);
    }

    [Theory]
    [InlineData("---\na: 1\nb: 2\r\n---\n", "3:5", "this line ends with CRLF, the first line with LF; expected one kind in a file")]
    [InlineData(
        "---\r\na: 1\r\n---\r\none\ntwo\r\n",
        "4:4",
        "this line ends with LF, the first line with CRLF; expected one kind in a file"
    )]
    [InlineData("---\na: 1\n---\nΩ\rtwo\n", "4:2", "this line ends with CR, the first line with LF; expected one kind in a file")]
    public void Mixed_line_ends_are_one_warning_at_the_first_line_that_differs(string text, string place, string message)
    {
        var finding = Assert.Single(ReadText.Markdown(text).Findings);

        Assert.Equal($"{place}+0 mixed-line-ends Warning", $"{finding.At()} {finding.Check} {finding.Severity}");
        Assert.Equal(message, finding.Message);
    }

    [Theory]
    [InlineData("""a: "x\uD800" """, "2:6+6 not-a-character", @"the escape \uD800 stands for no character")]
    [InlineData("""a: "x\uFFFE" """, "2:6+6 not-a-character", @"the escape \uFFFE stands for no character")]
    [InlineData("""a: "x\uD800A" """, "2:6+6 not-a-character", @"the escape \uD800 stands for no character")]
    [InlineData("""a: "Ω\U00110000" """, "2:6+10 not-a-character", @"the escape \U00110000 stands for no character")]
    [InlineData("""a: "\UFFFFFFFF" """, "2:5+10 not-a-character", @"the escape \UFFFFFFFF stands for no character")]
    [InlineData("""a: "x\0" """, "2:6+2 control-character", @"the escape \0 stands for the control character U+0000 null")]
    [InlineData("""a: "x\u0000" """, "2:6+6 control-character", @"the escape \u0000 stands for the control character U+0000 null")]
    [InlineData("""a: "\e[2J" """, "2:5+2 control-character", @"the escape \e stands for the control character U+001B escape")]
    [InlineData(
        """a: "SP\u200B7" """,
        "2:7+6 hidden-character",
        @"the escape \u200B stands for the hidden character U+200B zero width space"
    )]
    public void An_escape_cannot_bring_in_what_may_not_stand_there_itself(string line, string place, string message)
    {
        var finding = Assert.Single(ReadText.FrontMatter(line).Findings);

        Assert.Equal(place, $"{finding.At()} {finding.Check}");
        Assert.Equal(message, finding.Message);
    }

    [Fact]
    public void Ordinary_escapes_are_read() =>
        Assert.Equal("{a: 'x\ty Ω 😀 \" \\ /'}", ReadText.FrontMatter("""a: "x\ty \u03A9 \uD83D\uDE00 \" \\ \/" """).Root.Shape());
}
