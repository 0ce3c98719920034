using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A keeper's old tables taken over into records.</summary>
public sealed class TakeInCommandTests
{
    private const string Boards = "No;What;Came;From\nQX-0101;Lamp dimmer;03.04.2019;loft\nQX-0102;Door bell;17.11.2020;boat shed\n";

    private const string Parts = """
        Board;Ref;Value;Kind;DNP
        QX-0101;C1, C2;470uF/25V;aluminium electrolytic;
        QX-0101;C3-C5;104;ceramic class 2;
        QX-0101;C6;104;ceramic class 2;x
        QX-0102;R1;4,7k 5%;carbon film resistor;

        """;

    private const string Readings = "Board;Day;By;Ref;Circuit;Freq (Hz);Cap (uF);ESR (ohm)\nQX-0101;12.05.2019;RK;C1;out;120;391,0;0,31\n";

    [Fact]
    public void A_table_of_boards_one_of_parts_and_one_of_readings_become_records()
    {
        using var copy = CollectionCopy.Empty();
        var run = All(copy, "--write");
        Assert.Equal((0, "parts.csv: 1 rows of places that are not fitted are left out\n"), (run.Exit, Short(copy, run.Error)));
        Assert.Equal(
            """
            ---
            board: QX-0101
            title: Lamp dimmer
            arrived: { date: 2019-04-03, from: loft }
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }
              - { ref: C2, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }
              - { ref: C3, kind: ceramic class 2, capacitance: 100 nF }
              - { ref: C4, kind: ceramic class 2, capacitance: 100 nF }
              - { ref: C5, kind: ceramic class 2, capacitance: 100 nF }
            bench:
              - date: 2019-05-12
                by: RK
                readings:
                  - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 391.0 µF, esr: 0.31 Ω }
            format: 1
            ---

            ## Story

            """,
            copy.Read("boards/QX-0101.md")
        );
        Assert.Contains(
            "{ ref: R1, kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: ±5 % }",
            copy.Read("boards/QX-0102.md"),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Run.Of("check", copy.Root, "--thorough", "--as-of", "2026-11-25").Exit);
        Assert.EndsWith(
            "boards/QX-0101.md: written: 5 parts, 1 entry of the bench\nboards/QX-0102.md: written: 1 part\n"
                + "2 records begin, 0 grow; 0 entries stand there already\ntables.yaml: keeps what the columns hold, for the next time\n",
            run.Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Without_the_word_to_write_everything_is_shown_and_nothing_is_written()
    {
        using var copy = CollectionCopy.Empty();
        var run = All(copy);
        Assert.Equal(0, run.Exit);
        Assert.Contains(
            "part = Ref, circuit = Circuit, frequency = Freq (Hz), esr = ESR (ohm); not used: Cap (uF)",
            All(copy, "--columns", "readings.capacitance=").Out,
            StringComparison.Ordinal
        );
        Assert.EndsWith("nothing is written yet; --write writes it\n", run.Out, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.At("boards")));
        Assert.False(File.Exists(copy.At("tables.yaml")));
    }

    [Fact]
    public void The_same_tables_given_again_add_nothing_and_need_no_option_a_second_time()
    {
        using var copy = CollectionCopy.Empty();
        All(copy, "--write");
        var before = copy.Read("boards/QX-0101.md");
        var again = TakeIn(
            copy,
            "--boards",
            copy.At("boards.csv"),
            "--parts",
            copy.At("parts.csv"),
            "--readings",
            copy.At("readings.csv"),
            "--write"
        );
        Assert.Equal(0, again.Exit);
        Assert.Contains("0 records begin, 0 grow; 9 entries stand there already\n", again.Out, StringComparison.Ordinal);
        Assert.Equal(before, copy.Read("boards/QX-0101.md"));
    }

    [Fact]
    public void An_old_reading_goes_to_its_day_between_the_visits_of_a_board_and_no_other_byte_changes()
    {
        using var copy = CollectionCopy.Make();
        var before = copy.Read("boards/SP-0019.md");
        copy.Write(
            "old.csv",
            "Board,Day,By,Ref,State,Circuit,Frequency,Capacitance\nSP-0019,2026-10-14,TS,C1,,out,120 Hz,192.4 uF\n"
                + "SP-0019,2026-10-17,TS,C3,as found,out,120 Hz,44.9 uF\n"
        );
        var run = TakeIn(copy, "--readings", copy.At("old.csv"), "--write");
        Assert.Equal(0, run.Exit);
        Assert.Equal(
            before
                .Replace(
                    "bench:\n",
                    "bench:\n  - date: 2026-10-14\n    by: TS\n    readings:\n      - { part: C1, circuit: out, frequency: 120 "
                        + "Hz, capacitance: 192.4 µF }\n",
                    StringComparison.Ordinal
                )
                .Replace(
                    "capacitance: 1.003 µF }\n",
                    "capacitance: 1.003 µF }\n      - { part: C3, state: as found, circuit: out, frequency: 120 Hz, "
                        + "capacitance: 44.9 µF }\n",
                    StringComparison.Ordinal
                ),
            copy.Read("boards/SP-0019.md")
        );
        Assert.Equal(
            "SP-0019, 2026-10-17: 1 readings name no instrument, and their visit names bridge-1; a column 'instrument' says another\n",
            run.Error
        );
    }

    [Theory]
    [InlineData(
        "04.03.2019",
        "'04.03.2019' can be 2019-03-04 or 2019-04-03",
        "--days day-first or --days month-first says how this table writes its days"
    )]
    [InlineData(
        "31.12.2019",
        "'31.12.2019' is not written as records write a day, and how this table writes days is not said",
        "--days day-first says how this table writes its days"
    )]
    [InlineData("4.3.19", "'4.3.19' has no year of four digits", "write the year whole, as in 2026-03-14")]
    [InlineData("30.02.2019", "'30.02.2019' is no day of the calendar", "write the day as 2026-03-14")]
    public void A_day_that_is_written_otherwise_is_refused_with_the_option_to_give(string day, string found, string next)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", $"Board,Day,Ref,Capacitance\nSP-0019,{day},C1,192 uF\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"), "--write");
        Assert.Equal(1, run.Exit);
        Assert.StartsWith(
            $"{copy.At("old.csv")}, row 2, column 2 'Day': {found}\n  = {next}\n1 refused; nothing was written\n",
            run.Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(
        "192,4 uF",
        null,
        "a comma in '192,4', and the decimal mark of this table is not said",
        "--decimals comma says that a comma is the decimal mark"
    )]
    [InlineData("1.924 uF", null, "'1.924' can be 1.924 or 1924", "--decimals point says that it is 1.924")]
    [InlineData("1.924 uF", "comma", "'1.924' has a point, and the decimal mark of this table is the comma", "write 1,924 or 1924")]
    [InlineData(
        "1.924,5 uF",
        "comma",
        "'1.924,5' has marks between its digits that are no decimal mark",
        "write it without marks between thousands"
    )]
    [InlineData(
        "192,4",
        "comma",
        "the unit is missing",
        "write the unit, as in 391 µF, or name it in the heading, as in 'capacitance (µF)'"
    )]
    public void A_figure_that_can_be_two_is_refused_with_the_option_to_give(string figure, string? mark, string found, string next)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", $"Board;Day;Ref;Capacitance\nSP-0019;2026-10-14;C1;{figure}\n");
        string[] words = ["--readings", copy.At("old.csv"), .. mark is null ? Array.Empty<string>() : ["--decimals", mark]];
        var run = TakeIn(copy, words);
        Assert.Equal(1, run.Exit);
        Assert.Contains(", row 2, column 4 'Capacitance': ", run.Error, StringComparison.Ordinal);
        Assert.Contains(found.Contains("unit", StringComparison.Ordinal) ? "unit" : found, run.Error, StringComparison.Ordinal);
        Assert.Contains($"\n  = {next}\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void While_one_row_is_refused_nothing_is_written_and_the_row_can_be_mended_in_a_table_of_its_own()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            "old.csv",
            "Board,Day,By,Ref,Circuit,Freq (Hz),Cap (uF)\nSP-0019,2026-10-14,TS,C1,out,120,192.4\nSP-0019,2026-10-14,TS,C33,out,120,44.9\n"
        );
        var before = copy.Read("boards/SP-0019.md");
        string[] table = ["--readings", copy.At("old.csv"), "--columns", "capacitance=Cap (uF)", "--write"];
        var run = TakeIn(copy, table);
        Assert.Equal(1, run.Exit);
        Assert.Equal(
            "old.csv, row 3, column 4 'Ref': SP-0019 has no part and no point 'C33', 'C3' is the nearest\n"
                + "  = write C3, or give the part in a table of --parts; a point: ohmstead add point SP-0019\n"
                + "1 refused; nothing was written\n"
                + "old.refused.csv: the refused rows of old.csv; mend them there and give it as --mended beside the table\n",
            Short(copy, run.Error)
        );
        Assert.Equal(before, copy.Read("boards/SP-0019.md"));
        var refused = copy.Read("old.refused.csv");
        Assert.StartsWith(
            "row,of,Board,Day,By,Ref,Circuit,Freq (Hz),Cap (uF),refused,what to do\r\n3,old.csv,SP-0019,2026-10-14,TS,C33,out,120,44.9,",
            refused,
            StringComparison.Ordinal
        );

        copy.Write("mended.csv", refused.Replace("TS,C33,", "TS,C3,", StringComparison.Ordinal));
        Assert.Equal(0, TakeIn(copy, [.. table, "--mended", copy.At("mended.csv")]).Exit);
        Assert.Contains(
            "      - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 192.4 µF }\n      - { part: C3, circuit: out, "
                + "frequency: 120 Hz, capacitance: 44.9 µF }\n",
            copy.Read("boards/SP-0019.md"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_refused_table_that_a_person_may_have_mended_is_never_written_over()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", "Board,Day,Ref,Capacitance\nSP-0019,2026-10-14,C33,44.9 uF\n");
        copy.Write("old.refused.csv", "row,of,mine\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"), "--write");
        Assert.Contains("old.refused-2.csv: the refused rows", run.Error, StringComparison.Ordinal);
        Assert.Equal("row,of,mine\n", copy.Read("old.refused.csv"));
    }

    [Fact]
    public void A_column_that_nothing_is_taken_of_is_named_loudly_with_how_many_cells_it_has()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", "Board,Day,Ref,Capacitance,Shelf\nSP-0019,2026-10-14,C1,192.4 uF,B3\nSP-0019,2026-10-15,C1,192.5 uF,\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"));
        Assert.Equal($"NOT USED: {copy.At("old.csv")}, column 5 'Shelf': its 1 filled cells are not taken in\n", run.Error);
    }

