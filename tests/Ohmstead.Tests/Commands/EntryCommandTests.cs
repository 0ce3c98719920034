using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Tests.Support;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Tests.Commands;

/// <summary>What is entered at the bench: judged at once, spliced in, and refused where it cannot be right.</summary>
public sealed class EntryCommandTests
{
    private const string Board = "boards/SP-0007.md";

    [Fact]
    public void A_reading_is_one_line_in_the_visit_of_the_day_and_is_judged_at_once()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var first = Enter(
            copy,
            "enter",
            "SP-0007",
            "C3",
            "46.1uF",
            "0.9ohm",
            "120Hz",
            "--lifted",
            "--by",
            "RK",
            "--instrument",
            "bridge-1"
        );
        var second = Enter(copy, "enter", "SP-0007", "+80V", "81.2V", "ripple=0.8V", "--by", "RK", "--instrument", "meter-1");
        Assert.Equal((0, 0), (first.Exit, second.Exit));
        Assert.Contains(
            "capacitance 46.1 µF against 37.6 µF … 56.4 µF (delivery limit, the marking): inside",
            first.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("SP-0007 is now: fit to run", second.Out, StringComparison.Ordinal);
        const string visit = """
              - date: 2026-11-25
                by: RK
                instrument: bridge-1
                readings:
                  - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 46.1 µF, esr: 0.9 Ω }
                proof:
                  - { point: +80V, voltage: 81.2 V, ripple: 0.8 V, instrument: meter-1 }

            """;
        Assert.Equal(before.Replace("waiting:\n", visit + "waiting:\n", StringComparison.Ordinal), copy.Read(Board));
    }

    [Fact]
    public void A_slip_of_the_unit_is_shown_and_written_only_when_the_person_is_sure()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var slip = Enter(copy, "enter", "SP-0007", "C3", "46.1nF", "--lifted");
        Assert.Equal(1, slip.Exit);
        Assert.Contains("capacitance 46.1 nF is 1/1020 of the marked 47 µF", slip.Error, StringComparison.Ordinal);
        Assert.EndsWith("nothing was written; --sure writes it all the same\n", slip.Error, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
        Assert.Equal(0, Enter(copy, "enter", "SP-0007", "C3", "46.1nF", "--lifted", "--sure").Exit);
        Assert.NotEqual(before, copy.Read(Board));
    }

