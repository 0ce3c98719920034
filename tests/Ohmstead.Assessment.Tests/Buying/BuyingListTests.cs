using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Buying;

/// <summary>The buying list: what the boards need, less the drawer, less what is on order. Sums done by hand.</summary>
public sealed class BuyingListTests
{
    private const string Filter = "kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 25 V";

    [Fact]
    public void Two_of_three_that_are_needed_lie_in_the_drawer_and_one_is_to_buy()
    {
        var line = Assert.Single(
            List(
                "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, received: 2026-01-28, "
                    + "quantity: 2 }",
                Empty("SP-0001", "C1", "C2"),
                Empty("SP-0002", "C1")
            )
        );
        Assert.Equal((3, 2, 0, 1), (line.Needed, line.InDrawer, line.OnOrder, line.ToBuy));
        Assert.Equal(["SP-0001 C1", "SP-0001 C2", "SP-0002 C1"], line.For.Select(need => $"{need.Board} {need.Reference}"));
    }

    [Theory]
    [InlineData("lent, to: Two Weirs museum", 2)]
    [InlineData("sold", 1)]
    [InlineData("broken up", 1)]
    [InlineData("retired", 1)]
    public void For_a_board_that_is_gone_or_kept_for_show_nothing_is_bought(string did, int needed)
    {
        var gone = Empty("SP-0002", "C1") + $"whereabouts:\n  - {{ date: 2026-11-10, did: {did} }}\n";
        Assert.Equal(needed, Assert.Single(List("lots: []", Empty("SP-0001", "C1"), gone)).Needed);
    }

    [Fact]
    public void What_was_fitted_has_left_the_drawer()
    {
        const string lots =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, received: 2026-01-28, "
            + "quantity: 2 }";
        var line = Assert.Single(
            List(lots, Empty("SP-0001", "C1", "C2"), Board("SP-0002", ["C1"], "{ part: C1, did: replaced, lot: L-1 }"))
        );
        Assert.Equal((2, 1, 1), (line.Needed, line.InDrawer, line.ToBuy));
    }

    [Theory]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 16 V, received: 2026-01-28", "the voltage is lower")]
    [InlineData("kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 35 V, received: 2026-01-28", "the value is another")]
    [InlineData("kind: tantalum, capacitance: 100 µF, rated_voltage: 35 V, received: 2026-01-28", "the kind is another")]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF, received: 2026-01-28", "the voltage is not known")]
    [InlineData(
        "kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, received: 2022-01-28",
        "it lay longer than three years"
    )]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, order: PO-1", "it has not come")]
    public void A_lot_that_does_not_fit_is_not_counted(string lot, string why)
    {
        var line = Assert.Single(
            List(
                $"lots:\n  - {{ lot: L-1, {lot}, quantity: 5 }}\norders:\n  - {{ order: PO-1, placed: 2026-11-09, for: capacitors }}",
                Empty("SP-0001", "C1")
            )
        );
        Assert.True(line is { InDrawer: 0, ToBuy: 1 }, why);
    }

    [Fact]
    public void A_lot_that_failed_its_incoming_reading_is_not_counted()
    {
        const string stock =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, tolerance: ±20 %, rated_voltage: 35 V, received: "
            + "2026-01-28, quantity: 5 }\n"
            + "bench:\n  - date: 2026-01-30\n    readings:\n      - { lot: L-1, state: new, frequency: 120 Hz, capacitance: 61 µF }";
        Assert.Equal(1, Assert.Single(List(stock, Empty("SP-0001", "C1"))).ToBuy);
    }

    [Fact]
    public void A_suppressor_is_replaced_class_for_class()
    {
        const string lots =
            "lots:\n  - { lot: L-1, kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 310 V, safety_class: Y2, received: "
            + "2026-01-28, quantity: 3 }\n"
            + "  - { lot: L-2, kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 310 V, safety_class: X2, received: "
            + "2026-01-28, quantity: 3 }";
        const string part = "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2";
        Assert.Equal(
            ("L-2", 1),
            Assert.Single(Assert.Single(List(lots, Board("SP-0001", ["C1"], "{ part: C1, did: removed }", part))).Drawer)
        );
    }

    [Fact]
    public void The_line_with_the_highest_voltage_chooses_first_and_no_part_is_promised_twice()
    {
        const string lots =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 63 V, received: 2026-01-28, "
            + "quantity: 1 }";
        var lines = List(
            lots,
            Empty("SP-0001", "C1"),
            Board("SP-0002", ["C1"], "{ part: C1, did: removed }", Filter.Replace("25 V", "50 V", StringComparison.Ordinal))
        );
        Assert.Equal(
            [("aluminium electrolytic 100 µF ±20 % 25 V", 1), ("aluminium electrolytic 100 µF ±20 % 50 V", 0)],
            lines.Select(line => (line.What, line.ToBuy))
        );
    }

