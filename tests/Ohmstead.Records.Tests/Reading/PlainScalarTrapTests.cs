using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Tests.Reading;

public sealed class PlainScalarTrapTests
{
    [Theory]
    [InlineData("{ ref: C12, capacitance: 1,287 µF, esr: 1 Ω }", "3:31", "1.287 µF or 1287 µF", "1,287 µF")]
    [InlineData("{ ref: C12, capacitance: 4,7 µF }", "3:31", "4.7 µF", "4,7 µF")]
    [InlineData("{ ref: C12, capacitance: 0,287 µF }", "3:31", "0.287 µF", "0,287 µF")]
    [InlineData("{ ref: C12, capacitance: 1,287,500 pF }", "3:31", "1287500 pF", "1,287,500 pF")]
    [InlineData("{ ref: C12, capacitance: -12,500 mV }", "3:33", "-12.500 mV or -12500 mV", "-12,500 mV")]
    [InlineData("{ ref: C12, capacitance: 1,287 }", "3:31", "1.287 or 1287", "1,287")]
    [InlineData("{ ref: C12, capacitance: 1,287 µF # at 100 Hz\n    }", "3:31", "1.287 µF or 1287 µF", "1,287 µF")]
    [InlineData("{ ref: Ω😀, capacitance: 4,7 µF }", "3:30", "4.7 µF", "4,7 µF")]
    public void A_comma_that_cuts_a_number_in_a_mapping_is_reported_with_its_meanings(
        string part,
        string place,
        string expected,
        string joined
    )
    {
        var reading = ReadText.FrontMatter($"parts:\n  - {part}");

        var finding = Assert.Single(reading.Findings);
        Assert.Equal($"{place}+1 decimal-comma", $"{finding.At()} {finding.Check}");
        Assert.Equal($"the comma cuts the number \"{joined}\" in two; expected {expected}", finding.Message);
        var entry = ((MappingNode)((SequenceNode)reading.Value("parts")).Items[0]).Entries[1];
        Assert.Equal(("capacitance", joined), (entry.Key, entry.Value.Text()));
    }

    [Theory]
    [InlineData("[1,287 µF]", "2:13", "1.287 µF or 1287 µF", "['1,287 µF']")]
    [InlineData("[10 µF, 4,7 µF]", "2:20", "4.7 µF", "['10 µF', '4,7 µF']")]
    public void A_comma_that_cuts_a_number_in_a_list_is_reported_too(string list, string place, string expected, string shape)
    {
        var reading = ReadText.FrontMatter($"readings: {list}");

        var finding = Assert.Single(reading.Findings);
        Assert.Equal($"{place}+1 decimal-comma", $"{finding.At()} {finding.Check}");
        Assert.EndsWith($"expected {expected}", finding.Message, StringComparison.Ordinal);
        Assert.Equal(shape, reading.Value("readings").Shape());
    }

    [Fact]
    public void A_chain_of_commas_that_never_ends_is_one_finding() =>
        Assert.Equal("2:9 decimal-comma", ReadText.FrontMatter($"a: {{x: 1{string.Concat(Enumerable.Repeat(",500", 20_000))} }}").Found());

    [Fact]
    public void Every_cut_number_of_a_record_is_reported() =>
        Assert.Equal(
            "3:8 decimal-comma, 3:18 decimal-comma, 4:10 decimal-comma",
            ReadText.FrontMatter("p:\n- {a: 1,5 V, b: 2,25 V}\n-  { a: 3,5 V }").Found()
        );

    [Theory]
    [InlineData("a: { x: 1, 2: y }")]
    [InlineData("a: { x: one, 287 }")]
    [InlineData("a: { x: \"1\", 287 }")]
    [InlineData("a: [1,2,3]")]
    [InlineData("a: [1, 287 µF]")]
    [InlineData("a: [C1,2 V]")]
    [InlineData("a: 1,287 µF")]
    [InlineData("a: { x: \"1,287 µF\" }")]
    public void Commas_that_part_what_is_meant_to_be_parted_are_accepted(string yaml) => Assert.Empty(ReadText.FrontMatter(yaml).Findings);

    [Theory]
    [InlineData("note: see page #3 of the sheet", "2:16+15", "#3 of the sheet")]
    [InlineData("p:\n  - { note: drawer #4 }", "3:20+4", "#4 }")]
    [InlineData("note: Ω 😀 \t#5", "2:12+2", "#5")]
    public void A_number_sign_that_cuts_a_value_is_a_warning(string yaml, string place, string rest)
    {
        var finding = ReadText.FrontMatter(yaml + (yaml.Contains('{', StringComparison.Ordinal) ? "\n    }" : string.Empty)).Findings[0];

        Assert.Equal($"{place} value-cut-by-comment Warning", $"{finding.At()} {finding.Check} {finding.Severity}");
        Assert.Equal($"the value ends before \"{rest}\", which is read as a comment", finding.Message);
    }

    [Theory]
    [InlineData("a: 1 # a comment")]
    [InlineData("a: 1 ## a comment")]
    [InlineData("a: 1 #")]
    [InlineData("a: \"1\" #quoted")]
    [InlineData("a: x#3")]
    [InlineData("a: #3")]
    [InlineData("#3\na: 1")]
    [InlineData("note: |\n  page #3")]
    public void Comments_as_people_write_them_are_accepted(string yaml) => Assert.Empty(ReadText.FrontMatter(yaml).Findings);
}
