using System.Text;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Tests.Reading;

public sealed class LimitTests
{
    [Theory]
    [InlineData("[", "2:35+1")]
    [InlineData("{ a: ", "2:159+1")]
    [InlineData("- ", null)]
    public void A_hundred_thousand_levels_are_refused_at_the_first_too_deep(string opening, string? place)
    {
        // The mapping at the top is level 1, so the 33rd level is the 32nd bracket behind the key.
        var yaml = place is null
            ? string.Concat(Enumerable.Repeat(opening, 100_000)) + "x"
            : "a: " + string.Concat(Enumerable.Repeat(opening, 100_000));

        var finding = Assert.Single(ReadText.FrontMatter(yaml).Findings);

        Assert.Equal((place ?? "2:65+1") + " too-deep", $"{finding.At()} {finding.Check}");
        Assert.Equal("mappings and lists are nested deeper than the limit of 32 levels", finding.Message);
    }

    [Fact]
    public void Thirty_two_levels_are_read_and_thirty_three_are_not()
    {
        static string Nested(int lists) => $"a: {new string('[', lists)}{new string(']', lists)}";

        Assert.Empty(ReadText.FrontMatter(Nested(31)).Findings);
        Assert.Equal("2:35 too-deep", ReadText.FrontMatter(Nested(32)).Found());
    }

    [Fact]
    public void A_depth_that_was_asked_for_still_has_a_bound()
    {
        var deep = ReadingLimits.Usual with { Depth = int.MaxValue };

        Assert.Equal("2:259 too-deep", ReadText.FrontMatter($"a: {new string('[', 100_000)}", deep).Found());
    }

    [Fact]
    public void A_file_over_its_limit_is_refused_before_it_is_read()
    {
        var finding = Assert.Single(ReadText.Markdown(new byte[200], ReadingLimits.Usual with { FileBytes = 199 }).Findings);

        Assert.Equal("1:1+0 too-large: the file has 200 bytes; the limit is 199", $"{finding.At()} {finding.Check}: {finding.Message}");
    }

    [Theory]
    [InlineData(13, "")]
    [InlineData(12, "2:1 too-large")]
    public void Front_matter_on_its_limit_is_read_and_one_byte_over_is_not(long limit, string expected) =>
        Assert.Equal(expected, ReadText.Markdown("---\nesr: 1.41 Ω\n---\n", ReadingLimits.Usual with { FrontMatterBytes = limit }).Found());

    [Fact]
    public void A_body_over_its_limit_is_left_out_and_the_front_matter_is_read()
    {
        var reading = ReadText.Markdown("---\na: 1\n---\n12345", ReadingLimits.Usual with { BodyBytes = 4 });

        Assert.Equal("4:1 too-large", reading.Found());
        Assert.Equal(("{a: '1'}", ""), (reading.Root.Shape(), reading.Body));
    }

    [Theory]
    [InlineData("ΩΩΩΩ", "")]
    [InlineData("ΩΩΩΩx", "2:4 too-large")]
    public void A_value_is_measured_in_bytes(string text, string expected) =>
        Assert.Equal(expected, ReadText.FrontMatter($"a: {text}", ReadingLimits.Usual with { FieldBytes = 8 }).Found());

    [Fact]
    public void A_million_keys_are_refused_at_the_limit_of_events()
    {
        var yaml = new StringBuilder();
        for (var number = 0; number < 1_000; number++)
        {
            yaml.Append(System.Globalization.CultureInfo.InvariantCulture, $"k{number}: 1\n");
        }

        var finding = Assert.Single(ReadText.FrontMatter(yaml.ToString(), ReadingLimits.Usual with { Events = 1_000 }).Findings);

        Assert.Equal("too-large: more YAML than the limit of 1000 events stands in this file", $"{finding.Check}: {finding.Message}");
        Assert.InRange(finding.Place.Line, 490, 510);
    }

    [Fact]
    public void A_line_of_a_megabyte_is_read()
    {
        var list = string.Join(", ", Enumerable.Repeat("C12", 200_000));

        var reading = ReadText.FrontMatter($"a: [{list}, *x]");

        Assert.Equal("2:1000005 alias-used", reading.Found());
    }
}
