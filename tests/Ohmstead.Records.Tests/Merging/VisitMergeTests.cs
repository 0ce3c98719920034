using static Ohmstead.Records.Tests.Merging.Merges;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>Two people were at one board: what both entered stays, and nothing gets another day, person, instrument or
/// temperature.</summary>
public sealed class VisitMergeTests
{
    private const string LastOfVisits = "      - { part: C1, did: removed, kept: bag 1 }";

    private const string OfRk = """
          - date: 2026-11-20
            by: RK
            instrument: bridge-1
            readings:
              - { part: C3, capacitance: 46.1 µF }   # warm

        """;

    private const string OfMt = """
          - date: 2026-11-21
            by: MT
            instrument: meter-1
            work:
              # a cold joint
              - { part: C4, did: re-soldered }

        """;

    [Fact]
    public void Visits_of_two_people_both_stay_in_order_of_day_whoever_is_merged_first()
    {
        var (rk, mt) = (Board.Behind(LastOfVisits, OfRk), Board.Behind(LastOfVisits, OfMt));
        var merged = Of(Board, rk, mt);
        Assert.Equal((0, Board.Behind(LastOfVisits, OfRk + OfMt)), (merged.Conflicts, TextOf(merged)));
        Assert.Equal(["RK 2026-11-20", "MT 2026-11-21"], merged.Visits);
        Assert.Empty(merged.Reasons);
        Assert.Equal(Board.Behind(LastOfVisits, OfRk + OfMt), TextOf(Of(Board, mt, rk)));
    }

    [Fact]
    public void A_visit_that_was_entered_late_goes_between_those_of_its_days()
    {
        const string late = "  - date: 2026-02-02\n    by: MT\n    found:\n      - { at: J1, what: green, severity: minor }\n";
        var (rk, mt) = (Board.Behind(LastOfVisits, OfRk), Board.Behind("bench:", late));
        Assert.Equal(Board.Behind(LastOfVisits, OfRk).Behind("bench:", late), TextOf(Of(Board, rk, mt)));
    }

    [Fact]
    public void Two_people_on_one_day_have_two_visits_in_order_of_their_initials()
    {
        var sameDay = OfMt.With("2026-11-21", "2026-11-20");
        var merged = Of(Board, Board.Behind(LastOfVisits, OfRk), Board.Behind(LastOfVisits, sameDay));
        Assert.Equal((0, Board.Behind(LastOfVisits, sameDay + OfRk)), (merged.Conflicts, TextOf(merged)));
    }

    [Fact]
    public void One_person_on_one_day_has_one_visit_with_what_was_entered_in_both_copies()
    {
        const string other = """
              - date: 2026-11-20
                by: RK
                instrument: bridge-1
                readings:
                  - { part: C4, capacitance: 47 µF }
                decided:
                  - { part: C1, decision: replace, because: crazed }

            """;
        const string both = """
              - date: 2026-11-20
                by: RK
                instrument: bridge-1
                readings:
                  - { part: C3, capacitance: 46.1 µF }   # warm
                  - { part: C4, capacitance: 47 µF }
                decided:
                  - { part: C1, decision: replace, because: crazed }

            """;
        var merged = Of(Board, Board.Behind(LastOfVisits, OfRk), Board.Behind(LastOfVisits, other));
        Assert.Equal((0, Board.Behind(LastOfVisits, both)), (merged.Conflicts, TextOf(merged)));
    }

    [Fact]
    public void A_visit_in_which_nothing_was_read_takes_the_instrument_of_the_other()
    {
        const string seen = "  - date: 2026-11-20\n    by: RK\n    found:\n      - { at: J1, what: green, severity: minor }\n";
        const string both = """
              - date: 2026-11-20
                by: RK
                instrument: bridge-1
                found:
                  - { at: J1, what: green, severity: minor }
                readings:
                  - { part: C3, capacitance: 46.1 µF }   # warm

            """;
        foreach (var (one, other) in new[] { (seen, OfRk), (OfRk, seen) })
        {
            var merged = Of(Board, Board.Behind(LastOfVisits, one), Board.Behind(LastOfVisits, other));
            Assert.Equal((0, Board.Behind(LastOfVisits, both)), (merged.Conflicts, TextOf(merged)));
        }
    }

