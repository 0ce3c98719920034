using Ohmstead.Records.Merging;
using static Ohmstead.Records.Tests.Merging.Merges;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>Whatever two people make of the lines of a record by hand, a merge of it ends, is the same from both sides, and what it takes
/// for merged was proved.</summary>
public sealed class AnyTextMergeTests
{
    private static readonly string[] Put =
    [
        "# a remark\n",
        "\n",
        "  - date: 2026-11-20\n    by: RK\n",
        "      - { part: C9, capacitance: 1 µF }\n",
        "    note: \"a word: two\"\n",
        "    work:\n",
        "---\n",
        "<<<<<<< ours\n",
        "\t- x\n",
        "      - |\n        block\n\n        # no remark\n",
        "      - { part: C9,\n  note: far out }\n",
        "waiting: []\n",
    ];

    [Fact]
    public void A_merge_of_any_two_changes_ends_and_is_the_same_from_both_sides()
    {
        string[] files = [.. Directory.GetFiles(Path.Combine(Repository.Root, "records", "boards"), "*.md").Order(StringComparer.Ordinal)];
        var (byEntries, count) = (0, TestExtent.Times(usual: 150, all: 3000));
        for (var seed = 1; seed <= count; seed++)
        {
            var random = new Random(seed);
            var before = System.IO.File.ReadAllText(files[random.Next(files.Length)]);
            var (one, other) = (Changed(random, before), Changed(random, before));
            var (merged, mirrored) = (Of(before, one, other), Of(before, other, one));
            Assert.True((merged.Conflicts == 0) == (mirrored.Conflicts == 0), $"seed {seed}");
            Assert.Equal(one, TextOf(Of(before, one, before)));
            Assert.Equal(one, TextOf(Of(before, one, one)));
            Assert.True(merged.Conflicts == 0 || !merged.Reasons.IsEmpty, $"seed {seed}");
            if (merged.IsByLines || merged.Conflicts > 0 || one == before || other == before || one == other)
            {
                continue;
            }

            byEntries++;
            Assert.Equal(SaidIn(TextOf(merged)), SaidIn(TextOf(mirrored)));
            foreach (
                var line in Lines.Of(one).Concat(Lines.Of(other)).Except(Lines.Of(before)).Where(line => line.TrimStart().StartsWith('#'))
            )
            {
                Assert.Contains(line.Trim(), TextOf(merged), StringComparison.Ordinal);
            }
        }

        Assert.True(byEntries * 10 > count, $"only {byEntries} of {count} were merged by entries");
    }

    private static IEnumerable<string> SaidIn(string text) =>
        RecordFacts.Of(ReadRecord.Of(Merges.File("board"), text)!.Root).Order(StringComparer.Ordinal);

    private static string Changed(Random random, string text)
    {
        var lines = Lines.Of(text).ToList();
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            var at = random.Next(1, lines.Count);
            switch (random.Next(7))
            {
                case 0:
                    lines.RemoveAt(at);
                    break;
                case 1:
                    lines.Insert(at, lines[random.Next(lines.Count)]);
                    break;
                case 2:
                    lines[at] = " " + lines[at];
                    break;
                case 3:
                    lines[at] = lines[at].Replace('1', '7');
                    break;
                case 4:
                    lines[at] = lines[at].TrimEnd('\n') + "   # beside\n";
                    break;
                default:
                    lines.Insert(at, Put[random.Next(Put.Length)]);
                    break;
            }
        }

        return string.Concat(lines);
    }
}
