using Ohmstead.Prompt;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Prompt;

/// <summary>A session in forty columns, with the codes that real keys send: what stands above the line that is edited stays as it was, and
/// is broken between words.</summary>
public sealed class NarrowTerminalTests
{
    private const int Columns = 40;
    private const string Bench = "exec $ohmstead bench SP-0007 --in . --by RK --class C --as-of 2026-11-25 --lifted";
    private const string Home = "\e[H";
    private const string End = "\e[F";
    private const string Left = "\e[D";
    private const string WordLeft = "\eb";
    private const string CutWord = "\u0017";
    private const string Up = "\e[A";

    // What a stop asks, broken between words.
    private static readonly string[] Asked =
    [
        "C1  suppression capacitor, 100 nF, ±20",
        "  %, 310 V",
        "  capacitance 80 nF … 120 nF;",
        "    dissipation factor at most 0.018",
        "  last: 100.9 nF on 2026-05-02",
    ];

    [Fact]
    public async Task A_line_over_three_rows_is_edited_in_all_of_them_and_nothing_above_it_moves()
    {
        using var copy = CollectionCopy.Make();
        using var terminal = PseudoTerminal.Open(Columns);
        using var bench = terminal.Start(Bench, copy.Root, ("NO_COLOR", "1"));
        await terminal.UntilAsync("out] > ");
        var above = Screen(terminal).Rows.TakeWhile(row => !row.StartsWith("C1 [", StringComparison.Ordinal)).ToArray();

        terminal.Type("found C1 \"case crazed from end to end, brown at the foot of the leads\" minor");
        await terminal.UntilAsync("minor");
        // A word in the first row, a letter in the second, the last word of the third.
        terminal.Type(Home + "x\u0008" + End + WordLeft + WordLeft + WordLeft + CutWord);
        terminal.Type(End + CutWord + "major");
        await terminal.UntilAsync("major");
        terminal.Type(Left + Left + Left + Left + Left + End + "\r");
        await terminal.UntilAsync("is now");
        terminal.Type("\u0004");
        await terminal.EndAsync();

        var rows = Screen(terminal).Rows;
        Assert.Equal(above, rows.Take(above.Length));
        string[] below =
        [
            "C1 [nF, dissipation factor; out] > foun",
            "d C1 \"case crazed from end to end, brow",
            "n at the foot the leads\" major",
            "boards/SP-0007.md:66: added { at: C1,",
            "  what: \"case crazed from end to end,",
            "  brown at the foot the leads\",",
            "  severity: major }",
            "  SP-0007 is now: make safe first",
            .. Asked,
            "C1 [nF, dissipation factor; out] >",
            "ended",
        ];
        Assert.Equal(below, rows.Skip(above.Length).Take(below.Length));
    }

    [Fact]
    public async Task An_older_line_of_three_rows_comes_back_and_is_given_up_for_a_short_one()
    {
        using var copy = CollectionCopy.Make();
        using var state = CollectionCopy.Empty();
        using var terminal = PseudoTerminal.Open(Columns);
        using var bench = terminal.Start(Bench, copy.Root, ("XDG_STATE_HOME", state.Root), ("NO_COLOR", "1"));
        await terminal.UntilAsync("out] > ");
        terminal.Type("why C3 and whatever else somebody may write in a line of a bench\r");
        await terminal.UntilAsync("write why C3");
        await terminal.UntilAsync("out] > ");
        terminal.Type(Up);
        await terminal.UntilAsync("of a bench");
        terminal.Type("\u0015left\r");
        await terminal.UntilAsync("C1 C2 C3 C4 C5");
        await terminal.UntilAsync("out] > ");
        terminal.Type("\u0004");
        await terminal.EndAsync();
        var rows = Screen(terminal).Rows;
        string[] shown =
        [
            "C1 [nF, dissipation factor; out] > why",
            "C3 and whatever else somebody may write",
            " in a line of a bench",
            "  why takes one place; write why C3",
            .. Asked,
            "C1 [nF, dissipation factor; out] > left",
            "C1 C2 C3 C4 C5",
            .. Asked,
            "C1 [nF, dissipation factor; out] >",
            "ended",
        ];
        var first = rows.Index().First(row => row.Item == shown[0]).Index;
        Assert.Equal(shown, rows.Skip(first).Take(shown.Length));
    }

    [Theory]
    [InlineData(
        "  capacitance 46.1 µF against 37.6 µF … 56.4 µF: inside",
        40,
        "  capacitance 46.1 µF against 37.6 µF …\n    56.4 µF: inside"
    )]
    [InlineData("C1 C2", 40, "C1 C2")]
    [InlineData("", 40, "")]
    [InlineData("  two  spaces stay", 80, "  two  spaces stay")]
    [InlineData("\e[1;31m  outside by far\e[0m", 12, "\e[1;31m  outside\n    by far\e[0m")]
    [InlineData("測定測定 測定", 10, "測定測定\n  測定")]
    [InlineData("a https://example.invalid/a/word/that/is/long b", 20, "a\n  https://example.invalid/a/word/that/is/long\n  b")]
    public void A_line_is_broken_between_words(string line, int columns, string rows) =>
        Assert.Equal(rows, WrappedWriter.Broken(line, columns));

    private static TerminalScreen Screen(PseudoTerminal terminal) => new TerminalScreen(Columns, wraps: true).Take(terminal.Shown);
}
