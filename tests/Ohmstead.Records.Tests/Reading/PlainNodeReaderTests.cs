using System.Globalization;
using System.Text;
using CsCheck;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;
using Ohmstead.Yaml.Plain;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>The reader of plain records may only ever say what the library's reader says.</summary>
public sealed class PlainNodeReaderTests
{
    // The same forms as in the demo collection, all of them plain.
    private const string Record = """
        ---
        # invented
        board: SP-0007
        title: Barograph Ω servo, 24" rack (spare)
        serial: "0412"
        note: 'plain, with a # and a: colon'
        arrived: { date: 2026-02-02, from: lookout hut store, complaint: pen drifts after -10 °C }
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %,
              working_voltage: 15.2 V }   # the big one
          - ref: R4
            resistance: 4.7 kΩ

            used: [C1, "C2", { at: C3 }]
        tags: []
        limits: {}
        bench:
        - date: 2026-02-03
          instrument:
            name: loop-1
        - left alone
        ---

        ## Story
        The pen drifted 😀 after about an hour.
        """;

    // What is over the length at which a single value may be too large; each is read without the library.
    private static readonly (string Name, string Yaml)[] Large =
    [
        (
            "parts in braces",
            "parts:\n" + Lines(1200, i => $"  - {{ ref: R{i}, kind: carbon film resistor, resistance: 4.7 kΩ }}   # no. {i}")
        ),
        (
            "parts on lines",
            "# all\nparts:\n" + Lines(2000, i => $"- ref: R{i}\n\n  # next\n  note: 'with a # and a: colon'\n  used: [C1, \"C2\"]")
        ),
        ("keys", Lines(9000, i => $"key{i}: value {i}")),
        ("one line", "used: [" + string.Join(", ", Enumerable.Range(0, 6000).Select(i => $"{{ at: Ω{i}, e: [] }}")) + "]\nafter: it\n"),
        ("braces over lines", "used: {" + string.Join(",", Enumerable.Range(0, 6000).Select(i => $"\n  k{i}: {i}")) + " }\nafter: it\n"),
        (
            "visits",
            "bench:\n" + Lines(2000, i => $"- date: 2026-02-03\n  readings:\n    - {{ part: R{i}, resistance: 4.7 kΩ }}\n  note: a")
        ),
        ("a value as long as may be", $"a: {new string('x', 64 << 10)}\nb:   \"{new string('µ', 32 << 10)}\" # so long\nc: d\n"),
        ("a comment longer than any value", $"a: b # {new string('µ', 100_000)}\n# {new string('x', 100_000)}\nc: d\n"),
    ];

    private static readonly string[] Pieces =
    [
        "\"",
        "'",
        "''",
        "{",
        "}",
        "[",
        "]",
        ",",
        ", ",
        ":",
        ": ",
        ":\n",
        " #",
        " # ",
        "#",
        "- ",
        "-",
        "? ",
        "&a ",
        "*a",
        "!a",
        "%",
        "<<: ",
        "|",
        "|\n",
        ">",
        "\n",
        "\n\n",
        "\n ",
        "\n  ",
        "\n    ",
        "---\n",
        "...\n",
        "\\",
        "@",
        "`",
        "1,5",
        " ",
        "  ",
        "a",
        "b: 1",
        "b: 1\n",
        "{ a: 1 }",
        "{ a: 1, a: 2 }",
        "[a, b]",
        "~",
        "null",
        ".",
        "+",
        "µ",
        "é",
        "\u00A0",
        "😀",
        "\t",
        "\r\n",
        "=",
        "a:b",
    ];

