namespace Ohmstead.Records.Tests.Reading;

public sealed class YamlSyntaxTests
{
    [Theory]
    [InlineData("a: \"open\nb: 1", "2:4+1", "the \" before \"open\" is not closed; expected it at the end of the value")]
    [InlineData("a: \"open\n  and on\nb: 1", "2:4+1", "the quote opened here is not closed before line 4, where something else begins")]
    [InlineData("a: 'open\nb: 1", "2:4+1", "the ' before \"open\" is not closed; expected it at the end of the value")]
    [InlineData("a: \"open", "2:4+1", "the \" before \"open\" is not closed; expected it at the end of the value")]
    [InlineData("a: \"open'\nb: 1", "2:4+1", "the value begins with \" and ends with '")]
    [InlineData("a: \"\nb: 1", "2:4+1", "a \" alone repeats nothing; expected the value")]
    [InlineData(
        "p:\n  - { ref: \"C12 }\n  - { ref: C13 }",
        "3:12+1",
        "the \" before \"C12 }\" is not closed; expected it at the end of the value"
    )]
    [InlineData("p:\n  - { ref: \", a: 1 }\n  - { ref: C13 }", "3:12+1", "a \" alone repeats nothing; expected the value")]
    [InlineData(
        "p:\n  - { ref: \"C12, a: 1 }\n  - { ref: C13 }",
        "3:12+1",
        "the quote opened here is not closed before line 4, where something else begins"
    )]
    [InlineData("a: 'open\nb: 'next'\nc: 1", "2:4+1", "the quote opened here closes only on line 3, before \"next'\"")]
    [InlineData(
        "p:\n  - { ref: 'C12, kind: x }\n  - { ref: 'C13' }",
        "3:12+1",
        "the quote opened here closes only on line 4, before \"C13' }\""
    )]
    [InlineData(
        "a: 'it's'",
        "2:8+2",
        "\"s'\" stands after the closing quote, for the ' before it ends the text; expected the end of the line"
    )]
    [InlineData(
        "a: \"x\" y",
        "2:8+1",
        "\"y\" stands after the closing quote, for the \" before it ends the text; expected the end of the line"
    )]
    [InlineData("a: \"C:\\data\"", "2:7+2", "\"\\d\" is no escape that a double-quoted value knows")]
    [InlineData("a: \"\\uZZZZ\"", "2:5+2", "\"\\u\" is no escape that a double-quoted value knows")]
    [InlineData("a: \"\\x4\"", "2:5+2", "\"\\x\" is no escape that a double-quoted value knows")]
    public void A_quote_is_blamed_where_it_opens(string yaml, string place, string message) => Expect(yaml, "yaml-syntax", place, message);

    [Fact]
    public void A_quote_that_opens_five_thousand_lines_before_the_end_is_found()
    {
        var lines = Enumerable.Range(0, 5000).Select(number => $"  - {{ ref: C{number}, kind: film }}");

        Expect(
            $"parts:\n  - {{ ref: C1, kind: 'film }}\n{string.Join('\n', lines)}",
            "yaml-syntax",
            "3:22+1",
            "the ' before \"film }\" is not closed; expected it at the end of the value"
        );
    }