    [Theory]
    [InlineData("for: capacitor 100 µF, order: PO-1", 2, 0)]
    [InlineData("for: a capacitor for C2, order: PO-1", 1, 1)]
    [InlineData("for: a belt, order: PO-1", 0, 2)]
    [InlineData("for: capacitor 1100 µF, order: PO-1", 0, 2)]
    [InlineData("for: capacitor 100 µF, order: PO-2", 0, 2)]
    [InlineData("for: capacitor 100 µF", 0, 2)]
    public void A_place_is_on_order_when_its_board_waits_for_an_open_order_that_names_it(string wait, int onOrder, int toBuy)
    {
        const string orders =
            "orders:\n  - { order: PO-1, placed: 2026-11-09, for: six capacitors }\n  - { order: PO-2, placed: 2026-03-05, for: six "
            + "capacitors, lost: 2026-04-10 }";
        var line = Assert.Single(List(orders, Empty("SP-0001", "C1", "C2") + $"waiting:\n  - {{ since: 2026-11-10, {wait} }}\n"));
        Assert.Equal((onOrder, toBuy), (line.OnOrder, line.ToBuy));
    }

    [Fact]
    public void A_wait_for_an_open_order_stands_for_the_only_part_a_board_needs()
    {
        var line = Assert.Single(
            List(
                "orders:\n  - { order: PO-1, placed: 2026-11-09, for: six capacitors }",
                Empty("SP-0001", "C1") + "waiting:\n  - { since: 2026-11-10, for: spares, order: PO-1 }\n"
            )
        );
        Assert.Equal((1, 0), (line.OnOrder, line.ToBuy));
    }

    // Two places ask for 100 µF 25 V. A line counts with what has not come of it, at most with what is needed.
    [Theory]
    [InlineData("quantity: 1", "", 1, "1 of PO-1 line 1")]
    [InlineData("quantity: 2", "", 2, "2 of PO-1 line 1")]
    [InlineData("quantity: 9", "", 2, "2 of PO-1 line 1")]
    [InlineData("quantity: 3", "came: [{ date: 2026-11-10, line: 1, quantity: 2 }]", 1, "1 of PO-1 line 1")]
    [InlineData("quantity: 3", "came: [{ date: 2026-11-10, line: 1, quantity: 3 }]", 0, "")]
    [InlineData("quantity: 9, lost: 2026-11-12", "", 0, "")]
    [InlineData("quantity: 9, cancelled: 2026-11-12", "", 0, "")]
    [InlineData("quantity: 9", "lost: 2026-11-12", 0, "")]
    [InlineData("quantity: 9", "received: 2026-11-12", 0, "")]
    public void What_may_still_come_of_a_line_is_not_bought_again(string line, string order, int onOrder, string told)
    {
        var bought = Assert.Single(List(Ordered($"{line}, {Filter}", order), Empty("SP-0001", "C1", "C2")));
        Assert.Equal((onOrder, 2 - onOrder, told), (bought.OnOrder, bought.ToBuy, Told(bought)));
    }

