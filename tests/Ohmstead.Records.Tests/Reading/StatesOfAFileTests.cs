using System.Text;
using CsCheck;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;
using Ohmstead.Yaml.Plain;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>A reader of states of one file may share what stands in both, and says of each what a reader of files says.</summary>
public sealed class StatesOfAFileTests
{
    // So many of the lines are items that may stand below each other.
    private const int Usual = 7;

    private static readonly string[] Lines =
    [
        "  - { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "  - { ref: C1, kind: polyester film, capacitance: 100 nF }   # the first",
        "  - { ref: C2, used: [C1, { at: C3 }], tags: {} }",
        "  - [C1, C2]",
        "  -  { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "  - note: { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "  # { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "    note: { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "note: { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "  - { ref: C1, kind: polyester film, capacitance: 100 nF } }",
        "  - { ref: C1, kind: polyester film, capacitance: 100 nF }, b",
        "    - { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "- { ref: C1, kind: polyester film, capacitance: 100 nF }",
        "  - { ref: C1, kind: polyester film,\n      capacitance: 100 nF }",
        "points:",
        "",
    ];

    // Mostly what may stand below each other, so that most states are read.
    private static readonly Gen<int> Line = Gen.Frequency((9, Gen.Int[0, Usual - 1]), (1, Gen.Int[0, Lines.Length - 1]));

    private static readonly Gen<(int At, int Line)> Change = Gen.Select(Gen.Int[0, 7], Line);

    [Fact]
    public void Of_each_state_is_read_what_a_reader_of_files_reads()
    {
        Gen.Select(Line.Array[1, 8], Change.Array[3])
            .Sample(
                (lines, changes) =>
                {
                    var reader = new PlainNodeReader(static () => new YamlNodeReader(), readsStates: true);
                    var isAlike = IsAlike(reader, lines, ReadingLimits.Usual);
                    for (var at = 0; at < changes.Length; at++)
                    {
                        lines[changes[at].At % lines.Length] = changes[at].Line;
                        isAlike &= IsAlike(reader, lines, ReadingLimits.Usual);
                    }

                    return isAlike;
                },
                iter: 20_000
            );
    }

    [Fact]
    public void A_limit_counts_for_what_stands_there_again_too()
    {
        const string text = "---\nparts:\n  - { ref: C1, used: [C1, { at: C3 }] }\n  - { ref: C2, note: as long as it is }\n---\n";
        ReadingLimits[] limits =
        [
            .. Enumerable.Range(1, 8).Select(depth => ReadingLimits.Usual with { Depth = depth }),
            .. Enumerable.Range(1, 24).Select(field => ReadingLimits.Usual with { FieldBytes = field }),
            .. Enumerable.Range(1, 40).Select(events => ReadingLimits.Usual with { Events = events }),
        ];
        foreach (var limit in limits)
        {
            var reader = new PlainNodeReader(static () => new YamlNodeReader(), readsStates: true);
            Assert.NotNull(Read(reader, text, ReadingLimits.Usual).Root);

            Assert.Equal(WrittenNodes.Of(Read(NodeReaders.Plain(), text, limit)), WrittenNodes.Of(Read(reader, text, limit)));
        }
    }

    [Fact]
    public void What_stands_in_both_on_the_same_line_is_one_node()
    {
        const string one = "---\nparts:\n  - { ref: C1 }\n  - { ref: C2, note: old }\n  - { ref: C3 } # so\nnote: { a: b }\n---\n";
        var reader = new PlainNodeReader(static () => new YamlNodeReader(), readsStates: true);

        var (first, second) = (Items(reader, one), Items(reader, one.Replace("old", "new", StringComparison.Ordinal)));

        Assert.Same(first[0], second[0]);
        Assert.NotSame(first[1], second[1]);
        Assert.Same(first[2], second[2]);

        // One line further down it is another one: what is told of it names another line.
        Assert.NotSame(first[0], Items(reader, one.Replace("parts:\n", "parts:\n\n", StringComparison.Ordinal))[0]);
    }

    [Fact]
    public void A_reader_of_files_shares_nothing()
    {
        const string one = "---\nparts:\n  - { ref: C1 }\n---\n";
        var reader = NodeReaders.Plain();
        Assert.NotSame(Items(reader, one)[0], Items(reader, one)[0]);
    }

    private static bool IsAlike(PlainNodeReader reader, int[] lines, ReadingLimits limits) =>
        Written(lines) is var text
        && WrittenNodes.Of(Read(reader, text, limits)) == WrittenNodes.Of(Read(NodeReaders.Plain(), text, limits));

    private static string Written(int[] lines) => $"---\nparts:\n{string.Concat(lines.Select(at => Lines[at] + "\n"))}---\n";

    private static IReadOnlyList<Node> Items(INodeReader reader, string text) =>
        Assert.IsType<SequenceNode>(Read(reader, text, ReadingLimits.Usual).Root!.ValueOf("parts")).Items;

    private static NodeReading Read(INodeReader reader, string text, ReadingLimits limits) =>
        reader.Read("a.md", Encoding.UTF8.GetBytes(text), FileForm.Markdown, limits);
}