    [Fact]
    public void A_column_that_is_asked_for_and_not_found_stops()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", "Board,Day,Ref,Capacitance\nSP-0019,2026-10-14,C1,192.4 uF\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"), "--columns", "esr=ESR");
        Assert.Equal(2, run.Exit);
        Assert.Equal(
            $"{copy.At("old.csv")}: no column is headed 'ESR'; there are 'Board', 'Day', 'Ref', 'Capacitance'\n"
                + "  = --columns \"readings.esr=#1\" names a column by its number\n",
            run.Error
        );
    }

    [Theory]
    [InlineData("R1=carbon film resistor", "--kind says that R1 is 'carbon film resistor', and no row has R1")]
    [InlineData("L=ferrite bead", "--kind says that L is 'ferrite bead', and no row has a part with the letter L")]
    [InlineData("C1=tantalum", "--kind says that C1 is 'tantalum', and 2 boards have a C1")]
    public void A_kind_for_a_reference_that_is_not_there_or_on_many_boards_is_refused(string kind, string told)
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("boards.csv", "Board,Title\nQX-0101,Dimmer\nQX-0102,Bell\n");
        copy.Write("parts.csv", "Board,Ref,Value\nQX-0101,C1,100n\nQX-0102,C1-C3,100n\n");
        var known = Ohmstead.Records.Model.PartKinds.All.Contains(kind.Split('=')[1], StringComparer.Ordinal) ? kind : "L=inductor";
        var run = TakeIn(
            copy,
            "--boards",
            copy.At("boards.csv"),
            "--parts",
            copy.At("parts.csv"),
            "--kind",
            "C=polyester film",
            "--kind",
            known
        );
        Assert.Equal(1, run.Exit);
        Assert.Contains(
            known == kind ? told : told.Replace("ferrite bead", "inductor", StringComparison.Ordinal),
            run.Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("Readings are of one place", "C1, C3", "", "'C1, C3' are 2 places, and a reading is of one")]
    [InlineData(
        "A reading on the day of work says when",
        "C2",
        "",
        "there is work on C2 of the same day, and nothing says whether this was read before or after it"
    )]
    public void What_a_table_cannot_say_is_refused(string why, string place, string state, string told)
    {
        Assert.NotEmpty(why);
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", $"Board;Day;By;Ref;State;Capacitance\nSP-0019;2026-10-17;TS;{place};{state};0.6 uF\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"));
        Assert.Equal(1, run.Exit);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    // A visit of its own would stand behind the work that the other person did: what was as found there would be read of the new part.
    [Fact]
    public void What_somebody_read_as_found_does_not_go_behind_the_work_that_another_did_that_day()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", "Board;Day;By;Ref;State;Capacitance\nSP-0007;2026-02-28;TS;C3;as found;32 uF\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"));
        Assert.Equal(1, run.Exit);
        Assert.Contains(
            "another visit of that day, on line 12, has something about C3, and nothing says which came first",
            run.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Work_and_a_proof_of_one_day_need_the_word_of_the_keeper_which_came_last()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("work.csv", "Board,Day,Part,Done\nSP-0019,2026-10-30,J1,cleaned\n");
        copy.Write("proof.csv", "Board,Day,Point,Voltage,Ripple\nSP-0019,2026-10-30,+9V,9.20 V,30 mV\n");
        string[] tables = ["--work", copy.At("work.csv"), "--readings", copy.At("proof.csv"), "--write"];
        var run = TakeIn(copy, tables);
        Assert.Equal(1, run.Exit);
        Assert.Contains(
            "proof.csv, row 2: SP-0019, 2026-10-30: there is work of the same day, and nothing says which came first\n"
                + "  = --proofs-last says that on a day with work and proofs the proofs came last\n",
            Short(copy, run.Error),
            StringComparison.Ordinal
        );
        Assert.Equal(0, TakeIn(copy, [.. tables, "--proofs-last"]).Exit);
        Assert.Contains(
            "  - date: 2026-10-30\n    work:\n      - { part: J1, did: cleaned }\n    proof:\n      - { point: +9V, voltage: "
                + "9.20 V, ripple: 30 mV }\n",
            copy.Read("boards/SP-0019.md"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Work_on_a_range_becomes_an_entry_for_each_place_and_what_check_would_refuse_is_told_of_its_row()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("work.csv", "Board,Day,Part,Done,New part\nSP-0019,2026-10-30,\"C1, C3\",replaced,aluminium electrolytic 470uF 25V\n");
        string[] table = ["--work", copy.At("work.csv"), "--write"];
        var run = TakeIn(copy, table);
        Assert.Equal(1, run.Exit);
        Assert.Contains("work.csv, row 2: boards/SP-0019.md:", Short(copy, run.Error), StringComparison.Ordinal);
        Assert.Contains(
            "C1 was fitted with a polarised part and no polarity was established [polarity-not-established]",
            run.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(0, TakeIn(copy, [.. table, "--sure"]).Exit);
        Assert.Contains(
            "      - { part: C3, did: replaced, new_part: { kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V } }",
            copy.Read("boards/SP-0019.md"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Lots_join_the_drawer_and_one_that_says_otherwise_is_refused()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("lots.csv", "Lot,Kind,Value,Qty,Received,Price\nL-901,aluminium electrolytic,470uF 35V,10,2019-04,0.42 EUR\n");
        Assert.Equal(0, TakeIn(copy, "--lots", copy.At("lots.csv"), "--write").Exit);
        Assert.Contains(
            "  - { lot: L-901, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 35 V, received: 2019-04, "
                + "quantity: 10, price: 0.42 EUR }\n",
            copy.Read("stock.yaml").Replace(",\n      ", ", ", StringComparison.Ordinal),
            StringComparison.Ordinal
        );
        Assert.Contains("1 entries stand there already", TakeIn(copy, "--lots", copy.At("lots.csv")).Out, StringComparison.Ordinal);
        copy.Write("lots.csv", "Lot,Kind,Value,Qty,Received,Price\nL-901,aluminium electrolytic,47uF 35V,10,2019-04,0.42 EUR\n");
        var run = TakeIn(copy, "--lots", copy.At("lots.csv"));
        Assert.Equal(
            (1, true),
            (run.Exit, run.Error.Contains("there is a lot 'L-901' already, and it says otherwise", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void A_board_that_is_there_is_not_written_over()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards.csv", "Board,Title,Made\nSP-0019,\"Wind pulse shaper, built at the station\",1975\n");
        var run = TakeIn(copy, "--boards", copy.At("boards.csv"), "--write");
        Assert.Equal(1, run.Exit);
        Assert.StartsWith(
            "boards.csv, row 2, column 3 'Made': SP-0019 is there, and boards/SP-0019.md says made '1974'\n"
                + "  = a record that is there is not written over: mend it by hand, or empty the cell\n",
            Short(copy, run.Error),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void When_one_record_cannot_be_written_none_is()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("boards.csv", Boards);
        // Nothing that a collection would list, and in the way of the second board.
        Directory.CreateDirectory(copy.At("boards/QX-0102.md"));
        var run = TakeIn(copy, "--boards", copy.At("boards.csv"), "--days", "day-first", "--write");
        Assert.Equal(3, run.Exit);
        Assert.Contains("nothing was written, the collection is as it was", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("boards/QX-0101.md")));
        Assert.Empty(Directory.GetFiles(copy.At("boards"), ".*"));
    }

    [Theory]
    [InlineData("QX-0101;2019-05-12;C1;391 uF\nQX-0101;2019-05-13;C1;391 uF\n", "board=#1,date=#2,part=#3,capacitance=#4")]
    [InlineData("QX-0101;2019-05-12;C1;391 uF\nQX-0101;2019-05-13;C1;391 uF\n", "readings.note=")]
    public void A_table_without_headings_does_not_lose_its_first_row(string table, string columns)
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("old.csv", table);
        var run = TakeIn(copy, "--readings", copy.At("old.csv"), "--columns", columns);
        Assert.Equal(2, run.Exit);
        Assert.Equal(
            "old.csv: line 1 is taken for the headings, and 'QX-0101' in it looks like a row of the table\n"
                + "  = put a row of headings above the first row, one for each of its 4 columns, such as board, date, part, by\n",
            Short(copy, run.Error)
        );
    }

    [Fact]
    public void Titles_and_a_day_above_the_headings_are_passed_over()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            "old.csv",
            "Readings of the pulse shaper;;;\nas of;2026-10-20;;\n\nBoard;Day;Ref;Capacitance\nSP-0019;2026-10-14;C1;192.4 uF\n"
        );
        Assert.Contains(
            "boards/SP-0019.md: would add 1 entry of the bench\n",
            TakeIn(copy, "--readings", copy.At("old.csv")).Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Rows_that_only_wait_for_a_refused_one_are_counted_and_not_refused_as_well()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("boards.csv", "Board,Title\nQX-0101,\nQX-0102,Bell\n");
        copy.Write("parts.csv", "Board,Ref,Value\nQX-0101,C1,100n\nQX-0101,C2,100n\nQX-0102,C2,100n lin\n");
        copy.Write("readings.csv", "Board,Day,Ref,Capacitance\nQX-0102,2019-05-12,C2,98 nF\n");
        var run = TakeIn(
            copy,
            "--boards",
            copy.At("boards.csv"),
            "--parts",
            copy.At("parts.csv"),
            "--readings",
            copy.At("readings.csv"),
            "--kind",
            "C=polyester film"
        );
        Assert.Equal(
            "parts.csv: 2 rows wait for the row of board QX-0101, which is refused\n"
                + "readings.csv: 1 rows wait for the row of QX-0102 C2, which is refused\n"
                + "boards.csv, row 2, column 2 'Title': nothing says what the board is\n"
                + "  = write a title, or a design of the collection\n"
                + "parts.csv, row 4, column 3 'Value': 'lin' in '100n lin' is not understood\n"
                + "  = write such as 100n 63V, 10k 1%, 2200uF/25V, and anything else into a column of its own\n"
                + "2 refused; nothing was written\n",
            Short(copy, run.Error)
        );
    }

    [Theory]
    [InlineData("-", "'-' is no esr", "empty the cell where nothing was read, or write such as 1.4 Ω")]
    [InlineData("OL", "'OL' is no reading; the word for it is 'over range'", "write over range")]
    [InlineData("=1+1", "'=1+1' is a formula of a spreadsheet", "write its result")]
    [InlineData("0.62 V", "'0.62 V': voltage given, resistance expected", "write such as 1.4 Ω")]
    public void What_is_no_reading_is_told_with_what_to_write(string cell, string found, string next)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("old.csv", $"Board,Day,Ref,ESR\nSP-0019,2026-10-14,C1,{cell}\n");
        var run = TakeIn(copy, "--readings", copy.At("old.csv"));
        Assert.Equal($"old.csv, row 2, column 4 'ESR': {found}\n  = {next}\n1 refused; nothing was written\n", Short(copy, run.Error));
    }

    [Fact]
    public void What_a_person_wrote_into_the_kept_file_stays()
    {
        using var copy = CollectionCopy.Empty();
        All(copy, "--write");
        var own = copy.Read("tables.yaml") + "# readings of before 2015 are in inches\n";
        copy.Write("tables.yaml", own);
        var same = TakeIn(copy, "--boards", copy.At("boards.csv"), "--write");
        Assert.Equal((0, string.Empty), (same.Exit, same.Error));
        var other = TakeIn(copy, "--boards", copy.At("boards.csv"), "--decimals", "point", "--write");
        Assert.Contains("tables.yaml has words of its own and stays as it is", other.Error, StringComparison.Ordinal);
        Assert.Equal(own, copy.Read("tables.yaml"));
        copy.Write("tables.yaml", own.Replace("days: day-first", "days: maybe", StringComparison.Ordinal));
        Assert.Equal(
            "tables.yaml:2: 'days' says nothing that is known here\n  = mend it, or say what is meant with options and --map "
                + "another-file.yaml\n",
            TakeIn(copy, "--boards", copy.At("boards.csv")).Error
        );
    }

    private static Run All(CollectionCopy copy, params string[] more)
    {
        copy.Write("boards.csv", Boards);
        copy.Write("parts.csv", Parts);
        copy.Write("readings.csv", Readings);
        return TakeIn(
            copy,
            [
                "--boards",
                copy.At("boards.csv"),
                "--parts",
                copy.At("parts.csv"),
                "--readings",
                copy.At("readings.csv"),
                "--days",
                "day-first",
                "--decimals",
                "comma",
                .. more,
            ]
        );
    }

    private static string Short(CollectionCopy copy, string text) => text.Replace(copy.Root + "/", string.Empty, StringComparison.Ordinal);

    private static Run TakeIn(CollectionCopy copy, params string[] words) =>
        Run.Of(["take-in", "--in", copy.Root, "--as-of", "2026-11-25", .. words]);
}
