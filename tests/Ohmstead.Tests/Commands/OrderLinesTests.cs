using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Orders by lines: what is ordered, what came of each line, and what may still come.</summary>
public sealed class OrderLinesTests
{
    private const string Stock = "stock.yaml";

    [Fact]
    public void An_order_gets_lines_they_come_in_parcels_and_every_step_is_one_line_more()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "order", "PO-14", "placed", "parts for the winter", "--from", "Two Weirs Electronics").Exit);
        Assert.Equal(
            "stock.yaml: added { line: 1, quantity: 10, kind: aluminium electrolytic, capacitance: 220 µF, tolerance: 20 %, "
                + "rated_voltage: 100 V, price: 0.42 EUR }\n",
            Line(copy, "aluminium electrolytic", "220uF", "20%", "100V", "--quantity", "10", "--price", "0.42 EUR").Out.Split("  next:")[0]
        );
        Assert.Equal(0, Line(copy, "--what", "pen motor belt", "--quantity", "2").Exit);
        Assert.Equal(0, Enter(copy, "order", "PO-14", "came", "2", "1").Exit);
        Assert.Equal(0, Lot(copy, "L-031", "4", "1").Exit);
        const string order =
            "  - order: PO-14\n    placed: 2026-11-25\n    from: Two Weirs Electronics\n    for: parts for the winter\n    lines:\n"
            + "      - { line: 1, quantity: 10, kind: aluminium electrolytic, capacitance: 220 µF, tolerance: 20 %, rated_voltage: 100 V, "
            + "price: 0.42 EUR }\n      - { line: 2, quantity: 2, what: pen motor belt }\n    came:\n"
            + "      - { date: 2026-11-25, line: 2, quantity: 1 }\n      - { date: 2026-11-25, line: 1, quantity: 4, lot: L-031 }\n";
        Assert.Contains(order, copy.Read(Stock), StringComparison.Ordinal);
        Assert.Contains(
            "  - { lot: L-031, kind: aluminium electrolytic, capacitance: 220 µF, rated_voltage: 100 V, received: 2026-11-25, quantity: "
                + "4, order: PO-14 }\n",
            copy.Read(Stock),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Exit);
    }

    [Fact]
    public void The_list_of_orders_tells_each_line_how_many_came_and_which_lot_it_became()
    {
        using var copy = CollectionCopy.Make();
        var csv = Enter(copy, "orders", copy.Root, "--form", "csv").Out;
        Assert.Contains(
            "PO-07,,came in part,2026-09-01,85,Pierhead Surplus,output and detector valves,,,,,\r\n"
                + "PO-07,1,came in part,2026-09-01,,Pierhead Surplus,valve VK81,2,1,8.50 EUR,L-014,\r\n"
                + "PO-07,2,placed,2026-09-01,,Pierhead Surplus,valve VK40,1,0,6 EUR,,SP-0010 (first run and proof)\r\n",
            csv,
            StringComparison.Ordinal
        );
        Assert.Contains("under order PO-07, line 1,", Run.Of("why", "L-014", "--in", copy.Root).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_buying_list_takes_off_what_may_still_come_and_puts_it_back_when_its_line_is_cancelled()
    {
        using var copy = CollectionCopy.Make();
        const string part = "aluminium electrolytic 10 µF -10/+50 % 350 V 70 °C";
        Assert.Contains($"1,{part},1,0,0,,,SP-0010 C9\r\n", Buy(copy), StringComparison.Ordinal);
        Assert.Equal(0, Enter(copy, "order", "PO-14", "placed", "for the receiver").Exit);
        Assert.Equal(0, Line(copy, "aluminium electrolytic", "10uF", "20%", "450V", "105C", "--quantity", "2").Exit);
        Assert.Contains($"0,{part},1,0,1,,1 of PO-14 line 1,SP-0010 C9\r\n", Buy(copy), StringComparison.Ordinal);
        Assert.Equal(0, Enter(copy, "order", "PO-14", "cancelled", "1").Exit);
        Assert.Contains(", cancelled: 2026-11-25 }\n", copy.Read(Stock), StringComparison.Ordinal);
        Assert.Contains($"1,{part},1,0,0,,,SP-0010 C9\r\n", Buy(copy), StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_whose_line_will_not_come_is_told()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "order", "PO-07", "lost", "2").Exit);
        Assert.Contains(
            "PO-07,2,lost on the way,2026-09-01,,Pierhead Surplus,valve VK40,1,0,6 EUR,,SP-0010 (first run and proof); order again: what "
                + "they wait for will not come\r\n",
            Enter(copy, "orders", copy.Root, "--form", "csv").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_came_today_already_is_asked_about()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "order", "PO-08", "line", "--what", "pen motor belt", "--quantity", "4").Exit);
        Assert.Equal(0, Enter(copy, "order", "PO-08", "came", "1", "2").Exit);
        var again = Enter(copy, "order", "PO-08", "came", "1", "2");
        Assert.Equal((2, "2 of line 1 of order PO-08 came today already; --sure says it again\n"), (again.Exit, again.Error));
        Assert.Equal(0, Enter(copy, "order", "PO-08", "came", "1", "2", "--sure").Exit);
    }

    [Fact]
    public void Received_says_of_every_line_that_the_rest_of_it_came()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "order", "PO-07", "received").Exit);
        Assert.Contains(
            "      - { date: 2026-09-18, line: 1, quantity: 1, lot: L-014 }\n      - { date: 2026-11-25, line: 1, quantity: 1 }\n"
                + "      - { date: 2026-11-25, line: 2, quantity: 1 }\n    note: the rest is promised\n",
            copy.Read(Stock),
            StringComparison.Ordinal
        );
        Assert.Contains("PO-07,,received,", Enter(copy, "orders", copy.Root, "--form", "csv").Out, StringComparison.Ordinal);
        Assert.Equal("'PO-07' is received already; still open: PO-08, PO-09\n", Enter(copy, "order", "PO-07", "lost").Error);
    }

    [Fact]
    public void A_board_that_waits_for_a_line_is_told_when_it_has_come()
    {
        using var copy = CollectionCopy.Make();
        Assert.Contains("see line 2 of order PO-07", Why(copy), StringComparison.Ordinal);
        Assert.Equal(0, Enter(copy, "order", "PO-07", "came", "2").Exit);
        Assert.Contains("line 2 of order PO-07 has come: end the wait with a date", Why(copy), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("order PO-07 has no line '3'; its lines: 1, 2\n", "PO-07", "came", "3")]
    [InlineData("of line 1 of order PO-07 only 1 are to come, not 2\n", "PO-07", "came", "1", "2")]
    [InlineData("'0' is no count; write how many came, such as 4\n", "PO-07", "came", "1", "0")]
    [InlineData("say the line and how many came: order PO-07 came 1 4; open: 1 (1), 2 (1)\n", "PO-07", "came")]
    [InlineData("order PO-08 has no lines: say received, or give it lines with 'order PO-08 line'\n", "PO-08", "came", "1")]
    [InlineData("order PO-08 has no lines; '1' says nothing\n", "PO-08", "lost", "1")]
    [InlineData("order PO-07 has no line '9'; its lines: 1, 2\n", "PO-07", "lost", "9")]
    [InlineData("what came of a line is said with came: order PO-07 came 1\n", "PO-07", "received", "1")]
    [InlineData("'today' says nothing there; a remark is said with --note\n", "PO-08", "received", "today")]
    [InlineData("say how many: order PO-08 line … --quantity 10\n", "PO-08", "line", "fuse")]
    [InlineData("--lot is said with 'came', not with 'received'\n", "PO-08", "received", "--lot", "L-001")]
    [InlineData("'PO-10' is cancelled already; still open: PO-07, PO-08, PO-09\n", "PO-10", "line", "fuse", "--quantity", "1")]
    [InlineData(
        "'fusee' is no kind of part, 'fuse' is the nearest; what is no kind of part is said with --what\n",
        "PO-08",
        "line",
        "fusee",
        "--quantity",
        "1"
    )]
    [InlineData(
        "there is no lot 'L-999'; lot with --order PO-07 --line 2 takes it into the drawer and says that it came\n",
        "PO-07",
        "came",
        "2",
        "--lot",
        "L-999"
    )]
    public void What_cannot_be_so_ends_with_2_says_why_and_writes_nothing(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Stock);
        var run = Enter(copy, ["order", .. words]);
        Assert.Equal((2, message, before), (run.Exit, run.Error, copy.Read(Stock)));
    }

    [Theory]
    [InlineData("order PO-07 goes by lines: say which this is with --line; open: 1 (1), 2 (1)\n", "--order", "PO-07", "--quantity", "1")]
    [InlineData("say the order of the line with --order\n", "--line", "1", "--quantity", "1")]
    [InlineData("of line 1 of order PO-07 1 of 2 came; 1 are to come, not 2\n", "--order", "PO-07", "--line", "1", "--quantity", "2")]
    [InlineData("say how many came with --quantity\n", "--order", "PO-07", "--line", "1")]
    [InlineData("order PO-08 has no lines; leave --line out\n", "--order", "PO-08", "--line", "1", "--quantity", "1")]
    public void A_lot_that_is_no_line_of_its_order_is_refused(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Stock);
        var run = Enter(copy, ["lot", "L-031", "valve", "type=VK81", .. words]);
        Assert.Equal((2, message, before), (run.Exit, run.Error, copy.Read(Stock)));
    }

    [Fact]
    public void A_trial_writes_neither_end_of_a_lot_that_came()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Stock);
        var run = Enter(copy, "lot", "L-031", "valve", "type=VK40", "--order", "PO-07", "--line", "2", "--quantity", "1", "--trial");
        Assert.Equal(
            "stock.yaml: would add { lot: L-031, kind: valve, type: VK40, received: 2026-11-25, quantity: 1, order: PO-07 }, and under the "
                + "order came: { date: 2026-11-25, line: 2, quantity: 1, lot: L-031 }\n",
            run.Out
        );
        Assert.Equal((0, before), (run.Exit, copy.Read(Stock)));
    }

    [Fact]
    public void An_order_behind_one_that_cannot_be_read_is_the_one_that_is_written_to()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(Stock, "orders:\n  - { order: PO-1, for: a belt }\n  - { order: PO-2, placed: 2026-11-09, for: two belts } # ours\n");
        _ = Enter(copy, "order", "PO-2", "lost");
        Assert.DoesNotContain("PO-1, for: a belt, lost", copy.Read(Stock), StringComparison.Ordinal);
    }

    private static Run Line(CollectionCopy copy, params string[] words) => Enter(copy, ["order", "PO-14", "line", .. words]);

    private static Run Lot(CollectionCopy copy, string lot, string count, string line) =>
        Enter(copy, "lot", lot, "aluminium electrolytic", "220uF", "100V", "--quantity", count, "--order", "PO-14", "--line", line);

    private static string Buy(CollectionCopy copy) => Enter(copy, "buy", copy.Root, "--form", "csv").Out;

    private static string Why(CollectionCopy copy) => Run.Of("why", "SP-0010", "--in", copy.Root, "--as-of", "2026-11-25").Out;

    private static Run Enter(CollectionCopy copy, params string[] words) =>
        Run.Of([.. words, .. words[0] is "buy" or "orders" ? Array.Empty<string>() : ["--in", copy.Root], "--as-of", "2026-11-25"]);
}
