using System.Collections.Immutable;
using System.Text;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Merging;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Entries;

/// <summary>Who compares and who merges know an entry again by the same.</summary>
public sealed class KnownByTests
{
    /// <summary>A list, its items before, its items now, and for each of now which of before it is, from 1; 0 for a new one.</summary>
    public static TheoryData<string, string[], string[], int[]> Mended { get; } =
        new()
        {
            { "waiting", ["since: 2026-03-05, for: a pen", "since: 2026-03-05, for: a belt"], ["since: 2026-03-05, for: two belts"], [1] },
            {
                "waiting",
                ["since: 2026-03-05, for: a pen", "since: 2026-03-05, for: a belt"],
                ["since: 2026-03-06, for: a belt", "since: 2026-03-05, for: a pen, until: 2026-04-01"],
                [2, 1]
            },
            {
                "whereabouts",
                ["date: 2026-03-05, did: returned, at: the hut", "date: 2026-03-05, did: moved, at: shelf 1"],
                ["date: 2026-03-05, did: moved, at: shelf 2", "date: 2026-03-05, did: returned, at: the hall"],
                [2, 1]
            },
            {
                "hazards",
                ["hazard: charged capacitor, at: C1", "hazard: mains, at: F1"],
                ["hazard: hot surface, at: C1", "hazard: mains, at: F1, note: on the left"],
                [1, 2]
            },
            {
                "found",
                ["at: J1, what: green, severity: minor", "at: J1, what: loose, severity: minor"],
                ["at: J1, what: loose, severity: major", "at: J1, what: blue, severity: minor"],
                [2, 1]
            },
            {
                "readings",
                ["part: C3, capacitance: 31.8 µF", "part: C3, esr: 9.4 Ω", "part: C3, state: as left, capacitance: 47.1 µF"],
                ["part: C3, esr: 9.5 Ω", "part: C3, state: as found, capacitance: 38.1 µF", "part: C3, state: as left, capacitance: 46 µF"],
                [2, 1, 3]
            },
            {
                "readings",
                ["part: C3, capacitance: 31.8 µF", "part: C3, corrects: 2026-03-01, because: wrong scale, capacitance: 38.1 µF"],
                ["part: C3, corrects: 2026-03-01, because: wrong scale, capacitance: 39 µF", "part: C3, capacitance: 32 µF"],
                [2, 1]
            },
            {
                "decided",
                ["part: C3, decision: watch, because: low", "part: C3, decision: replace, because: leaks"],
                ["part: C3, decision: replace, because: it leaks", "part: C3, decision: keep, because: low"],
                [2, 1]
            },
            {
                "work",
                ["part: C3, did: cleaned", "part: C3, did: replaced, lot: L-001"],
                ["part: C3, did: replaced, lot: L-002", "part: C4, did: cleaned"],
                [2, 0]
            },
            {
                "proof",
                ["point: soak, hours: 4", "point: soak, result: pass"],
                ["point: soak, result: fail", "point: soak, hours: 5"],
                [2, 1]
            },
            {
                "scrapped",
                ["lot: L-1, piece: 1, count: 1, because: low", "lot: L-1, piece: 2, count: 1, because: low"],
                ["lot: L-1, piece: 2, count: 2, because: low", "lot: L-1, piece: 3, count: 1, because: low"],
                [2, 1]
            },
        };

    [Theory]
    [MemberData(nameof(Mended))]
    public void An_entry_that_was_mended_is_the_same_to_both(string list, string[] before, string[] now, int[] same)
    {
        var (was, then) = (Record(list, before), Record(list, now));
        var (old, current) = (Items(was, list), Items(then, list));
        Assert.Equal(same, Alignment.Of(ListRules.For(list), old, current).Before.Select(at => at + 1));

        // Pieces are scrapped out of the drawer, and everything else here happens to boards.
        var shape = list == "scrapped" ? FileShapes.Stock : FileShapes.Board;
        var earlier = EntryComparer.Compare(RecordEntries.List(was.Root, shape), RecordEntries.List(then.Root, shape)).Earlier;
        Spot[] spots = [.. old.Select(item => item.Value.Spot)];
        Assert.Equal(
            same,
            current.Select(item => earlier.TryGetValue(item.Value.Spot, out var stood) ? Array.IndexOf(spots, stood) + 1 : 0)
        );
    }

    // A day, initials and nothing else: to whoever compares a visit whose initials were mended is the same, and its readings are; nobody
    // who merges hands a reading to another person.
    [Fact]
    public void A_visit_whose_initials_were_mended_is_the_same_to_whoever_compares_alone()
    {
        var (was, now) = (
            Record("found", ["at: J1, what: green, severity: minor"]),
            Record("found", ["at: J1, what: green, severity: minor"], "MT")
        );
        var compared = EntryComparer.Compare(
            RecordEntries.List(was.Root, FileShapes.Board),
            RecordEntries.List(now.Root, FileShapes.Board)
        );
        Assert.All(compared.Differences, one => Assert.Equal(EntryStatus.Changed, one.Status));
        Assert.Equal([-1], Alignment.Of(ListRules.For("bench"), Visits(was), Visits(now)).Before);
    }

    private static ImmutableArray<Piece> Items((MappingNode Root, Pieces Pieces) record, string list) =>
        (record.Pieces.At(list) ?? record.Pieces.At("bench")!.Inside[0].At(list)!).Inside;

    private static ImmutableArray<Piece> Visits((MappingNode Root, Pieces Pieces) record) => record.Pieces.At("bench")!.Inside;

    private static (MappingNode Root, Pieces Pieces) Record(string list, string[] items, string by = "RK")
    {
        var isOfVisit = EntryShape.OfVisits.ContainsKey(list);
        var indent = isOfVisit ? "      " : "  ";
        var lines = string.Concat(items.Select(item => $"{indent}- {{ {item} }}\n"));
        var text =
            "---\nboard: SP-0001\ntitle: logger\n"
            + (isOfVisit ? $"bench:\n  - date: 2026-02-14\n    by: {by}\n    {list}:\n" : $"{list}:\n")
            + lines
            + "---\n";
        var reading = new YamlNodeReader().Read("boards/a.md", Encoding.UTF8.GetBytes(text), FileForm.Markdown, ReadingLimits.Usual);
        Assert.Empty(reading.Findings);
        return (reading.Root!, Pieces.Of(new SourceText("boards/a.md", text), FileForm.Markdown, reading.Root!)!);
    }
}
