using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>The drawer: what is ordered, what comes, what it reads, how much is left and what to buy.</summary>
public sealed class StockCommandTests
{
    private const string Stock = "stock.yaml";

    [Fact]
    public void A_trial_makes_no_file_of_the_stock()
    {
        using var copy = CollectionCopy.Make();
        File.Delete(copy.At("stock.yaml"));
        string[] lot = ["lot", "L-900", "mica", "100pF", "--quantity", "5", "--in", copy.Root, "--as-of", "2026-11-25"];
        Assert.Equal(0, Run.Of([.. lot, "--trial"]).Exit);
        Assert.False(File.Exists(copy.At("stock.yaml")));
        Assert.Equal(0, Run.Of(lot).Exit);
        Assert.Contains("- { lot: L-900, kind: mica", copy.Read("stock.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_is_placed_comes_in_part_and_is_lost_and_every_step_is_one_value_more()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "order", "PO-14", "placed", "220 µF 100 V, ten", "--from", "Two Weirs Electronics").Exit);
        Assert.Contains(
            "  - { order: PO-14, placed: 2026-11-25, from: Two Weirs Electronics, for: \"220 µF 100 V, ten\" }\n",
            copy.Read(Stock),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Enter(copy, "order", "PO-14", "came-in-part").Exit);
        Assert.Equal(
            "a part of 'PO-14' came already on 2026-11-25; the rest is 'received', 'lost' or 'cancelled'\n",
            Enter(copy, "order", "PO-14", "came-in-part").Error
        );
        Assert.Equal(0, Enter(copy, "order", "PO-14", "lost").Exit);
        Assert.Contains("part_received: 2026-11-25, lost: 2026-11-25 }\n", copy.Read(Stock), StringComparison.Ordinal);
        Assert.Equal(
            "'PO-14' is lost on the way already; still open: PO-07, PO-08, PO-09\n",
            Enter(copy, "order", "PO-14", "received").Error
        );
    }

    [Theory]
    [InlineData("there is no order 'PO-17', 'PO-07' is the nearest\n", "PO-17", "received")]
    [InlineData("there is an order 'PO-09' already, placed\n", "PO-09", "placed", "a belt")]
    [InlineData("order PO-07 goes by lines: say which came with came; open: 1 (1), 2 (1)\n", "PO-07", "part-received")]
    [InlineData("WHAT is missing: what was ordered, in words; write order PO-14 placed \"...\"\n", "PO-14", "placed")]
    public void An_order_that_cannot_be_so_ends_with_2_and_says_why(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Stock);
        var run = Enter(copy, ["order", .. words]);
        Assert.Equal((2, message, before), (run.Exit, run.Error, copy.Read(Stock)));
    }

    [Fact]
    public void A_part_lost_on_the_way_opens_the_need_again()
    {
        using var copy = CollectionCopy.Make();
        Assert.Contains(
            "0,suppression capacitor 100 nF ±20 % 250 V 85 °C class X2,1,0,1,,,SP-0008 C1\r\n",
            Enter(copy, "buy", copy.Root, "--form", "csv").Out,
            StringComparison.Ordinal
        );
        Enter(copy, "order", "PO-08", "lost");
        Assert.Contains(
            "1,suppression capacitor 100 nF ±20 % 250 V 85 °C class X2,1,0,0,,,SP-0008 C1\r\n",
            Enter(copy, "buy", copy.Root, "--form", "csv").Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "PO-08,,lost on the way,2026-11-09,16,Lantern Yard Spares,\"suppression capacitors 100 nF X2, six\",,,,,SP-0008 (everything "
                + "with mains on it); order again: what they wait for will not come\r\n",
            Enter(copy, "orders", copy.Root, "--form", "csv").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_comes_goes_into_the_drawer_and_is_measured_against_delivery_limits_alone()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(
            0,
            Enter(
                copy,
                "lot",
                "L-031",
                "aluminium electrolytic",
                "470uF",
                "20%",
                "35V",
                "105C",
                "date_code=2610",
                "--quantity",
                "10",
                "--price",
                "0.42 EUR"
            ).Exit
        );
        Assert.Contains(
            "  - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, temperature: "
                + "105 °C,\n      date_code: 2610, received: 2026-11-25, quantity: 10, price: 0.42 EUR }\n",
            copy.Read(Stock),
            StringComparison.Ordinal
        );
        var reading = Enter(copy, "incoming", "L-031", "474uF", "112mohm", "120Hz", "--by", "TS", "--instrument", "bridge-1");
        Assert.Contains(
            "  capacitance 474 µF against 376 µF … 564 µF (delivery limit, the marking): inside\n",
            reading.Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "L-031,aluminium electrolytic 470 µF 20 % 35 V 105 °C,10,0,0,10,2610,2026-11-25,2029-03-08,0.42 EUR,,\r\n",
            Enter(copy, "drawer", copy.Root, "--form", "csv").Out,
            StringComparison.Ordinal
        );
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit);
    }

    [Fact]
    public void A_slip_of_the_unit_in_an_incoming_reading_is_shown_and_written_only_when_the_person_is_sure()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Stock);
        var slip = Enter(copy, "incoming", "L-002", "474nF", "120Hz");
        Assert.Equal(1, slip.Exit);
        Assert.Contains(
            "capacitance 474 nF is 1/992 of the marked 470 µF [incoming-far-from-marking]\n  = look at the unit prefix and the decimal "
                + "point on the meter and in the record\nnothing was written; --sure writes it all the same\n",
            slip.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(before, copy.Read(Stock));
        Assert.Equal(0, Enter(copy, "incoming", "L-002", "474nF", "120Hz", "--sure").Exit);
    }

