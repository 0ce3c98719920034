using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.MovingIn;

/// <summary>What is told of a table that cannot be taken in is done word for word, until nothing is told any more: then all that the table
/// says stands in the records.</summary>
public sealed class HintOfTableTests
{
    // What refuses, the sort of the table, its rows, and what then stands in the records.
    public static TheoryData<string, string, string, string> Cases { get; } =
        new()
        {
            {
                "no headings",
                "boards",
                "QX-0101;Lamp dimmer\nQX-0102;Door bell",
                "board: QX-0101|title: Lamp dimmer|board: QX-0102|title: Door bell"
            },
            {
                "a heading that nobody knows",
                "boards",
                "Token;Title\nQX-0101;Lamp dimmer\nQX-0102;Door bell",
                "board: QX-0101|title: Lamp dimmer|board: QX-0102|title: Door bell"
            },
            {
                "two columns that can be the number",
                "boards",
                "Board;Id;Title\nQX-0101;1;Lamp dimmer",
                "board: QX-0101|title: Lamp dimmer"
            },
            { "a day that can be two", "boards", "Board;Title;Came\nQX-0101;Lamp dimmer;03.04.2019", "date: 2019-04-03" },
            { "a day with the year in short", "boards", "Board;Title;Came\nQX-0101;Lamp dimmer;4.3.19", "date: 2026-03-14" },
            { "a row of sums", "boards", "Board;Title\nQX-0101;Lamp dimmer\nTotal;1", "board: QX-0101|title: Lamp dimmer" },
            {
                "a board on two rows that complete each other",
                "boards",
                "Board;Title;From;Fault\nQX-0101;Lamp dimmer;loft;\nQX-0101;Lamp dimmer;;flickers",
                "from: loft|complaint: flickers"
            },
            {
                "a board on two rows that say the same",
                "boards",
                "Board;Title;From\nQX-0101;Lamp dimmer;loft\nQX-0101;Lamp dimmer;loft",
                "from: loft"
            },
            { "no title", "boards", "Board;Title;From\nQX-0101;;loft", "from: loft" },
            { "a figure with a comma", "readings", "Board;Day;Ref;Capacitance\nQX-0001;2026-02-01;C1;471,5 uF", "capacitance: 471.5 µF" },
            {
                "a figure that can be two",
                "readings",
                "Board;Day;Ref;Capacitance\nQX-0001;2026-02-01;C1;1.924 uF",
                "capacitance: 1.924 µF"
            },
            { "a figure without its unit", "readings", "Board;Day;Ref;Capacitance\nQX-0001;2026-02-01;C1;471", "capacitance: 471 µF" },
            {
                "a part that is not there",
                "readings",
                "Board;Day;Ref;Capacitance\nQX-0001;2026-02-01;C11;471 uF",
                "part: C1, capacitance: 471 µF"
            },
            {
                "two places of one reading",
                "readings",
                "Board;Day;Ref;Capacitance\nQX-0001;2026-02-01;C1, C2;471 uF",
                "part: C1, capacitance: 471 µF|part: C2, capacitance: 471 µF"
            },
            { "a word that is none", "readings", "Board;Day;Ref;Circuit;Capacitance\nQX-0001;2026-02-01;C1;oot;471 uF", "circuit: out" },
            {
                "a row of sums in a parts list",
                "parts",
                "Board;Ref;Value;Kind\nQX-0001;C7;104;ceramic class 2\nQX-0001;Total;2;",
                "ref: C7,"
            },
            { "a row of sums without its board", "parts", "Board;Ref;Value;Kind\nQX-0001;C7;104;ceramic class 2\n;Sum:;2;", "ref: C7," },
            { "a kind that nothing says", "parts", "Board;Ref;Value\nQX-0001;C7;104", "ref: C7," },
            { "a kind with a letter wrong", "parts", "Board;Ref;Value;Kind\nQX-0001;C7;104;ceramic clas 2", "kind: ceramic class 2" },
            { "a mark of fitted that is none", "parts", "Board;Ref;Value;Kind;Fitted\nQX-0001;C7;104;ceramic class 2;maybe", "ref: C7," },
            { "work that is none", "work", "Board;Day;Part;Done\nQX-0001;2026-02-01;C1;cleand", "did: cleaned" },
            { "a lot on two rows", "lots", "Lot;Kind;Value;Pieces;Order\nL-001;fuse;250mA;5;\nL-001;fuse;250mA;5;PO-1", "lot: L-001" },
            { "a row of sums of the drawer", "lots", "Lot;Kind;Value;Pieces\nL-001;fuse;250mA;5\nTotal;;;5", "quantity: 5" },
            { "a kind of a lot with a letter wrong", "lots", "Lot;Kind;Value;Pieces\nL-001;fuze;250mA;5", "kind: fuse" },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_is_told_is_done_word_for_word_and_nothing_is_lost(string name, string sort, string table, string facts)
    {
        using var copy = CollectionCopy.Empty();
        copy.Write(
            "boards/QX-0001.md",
            "---\nboard: QX-0001\ntitle: Bell\nparts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF }\n"
                + "  - { ref: C2, kind: aluminium electrolytic, capacitance: 470 µF }\n---\n"
        );
        IReadOnlyList<IReadOnlyList<string>> rows = [.. table.Split('\n').Select(row => row.Split(';'))];
        List<string> options = [];
        var done = 0;
        var run = TakeIn(copy, sort, rows, options);
        while (run.Exit != 0)
        {
            Assert.InRange(++done, 1, 4);
            var followed = HintOfTable.Follow(run.Error, rows);
            rows = followed.Rows;
            options.AddRange(followed.Options);
            run = TakeIn(copy, sort, rows, options);
        }

        Assert.True(name.Contains("say the same", StringComparison.Ordinal) ? done == 0 : done > 0, "nothing was refused");
        Assert.Equal(name.StartsWith("two columns", StringComparison.Ordinal), run.Error.Contains("NOT USED", StringComparison.Ordinal));
        var records = string.Concat(
            Directory
                .EnumerateFiles(copy.Root, "*.*", SearchOption.AllDirectories)
                .Where(file => !file.EndsWith(".csv", StringComparison.Ordinal))
                .Select(File.ReadAllText)
        );
        Assert.All(facts.Split('|'), fact => Assert.Contains(fact, records, StringComparison.Ordinal));
    }

    private static Run TakeIn(CollectionCopy copy, string sort, IReadOnlyList<IReadOnlyList<string>> rows, IReadOnlyList<string> options)
    {
        copy.Write("table.csv", string.Concat(rows.Select(row => string.Join(';', row) + "\n")));
        foreach (var old in Directory.EnumerateFiles(copy.Root, "*.refused*.csv"))
        {
            File.Delete(old);
        }

        return Run.Of(["take-in", $"--{sort}", copy.At("table.csv"), .. options, "--write", "--in", copy.Root, "--as-of", "2026-06-01"]);
    }
}
