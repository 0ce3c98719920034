using Ohmstead.Assessment.Acts;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Acts;

/// <summary>What to do about a board, by name, and nothing that its record does not say.</summary>
public sealed class BoardActTests
{
    private const string Suppressor =
        "hazards:\n  - { hazard: crazed suppressor, at: C1 }\nparts:\n"
        + "  - { ref: C1, kind: suppression capacitor, capacitance: 100 nF, safety_class: X2 }\n";

    [Fact]
    public void What_must_go_is_removed_by_name_and_what_belongs_there_is_on_its_way()
    {
        var act = Act(
            Suppressor + "waiting:\n  - { for: C1 100 nF, since: 2026-03-01, order: PO-08 }",
            "orders:\n  - { order: PO-08, placed: 2026-03-01, for: suppressors }"
        );
        Assert.Equal("Remove C1, crazed suppressor; for C1: suppression capacitor 100 nF class X2, PO-08 is placed", act.Do);
        Assert.Equal("C1: crazed suppressor not made safe", act.Why);
    }

    [Fact]
    public void Where_nothing_is_ordered_it_is_to_buy() =>
        Assert.Equal(
            "Remove C1, crazed suppressor; for C1: suppression capacitor 100 nF class X2, to buy",
            Act(Suppressor.TrimEnd('\n')).Do
        );

    [Fact]
    public void A_part_of_which_only_its_kind_is_written_is_not_guessed_at() =>
        Assert.Equal(
            "Remove G1, leaking cell; for G1: cell, of which nothing more is written, to buy",
            Act("hazards:\n  - { hazard: leaking cell, at: G1 }\nparts:\n  - { ref: G1, kind: cell }").Do
        );

    [Fact]
    public void All_that_can_hurt_comes_before_a_reading_that_is_outside()
    {
        var act = Act(
            "hazards:\n  - { hazard: leaking cell, at: G1 }\n  - { hazard: leaked electrolyte, at: C9 }\nparts:\n"
                + "  - { ref: R1, kind: carbon film resistor, resistance: 47 kΩ, tolerance: ±5 % }\n"
                + "bench:\n  - date: 2026-03-14\n    readings:\n      - { part: R1, circuit: out, resistance: 60 kΩ }"
        );
        Assert.Equal("Remove G1, leaking cell; wash off the leaked electrolyte at C9", act.Do);
        Assert.Contains(act.Others, reason => reason.At == "R1");
    }

    [Fact]
    public void A_reading_that_is_outside_leaves_the_choice_to_the_person() =>
        Assert.Equal(
            "Replace R1, measure it again, or decide with a reason; for R1: carbon film resistor 47 kΩ ±5 %, to buy",
            Act(
                "parts:\n  - { ref: R1, kind: carbon film resistor, resistance: 47 kΩ, tolerance: ±5 % }\n"
                    + "bench:\n  - date: 2026-03-14\n    readings:\n      - { part: R1, circuit: out, resistance: 60 kΩ }"
            ).Do
        );

    [Fact]
    public void A_board_that_nobody_has_looked_at_is_to_be_inspected_and_made_safe() =>
        Assert.Equal("Inspect it, make it safe, measure as found", Act("serial: 12").Do);

    [Fact]
    public void Boards_of_one_design_about_which_the_same_is_to_be_done_stand_together_and_what_presses_most_comes_first()
    {
        BoardAct[] acts =
        [
            Of("A-2", "design: tide-logger"),
            Of("A-1", "design: tide-logger"),
            Of("A-3", "design: chart-drive"),
            Of("A-4", "hazards:\n  - { hazard: leaking cell, at: G1 }"),
        ];
        Assert.Equal(
            ["A-4", "A-1 A-2", "A-3"],
            ActGroup.Group(acts).Select(group => string.Join(' ', group.Acts.Select(act => act.Board.Id.Value)))
        );
    }

    private static BoardAct Of(string number, string record)
    {
        SmallCollection collection = new([
            new("markdown", $"boards/{number}.md", 0, $"---\nboard: {number}\ntitle: Logger\n{record}\n---\n"),
        ]);
        return Only(collection);
    }

    private static BoardAct Act(string record, string? stock = null)
    {
        List<CaseBlock> blocks =
        [
            new("markdown", "boards/SP-0001.md", 0, $"---\nboard: SP-0001\ntitle: Logger\n{record}\n---\n"),
            new("yaml", "instruments.yaml", 0, Worked.Instruments + "\n"),
        ];
        if (stock is not null)
        {
            blocks.Add(new("yaml", "stock.yaml", 0, stock + "\n"));
        }

        var collection = new SmallCollection(blocks);
        Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        return Only(collection);
    }

    private static BoardAct Only(SmallCollection collection)
    {
        BoardSummary[] boards = [BoardSummary.From(Assert.Single(collection.Boards))];
        PartSources sources = new(collection.Workshop, BuyingList.Compute(collection.Workshop, boards, new DateOnly(2026, 11, 25)));
        return BoardAct.For(boards[0], sources)!;
    }
}
