using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Tests.Reading;

public sealed class NodeTests
{
    [Theory]
    [InlineData("0412")]
    [InlineData("1E3")]
    [InlineData("1e3")]
    [InlineData("012")]
    [InlineData("no")]
    [InlineData("NO")]
    [InlineData("on")]
    [InlineData("y")]
    [InlineData("true")]
    [InlineData("0x1F")]
    [InlineData("0o17")]
    [InlineData("1_000")]
    [InlineData("1:30")]
    [InlineData("2026-03-14")]
    [InlineData("7834")]
    [InlineData(".5")]
    [InlineData("-0")]
    [InlineData(".inf")]
    [InlineData("+15V")]
    [InlineData("-10/+50 %")]
    [InlineData("4k7")]
    public void Text_that_looks_like_something_else_stays_text(string text)
    {
        Assert.Equal($"{{serial: '{text}'}}", ReadText.FrontMatter($"serial: {text}").Root.Shape());
        Assert.Equal($"{{parts: [{{ref: '{text}'}}]}}", ReadText.FrontMatter($"parts:\n  - {{ ref: {text} }}").Root.Shape());
        Assert.Equal($"{{{text}: 'value'}}", ReadText.FrontMatter($"{text}: value").Root.Shape());
    }

    [Theory]
    [InlineData("complaint:", true)]
    [InlineData("complaint: ~", true)]
    [InlineData("complaint: null", true)]
    [InlineData("complaint: \"\"", false)]
    [InlineData("complaint: 'null'", false)]
    [InlineData("complaint: nullable", false)]
    public void Nothing_is_told_from_empty_text(string line, bool isNothing) =>
        Assert.Equal(isNothing, ((ScalarNode)ReadText.FrontMatter(line).Value("complaint")).IsNothing);

    [Theory]
    [InlineData("title: Barograph servo", "2:8+15")]
    [InlineData("title:   \"Barograph servo\"", "2:10+17")]
    [InlineData("title: 'Ω 😀 é'", "2:8+7")]
    [InlineData("title:", "2:7+0")]
    [InlineData("title: |\n  two\n  lines", "2:8+1")]
    [InlineData("title: first line\n  second line", "2:8+10")]
    [InlineData("title: { maker: Ostrel }", "2:8+1")]
    [InlineData("title: [a, b]", "2:8+1")]
    [InlineData("title:\n  maker: Ostrel", "3:3+0")]
    [InlineData("title:\n  - a", "3:3+0")]
    [InlineData("title:\n- a", "3:1+0")]
    public void A_value_stands_where_it_begins(string yaml, string place) =>
        Assert.Equal(place, ReadText.At(ReadText.FrontMatter(yaml).Value("title").Spot));

    [Fact]
    public void Keys_and_values_of_a_flow_mapping_stand_where_an_editor_shows_them()
    {
        var reading = ReadText.FrontMatter(
            "parts:\n  - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF,\n      \"esr\": 1.4 Ω }"
        );

        var part = (MappingNode)((SequenceNode)reading.Value("parts")).Items[0];
        Assert.Equal(["3:7+3", "3:17+4", "3:47+11", "4:7+5"], part.Entries.Select(entry => ReadText.At(entry.KeySpot)));
        Assert.Equal(["3:12+3", "3:23+22", "3:60+6", "4:14+5"], part.Entries.Select(entry => ReadText.At(entry.Value.Spot)));
        Assert.True(part.IsFlow);
    }

    [Fact]
    public void A_pair_in_a_flow_list_is_a_mapping_that_stands_at_its_key()
    {
        var list = (SequenceNode)ReadText.FrontMatter("limits: [min: 1 V, max: 2 V]").Value("limits");

        Assert.Equal("[{min: '1 V'}, {max: '2 V'}]", list.Shape());
        Assert.Equal(["2:10+3", "2:20+3"], list.Items.Select(item => ReadText.At(item.Spot)));
    }

    [Fact]
    public void The_writing_of_a_scalar_is_kept()
    {
        var list = (SequenceNode)
            ReadText.FrontMatter("a:\n  - plain\n  - 'single'\n  - \"double\"\n  - |\n    block\n  - >\n    folded").Value("a");

        Assert.Equal(
            [ScalarWriting.Plain, ScalarWriting.SingleQuoted, ScalarWriting.DoubleQuoted, ScalarWriting.Block, ScalarWriting.Block],
            list.Items.Select(item => ((ScalarNode)item).Style)
        );
        Assert.False(list.IsFlow);
    }

    [Fact]
    public void A_whole_board_is_read()
    {
        var reading = ReadText.FrontMatter(
            """
            board: SP-0007
            design: barograph-servo            # its parts come from there
            arrived: { date: 2026-02-02, from: lookout hut store }

            bench:
              - date: 2026-03-14
                readings:
                  - { part: C12, state: as found, capacitance: 391 µF }
                  - { part: C12, lot: L-031, state: new }
              - date: 2026-03-16
            """
        );

        Assert.Empty(reading.Findings);
        Assert.Equal(
            "{board: 'SP-0007', design: 'barograph-servo', arrived: {date: '2026-02-02', from: 'lookout hut store'}, "
                + "bench: [{date: '2026-03-14', readings: [{part: 'C12', state: 'as found', capacitance: '391 µF'}, "
                + "{part: 'C12', lot: 'L-031', state: 'new'}]}, {date: '2026-03-16'}]}",
            reading.Root.Shape()
        );
    }

    [Fact]
    public void One_reader_reads_many_files_and_keeps_nothing_of_one_for_the_next()
    {
        var reader = new Ohmstead.Yaml.YamlNodeReader();
        NodeReading Read(string yaml) =>
            reader.Read("a.yaml", System.Text.Encoding.UTF8.GetBytes(yaml), FileForm.Yaml, ReadingLimits.Usual);

        var first = Read("a: [1, 2, { b: c }]\n");
        Read("a: [1, { b: [x, \n");
        Read("a: [1, { b: &x c }]\n");
        var last = Read("a: [3]\n");

        Assert.Equal("{a: ['1', '2', {b: 'c'}]}", first.Root.Shape());
        Assert.Equal("{a: ['3']}", last.Root.Shape());
    }
}
