namespace Ohmstead.Records.Tests.Reading;

public sealed class FrontMatterTests
{
    [Fact]
    public void The_body_begins_on_the_line_below_the_closing_dashes()
    {
        var reading = ReadText.Markdown("---\nboard: SP-0007\n---\n\n## Story\nThe pen drifted.");

        Assert.Equal("{board: 'SP-0007'}", reading.Root.Shape());
        Assert.Equal("\n## Story\nThe pen drifted.", reading.Body);
        Assert.Equal(4, reading.BodyLine);
        Assert.Empty(reading.Findings);
    }

    [Theory]
    [InlineData("---\nboard: SP-0007\n---")]
    [InlineData("---\nboard: SP-0007\n---\n")]
    [InlineData("--- \nboard: SP-0007\n---\t \n")]
    public void A_record_without_a_body_and_blanks_behind_the_dashes_are_accepted(string text)
    {
        var reading = ReadText.Markdown(text);

        Assert.Equal("{board: 'SP-0007'}", reading.Root.Shape());
        Assert.Equal("", reading.Body);
        Assert.Empty(reading.Findings);
    }

    [Theory]
    [InlineData("---\n---\n")]
    [InlineData("---\n\n# only a comment\n---\n")]
    public void Empty_front_matter_is_a_mapping_without_entries(string text)
    {
        var reading = ReadText.Markdown(text);

        Assert.Equal("{}", reading.Root.Shape());
        Assert.Empty(reading.Findings);
    }

    [Fact]
    public void Dashes_in_the_body_do_not_cut_it()
    {
        var body = "One\n\n---\n\n```yaml\n---\nboard: no\n---\n```\n";

        var reading = ReadText.Markdown($"---\nboard: SP-0007\n---\n{body}");

        Assert.Equal(body, reading.Body);
        Assert.Empty(reading.Findings);
    }

    [Fact]
    public void Dashes_inside_a_block_of_text_do_not_close_the_front_matter()
    {
        var reading = ReadText.Markdown("---\nnote: |\n  one\n  ---\n  two\n---\nbody\n");

        Assert.Equal("{note: 'one\n---\ntwo\n'}", reading.Root.Shape());
    }

    [Theory]
    [InlineData("", "no front matter: the file is empty")]
    [InlineData("\n", "no front matter: the file is empty")]
    [InlineData("\uFEFF", "no front matter: the file is empty")]
    [InlineData("\n---\na: 1\n---\n", "a blank line stands before the first ---")]
    [InlineData("\r\n\r\n---\r\na: 1\r\n---\r\n", "a blank line stands before the first ---")]
    [InlineData(" ---\na: 1\n---\n", "a space stands before the first ---")]
    [InlineData("+++\na = 1\n+++\n", "the front matter is fenced with +++ as TOML is")]
    [InlineData("{ \"board\": 1 }\n", "the file begins with { as JSON does")]
    [InlineData("----\na: 1\n---\n", "the first line has 4 dashes")]
    [InlineData("\nboard: SP-0007\n", "no front matter: the first line is blank")]
    [InlineData("# SP-0007\n", "no front matter: the first line is \"# SP-0007\"")]
    [InlineData("board: SP-0007\n", "no front matter: the first line is \"board: SP-0007\"")]
    public void What_stands_instead_of_front_matter_is_named(string text, string found)
    {
        var finding = Assert.Single(ReadText.Markdown(text).Findings);

        Assert.Equal("1:1+0 front-matter-missing", $"{finding.At()} {finding.Check}");
        Assert.Equal($"{found}; expected a first line of three dashes (---) that opens the front matter", finding.Message);
        Assert.NotNull(finding.NextStep);
    }

    [Theory]
    [InlineData("---\nboard: SP-0007\nparts:\n  - { ref: C1 }\n\n## Story\nThe pen drifted: often.\n", 6)]
    [InlineData("---\nboard: SP-0007\n\nThe pen drifted.\n", 4)]
    [InlineData("---\nboard: SP-0007\n\n# Story\n\nThe pen\n", 4)]
    [InlineData("---\nboard: SP-0007\n# a comment\ntitle: x\n", 5)]
    [InlineData("---\nboard: SP-0007", 2)]
    [InlineData("---", 1)]
    public void Front_matter_that_never_ends_is_reported_with_the_line_where_it_should(string text, int line)
    {
        var reading = ReadText.Markdown(text);
        var finding = Assert.Single(reading.Findings);

        Assert.Equal("1:1+3 front-matter-unclosed", $"{finding.At()} {finding.Check}");
        Assert.Equal($"{line}:1+0", ReadText.At(Assert.Single(finding.Related).Place));
        Assert.Null(reading.Root);
    }

    [Fact]
    public void Plain_yaml_needs_no_dashes()
    {
        var reading = ReadText.Yaml("name: Saltmarsh Point\nduty: { hours_per_year: 900 }\n");

        Assert.Equal("{name: 'Saltmarsh Point', duty: {hours_per_year: '900'}}", reading.Root.Shape());
        Assert.Equal("", reading.Body);
        Assert.Empty(reading.Findings);
    }

    [Theory]
    [InlineData("---\nname: Saltmarsh Point\n", 2)]
    [InlineData("# the collection\n---\nname: Saltmarsh Point\n", 3)]
    public void Plain_yaml_may_begin_with_dashes(string text, int line)
    {
        var reading = ReadText.Yaml(text);

        Assert.Empty(reading.Findings);
        Assert.Equal($"{line}:7+15", ReadText.At(reading.Value("name").Spot));
    }

    [Theory]
    [InlineData("")]
    [InlineData("# nothing yet\n")]
    public void An_empty_yaml_file_is_a_mapping_without_entries(string text) => Assert.Equal("{}", ReadText.Yaml(text).Root.Shape());
}