    [Theory]
    [InlineData("there is a lot 'L-002' already; the next free name is L-023\n", "lot", "L-002", "fuse")]
    [InlineData("'12,5V': a comma can mean 12.5 or 12500; write 12.5V or 12500V\n", "lot", "L-040", "fuse", "12,5V")]
    [InlineData("there is no lot 'L-099', 'L-019' is the nearest\n", "incoming", "L-099", "1uF")]
    public void What_is_not_understood_ends_with_2_and_says_what_would_be(string message, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var run = Enter(copy, words);
        Assert.Equal((2, message), (run.Exit, run.Error));
    }

    [Fact]
    public void A_collection_without_a_stock_file_gets_one_with_the_first_order()
    {
        using var copy = CollectionCopy.Make();
        File.Delete(Path.Combine(copy.Root, Stock));
        Assert.Equal(0, Enter(copy, "order", "PO-1", "placed", "a belt").Exit);
        Assert.Equal(
            "# The drawer, the orders, and incoming inspection.\nlots: []\norders:\n  - { order: PO-1, placed: 2026-11-25, for: a belt }\n",
            copy.Read(Stock)
        );
    }

    [Theory]
    [InlineData("", "orders:\n  - ENTRY\n")]
    [InlineData("\n\n", "\n\norders:\n  - ENTRY\n")]
    [InlineData("# the drawer", "# the drawer\norders:\n  - ENTRY")]
    [InlineData("# the drawer\r\n", "# the drawer\r\norders:\r\n  - ENTRY\r\n")]
    [InlineData("\uFEFF", "\uFEFForders:\n  - ENTRY\n")]
    [InlineData("---\n", "---\norders:\n  - ENTRY\n")]
    [InlineData("{}\n", "orders:\n  - ENTRY\n")]
    [InlineData("# a\n{ } # b\n", "# a\norders:\n  - ENTRY # b\n")]
    [InlineData("lots:\n", "lots:\norders:\n  - ENTRY\n")]
    public void A_stock_file_that_says_nothing_yet_takes_its_first_entry(string before, string after)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(Stock, before);
        var run = Enter(copy, "order", "PO-1", "placed", "a belt");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        var text = System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(copy.At(Stock)));
        Assert.Equal(after.Replace("ENTRY", "{ order: PO-1, placed: 2026-11-25, for: a belt }", StringComparison.Ordinal), text);
        // Longer than a line of a tidy record.
        Assert.Equal(0, Enter(copy, "order", "PO-2", "placed", "a belt, " + new string('x', 140)).Exit);
    }

    [Theory]
    [InlineData("null\n", "the record is laid out in a way that this entry cannot be put into without touching more than itself")]
    [InlineData("{ lots: [] }\n", "the record is laid out in a way that this entry cannot be put into without touching more than itself")]
    [InlineData("{ # mine\n}\n", "the record stands in braces on line 1")]
    public void A_stock_file_that_an_entry_does_not_go_into_stays_as_it_is_and_is_told(string before, string why)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(Stock, before);
        var run = Enter(copy, "order", "PO-1", "placed", "a belt");
        Assert.Equal((1, before), (run.Exit, copy.Read(Stock)));
        Assert.StartsWith($"stock.yaml: {why}\n  = ", run.Error, StringComparison.Ordinal);
        Assert.Contains("by hand: { order: PO-1, placed: 2026-11-25, for: a belt }\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_cell_of_a_list_is_a_formula_to_a_spreadsheet()
    {
        using var copy = CollectionCopy.Make();
        Enter(copy, "order", "PO-14", "placed", "=HYPERLINK(\"x\")", "--from", "@sum");
        var csv = Enter(copy, "orders", copy.Root, "--form", "csv").Out;
        Assert.Contains("PO-14,,placed,2026-11-25,0,", csv, StringComparison.Ordinal);
        Assert.DoesNotContain(",=", csv, StringComparison.Ordinal);
        Assert.DoesNotContain("\"=", csv, StringComparison.Ordinal);
        Assert.DoesNotContain(",@", csv, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_are_for_programs_too()
    {
        using var copy = CollectionCopy.Make();
        using var drawer = System.Text.Json.JsonDocument.Parse(Enter(copy, "drawer", copy.Root, "--form", "json").Out);
        var first = drawer.RootElement.GetProperty("lots")[0];
        Assert.Equal(
            ("L-001", 6, 2, 4),
            (
                first.GetProperty("lot").GetString(),
                first.GetProperty("came").GetInt32(),
                first.GetProperty("fitted").GetInt32(),
                first.GetProperty("left").GetInt32()
            )
        );
    }

    [Fact]
    public void A_bad_piece_goes_to_the_bin_and_the_lot_lives_on()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "lot", "L-031", "aluminium electrolytic", "470uF", "20%", "35V", "--quantity", "10").Exit);
        Assert.Contains(
            ": outside\n",
            Enter(copy, "incoming", "L-031", "329uF", "120Hz", "piece=1", "--by", "TS").Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            ": inside\n",
            Enter(copy, "incoming", "L-031", "474uF", "120Hz", "piece=2", "--by", "TS").Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "failed its incoming reading of 2026-11-25: scrap the piece, or fit none",
            Enter(copy, "drawer", copy.Root).Out,
            StringComparison.Ordinal
        );
        var scrap = Enter(copy, "scrap", "L-031", "1", "reads 70 % of its mark", "--piece", "1", "--by", "TS");
        Assert.Equal((0, string.Empty), (scrap.Exit, scrap.Error));
        Assert.Equal(
            "stock.yaml: added { lot: L-031, piece: 1, count: 1, because: reads 70 % of its mark }\n  1 of 2 looked at was bad\n",
            scrap.Out
        );
        Assert.Contains(
            "    scrapped:\n      - { lot: L-031, piece: 1, count: 1, because: reads 70 % of its mark }\n",
            copy.Read(Stock),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "L-031,aluminium electrolytic 470 µF 20 % 35 V,10,0,1,9,,2026-11-25,2029-11-25,,1 of 2 looked at was bad,\r\n",
            Enter(copy, "drawer", copy.Root, "--form", "csv").Out,
            StringComparison.Ordinal
        );
        var why = Run.Of("why", "L-031", "--in", copy.Root, "--as-of", "2026-11-25").Out;
        Assert.Contains("10 of them, 0 fitted, 1 scrapped, 9 left", why, StringComparison.Ordinal);
        Assert.Contains("2026-11-25 (scrapped) 1, piece 1: reads 70 % of its mark", why, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Exit);
    }

    [Theory]
    [InlineData("there is no lot 'L-913', 'L-013' is the nearest\n", 2, "L-913", "1", "reads low")]
    [InlineData("say how many pieces went to the bin, 1 or more\n", 2, "L-013", "0", "reads low")]
    [InlineData("--piece names one piece: say 1, once for each\n", 2, "L-013", "2", "reads low", "--piece", "2")]
    public void What_cannot_be_scrapped_so_is_refused(string message, int exit, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Stock);
        var run = Enter(copy, ["scrap", .. words]);
        Assert.Equal((exit, message, before), (run.Exit, run.Error, copy.Read(Stock)));
    }

    [Fact]
    public void More_than_came_cannot_be_scrapped()
    {
        using var copy = CollectionCopy.Make();
        var run = Enter(copy, "scrap", "L-013", "6", "a bad bag");
        Assert.Equal(1, run.Exit);
        Assert.Equal("of lot L-013 5 came, 0 are fitted and 0 were scrapped before: 5 are left; nothing was written\n", run.Error);
        Assert.Equal(0, Enter(copy, "scrap", "L-013", "5", "a bad bag").Exit);
        Assert.Contains(
            "5 were scrapped before: 0 are left",
            Enter(copy, "scrap", "L-013", "1", "one more").Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_boards_took_is_not_in_the_drawer_to_be_scrapped()
    {
        using var copy = CollectionCopy.Make();
        // Two of them sit on SP-0007.
        var before = copy.Read(Stock);
        var run = Enter(copy, "scrap", "L-018", "3", "a bad bag");
        Assert.Equal((1, before), (run.Exit, copy.Read(Stock)));
        Assert.Contains("of lot L-018 4 came, 2 are fitted and 0 were scrapped before: 2 are left", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_piece_goes_to_the_bin_twice()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Enter(copy, "scrap", "L-013", "1", "reads low", "--piece", "2").Exit);
        var again = Enter(copy, "scrap", "L-013", "1", "reads low", "--piece", "2");
        Assert.Equal((1, "piece 2 of lot L-013 went to the bin on 2026-11-25; nothing was written\n"), (again.Exit, again.Error));
    }

    [Fact]
    public void Pieces_and_readings_of_an_earlier_day_go_to_that_day_and_no_other_byte_changes()
    {
        using var copy = CollectionCopy.Make();
        var was = copy.Read(Stock);
        Assert.Equal(0, Enter(copy, "scrap", "L-013", "1", "leads torn off", "--on", "2026-11-20", "--by", "TS").Exit);
        const string visit = """
              - date: 2026-11-20
                by: TS
                scrapped:
                  - { lot: L-013, count: 1, because: leads torn off }

            """;
        var now = copy.Read(Stock);
        Assert.Equal(was, now.Replace(visit, string.Empty, StringComparison.Ordinal));
        Assert.Equal(0, Enter(copy, "scrap", "L-013", "1", "bent", "--on", "2026-11-20", "--by", "TS").Exit);
        Assert.Contains(visit + "      - { lot: L-013, count: 1, because: bent }\n", copy.Read(Stock), StringComparison.Ordinal);
        Assert.DoesNotContain("out-of-order", Run.Of("check", copy.Root, "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-26 has not come yet: today is 2026-11-25\n", "2026-11-26")]
    [InlineData("was not here: it came on", "1990-01-01")]
    public void A_piece_is_not_scrapped_before_it_came_nor_tomorrow(string told, string day)
    {
        using var copy = CollectionCopy.Make();
        var run = Enter(copy, "scrap", "L-013", "1", "bent", "--on", day);
        Assert.Equal(2, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    private static Run Enter(CollectionCopy copy, params string[] words) =>
        words[0] is "buy" or "orders" or "drawer"
            ? Run.Of([.. words, "--as-of", "2026-11-25"])
            : Run.Of([.. words, "--in", copy.Root, "--as-of", "2026-11-25"]);
}
