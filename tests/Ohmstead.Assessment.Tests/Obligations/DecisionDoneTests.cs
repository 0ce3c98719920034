using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>What was decided to be done and was not done holds back.</summary>
public sealed class DecisionDoneTests
{
    private const string Form = "    decided:\n      - { part: C12, decision: form again, because: it lay for thirty years }\n";
    private const string Measure = "    decided:\n      - { part: C12, decision: measure out of circuit, because: R7 lies across it }\n";
    private const string Formed = "    work:\n      - { part: C12, did: re-formed }\n";
    private const string Good = "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }";

    [Fact]
    public void What_was_to_be_replaced_and_sits_there_still_is_a_fault() =>
        Board("    decided:\n      - { part: C12, decision: replace, because: this family fails shorted }\n")
            .Open("C12", BoardState.FaultStands, "decided to be replaced: this family fails shorted", "replace it");

    [Fact]
    public void What_was_to_be_replaced_and_has_gone_owes_nothing_here() =>
        Board(
                "    decided:\n      - { part: C12, decision: replace, because: this family fails shorted }\n  - date: 2026-03-15\n    "
                    + "work:\n      - { part: C12, did: removed }\n"
            )
            .AsksNothing("C12");

    [Fact]
    public void What_was_to_be_formed_again_and_was_not_is_a_fault() =>
        Board(Form)
            .Open(
                "C12",
                BoardState.FaultStands,
                "decided to be formed again, and not done since: it lay for thirty years",
                "form it again slowly, let it rest, measure its leakage"
            );

    [Fact]
    public void What_was_formed_again_wants_a_reading_after_it() =>
        Board(Form + "  - date: 2026-03-15\n" + Formed)
            .Open(
                "C12",
                BoardState.ProofDue,
                "formed again on 2026-03-15 and not read inside its limits since",
                "measure its leakage after a rest, and its capacitance"
            );

    [Theory]
    [InlineData("  - date: 2026-03-15\n    readings:\n      - GOOD\n    work:\n      - { part: C12, did: re-formed }\n")]
    [InlineData(
        "  - date: 2026-03-15\n    work:\n      - { part: C12, did: re-formed }\n  - date: 2026-03-16\n    readings:\n      - { part: "
            + "C12, circuit: out, frequency: 120 Hz, capacitance: 301 µF }\n"
    )]
    public void A_reading_before_it_or_one_that_fails_does_not_show_that_it_helped(string visits) =>
        Assert.True(Board(Form + visits.Replace("GOOD", Good, StringComparison.Ordinal)).IsOpen("C12"));

    [Fact]
    public void What_was_formed_again_and_read_since_is_done() =>
        Board(Form + "  - date: 2026-03-15\n" + Formed + "  - date: 2026-03-16\n    readings:\n      - " + Good + "\n")
            .Met("C12", "decided to be formed again", "C12 read: 461 µF", "2026-03-16", Good);

    [Fact]
    public void Forming_another_part_does_nothing_for_this_one() =>
        Assert.True(
            Board(
                    Form
                        + "  - date: 2026-03-15\n    work:\n      - { part: C13, did: re-formed }\n  - date: 2026-03-16\n    "
                        + "readings:\n      - "
                        + Good
                        + "\n"
                )
                .IsOpen("C12")
        );

    [Fact]
    public void What_was_to_be_measured_out_of_circuit_and_was_not_is_due() =>
        Board(Measure)
            .Open(
                "C12",
                BoardState.ProofDue,
                "decided to be measured out of circuit, and not read so since: R7 lies across it",
                "lift a leg and measure it"
            );

    [Theory]
    [InlineData("  - date: 2026-03-15\n    readings:\n      - { part: C12, circuit: in, frequency: 120 Hz, capacitance: 461 µF }\n")]
    [InlineData("  - date: 2026-03-15\n    readings:\n      - { part: C12, frequency: 120 Hz, capacitance: 461 µF }\n")]
    [InlineData("  - date: 2026-03-13\n    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }\n")]
    public void A_reading_in_circuit_or_one_from_before_is_not_what_was_decided(string visit) =>
        Assert.True(Board(Measure + visit).IsOpen("C12"));

    [Fact]
    public void A_later_reading_out_of_circuit_is() =>
        Board(Measure + "  - date: 2026-03-15\n    readings:\n      - " + Good + "\n")
            .Met("C12", "decided to be measured out of circuit", "C12 read: 461 µF", "2026-03-15", Good);

    [Theory]
    [InlineData("keep")]
    [InlineData("watch")]
    [InlineData("leave alone")]
    public void A_decision_to_do_nothing_asks_for_nothing(string decision) =>
        Board($"    decided:\n      - {{ part: C12, decision: {decision}, because: it works }}\n").AsksNothing("C12");

    private static ObligedBoard Board(string visits) =>
        new(
            "decision-done",
            "parts:\n  - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }\n"
                + "  - { ref: C13, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }\nbench:\n  "
                + "- date: 2026-03-14\n"
                + visits.TrimEnd()
        );
}
