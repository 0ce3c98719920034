using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>Whatever has a right way round went in that way, with and without a lot, and when it was put back too.</summary>
public sealed class FittedWayRoundTests
{
    private const string NextStep =
        "establish it by schematic, continuity to ground plane, measured in circuit, photograph before removal or other unit, and add "
        + "it under polarity";

    [Theory]
    [InlineData("schematic")]
    [InlineData("continuity to ground plane")]
    [InlineData("measured in circuit")]
    [InlineData("photograph before removal")]
    [InlineData("other unit")]
    public void It_is_established_by_anything_but_the_print(string evidence) =>
        Board($"{{ part: C12, did: replaced, lot: L-031, polarity: {evidence} }}")
            .Met(
                "C12",
                "way round established",
                $"by {evidence}",
                "2026-03-14",
                $"{{ part: C12, did: replaced, lot: L-031, polarity: {evidence} }}"
            );

    [Fact]
    public void The_print_beside_something_better_is_well() =>
        Board("{ part: C12, did: replaced, lot: L-031, polarity: [print, schematic] }")
            .Met(
                "C12",
                "way round established",
                "by print and schematic",
                "2026-03-14",
                "{ part: C12, did: replaced, lot: L-031, polarity: [print, schematic] }"
            );

    [Fact]
    public void The_print_alone_can_be_wrong() =>
        Board("{ part: C12, did: replaced, lot: L-031, polarity: print }")
            .Open("C12", BoardState.FaultStands, "its way round rests on the print alone, which can be worn or wrong", NextStep);

    [Theory]
    [InlineData("replaced", "lot: L-031")]
    [InlineData("replaced", "new_part: { kind: tantalum, capacitance: 470 µF, rated_voltage: 25 V }")]
    [InlineData("replaced", "kept: in the bag")]
    [InlineData("fitted", "lot: L-031")]
    [InlineData("put back", "kept: in the bag")]
    public void Who_does_not_say_how_has_not_established_it(string did, string with) =>
        Board($"{(did == "put back" ? "{ part: C12, did: removed }\n      - " : string.Empty)}{{ part: C12, did: {did}, {with} }}")
            .Open(
                "C12",
                BoardState.FaultStands,
                $"{did} on 2026-03-14 and the record does not say how the right way round was established",
                NextStep
            );

    [Fact]
    public void A_film_capacitor_is_right_either_way() =>
        Board("{ part: C4, did: replaced, lot: L-004 }").DoesNotApply("C4", "polyester film: either way round is right");

    // What counts is what went in: a bipolar part in the place of a polarised one has no wrong way round.
    [Fact]
    public void A_bipolar_part_is_right_either_way() =>
        Board("{ part: C12, did: replaced, new_part: { kind: bipolar electrolytic, capacitance: 470 µF, rated_voltage: 25 V } }")
            .DoesNotApply("C12", "bipolar electrolytic: either way round is right");

    [Theory]
    [InlineData("{ part: C12, did: re-soldered }")]
    [InlineData("{ part: C12, did: removed }")]
    public void What_never_left_or_is_not_there_has_no_way_round_to_show(string work) => Board(work).AsksNothing("C12");

    private static ObligedBoard Board(string work) =>
        new(
            "way-round",
            """
            parts:
              - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
              - { ref: C4, kind: polyester film, capacitance: 100 nF, tolerance: 10 %, rated_voltage: 100 V }
            bench:
              - date: 2026-03-14
                work:

            """
                + "      - "
                + work,
            """
            lots:
              - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, received: 2026-01-28, quantity: 10 }
              - { lot: L-004, kind: polyester film, capacitance: 100 nF, tolerance: 10 %, rated_voltage: 250 V, received: 2026-01-28, quantity: 5 }
            """
        );
}
