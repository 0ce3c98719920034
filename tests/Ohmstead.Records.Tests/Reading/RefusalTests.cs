namespace Ohmstead.Records.Tests.Reading;

public sealed class RefusalTests
{
    [Theory]
    [InlineData("a: &x 1\nb: *x", "2:4+2 anchor-used")]
    [InlineData("a: &x { b: *x }", "2:4+2 anchor-used")]
    [InlineData("? &a [*a]\n: 1", "2:3+2 anchor-used")]
    [InlineData("a: !x &y 1", "2:4+2 tag-used")]
    [InlineData("a: &y !x 1", "2:4+2 anchor-used")]
    [InlineData("- &x a", "2:3+2 anchor-used")]
    [InlineData("a: &", "2:4+1 anchor-used")]
    [InlineData("note: &amp; more", "2:7+5 anchor-used")]
    [InlineData("&x - a", "2:1+2 anchor-used")]
    [InlineData("a: *nowhere", "2:4+8 alias-used")]
    [InlineData("é😀: 1\nb: [x, *nowhere]", "3:8+8 alias-used")]
    [InlineData("*a : 1", "2:1+2 alias-used")]
    [InlineData("note: *bold* text", "2:7+6 alias-used")]
    [InlineData("note: **bold** text", "2:7+8 alias-used")]
    [InlineData("note: *", "2:7+1 alias-used")]
    [InlineData("a: 1\n<<: { b: 2 }", "3:1+2 merge-key-used")]
    [InlineData("parts:\n  - { ref: C1, <<: x }", "3:16+2 merge-key-used")]
    [InlineData("a: !!binary aGk=", "2:4+8 tag-used")]
    [InlineData("a: !x y", "2:4+2 tag-used")]
    [InlineData("a: ! y", "2:4+1 tag-used")]
    [InlineData("a: !![", "2:4+3 tag-used")]
    [InlineData("a: !!python/object:os.system x", "2:4+25 tag-used")]
    [InlineData("a: !<tag:x> y", "2:4+8 tag-used")]
    [InlineData("a: !h!x y", "2:4+4 tag-used")]
    [InlineData("a: !%zz y", "2:4+4 tag-used")]
    [InlineData("a: [x, !y z]", "2:8+2 tag-used")]
    [InlineData("%YAML 9.9\na: 1", "2:1+5 directive-used")]
    [InlineData("a: 1\n%TAG !m!\nb: 2", "3:1+4 directive-used")]
    [InlineData("a: 1\n% b", "3:1+1 directive-used")]
    [InlineData("a: 1\n...\nb: 2", "4:1+0 second-document")]
    [InlineData("a: 1\n... b", "3:1+0 second-document")]
    [InlineData("a: 1\n--- b", "3:1+0 second-document")]
    [InlineData("? [C12]\n: 1", "2:3+1 key-not-text")]
    [InlineData("[C12]: 1", "2:1+1 key-not-text")]
    [InlineData("a: { { b: c }: d }", "2:6+1 key-not-text")]
    [InlineData("? b: c\n: d", "2:3+0 key-not-text")]
    [InlineData("a: 1\n: 2", "3:1+1 key-not-text")]
    [InlineData("\"\": 2", "2:1+2 key-not-text")]
    [InlineData("- a\n- b", "2:1+0 not-a-mapping")]
    [InlineData("[a]", "2:1+1 not-a-mapping")]
    [InlineData("some words", "2:1+10 not-a-mapping")]
    [InlineData("board:SP-0007", "2:1+13 not-a-mapping")]
    public void What_a_record_does_not_need_is_refused_at_its_place(string yaml, string expected)
    {
        var reading = ReadText.FrontMatter(yaml);
        var finding = Assert.Single(reading.Findings);

        Assert.Equal(expected, $"{finding.At()} {finding.Check}");
        Assert.NotNull(finding.NextStep);
        Assert.Null(reading.Root);
    }

    [Theory]
    [InlineData("a: 1\n...")]
    [InlineData("note: 50 %")]
    [InlineData("note: a & b * c ! d")]
    [InlineData("note: \"*\"")]
    [InlineData("work:\n  - { did: \"<<\" }")]
    [InlineData("\"<<\": quoted")]
    [InlineData("note: >\n  %YAML in a block")]
    public void The_same_signs_elsewhere_are_accepted(string yaml) => Assert.Empty(ReadText.FrontMatter(yaml).Findings);

    [Theory]
    [InlineData("%YAML 1.2\n---\na: 1\n", "1:1 directive-used")]
    [InlineData("%TAG !m!\n---\na: 1\n", "1:1 directive-used")]
    [InlineData("a: 1\n---\nb: 2\n", "2:1 second-document")]
    [InlineData("---\na: 1\n---\nb: 2\n", "3:1 second-document")]
    [InlineData("---\n...\nb: 2\n---\n", "3:1 second-document")]
    [InlineData("-----\n\nboard: SP-0007\n", "1:1 yaml-syntax")]
    public void Plain_yaml_is_held_to_the_same(string text, string expected) => Assert.Equal(expected, ReadText.Yaml(text).Found());

    [Fact]
    public void A_bomb_of_aliases_is_refused_at_its_first_anchor()
    {
        var bomb =
            "a0: &a0 [x, x, x, x, x, x, x, x, x]\n"
            + string.Concat(
                Enumerable
                    .Range(1, 50)
                    .Select(level => $"a{level}: &a{level} [{string.Join(", ", Enumerable.Repeat($"*a{level - 1}", 9))}]\n")
            );

        Assert.Equal("2:5 anchor-used", ReadText.FrontMatter(bomb).Found());
    }

    [Fact]
    public void A_key_that_stands_twice_is_reported_at_the_second_with_the_first_beside_it()
    {
        var reading = ReadText.FrontMatter("board: SP-0007\ntitle: one\nboard: SP-0008");

        var finding = Assert.Single(reading.Findings);
        Assert.Equal("4:1+5 key-repeated", $"{finding.At()} {finding.Check}");
        Assert.Equal("the key \"board\" stands twice here, first on line 2", finding.Message);
        Assert.Equal("2:1+5", ReadText.At(Assert.Single(finding.Related).Place));
        Assert.Equal("{board: 'SP-0007', title: 'one'}", reading.Root.Shape());
    }

    [Fact]
    public void All_repeated_keys_are_reported_and_the_first_value_of_each_is_kept()
    {
        var reading = ReadText.FrontMatter("parts:\n  - { ref: C1, ref: C2, ref: C3 }\n  - { ref: C1, \"ref\": C4 }");

        Assert.Equal("3:16 key-repeated, 3:25 key-repeated, 4:16 key-repeated", reading.Found());
        Assert.Equal("{parts: [{ref: 'C1'}, {ref: 'C1'}]}", reading.Root.Shape());
    }

    [Fact]
    public void A_repeated_key_is_found_among_many()
    {
        var yaml = string.Join('\n', Enumerable.Range(0, 300).Select(number => $"key{number}: {number}")) + "\nkey7: again";

        Assert.Equal("302:1 key-repeated", ReadText.FrontMatter(yaml).Found());
    }
}
