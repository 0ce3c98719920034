using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.History;

/// <summary>Which readings speak of the part that sits in a place now.</summary>
public sealed class PlaceHistoryTests
{
    private const string Parts = """
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
        bench:
          - date: 2026-03-14
            readings:
              - { part: C12, circuit: out, capacitance: 301 µF }

        """;

    private const string Lot = """
        lots:
          - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, quantity: 10 }

        """;

    private const string Incoming = """
        bench:
          - date: 2026-02-21
            readings:
              - { lot: L-031, state: new, circuit: out, capacitance: 478 µF }
        """;

    private const string Replaced = "    work:\n      - { part: C12, did: replaced, lot: L-031, polarity: schematic }\n";

    [Fact]
    public void A_reading_of_the_old_part_does_not_count_after_its_replacement()
    {
        var place = C12(Parts + Replaced);
        Assert.Single(place.Readings);
        Assert.Empty(place.Standing);
        Assert.False(place.HasFailed);
        Assert.Equal("L-031", place.FittedLot?.Id.Value);
    }

    // The lot's reading stands for what is known of the part, but the part itself was not on the meter.
    [Fact]
    public void What_another_piece_of_the_lot_read_is_no_reading_of_this_part()
    {
        var place = C12(Parts + Replaced, Lot + Incoming);
        Assert.NotEmpty(place.Standing);
        Assert.Empty(place.OfThisPart);
        Assert.Null(place.LastOfThisPart(Measured.Capacitance));
    }

    [Fact]
    public void What_was_read_for_this_place_and_in_it_is_of_this_part_and_what_the_old_part_read_is_not()
    {
        const string own = "      - { part: C12, lot: L-031, state: new, capacitance: 471 µF }\n";
        var place = C12(
            Parts.TrimEnd()
                + "\n"
                + own
                + Replaced
                + "  - date: 2026-03-21\n    readings:\n      - { part: C12, circuit: out, capacitance: 469 µF }\n",
            Lot + Incoming
        );
        Assert.Equal(["471 µF", "469 µF"], place.OfThisPart.Select(reading => reading.Reading.Values[0].Value.Text));
        Assert.Equal("469 µF", place.LastOfThisPart(Measured.Capacitance)!.Reading.Text);
    }

    [Fact]
    public void A_second_part_of_the_lot_in_the_same_place_has_not_the_reading_of_the_first()
    {
        const string own = "      - { part: C12, lot: L-031, state: new, capacitance: 471 µF }\n";
        Assert.Empty(C12(Parts.TrimEnd() + "\n" + own + Replaced + "  - date: 2026-03-21\n" + Replaced, Lot).OfThisPart);
    }

    [Fact]
    public void A_reading_of_an_empty_place_is_judged_against_nothing()
    {
        var place = C12(
            Parts
                + "    work:\n      - { part: C12, did: removed }\n  - date: 2026-03-21\n    readings:\n      - { part: C12, circuit: "
                + "out, capacitance: 302 µF }\n"
        );
        Assert.Equal([VerdictOutcome.Outside, VerdictOutcome.NoLimit], place.Readings.Select(reading => reading.Overall));
        Assert.Empty(place.Standing);
        Assert.True(place.IsEmpty);
    }

    [Fact]
    public void A_reading_taken_when_the_lot_came_counts_for_the_part_that_was_fitted_from_it()
    {
        var verdict = Assert.Single(C12(Parts + Replaced, Lot + Incoming).Standing);
        Assert.Equal(("478 µF", VerdictOutcome.Inside), (verdict.Reading.Text, verdict.Outcome));
    }

    [Fact]
    public void A_reading_of_the_new_part_itself_comes_before_one_of_its_lot()
    {
        var place = C12(
            Parts + "      - { part: C12, lot: L-031, state: new, circuit: out, capacitance: 466 µF }\n" + Replaced,
            Lot + Incoming
        );
        Assert.Equal("466 µF", Assert.Single(place.Standing).Reading.Text);
    }

    [Fact]
    public void An_incoming_reading_later_than_the_fitting_does_not_count() =>
        Assert.Empty(C12(Parts + Replaced, Lot + Incoming.Replace("2026-02-21", "2026-03-15", StringComparison.Ordinal)).Standing);

    [Fact]
    public void A_reading_as_left_of_the_day_of_the_work_is_of_the_new_part()
    {
        var place = C12(Parts + "      - { part: C12, state: as left, circuit: out, capacitance: 470 µF }\n" + Replaced);
        Assert.Equal("470 µF", Assert.Single(place.Standing).Reading.Text);
    }

    [Fact]
    public void A_new_part_that_fails_later_is_a_fault_of_its_own() =>
        Assert.True(C12(Parts + Replaced + Later("{ part: C12, circuit: out, capacitance: 310 µF }")).HasFailed);

    [Fact]
    public void A_verdict_that_a_person_overrules_is_shown_together_with_the_reason()
    {
        var board = Worked.Board(Parts + Keep, Lot);
        var place = Assert.Single(board.Overruled);
        Assert.True(place.HasFailed);
        Assert.Equal(VerdictOutcome.Outside, Assert.Single(place.Standing).Outcome);
        Assert.Equal((DecisionKind.Keep, "the timing is right"), (place.Decision?.What.Value, place.Decision?.Because.Value));
        Assert.DoesNotContain(board.Reasons, reason => reason.State == BoardState.FaultStands);
    }

    [Fact]
    public void A_decision_to_keep_the_old_part_says_nothing_about_the_new_one()
    {
        var board = Worked.Board(
            Parts
                + Keep
                + "  - date: 2026-05-02\n"
                + Replaced
                + "  - date: 2026-06-02\n    readings:\n      - { part: C12, circuit: out, capacitance: 310 µF }\n",
            Lot
        );
        Assert.Empty(board.Overruled);
        Assert.Contains(board.Reasons, reason => reason is { State: BoardState.FaultStands, At: "C12" });
    }

    [Fact]
    public void A_later_reading_inside_answers_one_outside() =>
        Assert.False(C12(Parts + Later("{ part: C12, circuit: out, capacitance: 461 µF }")).HasFailed);

    // 376.5 µF on this bridge is good to 2.75 µF, and the limit is 376 µF.
    [Theory]
    [InlineData("circuit: out, instrument: bridge-2, capacitance: 376.5 µF")]
    [InlineData("circuit: in, capacitance: 461 µF")]
    public void A_later_reading_that_decides_nothing_does_not_answer_one_outside(string reading) =>
        Assert.True(C12(Parts + Later($"{{ part: C12, {reading} }}")).HasFailed);

    private const string Keep = "    decided:\n      - { part: C12, decision: keep, because: the timing is right }\n";

    private static string Later(string reading) => $"  - date: 2026-05-02\n    readings:\n      - {reading}\n";

    private static PlaceHistory C12(string record, string stock = Lot)
    {
        var place = Worked.Board(record, stock).Place("C12");
        Assert.NotNull(place);
        return place;
    }
}
