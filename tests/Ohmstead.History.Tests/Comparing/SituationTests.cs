using System.Text;
using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>One thing is changed, as it is at a bench, and what is judged otherwise is told with that and nothing else as its
/// cause.</summary>
public sealed class SituationTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Seven = "SP-0007";

    [Fact]
    public void A_new_reading_moves_the_next_look()
    {
        using var states = new TwoStates();
        states.Do("enter", Seven, "C3", "43.2uF", "--lifted", "--by", "RK");
        Holds(states, Seven, "look again", "2027-11-09", "2028-05-25", "reading");
        Assert.Contains("; 1 reading is new; 19 boards are as they were\n", states.Text(), StringComparison.Ordinal);
        Assert.Contains(
            "new reading of C3, 2026-11-25 RK: circuit out, capacitance 43.2 µF -> inside\n",
            states.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_reading_that_is_rewritten_is_told_before_all_else()
    {
        using var states = new TwoStates();
        states.Edit(Board, "capacitance: 31.8 µF, esr: 9.4 Ω", "capacitance: 41.8 µF, esr: 9.4 Ω");
        Holds(states, Seven, "verdict", "outside", "inside", "reading");
        Assert.StartsWith(
            """
            1 of what was once measured is not as it was; 1 verdict differs; 19 boards are as they were

            what was once measured and is not as it was
              SP-0007 boards/SP-0007.md:23: reading of C3, 2026-02-28 RK: capacitance now says 41.8 µF, and said 31.8 µF

            """.ReplaceLineEndings("\n"),
            states.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_reading_that_is_gone_is_told_before_all_else()
    {
        using var states = new TwoStates();
        states.Edit(Board, "      - { part: L1, circuit: out, frequency: 120 Hz, inductance: 2.093 H }\n", string.Empty);
        Assert.Contains(
            "  SP-0007 reading of L1, 2026-02-28 RK is gone; boards/SP-0007.md:26 said: circuit out, frequency 120 Hz, inductance 2.093 H",
            states.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Work_makes_a_proof_older_than_the_last_work()
    {
        using var states = new TwoStates();
        states.Do("work", Seven, "replaced", "C4", "--lot", "L-018", "--polarity", "schematic", "--by", "RK");
        Holds(states, Seven, "state", "fit to run", "proof due", "work");
        Holds(states, null, "drawer", "2 left", "1 left", "work");
    }

    [Fact]
    public void A_marking_on_the_board_itself_decides_what_its_readings_say()
    {
        using var states = new TwoStates();
        states.Edit(
            Board,
            "format: 1\n",
            "parts:\n  - { ref: C3, kind: aluminium electrolytic, capacitance: 33 µF, tolerance: ±20 %, rated_voltage: 160 V }\nformat: 1\n"
        );
        Holds(states, Seven, "verdict", "outside", "inside", "marking");
    }

    [Fact]
    public void A_tolerance_of_a_design_turns_a_board_that_nobody_touched()
    {
        using var states = new TwoStates();
        states.Edit("designs/teleprinter-line.md", "capacitance: 47 µF, tolerance: ±20 %", "capacitance: 47 µF, tolerance: ±2 %");
        Holds(states, "SP-0008", "verdict", "inside", "outside", "design");
        Assert.Contains(
            "  because of the design: designs/teleprinter-line.md:13: part C3: tolerance now says ±2 %, and said ±20 %\n",
            states.Text(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_comma_that_ends_a_note_early_is_how_the_record_is_written()
    {
        // No entry says anything else: what stands behind the comma is a key that nobody knows, and a finding.
        using var states = new TwoStates();
        states.Edit(Board, "note: then measured at 0.1 V", "note: then measured, 0.1 V");
        Holds(states, Seven, "state", "fit to run", "proof due", "record");
    }

    [Fact]
    public void An_accuracy_leaves_undecided_what_was_inside()
    {
        using var states = new TwoStates();
        states.Edit("instruments.yaml", "{ measures: esr, error: 1 %, digits: 3", "{ measures: esr, error: 60 %, digits: 3");
        var changes = Changes(states.Json());
        Assert.Contains(changes, change => change is { Kind: "verdict", Was: "inside", Now: "undecided" });
        Assert.All(changes.Where(change => change.Kind == "verdict"), change => Assert.Equal("calibration", change.Because));
    }

    [Fact]
    public void A_calibration_that_ends_earlier_falls_due_earlier()
    {
        using var states = new TwoStates();
        states.Edit("instruments.yaml", "{ date: 2026-02-09, valid: 12 months", "{ date: 2026-02-09, valid: 6 months");
        Holds(states, null, "due", "2027-02-09", "2026-08-09", "calibration");
    }

    [Fact]
    public void The_rule_of_decision_decides_for_the_whole_collection()
    {
        using var states = new TwoStates();
        states.Edit("collection.yaml", "decision: guarded", "decision: simple");
        Holds(states, "SP-0005", "verdict", "undecided", "inside", "rule");
    }

    [Fact]
    public void The_quantity_of_a_lot_changes_what_is_left_of_it()
    {
        using var states = new TwoStates();
        states.Edit("stock.yaml", "shelf_life: 36 months }", "shelf_life: 36 months, price: 0.40 EUR }");
        states.Edit("stock.yaml", "received: 2026-01-28, quantity: 6", "received: 2026-01-28, quantity: 9");
        var change = Assert.Single(Changes(states.Json()));
        Assert.Equal(("drawer", "stock"), (change.Kind, change.Because));
    }

    [Fact]
    public void An_order_that_came_is_told_as_received()
    {
        using var states = new TwoStates();
        states.Edit(
            "stock.yaml",
            "for: \"suppression capacitors 100 nF X2, six\"",
            "for: \"suppression capacitors 100 nF X2, six\", received: 2026-11-24"
        );
        Holds(states, null, "order", "placed", "received", "stock");
    }

    [Fact]
    public void Time_alone_makes_a_look_overdue()
    {
        using var states = new TwoStates();
        var json = states.Json("--as-of", "2027-11-25", "--was-on", "2026-11-25");
        Assert.Contains(Changes(json), change =>
            change is { Board: Seven, Kind: "state", Now: "fit to run; its inspection is overdue since 2027-11-09", Because: "day" }
        );
        Assert.All(Changes(json), change => Assert.Equal("day", change.Because));
    }

    public static TheoryData<string, string, string> Words { get; } =
        new()
        {
            { Board, "note: \"too high in circuit, so it is too high\"", "note: \"too high\"" },
            { Board, "verdict: out, instrument: meter-1, note", "instrument: meter-1, note" },
            { Board, "frequency: 120 Hz, capacitance: 31.8 µF", "capacitance: 31.80 uF, frequency: 0.12 kHz" },
            { "designs/teleprinter-line.md", "The bleeders R3 and R4 are the only thing", "The bleeders are the only thing" },
            { "collection.yaml", "note: The place, the makers", "note: Place, makers" },
        };

    [Theory]
    [MemberData(nameof(Words))]
    public void Other_words_and_other_ways_of_writing_change_nothing(string path, string was, string now)
    {
        using var states = new TwoStates();
        states.Edit(path, was, now);
        Same(states);
    }

    [Fact]
    public void A_file_that_is_renamed_is_the_same_board()
    {
        using var states = new TwoStates();
        File.Move(states.Now.At(Board), states.Now.At("boards/teleprinter.md"));
        Same(states);
        states.Edit("boards/teleprinter.md", "capacitance: 31.8 µF, esr: 9.4 Ω", "capacitance: 41.8 µF, esr: 9.4 Ω");
        Holds(states, Seven, "verdict", "outside", "inside", "reading");
    }

    [Fact]
    public void Line_ends_and_a_byte_order_mark_change_nothing()
    {
        using var states = new TwoStates();
        foreach (var path in Directory.EnumerateFiles(states.Now.Root, "*", SearchOption.AllDirectories))
        {
            if (Path.GetExtension(path) is ".md" or ".yaml")
            {
                File.WriteAllText(path, File.ReadAllText(path).ReplaceLineEndings("\r\n"), new UTF8Encoding(true));
            }
        }

        Same(states);
    }

    [Fact]
    public void A_file_that_is_laid_out_anew_says_what_it_said()
    {
        using var states = new TwoStates();
        // Wide lines are folded by hand, as people do; tidy lays them out again.
        states.Edit(Board, "{ part: C4, circuit: out, frequency: 120 Hz,", "{ part: C4, circuit: out,\n          frequency: 120 Hz,");
        Same(states);
        Assert.Equal(0, Run.Of("tidy", states.Now.At(Board)).Exit);
        Same(states);
    }

    [Fact]
    public void A_board_that_is_new_or_gone_is_told_with_its_state()
    {
        using var states = new TwoStates();
        File.Delete(states.Now.At(Board));
        Assert.Contains("SP-0007  gone; it was fit to run\n", states.Text(), StringComparison.Ordinal);
        Assert.Contains("SP-0007  new: fit to run\n", states.Back(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_can_no_longer_be_read_is_told_as_that()
    {
        using var states = new TwoStates();
        states.Edit(Board, "board: SP-0007", "board: [");
        Assert.Contains("SP-0007  was fit to run, now cannot be read\n", states.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void It_ends_with_one_only_where_that_is_asked_for()
    {
        using var states = new TwoStates();
        string[] words = ["changes", states.Was.Root, states.Now.Root, "--as-of", "2026-11-25", "--exit"];
        Assert.Equal(0, Run.Of(words).Exit);
        states.Edit("collection.yaml", "decision: guarded", "decision: simple");
        Assert.Equal((1, 0), (Run.Of(words).Exit, Run.Of(words[..^1]).Exit));
    }

    private static void Same(TwoStates states) => Assert.Equal("nothing differs in meaning; 20 boards are as they were\n", states.Text());

    private static void Holds(TwoStates states, string? board, string kind, string was, string now, string because)
    {
        var changes = Changes(states.Json());
        var told = string.Join('\n', changes);
        Assert.True(
            changes.Any(change =>
                change.Board == board
                && change.Kind == kind
                && change.Because == because
                && (change.Was ?? string.Empty).StartsWith(was, StringComparison.Ordinal)
                && (change.Now ?? string.Empty).StartsWith(now, StringComparison.Ordinal)
            ),
            told
        );
        Assert.True(changes.All(change => change.Because == because), told);
    }

    private static List<Told> Changes(JsonElement json)
    {
        var changes = new List<Told>();
        foreach (var board in json.GetProperty("boards").EnumerateArray())
        {
            changes.AddRange(
                board.GetProperty("changes").EnumerateArray().Select(one => From(board.GetProperty("board").GetString(), one))
            );
        }

        changes.AddRange(json.GetProperty("shared").GetProperty("changes").EnumerateArray().Select(one => From(null, one)));
        return changes;
    }

    private static Told From(string? board, JsonElement change) =>
        new(
            board,
            change.GetProperty("kind").GetString()!,
            change.GetProperty("was").GetString(),
            change.GetProperty("now").GetString(),
            string.Join(" and ", change.GetProperty("because").EnumerateArray().Select(kind => kind.GetString()))
        );

    private sealed record Told(string? Board, string Kind, string? Was, string? Now, string Because);
}