    [Theory]
    [InlineData("p:\n  - { ref: C12 kind: film }", "3:16+4", "a comma is missing before \"kind\"; expected , or }")]
    [InlineData("p:\n  - { ref: C12, v: 25 V\n      w: 15 V }", "4:7+1", "a comma is missing before \"w\"; expected , or }")]
    [InlineData("p:\n  - { ref: \"C12\" kind: film }", "3:18+4", "a comma is missing before \"kind\"; expected , or }")]
    [InlineData("a: [\"x\" \"y\"]", "2:9+3", "a comma is missing before \"\"y\"\"; expected , or ]")]
    [InlineData("p:\n  - { ref: C12, kind: film\n  - { ref: C13 }", "3:5+1", "the { opened here is never closed; expected }")]
    [InlineData("a: { x: 1, y: hut\nb: { h: 900 }", "2:4+1", "the { opened here is never closed; expected }")]
    [InlineData("a: { b: 'c'#3 }\nd: 1", "2:4+1", "the { opened here is never closed; expected }")]
    [InlineData("a: [1, 2\nb: 3", "2:4+1", "the [ opened here is never closed; expected ]")]
    [InlineData("a: [", "2:4+1", "the [ opened here is never closed; expected ]")]
    [InlineData("a: { b: [1, 2 }", "2:15+1", "the } here does not close the [ of line 2; expected ]")]
    [InlineData("a: [a,\nb,\nc]", "3:1+0", "this line belongs to the [ of line 2 and begins at its left edge; expected it further right")]
    [InlineData("p:\n  - { ref: C12 }}", "3:17+1", "the } here closes nothing")]
    [InlineData("a: ]", "2:4+1", "the ] here closes nothing")]
    [InlineData("a: { b: c } d", "2:13+1", "\"d\" stands after the closing }; expected the end of the line")]
    [InlineData("a: []!![", "2:6+3", "\"!![\" stands after the closing ]; expected the end of the line")]
    [InlineData("a: { b: c: d }", "2:10+1", "a second colon follows in the same value; expected a comma or the end of the value")]
    [InlineData("a: { , b: c }", "2:6+1", "nothing stands before this ,; expected a value")]
    [InlineData("a: { date:2026-02-02 }", "2:10+1", "no space stands after the colon of \"date:2026-02-02\"")]
    [InlineData(
        "a: { date:2026-02-02 # or a\n  # day later\n  , by: RK }",
        "2:10+1",
        "no space stands after the colon of \"date:2026-02-02\""
    )]
    public void A_fault_between_brackets_is_found_where_it_was_made(string yaml, string place, string message) =>
        Expect(yaml, "yaml-syntax", place, message);

    // YAML takes > for the beginning of a block of text, and nothing between braces may begin with it.
    [Theory]
    [InlineData("r:\n  - { part: C3, esr: > 20 MΩ }", "3:22+7", "> 20 MΩ")]
    [InlineData("r:\n  - { part: C3, esr: >20 MΩ, circuit: out }", "3:22+6", ">20 MΩ")]
    [InlineData("r:\n  - { part: C3, esr: >= 20 MΩ }", "3:22+8", ">= 20 MΩ")]
    [InlineData("r:\n  - part: C3\n    esr: > 20 MΩ\n    circuit: out", "4:10+7", "> 20 MΩ")]
    [InlineData("r:\n  - part: C3\n    esr: >20 MΩ\n    circuit: out", "4:10+6", ">20 MΩ")]
    [InlineData("r:\n  - part: C3\n    esr: >20Mohm\n    circuit: out", "4:10+7", ">20Mohm")]
    [InlineData("r:\n  - part: C3\n    esr: >= 20 MΩ", "4:10+8", ">= 20 MΩ")]
    public void A_reading_that_begins_with_more_than_is_told_to_be_put_in_quotes(string yaml, string place, string value)
    {
        var finding = Assert.Single(ReadText.FrontMatter(yaml).Findings);
        Assert.Equal(
            $"{place} a value cannot begin with > unless it is in quotes: \"{value}\"",
            $"{ReadText.At(finding.Place)} {finding.Message}"
        );
        Assert.Equal($"write it in quotes: \"{value}\"", finding.NextStep);
    }

    [Fact]
    public void A_bracket_that_stays_open_is_shown_with_the_line_where_that_was_noticed()
    {
        var finding = Assert.Single(ReadText.FrontMatter("p:\n  - { ref: C12\n  - { ref: C13 }").Findings);

        Assert.Equal("4:3+0 something else begins here", $"{ReadText.At(finding.Related[0].Place)} {finding.Related[0].Note}");
    }

