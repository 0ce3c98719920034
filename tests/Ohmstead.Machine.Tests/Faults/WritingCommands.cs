using System.Collections.Immutable;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>The commands that write, and a collection on which all of them succeed.</summary>
internal static class WritingCommands
{
    private const string List = "Ref,Value,Tolerance,Voltage\n\"C21, C22\",100n,10%,63V\nR9,4k7,1%,\n";

    /// <summary>
    /// A line for each command that writes. Report and enter are tried by tests of their own, and the bench writes as enter does.
    /// </summary>
    public static ImmutableArray<string> Lines { get; } =
    [
        "found SP-0007 J1 'green like copper' minor",
        "decide SP-0007 BR1 watch 'plates clean'",
        "work SP-0007 washed --with isopropanol --dry 24h",
        "wait SP-0007 'a pen, two belts' --blocks soak",
        "start collection lighthouse --name 'Fog signals: of the old light'",
        "start board SP-0021 --design bench-supply --serial 0731",
        "start design pulse-shaper --from SP-0019",
        "start parts list.csv --design rain-counter --kind 'C=polyester film' --kind 'R=metal film resistor'",
        "add part SP-0019 C31 'polyester film' 100nF 63V",
        "add point SP-0019 +15V 15V 5% ripple_limit=10mV",
        "add hazard SP-0019 'charged capacitor' at=C1 340V 100uF 220kohm",
        "tidy . --verdicts",
        "lot L-031 'aluminium electrolytic' 470uF 20% 35V 105C date_code=2610 --quantity 10 --price '0.42 EUR'",
        "incoming L-018 47.4uF 112mohm 120Hz --by TS --instrument bridge-1",
        "scrap L-013 1 'reads 70 % of its mark' --piece 2 --by TS",
        "order PO-14 placed '220 µF 100 V, ten' --from 'Two Weirs Electronics'",
        "take-in --boards lists/boards.csv --parts lists/parts.csv --readings lists/readings.csv --work lists/work.csv "
            + "--days day-first --decimals comma --kind 'R=metal film resistor' --write",
        "settle merging/before.md boards/SP-0007.md merging/other.md --path boards/SP-0007.md",
        "sheet SP-0007 --to sheet.html",
        "ahead . --calendar ahead.ics",
    ];

    /// <summary>The demo, and a parts list beside it.</summary>
    public static CollectionCopy Ready()
    {
        var copy = CollectionCopy.Make();
        Beside(copy);
        return copy;
    }

    /// <summary>Makes a folder what it was.</summary>
    public static void Renew(CollectionCopy copy)
    {
        foreach (var entry in new DirectoryInfo(copy.Root).EnumerateFileSystemInfos())
        {
            if (entry is DirectoryInfo folder)
            {
                folder.Delete(recursive: true);
            }
            else
            {
                entry.Delete();
            }
        }

        CollectionCopy.Put(copy.Root);
        Beside(copy);
    }

    // A parts list; and for a merge, in a folder in which no record is looked for, a board as it was before its last visit, and what
    // another person made of that.
    private static void Beside(CollectionCopy copy)
    {
        copy.Write("list.csv", List);
        var board = copy.Read("boards/SP-0007.md");
        var (last, behind) = (
            board.IndexOf("  - date: 2026-05-09\n", StringComparison.Ordinal),
            board.IndexOf("waiting:\n", StringComparison.Ordinal)
        );
        copy.Write("merging/before.md", board.Remove(last, behind - last));
        copy.Write(
            "merging/other.md",
            board.Remove(last, behind - last).Insert(last, "  - { date: 2026-05-03, by: MT, note: looked at it }\n")
        );
    }

    /// <summary>The bytes, by path; what is about to get a name is not there yet.</summary>
    public static ImmutableSortedDictionary<string, string> Files(CollectionCopy copy) =>
        FilesBelow
            .Of(copy.Root)
            .Where(entry =>
                entry.Value != "a folder"
                && !(Path.GetFileName(entry.Key) is { } name && name.StartsWith('.') && name.EndsWith(".new", StringComparison.Ordinal))
            )
            .ToImmutableSortedDictionary(entry => entry.Key, entry => entry.Value.Split(' ')[1], StringComparer.Ordinal);

    /// <summary>Fails with the words where a file is neither what it was nor what it was to become.</summary>
    public static void AreOldOrNew(
        ImmutableSortedDictionary<string, string> old,
        ImmutableSortedDictionary<string, string> made,
        ImmutableSortedDictionary<string, string> now,
        string words
    )
    {
        foreach (var path in old.Keys.Concat(made.Keys).Concat(now.Keys).Distinct(StringComparer.Ordinal))
        {
            var there = now.GetValueOrDefault(path);
            Assert.True(
                there == old.GetValueOrDefault(path) || there == made.GetValueOrDefault(path),
                $"{words}{path} is neither what it was nor what it was to become"
            );
        }
    }
}
