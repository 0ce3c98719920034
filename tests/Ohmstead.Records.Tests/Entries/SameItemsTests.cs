using System.Text;
using CsCheck;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Entries;

/// <summary>What stands in both states word for word is not taken apart, and nothing else follows from that.</summary>
public sealed class SameItemsTests
{
    private static readonly (string Path, string Text)[] Files =
    [
        .. Directory
            .EnumerateFiles(Path.Combine(Repository.Root, "records", "boards"), "*.md")
            .Append(Path.Combine(Repository.Root, "records", "stock.yaml"))
            .Append(Path.Combine(Repository.Root, "records", "instruments.yaml"))
            .Order(StringComparer.Ordinal)
            .Select(path => (Path.GetFileName(path), File.ReadAllText(path))),
    ];

    // Lines that go, come twice, change places with the next or say another figure: of items, visits and heads.
    private static readonly Gen<(int File, (int Kind, int Line)[] Edits)> Edited = Gen.Select(
        Gen.Int[0, 10_000],
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 10_000]).Array[1, 4]
    );

    [Fact]
    public void Leaving_the_same_out_finds_what_comparing_everything_finds()
    {
        var differing = 0;
        Edited.Sample(
            edit =>
            {
                var (path, text) = Files[edit.File % Files.Length];
                var (was, now) = (Read(path, text), Read(path, Applied(text, edit.Edits)));
                if (was is null || now is null)
                {
                    return;
                }

                var shape = ShapeOf(path);
                var (all, allNow) = (RecordEntries.List(was, shape), RecordEntries.List(now, shape));
                var (whole, less) = (EntryComparer.Compare(all, allNow), EntryComparer.Compare(was, now, shape));
                Assert.Equal(Told(whole), Told(less));
                Assert.Equal(Pairs(whole, all, allNow), Pairs(less, all, allNow));
                differing += whole.Differences.Length > 0 ? 1 : 0;
            },
            1_000
        );
        Assert.True(differing > 100, $"only {differing} edits changed what a file says");
    }

    // The instrument of a visit is told of its readings, and of the visit itself only where nothing was read.
    [Fact]
    public void A_first_proof_beside_a_reading_that_stays_is_no_change_of_the_visit()
    {
        const string Visit = """
            bench:
              - date: 2026-02-14
                by: RK
                instrument: meter-2
                readings:
                  - { part: C1, capacitance: 47 µF }

            """;
        var compared = Compare(Visit, Visit + "    proof:\n      - { point: +5V, voltage: 5.02 V }\n");
        var one = Assert.Single(compared.Differences);
        Assert.Equal("proof +5V, 2026-02-14 RK", one.Now!.Told);
        Assert.Equal(EntryStatus.New, one.Status);
    }

    [Fact]
    public void A_reading_that_moved_down_is_known_again()
    {
        const string Head = "bench:\n  - date: 2026-02-14\n    by: RK\n    readings:\n";
        const string Reading = "      - { part: C1, capacitance: 47 µF }\n";
        var compared = Compare(Head + Reading, Head + "      - { part: C0, capacitance: 10 µF }\n" + Reading);
        Assert.Equal("reading of C0, 2026-02-14 RK", Assert.Single(compared.Differences).Now!.Told);
        Assert.Equal(8, Assert.Single(compared.Earlier, pair => pair.Key.Line == 9).Value.Line);
    }

    private static EntryComparison Compare(string was, string now) =>
        EntryComparer.Compare(Read("a.md", Record(was)), Read("a.md", Record(now)), FileShapes.Board);

    private static string Record(string text) => $"---\nboard: SP-0001\ntitle: logger\n{text}---\n";

    private static string Applied(string text, (int Kind, int Line)[] edits)
    {
        var lines = text.Split('\n').ToList();
        var front = lines.FindIndex(1, line => line == "---");
        foreach (var (kind, number) in edits)
        {
            var at = 1 + (number % Math.Max(1, (front < 0 ? lines.Count : front) - 2));
            switch (kind)
            {
                case 0:
                    lines.RemoveAt(at);
                    break;
                case 1:
                    lines.Insert(at, lines[at]);
                    break;
                case 2:
                    (lines[at], lines[at + 1]) = (lines[at + 1], lines[at]);
                    break;
                default:
                    lines[at] = string.Concat(
                        lines[at].Select(one => char.IsAsciiDigit(one) ? (char)('0' + ((one - '0' + number) % 10)) : one)
                    );
                    break;
            }
        }

        return string.Join('\n', lines);
    }

    private static MappingNode? Read(string path, string text) =>
        new YamlNodeReader()
            .Read(
                path,
                Encoding.UTF8.GetBytes(text),
                path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml,
                ReadingLimits.Usual
            )
            .Root;

    private static Shape ShapeOf(string path) =>
        path switch
        {
            "stock.yaml" => FileShapes.Stock,
            "instruments.yaml" => FileShapes.Instruments,
            _ => FileShapes.Board,
        };

    private static string[] Told(EntryComparison compared) =>
        [
            .. compared
                .Differences.Select(one =>
                    string.Join(
                        ", ",
                        one.Facts.Select(fact => $"{fact.Key} {fact.Was?.Meaning} > {fact.Now?.Meaning}")
                            .Prepend($"{one.Status} {one.Entry.Told}")
                    )
                )
                .Order(StringComparer.Ordinal),
        ];

    // What each entry says and what it said, by the places at which they stand; twins say the same.
    private static string[] Pairs(EntryComparison compared, IEnumerable<RecordEntry> was, IEnumerable<RecordEntry> now)
    {
        var said = was.GroupBy(entry => entry.Spot).ToDictionary(group => group.Key, group => group.First().Said);
        return
        [
            .. now.Select(entry => $"{entry.Said}\n< {(compared.Earlier.TryGetValue(entry.Spot, out var spot) ? said[spot] : "new")}")
                .Order(StringComparer.Ordinal),
        ];
    }
}