    [Theory]
    [InlineData("note: 1:2 x: y", "2:12+1", "a second colon with a space after it stands in the value; expected one colon a line")]
    [InlineData("note: Ω 😀: y", "2:10+1", "a second colon with a space after it stands in the value; expected one colon a line")]
    [InlineData("a: \"b\": c", "2:7+1", "a second colon with a space after it stands in the value; expected one colon a line")]
    [InlineData(
        "board: x\n  title: y",
        "3:3+8",
        "this key is indented by 2 spaces, deeper than \"board: x\" above it, which has its value already"
    )]
    [InlineData("a: 1\nfoo bar\nb: 1", "3:1+7", "\"foo bar\" has no colon; expected key: value")]
    [InlineData("foo bar\nb: 1", "2:1+7", "\"foo bar\" has no colon; expected key: value")]
    [InlineData("a: 1\nb:2\nc: 3", "3:2+1", "no space stands after the colon of \"b:2\"")]
    [InlineData("a:b\nc: 1", "2:2+1", "no space stands after the colon of \"a:b\"")]
    [InlineData("a:\n-b", "3:1+1", "no space stands after the dash of \"-b\"")]
    [InlineData("parts: - a", "2:8+1", "a list cannot begin on the line of its key; expected the first - on a line of its own")]
    [InlineData("a: 1\n- b", "3:1+1", "a list item stands where a key is expected")]
    [InlineData("- a\nb: 1", "3:1+4", "this line is no item of the list above it; expected - at its beginning")]
    [InlineData("a:\n  - x\n y: 1", "4:2+4", "this line is indented by 1 space, which fits no line above it")]
    [InlineData("a: @x", "2:4+1", "a value cannot begin with \"@\"")]
    [InlineData("a: `x`", "2:4+1", "a value cannot begin with \"`\"")]
    [InlineData("a: 50\nb: %x", "3:4+1", "a value cannot begin with \"%\"")]
    [InlineData("a: ,b", "2:4+1", "a value cannot begin with \",\"")]
    [InlineData("a: ? b", "2:4+1", "a value cannot begin with ? and a space")]
    [InlineData("a: ?\nb: 1", "2:4+1", "a question mark alone is no value")]
    [InlineData("a: -\nb: 1", "2:4+1", "a dash alone is no value")]
    [InlineData("a: \"x\"#c", "2:7+1", "a comment begins where none can; expected a space before # and the value on one line")]
    [InlineData("a: [1]#c", "2:6+1", "a comment begins where none can; expected a space before # and the value on one line")]
    public void A_fault_in_indented_lines_is_found_where_it_was_made(string yaml, string place, string message) =>
        Expect(yaml, "yaml-syntax", place, message);

    [Theory]
    [InlineData(
        "note: |\n  abc\n def\nx: 1",
        "4:2+3",
        "this line is indented less than the block of text above it; expected the same indentation"
    )]
    [InlineData(
        "p:\n  - note: >\n      abc\n    def",
        "5:5+3",
        "this line is indented less than the block of text above it; expected the same indentation"
    )]
    [InlineData(
        "note: |x",
        "2:7+1",
        "the block of text cannot be read: expected | or > alone on its line and the text below it evenly indented"
    )]
    public void A_fault_at_a_block_of_text_is_found_on_its_line(string yaml, string place, string message) =>
        Expect(yaml, "yaml-syntax", place, message);

    [Theory]
    [InlineData("a:\n\tb: 1", "3:1")]
    [InlineData("a:\n  b: 1\n\tc: 1", "4:1")]
    [InlineData("a: b\n\tc: d", "3:1")]
    [InlineData("a:\n  \tb: 1", "3:3")]
    [InlineData("a: |\n\ttext", "3:1")]
    [InlineData("a: [x,\n\ty]", "3:1")]
    [InlineData("\ta: 1", "2:1")]
    [InlineData("a:\n  - b: 1\n  \tc: 1", "4:3")]
    [InlineData("a: 1\n\t\nb: 2", "3:1")]
    public void A_tab_in_the_indentation_is_reported_at_the_tab(string yaml, string place) =>
        Assert.Equal($"{place} tab-indentation", ReadText.FrontMatter(yaml).Found());

    [Theory]
    [InlineData("note: |\n  target:\n  \tcommand")]
    [InlineData("a:\t1")]
    [InlineData("a: 1\t# comment")]
    public void A_tab_elsewhere_is_accepted(string yaml) => Assert.Empty(ReadText.FrontMatter(yaml).Findings);

    [Fact]
    public void Many_tabs_are_one_finding()
    {
        var finding = Assert.Single(ReadText.FrontMatter("a: [x,\n\ty,\n\tz,\n\tw]").Findings);

        Assert.Equal("a tab stands in the indentation; expected spaces; 2 more lines have one", finding.Message);
    }

    [Fact]
    public void A_file_with_many_faults_reports_the_first_and_nothing_that_may_follow_from_it()
    {
        var yaml = string.Join('\n', Enumerable.Range(0, 20).Select(number => $"key{number}: [{number}, {{ a: 'b\n  : c }}"));

        Assert.Single(ReadText.Markdown($"---\nref: {{ a: 1, a: 2 }}\n{yaml}\n---\nbody \u202E\n").Findings);
    }

    private static void Expect(string yaml, string check, string place, string message)
    {
        var finding = Assert.Single(ReadText.FrontMatter(yaml).Findings);

        Assert.Equal($"{place} {check}: {message}", $"{finding.At()} {finding.Check}: {finding.Message}");
        Assert.NotNull(finding.NextStep);
    }
}