    [Fact]
    public void A_replacement_without_a_way_round_is_refused_with_what_to_say()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var refused = Enter(copy, "work", "SP-0007", "replaced", "C3", "--lot", "L-018");
        Assert.Equal(1, refused.Exit);
        Assert.Contains("[polarity-not-established]", refused.Error, StringComparison.Ordinal);
        Assert.EndsWith("nothing was written\n", refused.Error, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void Fault_mending_and_proof_of_one_evening_keep_their_order()
    {
        const string Amplifier = "boards/SP-0004.md";
        using var copy = CollectionCopy.Make();
        string[] bench = ["--by", "MB", "--instrument", "bridge-1"];
        Assert.Equal(0, Enter(copy, ["enter", "SP-0004", "C2", "301uF", "0.9ohm", "120Hz", "--lifted", .. bench]).Exit);
        Assert.Equal(0, Enter(copy, ["enter", "SP-0004", "C2", "474uF", "0.11ohm", "120Hz", "--lifted", "--lot", "L-002", .. bench]).Exit);
        Assert.StartsWith(
            "SP-0004 Barograph servo amplifier, lookout hut: a fault stands\n",
            Enter(copy, "why", "SP-0004").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(0, Enter(copy, ["work", "SP-0004", "replaced", "C2", "--lot", "L-002", "--polarity", "schematic", "--by", "MB"]).Exit);
        foreach (
            var (point, values) in new (string, string[])[]
            {
                ("+15V", ["15.05V", "ripple=1.9mV"]),
                ("-15V", ["-14.98V", "ripple=1.7mV"]),
                ("zero", ["1.0mV"]),
                ("drift", ["pass"]),
                ("soak", ["hours=5"]),
            }
        )
        {
            Assert.Equal(0, Enter(copy, ["enter", "SP-0004", point, .. values, "--by", "MB", "--instrument", "meter-1"]).Exit);
        }

        Assert.StartsWith(
            "SP-0004 Barograph servo amplifier, lookout hut: fit to run\n",
            Enter(copy, "why", "SP-0004").Out,
            StringComparison.Ordinal
        );

        // The iron comes out once more: the proof of an hour ago is older than that.
        Assert.Contains(
            "SP-0004 is now: proof due",
            Enter(copy, "work", "SP-0004", "re-soldered", "J3", "--by", "MB").Out,
            StringComparison.Ordinal
        );
        const string second = """
              - date: 2026-11-25
                by: MB
                instrument: bridge-1
                work:
                  - { part: J3, did: re-soldered }

            """;
        Assert.Contains(second, copy.Read(Amplifier), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_came_from_no_lot_is_written_with_the_work()
    {
        using var copy = CollectionCopy.Make();
        string[] work =
        [
            "work",
            "SP-0004",
            "replaced",
            "C2",
            "--new-part",
            "aluminium electrolytic",
            "470uF",
            "20%",
            "35V",
            "105C",
            "--polarity",
            "schematic",
            "--by",
            "MB",
        ];
        Assert.Equal(0, Enter(copy, work).Exit);
        Assert.Contains(
            "{ part: C2, did: replaced, new_part: { kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: "
                + "35 V, temperature: 105 °C }, polarity: schematic }",
            copy.Read("boards/SP-0004.md").Replace("\n          ", " ", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        var refused = Enter(copy, "work", "SP-0004", "replaced", "C1", "--new-part", "electrolytic", "470uF", "--polarity", "schematic");
        Assert.Equal(2, refused.Exit);
        Assert.Contains("'electrolytic' is no kind of part", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_undone_waits_for_the_keeper()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var asked = Enter(copy, "work", "SP-0007", "modified", "bracket", "--irreversible");
        Assert.Equal(
            (1, "this cannot be undone: ask the keeper, then enter it with --sure; nothing was written\n"),
            (asked.Exit, asked.Error)
        );
        Assert.Equal(before, copy.Read(Board));
        Assert.Equal(0, Enter(copy, "work", "SP-0007", "modified", "bracket", "--irreversible", "--sure").Exit);
        Assert.Contains("- { at: bracket, did: modified, irreversible: yes }", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wait_begins_and_ends_in_one_line()
    {
        using var copy = CollectionCopy.Make();
        Assert.Contains(
            "is now: work waits",
            Enter(copy, "wait", "SP-0007", "a pen, two belts", "--blocks", "soak").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(0, Enter(copy, "wait", "SP-0007", "a pen, two belts", "--over").Exit);
        Assert.Contains(
            "  - { since: 2026-11-25, for: \"a pen, two belts\", blocks: soak, until: 2026-11-25 }\n",
            copy.Read(Board),
            StringComparison.Ordinal
        );
        Assert.Equal("nothing waits for 'a pen'\n", Enter(copy, "wait", "SP-0007", "a pen", "--over").Error);
    }

    [Fact]
    public void Findings_and_decisions_keep_the_persons_words()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "found", "SP-0007", "J1", "green: \"like copper\", 2 mm", "minor").Exit);
        Assert.Equal(0, Enter(copy, "decide", "SP-0007", "BR1", "watch", "plates clean # still").Exit);
        var text = copy.Read(Board);
        Assert.Contains("""- { at: J1, what: "green: \"like copper\", 2 mm", severity: minor }""", text, StringComparison.Ordinal);
        Assert.Contains("""- { part: BR1, decision: watch, because: "plates clean # still" }""", text, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit);
    }

    [Theory]
    [InlineData("SP-0007 has no part and no point 'C33', 'C3' is the nearest\n", "SP-0007", "C33", "4uF")]
    [InlineData("there is no board 'SP-0077', 'SP-0007' is the nearest\n", "SP-0077", "C3", "4uF")]
    [InlineData("'4,7uF': a comma can mean 4.7 or 4700; write 4.7uF or 4700uF\n", "SP-0007", "C3", "4,7uF")]
    [InlineData(
        "'4.7' has no unit; write 4.7uF, 4.7nF or 4.7pF, an ESR as 4.7ohm, a loss factor as loss_factor=4.7\n",
        "SP-0007",
        "C3",
        "4.7"
    )]
    [InlineData("'500' has no unit; write 500ohm, 500kohm or 500Mohm\n", "SP-0010", "P1", "500")]
    [InlineData("'10' has no unit; write 10uH or 10mH, a winding as 10ohm\n", "SP-0010", "L1", "10")]
    [InlineData("'90' has no unit; write 90V or 90mV\n", "SP-0010", "V3", "90")]
    [InlineData("'-14.9' has no unit; write -14.9V or -14.9mV, or ripple=-14.9mV\n", "SP-0010", "HT", "--", "-14.9")]
    [InlineData("'4' has no unit; write hours=4\n", "SP-0010", "soak", "4")]
    [InlineData("a test passes or fails, and '1' says neither; write pass or fail\n", "SP-0010", "audio", "1")]
    [InlineData(
        "'5uF' gives capacitance a second time; an entry holds one, so enter the second as a reading of its own\n",
        "SP-0007",
        "C3",
        "4uF",
        "5uF"
    )]
    public void What_is_not_understood_ends_with_2_and_says_what_would_be(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var run = Enter(copy, ["enter", .. words]);
        Assert.Equal((2, message), (run.Exit, run.Error));
    }

    [Fact]
    public void A_trial_shows_the_line_and_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        Assert.Contains(
            "would add { part: C3, capacitance: 46 µF }",
            Enter(copy, "enter", "SP-0007", "C3", "46uF", "--trial").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public async Task Two_writers_of_three_hundred_readings_each_keep_six_hundred()
    {
        using var copy = CollectionCopy.Make();
        var full = copy.At(Board);
        var count = copy.Read(Board).Split("- { part: C3").Length;
        var each = TestExtent.Times(usual: 60, all: 300);
        void Write(int writer)
        {
            var reader = new YamlNodeReader();
            for (var i = 0; i < each; i++)
            {
                RecordFile.Change(copy.Root, Board, null, text =>
                    (
                        RecordEditor
                            .Open(Board, text, FileForm.Markdown, reader, out _)!
                            .AppendToVisit(
                                FileShapes.Board,
                                visit => visit["date"] == "2026-11-25",
                                [("date", "2026-11-25")],
                                "readings",
                                $"{{ part: C3, esr: {i + 1} mΩ, note: writer {writer} }}"
                            )
                            .Text,
                        0
                    )
                );
            }
        }

        var token = TestContext.Current.CancellationToken;
        await Task.WhenAll(Task.Run(() => Write(1), token), Task.Run(() => Write(2), token));
        Assert.Equal(count + (2 * each), copy.Read(Board).Split("- { part: C3").Length);
        Assert.Empty(Directory.EnumerateFiles(Path.GetDirectoryName(full)!, ".*"));
    }

    private static Run Enter(CollectionCopy copy, params string[] words) => Run.Of([.. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