    private static readonly Gen<(int At, int Removed, string Added)> Change = Gen.Select(
        Gen.Int[4, Record.Length],
        Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 30])),
        Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index])
    );

    [Fact]
    public void A_record_in_its_plainest_form_is_read_without_the_library()
    {
        var reader = new PlainNodeReader(() => throw new InvalidOperationException("the library was asked for"));

        var reading = reader.Read("a.md", Encoding.UTF8.GetBytes(Record), FileForm.Markdown, ReadingLimits.Usual);

        Assert.Equal(WrittenNodes.Of(Thorough(Record)), WrittenNodes.Of(reading));
    }

    public static TheoryData<string> NamesOfLarge { get; } = [.. Large.Select(large => large.Name)];

    [Theory]
    [MemberData(nameof(NamesOfLarge))]
    public void A_plain_file_of_any_size_is_read_without_the_library(string name)
    {
        var reader = new PlainNodeReader(() => throw new InvalidOperationException("the library was asked for"));
        var yaml = Large.Single(large => large.Name == name).Yaml;
        Assert.True(Encoding.UTF8.GetByteCount(yaml) > 64 << 10);
        foreach (var ends in (string[])["\n", "\r\n"])
        {
            foreach (var mark in TestExtent.Of((string[])[string.Empty, "\uFEFF"], usual: 1))
            {
                var (record, form) = ($"{mark}---\n{yaml}---\nA story.\n".ReplaceLineEndings(ends), FileForm.Markdown);
                Assert.Equal(WrittenNodes.Of(Thorough(record, form)), WrittenNodes.Of(Read(reader, record, form)));
                (record, form) = ((mark + yaml).ReplaceLineEndings(ends), FileForm.Yaml);
                Assert.Equal(WrittenNodes.Of(Thorough(record, form)), WrittenNodes.Of(Read(reader, record, form)));
            }
        }
    }

    [Fact]
    public void A_record_whose_lines_end_with_carriage_returns_too_is_read_without_the_library()
    {
        var reader = new PlainNodeReader(() => throw new InvalidOperationException("the library was asked for"));
        var record = Record.ReplaceLineEndings("\r\n");

        Assert.Equal(WrittenNodes.Of(Thorough(record)), WrittenNodes.Of(Read(reader, record)));
    }

    [Fact]
    public void A_long_story_is_read_without_the_library()
    {
        var reader = new PlainNodeReader(() => throw new InvalidOperationException("the library was asked for"));
        var record = Record + Lines(40_000, i => $"Word {i} and\ttab 😀.");

        Assert.Equal(WrittenNodes.Of(Thorough(record)), WrittenNodes.Of(Read(reader, record)));
    }

    [Fact]
    public void Every_limit_holds_in_both_readers_at_the_same_size()
    {
        var bytes = Encoding.UTF8.GetByteCount(Record);
        var reader = NodeReaders.Plain();
        var limits = ReadingLimits.Usual;
        AllAlike(Enumerable.Range(1, 200).Select(events => limits with { Events = events }), least: 50);
        AllAlike(Enumerable.Range(1, 60).Select(field => limits with { FieldBytes = field }), least: 10);
        AllAlike(Enumerable.Range(1, 40).Select(depth => limits with { Depth = depth }), least: 30);
        AllAlike(Enumerable.Range(1, bytes + 1).Select(size => limits with { FileBytes = size }), least: 2);
        AllAlike(Enumerable.Range(1, bytes + 1).Select(size => limits with { FrontMatterBytes = size }), least: 50);
        AllAlike(Enumerable.Range(1, bytes + 1).Select(size => limits with { BodyBytes = size }), least: 500);

        void AllAlike(IEnumerable<ReadingLimits> each, int least)
        {
            var (before, count) = (reader.HandedOver, 0);
            foreach (var one in each)
            {
                Assert.Equal(WrittenNodes.Of(Thorough(Record, limits: one)), WrittenNodes.Of(Read(reader, Record, limits: one)));
                count++;
            }

            Assert.InRange(reader.HandedOver - before, 1, count - least);
        }
    }

    [Theory]
    [InlineData("a: b\nc: {0}\nd: e")]
    [InlineData("a: b\nc: '{0}'\nd: e")]
    [InlineData("a: b\nc: [d, {0}]\nd: e")]
    public void A_value_that_is_too_long_is_told_by_the_library(string yaml)
    {
        var reader = NodeReaders.Plain();
        var record = $"---\n{yaml.Replace("{0}", new string('µ', (32 << 10) + 1), StringComparison.Ordinal)}\n---\n";

        var reading = Read(reader, record);

        Assert.Equal(1, reader.HandedOver);
        Assert.Equal("too-large", reading.Findings.Single().Check);
        Assert.Equal(WrittenNodes.Of(Thorough(record)), WrittenNodes.Of(reading));
    }

    [Fact]
    public void No_change_to_a_large_file_makes_the_two_readers_differ()
    {
        var reader = NodeReaders.Plain();
        var (samples, open) = (0, "---\nboard: SP-0007\nparts:\n");
        var part = Record[Record.IndexOf("  - { ref", StringComparison.Ordinal)..Record.IndexOf("tags", StringComparison.Ordinal)];
        var record = open + string.Concat(Enumerable.Repeat(part, 500)) + "---\nA story.\n";
        Assert.True(Encoding.UTF8.GetByteCount(record) > 64 << 10);
        Gen.Select(
                Gen.Int[open.Length, record.Length],
                Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 30])),
                Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index])
            )
            .Sample(
                change =>
                {
                    samples++;
                    return IsAlike(reader, Changed(record, [change]));
                },
                iter: 60
            );

        Assert.InRange(reader.HandedOver, samples / 10, samples - (samples / 20));
    }

    [Theory]
    [InlineData("a: b: c")]
    [InlineData("a: b\n  c")]
    [InlineData("a: |\n  b")]
    [InlineData("a: \"b\\n\"")]
    [InlineData("a: 'it''s'")]
    [InlineData("a: page #3")]
    [InlineData("a: { b: 1,287 µF }")]
    [InlineData("a: [1,287]")]
    [InlineData("a: { b:c }")]
    [InlineData("a: { b }")]
    [InlineData("a: &x b")]
    [InlineData("a: !x b")]
    [InlineData("<<: b")]
    [InlineData("a: b\na: c")]
    [InlineData("a:\n  b: c\n d: e")]
    [InlineData("a:\nb: c")]
    [InlineData("a:\tb")]
    [InlineData("a: b\r\nc: d")]
    [InlineData(" a: b")]
    [InlineData("a: 😀")]
    [InlineData("a: b\u202E")]
    [InlineData("- a")]
    [InlineData("a: - b")]
    [InlineData("a: b:")]
    public void Whatever_is_not_plain_is_handed_over(string yaml)
    {
        var reader = NodeReaders.Plain();

        var reading = reader.Read("a.md", Encoding.UTF8.GetBytes($"---\n{yaml}\n---\n"), FileForm.Markdown, ReadingLimits.Usual);

        Assert.Equal(1, reader.HandedOver);
        Assert.Equal(WrittenNodes.Of(Thorough($"---\n{yaml}\n---\n")), WrittenNodes.Of(reading));
    }

    [Fact]
    public void A_file_too_large_for_any_limit_is_handed_over()
    {
        var reader = NodeReaders.Plain();

        var reading = reader.Read(
            "a.md",
            Encoding.UTF8.GetBytes(Record),
            FileForm.Markdown,
            ReadingLimits.Usual with
            {
                FrontMatterBytes = 20,
            }
        );

        Assert.Equal("2:1 too-large", reading.Found());
    }

    [Fact]
    public void Every_record_of_the_demo_collection_reads_alike_and_most_are_plain()
    {
        var reader = NodeReaders.Plain();
        var files = Directory
            .EnumerateFiles(Path.Combine(Repository.Root, "records"), "*", SearchOption.AllDirectories)
            .Where(path => path.EndsWith(".md", StringComparison.Ordinal) || path.EndsWith(".yaml", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .ToArray();
        foreach (var path in files)
        {
            var form = path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml;
            var bytes = File.ReadAllBytes(path);
            Assert.Equal(
                WrittenNodes.Of(new YamlNodeReader().Read("a.md", bytes, form, ReadingLimits.Usual)),
                WrittenNodes.Of(reader.Read("a.md", bytes, form, ReadingLimits.Usual))
            );
        }

        Assert.True(files.Length > 20, "the demo collection has gone");
        Assert.True(
            reader.HandedOver * 5 < files.Length,
            string.Create(CultureInfo.InvariantCulture, $"{reader.HandedOver} of {files.Length} records were not plain")
        );
    }

    [Fact]
    public void No_change_to_a_record_makes_the_two_readers_differ()
    {
        var reader = NodeReaders.Plain();
        var samples = 0;
        Change
            .List[1, 3]
            .Sample(
                changes =>
                {
                    samples++;
                    return IsAlike(reader, Changed(Record, changes));
                },
                iter: 20_000
            );

        Assert.InRange(reader.HandedOver, samples / 10, samples - (samples / 20));
    }

    [Fact]
    public void No_change_to_a_record_whose_lines_end_with_carriage_returns_too_makes_the_two_readers_differ()
    {
        var reader = NodeReaders.Plain();
        var samples = 0;
        Change
            .List[1, 3]
            .Sample(
                changes =>
                {
                    samples++;
                    return IsAlike(reader, Changed(Record, changes).ReplaceLineEndings("\r\n"));
                },
                iter: 3_000
            );

        Assert.InRange(reader.HandedOver, samples / 10, samples - (samples / 20));
    }

    [Fact]
    public void No_heap_of_yaml_signs_makes_the_two_readers_differ()
    {
        var reader = NodeReaders.Plain();
        var piece = Gen.Int[0, Pieces.Length - 1].Select(index => Pieces[index]);
        var samples = 0;
        piece
            .List[1, 12]
            .Sample(
                pieces =>
                {
                    samples++;
                    return IsAlike(reader, $"---\na: b\n{string.Concat(pieces)}\n---\n");
                },
                iter: 20_000
            );

        Assert.InRange(reader.HandedOver, samples / 10, samples - (samples / 200));
    }

    private static bool IsAlike(PlainNodeReader reader, string text) =>
        WrittenNodes.Of(Thorough(text)) == WrittenNodes.Of(Read(reader, text));

    private static NodeReading Thorough(string text, FileForm form = FileForm.Markdown, ReadingLimits? limits = null) =>
        Read(new YamlNodeReader(), text, form, limits);

    private static NodeReading Read(INodeReader reader, string text, FileForm form = FileForm.Markdown, ReadingLimits? limits = null) =>
        reader.Read("a.md", Encoding.UTF8.GetBytes(text), form, limits ?? ReadingLimits.Usual);

    private static string Lines(int count, Func<int, string> line) => string.Concat(Enumerable.Range(0, count).Select(i => line(i) + "\n"));

    private static string Changed(string text, List<(int At, int Removed, string Added)> changes)
    {
        foreach (var (at, removed, added) in changes)
        {
            var from = Math.Min(at, text.Length);
            text = string.Concat(text.AsSpan(0, from), added, text.AsSpan(Math.Min(from + removed, text.Length)));
        }

        return text;
    }
}
