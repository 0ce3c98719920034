using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A verdict told in full.</summary>
public sealed class WhyCommandTests
{
    // 2200 µF ±20 %: 1760 µF to 2640 µF, worked out by hand from the marking.
    [Fact]
    public void A_reading_is_told_with_its_limit_the_arithmetic_and_the_source()
    {
        var run = Why("SP-0014", "C2");
        Assert.Equal(0, run.Exit);
        Assert.Contains("2026-07-04 (as found, out of circuit, 120 Hz) boards/SP-0014.md:23\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("limit: 1760 µF … 2640 µF, delivery limit from the marking", run.Out, StringComparison.Ordinal);
        Assert.Matches("source: .+", run.Out);
    }

    [Fact]
    public void A_replacement_is_told_with_every_reason_for_and_against_and_the_date_of_its_lot()
    {
        var run = Why("SP-0009", "C7");
        Assert.Contains(
            "\nfitted 2026-04-27 from lot L-003: may fit\n  doubt, form: radial in an axial place: lay it down, insulate and fix the "
                + "leads\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("\n  date code '2544' is 2025-W44 (", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_is_told_with_every_reason_and_its_next_step()
    {
        var run = Why("SP-0002");
        Assert.StartsWith("SP-0002 Tide-gauge logger, west well: proof due\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n    = ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_is_told_with_what_can_hurt_and_to_whom_the_figures_defer()
    {
        var run = Why("SP-0009");
        Assert.Contains("  caution, charged capacitor at C1A\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("a bleeder may be open", run.Out, StringComparison.Ordinal);
        Assert.Contains("never permission to touch: defer to local codes", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_verdict_names_the_rule_that_decided_it() =>
        Assert.Contains(
            "decided by: guard band of U, accept only what is proved inside (ILAC-G8:09/2019, as quoted by Harper Metrology, 24 October "
                + "2024, table 1); U = 2.76 µF",
            Why("SP-0005", "C1").Out,
            StringComparison.Ordinal
        );

    // 5 V / (0.2 x 2 A) = 12.5 ohm: common practice.
    [Fact]
    public void A_point_is_told_with_a_load_to_test_it_with() =>
        Assert.Contains("5 V / 0.4 A = 12.5 Ω", Why("SP-0016", "+5V").Out, StringComparison.Ordinal);

    [Fact]
    public void A_test_is_told_with_how_it_was_made() =>
        Assert.Contains("test: pass, every cell written and read", Why("SP-0001", "U3").Out, StringComparison.Ordinal);

    // 377.5 µF against 376 µF with U = 2.757 µF: Phi(1.5 / 1.378) = 0.862, JCGM 106:2012, from memory.
    [Fact]
    public void Verdicts_are_told_as_data_with_rule_uncertainty_and_probability()
    {
        var run = Why("SP-0005", "C1", "--form", "json");
        using var json = System.Text.Json.JsonDocument.Parse(run.Out);
        var verdict = json.RootElement.GetProperty("verdicts")[0];
        Assert.Equal("undecided", verdict.GetProperty("outcome").GetString());
        Assert.Equal("guard band of U", verdict.GetProperty("rule").GetString());
        Assert.Equal(0.862, verdict.GetProperty("probability_inside").GetDouble(), 0.001);
        Assert.Equal("376 µF … 564 µF", verdict.GetProperty("limit").GetProperty("range").GetString());
    }

    [Fact]
    public void A_board_is_told_with_what_meets_each_obligation_and_where_that_stands()
    {
        var run = Why("SP-0007");
        Assert.StartsWith(
            "SP-0007 Teleprinter line unit, signals room: fit to run\n  why it may be switched on, entry by entry:\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "\n    the right way round of what was fitted was established, and not by the print alone\n      C3, C4: way round "
                + "established: by schematic and continuity to ground plane, 2026-02-28, boards/SP-0007.md:37, 38\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("\n      loop: loop proved: pass, 2026-05-09, boards/SP-0007.md:64\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n  what does not apply:\n    T1: mains: it stays and is cautioned against\n", run.Out, StringComparison.Ordinal);
        // Each line that is named says what it is named for.
        Assert.Contains(
            "point: loop",
            File.ReadAllLines(Path.Combine(CollectionCopy.Untouched, "boards/SP-0007.md"))[63],
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "never permission to touch: defer to local codes, the equipment's service manual and licensed practice.\n",
            run.Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Of_a_kind_of_which_many_are_met_the_places_are_named_and_all_are_told_on_request()
    {
        Assert.Contains(
            "\n      8 met: C1 to C4, R3, R4, K1, L1, the last on 2026-05-02; --all tells each\n",
            Why("SP-0007").Out,
            StringComparison.Ordinal
        );
        var all = Why("SP-0007", "--all").Out;
        Assert.DoesNotContain("--all tells each", all, StringComparison.Ordinal);
        Assert.Contains("\n      K1: nothing that was read of it is outside: ", all, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_open_is_told_first_and_never_left_out()
    {
        var run = Why("SP-0008");
        Assert.InRange(
            run.Out.IndexOf("crazed suppressor not made safe", StringComparison.Ordinal),
            1,
            run.Out.IndexOf("what is met already:", StringComparison.Ordinal)
        );
        Assert.Contains("met: ", Why("SP-0008", "F1").Out, StringComparison.Ordinal);
        Assert.Contains("open: ", Why("SP-0008", "C1").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Obligations_are_told_as_data_with_their_evidence()
    {
        using var json = System.Text.Json.JsonDocument.Parse(Why("SP-0008", "--form", "json").Out);
        Assert.False(json.RootElement.GetProperty("look_overdue").GetBoolean());
        var obligations = json.RootElement.GetProperty("obligations").EnumerateArray().ToArray();
        Assert.All(obligations, one =>
            Assert.Equal(
                ["kind", "at", "standing", "text", "state", "next", "evidence"],
                one.EnumerateObject().Select(member => member.Name)
            )
        );
        var open = obligations.First(one => one.GetProperty("standing").GetString() == "open");
        Assert.Equal(
            ("hazard-gone", "C1", "make safe first"),
            (open.GetProperty("kind").GetString(), open.GetProperty("at").GetString(), open.GetProperty("state").GetString())
        );
        var met = obligations
            .First(one => one.GetProperty("kind").GetString() == "finding-answered" && one.GetProperty("standing").GetString() == "met")
            .GetProperty("evidence");
        Assert.Equal(
            ("2026-11-07", "boards/SP-0008.md", 24),
            (met.GetProperty("day").GetString(), met.GetProperty("path").GetString(), met.GetProperty("line").GetInt32())
        );
        using var part = System.Text.Json.JsonDocument.Parse(Why("SP-0008", "F1", "--form", "json").Out);
        Assert.All(part.RootElement.GetProperty("obligations").EnumerateArray(), one =>
            Assert.Equal("F1", one.GetProperty("at").GetString())
        );
    }

    // Last seen on 2026-05-09 and to be looked at every 18 months: by 2027-11-09.
    [Theory]
    [InlineData("2027-11-09", "fit to run\n")]
    [InlineData("2027-11-10", "fit to run; its inspection is overdue since 2027-11-09\n")]
    public void A_look_that_is_overdue_stands_beside_the_state(string today, string expected) =>
        Assert.StartsWith(
            "SP-0007 Teleprinter line unit, signals room: " + expected,
            Run.Of("why", "SP-0007", "--in", CollectionCopy.Untouched, "--as-of", today).Out,
            StringComparison.Ordinal
        );

    // 470 µF -20 % ends at 376 µF: 371 µF was known when it was decided to watch the part, 47 µF was not.
    [Theory]
    [InlineData("47 µF", true)]
    [InlineData("371 µF", true)]
    [InlineData("380 µF", false)]
    public void A_decision_that_did_not_know_a_later_reading_is_told_so_and_its_part_is_bought(string capacitance, bool isUnanswered)
    {
        using var copy = CollectionCopy.Empty();
        copy.Write(
            "boards/X-1.md",
            $$"""
            ---
            board: X-1
            title: Bench supply
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V }
            bench:
              - date: 2026-03-14
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 371 µF }
                decided:
                  - { part: C1, decision: watch, because: a little low }
              - date: 2026-10-03
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, capacitance: {{capacitance}} }
                proof:
                  - { point: lamp, result: pass }
            ---

            """
        );
        Run Of(params string[] words) => Run.Of([.. words, "--as-of", "2026-11-25"]);
        const string doubt = "decided before the reading of 2026-10-03, which it does not answer";
        Assert.Contains(
            "\ndecided: watch, because a little low" + (isUnanswered ? $"; {doubt}\n" : "\n"),
            Of("why", "X-1", "C1", "--in", copy.Root).Out,
            StringComparison.Ordinal
        );
        Assert.Equal(isUnanswered, Of("why", "X-1", "--in", copy.Root).Out.Contains($"; 'watch': {doubt}\n", StringComparison.Ordinal));
        Assert.Equal(isUnanswered, Of("buy", copy.Root, "--form", "csv").Out.Contains("X-1 C1", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("SP-0O14", "C2", "there is no board or lot 'SP-0O14', 'SP-0014' is the nearest\n")]
    [InlineData("SP-0014", "C22", "SP-0014 has no part and no point 'C22', 'C2' is the nearest\n")]
    public void A_misspelt_name_is_answered_with_the_nearest(string board, string place, string expected)
    {
        var run = Why(board, place);
        Assert.Equal(2, run.Exit);
        Assert.Equal(expected, run.Error);
    }

    // 1000 h at 85 °C are 11 313.7 h at 50 °C, five kelvin above the air of the board: 1.29 years of 8760 h after 2026-05-16.
    [Fact]
    public void A_fitted_electrolytic_is_told_with_its_life_the_arithmetic_and_the_source()
    {
        var run = Why("SP-0011", "C1");
        Assert.Contains("life ahead: may be used up between 2027-08-30 and ", run.Out, StringComparison.Ordinal);
        Assert.Contains("an estimate, not a promise\n", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "ten-kelvin rule: 1000 h x 2^((85 - 50) / 10) = 11313.71 h, at 8760 h a year 1.29 years from 2026-05-16",
            run.Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_part_that_was_never_read_is_told_with_what_its_life_lacks()
    {
        var run = Why("SP-0004", "C3");
        Assert.Equal(0, run.Exit);
        Assert.EndsWith("life ahead: no estimate, its rated life is not written, as in life: 2000 h\n", run.Out, StringComparison.Ordinal);
    }

    // (100 V)² / 100 kΩ = 0.1 W and 100 V / 100 kΩ = 1 mA; 0.01 x 220 µF x 100 V = 220 µA.
    [Fact]
    public void A_lot_that_is_due_is_told_with_all_its_dates_and_a_plan_to_form_it_again()
    {
        var run = Why("L-022");
        Assert.Equal(0, run.Exit);
        Assert.Contains("3 of them, 0 fitted, 3 left\n", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "made: 1978-06, 1998-06 or 2018-06, the code alone does not say which (date code K6)\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "through 100 kΩ, which must bear 0.10 W and pass 1.0 mA should the part be shorted\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("the last leakage is above 220 µA (common practice)\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("defer to local codes", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_is_told_with_its_incoming_readings_and_where_its_parts_went()
    {
        var run = Why("L-012");
        Assert.Contains("2026-05-14 (incoming, 120 Hz) stock.yaml:", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "  capacitance 1048 µF against 800 µF … 1200 µF (delivery limit, the marking): inside\n",
            run.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("fitted 2026-05-16: SP-0011 C1\n", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("forming again", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_lot_is_answered_with_the_nearest() =>
        Assert.Equal("there is no board or lot 'L-O12', 'L-012' is the nearest\n", Why("L-O12").Error);

    [Fact]
    public void A_board_is_found_when_its_file_has_another_name()
    {
        using var copy = CollectionCopy.Make();
        File.Move(copy.At("boards/SP-0014.md"), copy.At("boards/left bench.md"));
        Assert.Equal(0, Run.Of("why", "SP-0014", "C2", "--in", copy.Root).Exit);
    }

    private static Run Why(params string[] words) => Run.Of(["why", .. words, "--in", CollectionCopy.Untouched, "--as-of", "2026-11-25"]);
}