    [Theory]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 16 V", "the voltage is lower")]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF", "the voltage is not known")]
    [InlineData("what: capacitor 100 µF 25 V for C1", "words are not read")]
    public void A_line_that_may_not_fit_is_bought_all_the_same(string line, string why)
    {
        var bought = Assert.Single(List(Ordered($"quantity: 5, {line}", string.Empty), Empty("SP-0001", "C1")));
        Assert.True(bought is { OnOrder: 0, ToBuy: 1 }, why);
    }

    // Somebody has said that the line is for that board: what the line does not say is no doubt, what speaks against it is.
    [Theory]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF", 1)]
    [InlineData("kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 16 V", 0)]
    [InlineData("what: capacitor 100 µF", 0)]
    public void A_board_that_waits_for_a_line_is_served_by_what_nothing_speaks_against(string line, int onOrder)
    {
        var wait = "waiting:\n  - { since: 2026-11-10, for: spares, order: PO-1, line: 1 }\n";
        Assert.Equal(onOrder, Assert.Single(List(Ordered($"quantity: 5, {line}", string.Empty), Empty("SP-0001", "C1") + wait)).OnOrder);
    }

    [Fact]
    public void Of_two_boards_the_one_that_waits_for_the_line_gets_the_only_piece()
    {
        var wait = "waiting:\n  - { since: 2026-11-10, for: spares, order: PO-1, line: 1 }\n";
        var lines = List(
            Ordered("quantity: 1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 63 V", string.Empty),
            Board("SP-0001", ["C1"], "{ part: C1, did: removed }", Filter.Replace("25 V", "50 V", StringComparison.Ordinal)),
            Empty("SP-0002", "C1") + wait
        );
        Assert.Equal([("25 V", 0), ("50 V", 1)], lines.Select(line => (line.What[^4..], line.ToBuy)));
    }

    [Fact]
    public void A_lot_that_no_line_of_its_open_order_became_leaves_open_what_is_to_come_and_nothing_counts_twice()
    {
        const string lot =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, received: 2026-11-12, "
            + "quantity: 1, order: PO-1 }\n";
        var ordered = Ordered($"quantity: 1, {Filter}", string.Empty);
        var unsaid = Assert.Single(List(lot + ordered, Empty("SP-0001", "C1", "C2")));
        Assert.Equal((1, 0, 1), (unsaid.InDrawer, unsaid.OnOrder, unsaid.ToBuy));
        var said = Assert.Single(
            List(
                lot + Ordered($"quantity: 2, {Filter}", "came: [{ date: 2026-11-12, line: 1, quantity: 1, lot: L-1 }]"),
                Empty("SP-0001", "C1", "C2")
            )
        );
        Assert.Equal((1, 1, 0), (said.InDrawer, said.OnOrder, said.ToBuy));
    }

    [Fact]
    public void A_lot_that_came_of_a_line_lies_in_the_drawer_while_the_rest_of_the_order_is_on_its_way()
    {
        const string lot =
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 35 V, quantity: 1, order: PO-1 }\n";
        Assert.Equal(0, Assert.Single(List(lot + Ordered($"quantity: 2, what: a belt", string.Empty), Empty("SP-0001", "C1"))).InDrawer);
        var came = Ordered($"quantity: 2, {Filter}", "came: [{ date: 2026-11-12, line: 1, quantity: 1, lot: L-1 }]");
        Assert.Equal(1, Assert.Single(List(lot + came, Empty("SP-0001", "C1"))).InDrawer);
    }

    [Fact]
    public void A_crazed_suppressor_that_still_sits_there_is_to_be_bought()
    {
        const string part = "kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2";
        var board = Board("SP-0001", ["C1"], "{ at: board, did: cleaned }", part) + "hazards:\n  - { hazard: crazed suppressor, at: C1 }\n";
        Assert.Equal(1, Assert.Single(List("lots: []", board)).ToBuy);
    }

    [Fact]
    public void A_decision_to_replace_is_carried_out_by_work_of_the_same_day_and_opened_again_by_a_later_one()
    {
        const string done =
            "{ part: C1, did: replaced, lot: L-1 }\n    decided:\n      - { part: C1, decision: replace, because: the family fails }\n";
        Assert.Empty(List("lots: []", Board("SP-0001", ["C1"], done)));
        Assert.Single(
            List(
                "lots: []",
                Board(
                    "SP-0001",
                    ["C1"],
                    done + "  - date: 2026-05-14\n    decided:\n      - { part: C1, decision: replace, because: this maker fails too }\n"
                )
            )
        );
    }

    private static string Ordered(string line, string order) =>
        $"orders:\n  - order: PO-1\n    placed: 2026-11-09\n    for: capacitors\n    lines:\n      - {{ line: 1, {line} }}\n"
        + (order.Length > 0 ? $"    {order}\n" : string.Empty);

    private static string Told(BuyingLine line) => string.Join("; ", line.Coming.Select(one => $"{one.Count} of {one.Line}"));

    private static string Empty(string board, params string[] places) =>
        Board(board, places, string.Join("\n      - ", places.Select(place => $"{{ part: {place}, did: removed }}")));

    private static string Board(string board, string[] places, string work, string part = Filter) =>
        $"board: {board}\ntitle: Tide-gauge "
        + $"logger\nparts:\n{string.Concat(places.Select(place => $"  - {{ ref: {place}, {part} }}\n"))}bench:\n  - date: "
        + $"2026-03-14\n    work:\n      - {work}\n";

    private static IReadOnlyList<BuyingLine> List(string stock, params string[] boards)
    {
        var collection = new SmallCollection([
            new("yaml", "stock.yaml", 0, stock + "\n"),
            .. boards.Select((board, index) => new CaseBlock("markdown", $"boards/{index}.md", 0, $"---\n{board}---\n")),
        ]);
        Assert.Empty(collection.ReadingFindings.Select(finding => $"{finding.Place}: {finding.Message}"));
        return BuyingList.Compute(
            collection.Workshop,
            [.. collection.Boards.Select(board => BoardSummary.From(board))],
            SmallCollection.Today
        );
    }
}
