using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A walk over a board with the keyboard alone: what is typed, what is told, and what stands in the record afterwards.</summary>
public sealed class BenchCommandTests
{
    private const string Board = "boards/SP-0007.md";

    [Fact]
    public void A_session_that_enters_nothing_ends_with_the_look_that_is_overdue()
    {
        using var copy = CollectionCopy.Make();
        var told = Run.Typing("quit\n", "bench", "SP-0007", "--in", copy.Root, "--by", "RK", "--as-of", "2029-01-01").Out;
        Assert.Contains("SP-0007 is now: fit to run; its inspection is overdue since 2027-11-09; ", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_alone_take_the_units_of_the_marking_and_are_judged_at_once()
    {
        using var copy = CollectionCopy.Make();
        var run = Bench(copy, "always 120Hz\nC3 46.1 0.9\n47.6 0.89\nquit\n", "--lifted", "--class", "C", "--instrument", "bridge-1");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains(
            "C3 [µF, Ω; 120 Hz, out] > ",
            Bench(copy, "C3\n", "--lifted", "--instrument", "bridge-1").Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "  capacitance 46.1 µF against 37.6 µF … 56.4 µF (delivery limit, the marking): inside\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("3 of 5 places are still to be read today", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            """
              - date: 2026-11-25
                by: RK
                instrument: bridge-1
                readings:
                  - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 46.1 µF, esr: 0.9 Ω }
                  - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 47.6 µF, esr: 0.89 Ω }

            """,
            copy.Read(Board),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_cautions_of_what_is_not_made_safe_come_first()
    {
        using var copy = CollectionCopy.Make();
        var told = Bench(copy, string.Empty).Out;
        var caution = told.IndexOf(
            "caution: charged capacitor at C3\n  a bleeder may be open: measure before and after letting down\n",
            StringComparison.Ordinal
        );
        Assert.InRange(caution, 1, told.IndexOf("factor] >", StringComparison.Ordinal));
        Assert.Contains("never permission to touch", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_of_the_unit_is_asked_about_before_anything_is_written()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var refused = Bench(copy, "C3 46.1nF\nn\nquit\n");
        Assert.Contains("capacitance 46.1 nF is 1/1020 of the marked 47 µF", refused.Error, StringComparison.Ordinal);
        Assert.Contains("a slip of the unit? y writes it all the same", refused.Out, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
        Bench(copy, "C3 46.1nF\ny\nquit\n");
        Assert.Contains("- { part: C3, capacitance: 46.1 nF }", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_entry_of_a_session_can_be_taken_back_to_the_last_byte()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Bench(copy, "C3 46.1\nfound J1 \"green legs\" minor\n47\nundo\nundo\nundo\nundo\nquit\n");
        Assert.Equal(3, Times(run.Out, "taken back: the record is as it was before the last entry\n"));
        Assert.Contains("nothing of this session is left to take back\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void Nothing_that_somebody_else_wrote_is_taken_back()
    {
        using var copy = CollectionCopy.Make();
        var record = Path.Combine(copy.Root, Board);
        var undo = new Bench.UndoStack(copy.Root, Board);
        undo.Around(4, () => Append(record, "ours"));
        Append(record, "theirs");
        Assert.Equal(("the record was changed by somebody else since; nothing was taken back", (int?)null), undo.Undo());
        Assert.EndsWith("ourstheirs", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_goes_on_where_the_last_one_of_the_day_ended()
    {
        using var copy = CollectionCopy.Make();
        Bench(copy, "100.2\n", "--class", "C");
        var second = Bench(copy, "quit\n", "--class", "C");
        Assert.Contains("4 of 5 places are still to be read today", second.Out, StringComparison.Ordinal);
        Assert.Contains("C2 [nF, dissipation factor] > ", second.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("C1 [nF, dissipation factor] > ", second.Out, StringComparison.Ordinal);
        Assert.Contains("C1 [nF, dissipation factor] > ", Bench(copy, "quit\n", "--class", "C", "--again").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("100.2 0.009", "loss_factor: 0.009")]
    [InlineData("C1 100.2nF 0.9ohm", "esr: 0.9 Ω")]
    public void One_reading_takes_at_most_twelve_strokes_beside_its_digits(string typed, string second)
    {
        using var copy = CollectionCopy.Make();
        Bench(copy, typed + "\n");
        Assert.Contains($"- {{ part: C1, capacitance: 100.2 nF, {second} }}", copy.Read(Board), StringComparison.Ordinal);
        Assert.InRange(typed.Count(stroke => !char.IsAsciiDigit(stroke)) + 1, 1, 12);
    }

    [Fact]
    public void Points_are_proved_in_the_same_walk()
    {
        using var copy = CollectionCopy.Make();
        var run = Bench(copy, "+80V 81.2 800\nquit\n");
        Assert.Contains("voltage 81.2 V against", run.Out, StringComparison.Ordinal);
        Assert.Contains("- { point: +80V, voltage: 81.2 V, ripple: 800 mV }", copy.Read(Board), StringComparison.Ordinal);
    }

    // C3 was replaced: 31.8 µF is what the old part read, 47.9 µF what another piece of the lot did.
    [Fact]
    public void The_last_reading_is_that_of_the_part_that_sits_there()
    {
        using var copy = CollectionCopy.Make();
        Assert.Contains("\n  last: 48.1 µF, 860 mΩ on 2026-02-28\n", Bench(copy, "C3\nquit\n").Out, StringComparison.Ordinal);
        var own = copy.Read(Board).Split('\n').Single(line => line.Contains("part: C3, lot: L-018, state: new", StringComparison.Ordinal));
        copy.Write(Board, copy.Read(Board).Replace(own + "\n", string.Empty, StringComparison.Ordinal));
        var told = Bench(copy, "C3\nquit\n").Out;
        Assert.DoesNotContain("31.8 µF", told, StringComparison.Ordinal);
        Assert.DoesNotContain("last: 47.9 µF", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("47,6\n", "'47,6' has a comma; write 47.6")]
    [InlineData("1 2 3\n", "'3' has no unit; write 3")]
    [InlineData("C33 1\n", "SP-0007 has no part and no point 'C33', 'C3' is the nearest")]
    [InlineData("C33\n", "SP-0007 has no part and no point 'C33', 'C3' is the nearest")]
    [InlineData(
        "+85V 81\n",
        "SP-0007 has no point '+85V'; its points are +80V, -80V, line, loop, soak; write the one that was measured, or add it first: "
            + "ohmstead add point SP-0007 +85V"
    )]
    [InlineData("R47\n", "SP-0007 has no part and no point 'R47'")]
    [InlineData("qiut\n", "'qiut' is no word of the bench, no place and no value, 'quit' is the nearest")]
    [InlineData("100 0.01 3\n", "'3' has no unit")]
    public void What_is_not_understood_is_said_and_the_walk_stays_where_it_is(string typed, string told)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Bench(copy, typed);
        Assert.Contains(told, run.Out, StringComparison.Ordinal);
        Assert.Equal(2, Times(run.Out, "C1 [nF, dissipation factor] > "));
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void The_instrument_of_the_days_last_entry_goes_along_to_the_next_board()
    {
        using var copy = CollectionCopy.Make();
        Bench(copy, "100.2\n", "--instrument", "bridge-1");
        Assert.Equal(0, Run.Of("enter", "SP-0001", "C1", "pass", "--in", copy.Root, "--as-of", "2026-11-25", "--by", "RK").Exit);
        Assert.Contains(
            "  - date: 2026-11-25\n    by: RK\n    instrument: bridge-1\n",
            copy.Read("boards/SP-0001.md"),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Run.Of("enter", "SP-0002", "C1", "pass", "--in", copy.Root, "--as-of", "2026-11-26", "--by", "RK").Exit);
        Assert.Contains("  - date: 2026-11-26\n    by: RK\n    readings:\n", copy.Read("boards/SP-0002.md"), StringComparison.Ordinal);
    }

    // What the line names second for a film part is its dissipation factor: 0.0002 is no ESR of 0.2 mΩ.
    [Fact]
    public void The_second_number_is_what_the_line_above_names()
    {
        using var copy = CollectionCopy.Make();
        var run = Bench(copy, "C1 100.4 0.0002\nC3 46.1 0.9\n+80V 80.1\nR1 1.49\n");
        Assert.Contains("  capacitance 80 nF … 120 nF; dissipation factor at most 0.018\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("  dissipation factor 0.0002 against at most 0.018", run.Out, StringComparison.Ordinal);
        Assert.Contains("- { part: C1, capacitance: 100.4 nF, loss_factor: 0.0002 }", copy.Read(Board), StringComparison.Ordinal);
        Assert.Contains("- { part: C3, capacitance: 46.1 µF, esr: 0.9 Ω }", copy.Read(Board), StringComparison.Ordinal);
        Assert.Contains("- { part: R1, resistance: 1.49 kΩ }", copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void Frequency_and_circuit_are_remembered_for_each_instrument_and_kind_and_go_to_no_resistor()
    {
        using var copy = CollectionCopy.Make();
        var run = Bench(
            copy,
            """
            with bridge-1
            C3
            out
            46.1 0.9 120Hz
            47.6 0.8
            C1 100.2 0.001 1kHz
            R1 1.49
            with esr-1
            C5
            with bridge-1
            C3
            quit

            """
        );
        Assert.Contains("C3 [µF, Ω; out] > ", run.Out, StringComparison.Ordinal);
        Assert.Contains("C4 [µF, Ω; 120 Hz, out] > ", run.Out, StringComparison.Ordinal);
        var written = copy.Read(Board);
        Assert.Contains("{ part: C4, circuit: out, frequency: 120 Hz, capacitance: 47.6 µF", written, StringComparison.Ordinal);
        // Nothing was said of the circuit of film capacitors and resistors.
        Assert.Contains("{ part: C1, frequency: 1 kHz, capacitance: 100.2 nF", written, StringComparison.Ordinal);
        Assert.Contains("{ part: R1, resistance: 1.49 kΩ }", written, StringComparison.Ordinal);
        Assert.EndsWith(
            "C3 [µF, Ω; 120 Hz, out] > ended",
            run.Out[..(run.Out.LastIndexOf("ended", StringComparison.Ordinal) + 5)],
            StringComparison.Ordinal
        );
        // The next session of the day knows it from the record; the next day nothing is left of it.
        Assert.Contains("C3 [µF, Ω; 120 Hz, out] > ", Bench(copy, "C3\n").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("always 120Hz\nR1 1.49\n", "{ part: R1, resistance: 1.49 kΩ }")]
    [InlineData("always 120Hz\nC3 46.1 0.9 100Hz\n", "{ part: C3, frequency: 100 Hz, capacitance: 46.1 µF, esr: 0.9 Ω }")]
    [InlineData("in\nc1 100.1\n", "{ part: C1, circuit: in, capacitance: 100.1 nF }")]
    [InlineData("F1 open\n", "{ part: F1, resistance: open }")]
    [InlineData("C1 100 circuit=out\n", "{ part: C1, circuit: out, capacitance: 100 nF }")]
    public void What_is_said_of_a_reading_goes_where_it_belongs(string typed, string line)
    {
        using var copy = CollectionCopy.Make();
        Bench(copy, typed);
        Assert.Contains("- " + line, copy.Read(Board), StringComparison.Ordinal);
    }

    [Fact]
    public void The_walk_can_be_asked_why_and_what_would_fit_and_be_left_by_exit()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = Bench(copy, "why\nwhy C3\nfit C3\nfit\nexit\n");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("SP-0007 C1: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("SP-0007 C3: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("in the drawer", run.Out, StringComparison.Ordinal);
        Assert.Contains("\nSP-0007 is now: ", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read(Board));
    }

    [Fact]
    public void An_instrument_that_is_not_there_is_told_at_once()
    {
        using var copy = CollectionCopy.Make();
        Assert.Contains(
            "instruments.yaml has no instrument 'brigde-1', 'bridge-1' is the nearest",
            Bench(copy, "with brigde-1\n").Out,
            StringComparison.Ordinal
        );
    }

    // A recap of thirty capacitors, each read at 120 Hz and lifted: typed as a command of its own, and at the prompt.
    [Fact]
    public void Thirty_capacitors_take_a_ninth_of_the_keys()
    {
        using var copy = CollectionCopy.Make();
        string[] parts = [.. Enumerable.Range(1, 30).Select(part => $"C{part}")];
        copy.Write(
            "boards/SP-0099.md",
            "---\nboard: SP-0099\ntitle: Thirty in a row\nparts:\n"
                + string.Concat(
                    parts.Select(part =>
                        $"  - {{ ref: {part}, kind: aluminium electrolytic, capacitance: 47 µF, "
                        + "tolerance: ±20 %, rated_voltage: 63 V }\n"
                    )
                )
                + "---\n"
        );
        string[] lines = ["46.1 0.9 120Hz", .. Enumerable.Repeat("46.1 0.9", 29)];
        var typed = string.Concat(lines.Select(line => line + "\n"));
        var run = Run.Typing(
            typed,
            "bench",
            "SP-0099",
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25",
            "--by",
            "RK",
            "--lifted",
            "--instrument",
            "bridge-1"
        );
        Assert.Contains("that was the last of them", run.Out, StringComparison.Ordinal);
        Assert.All(parts, part =>
            Assert.Contains(
                $"{{ part: {part}, circuit: out, frequency: 120 Hz, capacitance: 46.1 µF, esr: 0.9 Ω }}",
                copy.Read("boards/SP-0099.md"),
                StringComparison.Ordinal
            )
        );
        var each = parts.Sum(part => $"ohmstead enter SP-0099 {part} 46.1uF 0.9ohm 120Hz --lifted --instrument bridge-1\n".Length);
        Assert.Equal((2331, 276), (each, typed.Length));
    }

    private static int Append(string record, string text)
    {
        File.AppendAllText(record, text);
        return 0;
    }

    private static int Times(string text, string part) =>
        (text.Length - text.Replace(part, string.Empty, StringComparison.Ordinal).Length) / part.Length;

    private static Run Bench(CollectionCopy copy, string typed, params string[] words) =>
        Run.Typing(typed, ["bench", "SP-0007", "--in", copy.Root, "--as-of", "2026-11-25", "--by", "RK", .. words]);
}
