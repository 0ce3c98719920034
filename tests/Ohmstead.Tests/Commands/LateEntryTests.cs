using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>What was noted on paper goes to its day, and nothing else in the record changes.</summary>
public sealed class LateEntryTests
{
    private const string Board = "boards/SP-0007.md";

    [Theory]
    // Into the list that is there; before the work of that visit, which had put another part in; into a list of its own.
    [InlineData(
        "    work:\n      - { part: C1, did: fitted, lot: L-006",
        "      - { part: L1, circuit: out, inductance: 2.1 H }\n",
        "enter SP-0007 L1 2.1H --lifted --on 2026-05-02"
    )]
    [InlineData(
        "    work:\n      - { part: C3, did: made safe",
        "      - { part: C3, state: as found, circuit: out, capacitance: 32 µF }\n",
        "enter SP-0007 C3 32uF --lifted --on 2026-02-28 --state 'as found'"
    )]
    [InlineData(
        "    readings:\n      - { part: C1, lot: L-006",
        "    found:\n      - { at: R3, what: dust, severity: note }\n",
        "found SP-0007 R3 dust note --on 2026-05-02"
    )]
    // A day of its own, in order; somebody else's visit of that day; and first or last where a proof stands.
    [InlineData(
        "waiting:\n",
        "  - date: 2026-06-01\n    by: RK\n    work:\n      - { part: C3, did: re-soldered }\n",
        "work SP-0007 re-soldered C3 --on 2026-06-01"
    )]
    [InlineData(
        "  - date: 2026-05-09\n",
        "  - date: 2026-05-02\n    by: TS\n    readings:\n      - { part: L1, inductance: 2.1 H }\n",
        "enter SP-0007 L1 2.1H --on 2026-05-02 --by TS"
    )]
    [InlineData(
        "  - date: 2026-05-09\n",
        "  - date: 2026-05-09\n    by: RK\n    work:\n      - { part: C3, did: re-soldered }\n",
        "work SP-0007 re-soldered C3 --on 2026-05-09 --came first"
    )]
    [InlineData(
        "waiting:\n",
        "  - date: 2026-05-09\n    by: RK\n    work:\n      - { part: C3, did: re-soldered }\n",
        "work SP-0007 re-soldered C3 --on 2026-05-09 --came last"
    )]
    [InlineData(
        "  - date: 2026-02-28\n",
        "  - date: 2026-02-26\n    by: RK\n    decided:\n      - { part: L1, decision: watch, because: warm }\n",
        "decide SP-0007 L1 watch warm --on 2026-02-26"
    )]
    public void It_stands_where_it_belongs_and_every_other_byte_stays(string before, string lines, string typed)
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Board);
        var run = Type(copy, typed);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        var at = was.IndexOf(before, StringComparison.Ordinal);
        Assert.Equal(was.Insert(at, lines), copy.Read(Board));
        Assert.DoesNotContain("date-out-of-order", Run.Of("check", copy.Root, "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("whether this was read before or after it", "enter SP-0007 C3 40uF --lifted --on 2026-02-28")]
    [InlineData("whether this was seen before or after it", "found SP-0007 C1 crack minor --on 2026-02-28")]
    [InlineData("there is work on C3 of the same day", "decide SP-0007 C3 keep good --on 2026-02-28")]
    [InlineData("a decision or a proof about BR1", "decide SP-0007 BR1 keep good --on 2026-02-28")]
    [InlineData("the record has a proof of that day", "work SP-0007 washed --on 2026-05-09")]
    [InlineData("there is work of the same day", "enter SP-0007 +80V 81V --on 2026-05-02")]
    [InlineData("another proof of +80V of that day", "enter SP-0007 +80V 80V --on 2026-05-09")]
    [InlineData("the visit of that day says something of C3 that came after", "work SP-0007 tested C3 --on 2026-02-28", "as left")]
    [InlineData("another visit of that day, on line 12, has something about L1", "work SP-0007 cleaned L1 --on 2026-02-28 --by TS")]
    [InlineData(
        "another visit of that day, on line 12, has something about R3",
        "enter SP-0007 R3 99k --state 'as found' --by TS --on 2026-02-28"
    )]
    public void Where_nothing_says_what_came_first_it_is_asked(string why, string typed, string? state = null)
    {
        using var copy = CollectionCopy.Make();
        if (state is not null)
        {
            Assert.Equal(0, Type(copy, $"enter SP-0007 C3 47uF --lifted --on 2026-02-28 --state '{state}'").Exit);
            typed = typed.Replace("tested", "cleaned", StringComparison.Ordinal);
        }

        var was = copy.Read(Board);
        var run = Type(copy, typed);
        Assert.Equal((1, was), (run.Exit, copy.Read(Board)));
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.Contains("--came first or --came last", run.Error, StringComparison.Ordinal);
        // The step that is named is one that goes.
        Assert.Equal(0, Type(copy, typed + " --came last").Exit);
    }

    [Theory]
    [InlineData("2026-11-26 has not come yet: today is 2026-11-25\n", "enter SP-0007 C3 40uF --on 2026-11-26")]
    [InlineData("on 2026-02-19 SP-0007 was not here: it came on 2026-02-20\n", "work SP-0007 cleaned C3 --on 2026-02-19")]
    [InlineData("--came is for an entry of an earlier day; say that day with --on\n", "enter SP-0007 C3 40uF --came last")]
    [InlineData(
        "on 2024-03-10 SP-0020 was not here: it came on 2024-03-11\n",
        "work SP-0011 replaced C2 --from 'SP-0020 C2' --on 2024-03-10"
    )]
    public void A_day_that_cannot_be_is_refused(string told, string typed)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            "boards/SP-0011.md",
            System.Text.RegularExpressions.Regex.Replace(copy.Read("boards/SP-0011.md"), "arrived: .*\n", string.Empty)
        );
        var run = Type(copy, typed);
        Assert.Equal((2, told), (run.Exit, run.Error));
    }

    [Fact]
    public void Nothing_was_done_to_a_board_on_a_day_when_somebody_else_had_it()
    {
        using var copy = CollectionCopy.Make();
        var path = copy.At(Board);
        File.WriteAllText(
            path,
            copy.Read(Board)
                .Replace(
                    "waiting:\n",
                    "whereabouts:\n  - { date: 2026-06-02, did: sold, to: the harbour }\n"
                        + "  - { date: 2026-07-02, did: came back }\nwaiting:\n",
                    StringComparison.Ordinal
                )
        );
        var was = copy.Read(Board);
        var run = Type(copy, "enter SP-0007 C3 47uF --lifted --on 2026-06-20");
        Assert.Equal((1, was), (run.Exit, copy.Read(Board)));
        Assert.Contains("a visit of 2026-06-20, but it was sold to the harbour", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, Type(copy, "enter SP-0007 C3 47uF --lifted --on 2026-07-02").Exit);
    }

    [Fact]
    public void The_verdict_is_of_that_day_and_the_state_is_that_of_today()
    {
        using var copy = CollectionCopy.Make();
        var work = Type(copy, "work SP-0007 re-soldered C3 --on 2026-06-01");
        Assert.Contains("  SP-0007 was: fit to run\n  SP-0007 is now: proof due\n", work.Out, StringComparison.Ordinal);
        // The bridge was out of calibration in that May; in November it is not.
        var late = Type(copy, "enter SP-0007 C4 49uF 120Hz --lifted --on 2026-05-14 --instrument bridge-2");
        Assert.Contains("calibration", late.Out, StringComparison.Ordinal);
        Assert.Contains("  SP-0007 is still: proof due\n", late.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "calibration",
            Type(copy, "enter SP-0007 C4 49uF 120Hz --lifted --instrument bridge-2").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_stands_on_that_day_already_is_asked_about()
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Board);
        var run = Type(copy, "enter SP-0007 L1 2.093H 120Hz --lifted --on 2026-02-28");
        Assert.Equal((1, was), (run.Exit, copy.Read(Board)));
        Assert.Contains("the record of 2026-02-28 has this entry already, word for word", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, Type(copy, "enter SP-0007 L1 2.093H 120Hz --lifted --on 2026-02-28 --sure").Exit);
    }

    [Fact]
    public void A_part_that_went_to_another_board_goes_to_its_day_on_both()
    {
        using var copy = CollectionCopy.Make();
        var run = Type(copy, "work SP-0011 replaced C2 --from 'SP-0020 C2' --polarity schematic --by RK --on 2026-11-20");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains(
            "  - date: 2026-11-20\n    by: RK\n    work:\n      - { part: C2, did: removed",
            copy.Read("boards/SP-0020.md"),
            StringComparison.Ordinal
        );
        Assert.Contains("  - date: 2026-11-20\n    by: RK\n    work:\n", copy.Read("boards/SP-0011.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_began_and_ended_on_its_days()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Type(copy, "wait SP-0007 'a belt' --on 2026-06-01").Exit);
        Assert.Contains("  - { since: 2026-06-01, for: a belt }\n", copy.Read(Board), StringComparison.Ordinal);
        var early = Type(copy, "wait SP-0007 'a belt' --over --on 2026-05-31");
        Assert.Equal((2, "this wait began on 2026-06-01; it cannot have ended on 2026-05-31\n"), (early.Exit, early.Error));
        Assert.Equal(0, Type(copy, "wait SP-0007 'a belt' --over --on 2026-06-03").Exit);
        Assert.Contains("for: a belt, until: 2026-06-03 }\n", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_types_in_what_was_noted_on_a_day_and_undo_brings_every_byte_back()
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Board);
        var run = Run.Typing(
            "C3 46.1 0.9\nfound C4 \"dust\" note\nundo\nundo\nC4 46 0.9\nquit\n",
            "bench",
            "SP-0007",
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25",
            "--by",
            "RK",
            "--on",
            "2026-05-05"
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("what is entered goes to 2026-05-05\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("places are still to be read as of 2026-05-05", run.Out, StringComparison.Ordinal);
        const string visit = "  - date: 2026-05-05\n    by: RK\n    readings:\n      - { part: C4, capacitance: 46 µF, esr: 900 mΩ }\n";
        Assert.Equal(
            was.Replace("  - date: 2026-05-09\n", visit + "  - date: 2026-05-09\n", StringComparison.Ordinal),
            copy.Read(Board).Replace("esr: 0.9 Ω", "esr: 900 mΩ", StringComparison.Ordinal)
        );
    }

    private static Run Type(CollectionCopy copy, string typed) =>
        Run.Of([
            .. typed.Split('\'').SelectMany((piece, at) => at % 2 == 1 ? [piece] : piece.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25",
            .. typed.Contains("--by", StringComparison.Ordinal) ? Array.Empty<string>() : ["--by", "RK"],
        ]);
}