    [Theory]
    [InlineData("    instrument: bridge-1\n", "    instrument: meter-1\n")]
    [InlineData("    instrument: bridge-1\n", "")]
    [InlineData("    by: RK\n", "    by: RK\n    temperature: 21 °C\n")]
    public void A_visit_with_another_instrument_or_temperature_stays_one_of_its_own(string old, string put)
    {
        var other = OfRk.With("C3, capacitance: 46.1 µF }   # warm", "C4, capacitance: 47 µF }").With(old, put);
        var merged = Of(Board, Board.Behind(LastOfVisits, OfRk), Board.Behind(LastOfVisits, other));
        var text = TextOf(merged);
        Assert.Equal(0, merged.Conflicts);
        Assert.Contains(OfRk, text, StringComparison.Ordinal);
        Assert.Contains(other, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Visits_of_nobody_known_are_not_taken_for_those_of_one_person()
    {
        var (one, other) = (OfRk.With("    by: RK\n", ""), OfRk.With("    by: RK\n", "").With("46.1", "47.3"));
        var merged = Of(Board, Board.Behind(LastOfVisits, one), Board.Behind(LastOfVisits, other));
        Assert.Equal((0, Board.Behind(LastOfVisits, one + other)), (merged.Conflicts, TextOf(merged)));
    }

    [Fact]
    public void What_both_have_alike_stands_there_once()
    {
        var one = Board.Behind(LastOfVisits, OfRk);
        Assert.Equal(one, TextOf(Of(Board, one, one)));
        var other = one.Behind(OfRk.TrimEnd('\n'), OfMt);
        Assert.Equal(other, TextOf(Of(Board, one, other)));
        Assert.Equal(other, TextOf(Of(Board, other, one.With("   # warm", ""))));
    }

    [Fact]
    public void An_entry_in_a_visit_that_both_know_joins_its_list_and_its_remarks_come_along()
    {
        var one = Board.Behind(
            "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }",
            "      - { part: R1, resistance: 10 kΩ }\n"
        );
        var other = Board.Behind(
            "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }",
            "      # again, warm\n      - { part: R2, resistance: 22 kΩ }\n"
        );
        var both = "      - { part: R1, resistance: 10 kΩ }\n      # again, warm\n      - { part: R2, resistance: 22 kΩ }\n";
        var expected = Board.Behind("      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }", both);
        Assert.Equal(expected, TextOf(Of(Board, one, other)));
        Assert.Equal(expected, TextOf(Of(Board, other, one)));
    }

    [Fact]
    public void An_entry_that_one_took_back_is_gone_unless_the_other_changed_it()
    {
        const string entry = "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }\n";
        var without = Board.With(entry, "");
        var visit = Board.Behind(LastOfVisits, OfMt);
        Assert.Equal(without.Behind(LastOfVisits, OfMt), TextOf(Of(Board, without, visit)));

        var merged = Of(Board, without, Board.With("34.4", "43.4"));
        Assert.Equal(1, merged.Conflicts);
        Assert.Contains(
            "<<<<<<< above\n=======\n" + entry.With("34.4", "43.4") + ">>>>>>> below\n",
            TextOf(merged),
            StringComparison.Ordinal
        );
        Assert.Contains("taken out on one side and changed on the other", Assert.Single(merged.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_instrument_for_a_visit_is_not_given_to_what_the_other_read_meanwhile()
    {
        var one = Board.With("    instrument: bridge-1\n", "    instrument: bridge-2\n");
        var other = Board.Behind(
            "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }",
            "      - { part: R1, resistance: 10 kΩ }\n"
        );
        foreach (var merged in new[] { Of(Board, one, other), Of(Board, other, one) })
        {
            Assert.Equal(1, merged.Conflicts);
            Assert.Contains("'instrument' was changed on one side", Assert.Single(merged.Reasons), StringComparison.Ordinal);
            Assert.Contains("      - { part: R1, resistance: 10 kΩ }\n", TextOf(merged), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_visit_in_braces_is_a_visit_too()
    {
        var one = Board.Behind(LastOfVisits, "  - { date: 2026-11-20, by: RK, readings: [{ part: C3, capacitance: 46.1 µF }] }\n");
        var other = Board.Behind(LastOfVisits, OfMt);
        Assert.Equal(one.With("}] }\n", "}] }\n" + OfMt), TextOf(Of(Board, one, other)));
    }
}
