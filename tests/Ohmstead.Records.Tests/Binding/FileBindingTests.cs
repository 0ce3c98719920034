using Ohmstead.Records.Findings;
using Ohmstead.Records.Tests.Shapes;

namespace Ohmstead.Records.Tests.Binding;

public sealed class FileBindingTests
{
    [Fact]
    public void A_lone_board_of_a_dozen_lines_is_a_whole_record()
    {
        var reading = Reads.Board(
            """
            ---
            board: SP-0007
            title: Barograph servo amplifier
            parts:
              - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 % }
            bench:
              - date: 2026-03-14
                readings:
                  - { part: C12, frequency: 120 Hz, capacitance: 391 µF, esr: 1.4 Ω }
            ---

            Pen drifts.
            """
        );

        Assert.Empty(reading.Findings);
        var board = Assert.IsType<Model.BoardFile>(reading.File);
        Assert.Equal("SP-0007", board.Id.Value);
        Assert.Equal(0.000391m, board.Bench[0].Readings[0].Values[0].Exact!.Value.Value);
        Assert.Equal(11, board.BodyLine);
    }

    [Fact]
    public void Text_that_looks_like_a_number_survives_as_text()
    {
        var board = Assert.IsType<Model.BoardFile>(
            Reads
                .Board(
                    "---\nboard: 0007\ntitle: 1_000\nserial: 0412\nrevision: no\nparts:\n  - { ref: 1E3, kind: fuse, date_code: 7834, "
                        + "type: "
                        + "0x1F, series: 1:30 }\n---\n"
                )
                .File
        );

        Assert.Equal("0007", board.Id.Value);
        Assert.Equal("1_000", board.Title.Value);
        Assert.Equal("0412", board.Serial?.Value);
        Assert.Equal("no", board.Revision?.Value);
        Assert.Equal("1E3", board.Parts[0].Ref.Value);
        Assert.Equal("7834", board.Parts[0].Values.DateCode?.Value);
        Assert.Equal("0x1F", board.Parts[0].Values.Type?.Value);
        Assert.Equal("1:30", board.Parts[0].Values.Series?.Value);
    }

    [Theory]
    [InlineData("serial: “0412”", "write serial: \"0412\", or serial: \"“0412”\" where they belong to it")]
    [InlineData("maker: „Tallis“", "write maker: \"Tallis\", or maker: \"„Tallis“\" where they belong to it")]
    [InlineData("maker: «Tallis»", "write maker: \"Tallis\", or maker: \"«Tallis»\" where they belong to it")]
    [InlineData("revision: ‘C’", "write revision: \"C\", or revision: \"‘C’\" where they belong to it")]
    [InlineData("serial: “0412\"", "write serial: \"0412\", or serial: '“0412\"' where they belong to it")]
    public void Curly_quotes_around_a_whole_text_are_told_and_the_text_stays_as_it_is(string line, string next)
    {
        var reading = Reads.Board($"---\nboard: SP-0007\ntitle: Barograph\n{line}\n---\n");
        var finding = Assert.Single(reading.Findings);
        Assert.Equal(
            (RecordChecks.CurlyQuotes, Severity.Warning, next, 4),
            (finding.Check, finding.Severity, finding.NextStep, finding.Place.Line)
        );
        Assert.NotNull(reading.File);
    }

    [Theory]
    [InlineData("serial: \"0412\"")]
    [InlineData("note: \"“no picture”\"")]
    [InlineData("note: '“no picture”'")]
    [InlineData("note: “EHT” is missing")]
    [InlineData("note: “A” and “B”")]
    [InlineData("note: the pen’s belt")]
    [InlineData("note: “no picture")]
    [InlineData("note: “”")]
    public void Quotes_within_a_text_or_inside_straight_ones_are_nobodys_slip(string line) =>
        Assert.Empty(Reads.Board($"---\nboard: SP-0007\ntitle: Barograph\n{line}\n---\n").Findings);

    [Fact]
    public void A_missing_key_is_named_at_its_mapping_with_a_line_to_add()
    {
        var finding = Only("board: SP-0007");

        Assert.Equal(
            (RecordChecks.KeyMissing, "boards/SP-0007.md:2:1", "add title: Barograph servo amplifier"),
            (finding.Check, finding.Place.ToString(), finding.NextStep)
        );
        Assert.Equal("this board has no 'title'", finding.Message);
    }

    [Fact]
    public void A_missing_key_of_an_item_is_named_at_the_item()
    {
        var finding = Only("board: SP-0007\ntitle: Barograph\nparts:\n  - { kind: fuse }");

        Assert.Equal((RecordChecks.KeyMissing, 5, 5), (finding.Check, finding.Place.Line, finding.Place.Column));
    }

    [Theory]
    [InlineData("board: SP-0007\ntitle: [a]", "value-shape", 3, 8)]
    [InlineData("board: SP-0007\ntitle: x\nduty: 900 h", "value-shape", 4, 7)]
    [InlineData("board: SP-0007\ntitle: x\nparts: { ref: C1 }", "value-shape", 4, 8)]
    [InlineData("board: SP-0007\ntitle: x\nparts: [C1]", "value-shape", 4, 9)]
    [InlineData("board: SP-0007\ntitle: x\nmade: { year: 1978 }", "value-shape", 4, 7)]
    [InlineData("board: SP-0007\ntitle:", "value-missing", 3, 1)]
    [InlineData("board: SP-0007\ntitle: ~", "value-missing", 3, 8)]
    [InlineData("board: SP-0007\ntitle: null", "value-missing", 3, 8)]
    [InlineData("board: SP-0007\ntitle: \"\"", "value-missing", 3, 8)]
    [InlineData("board: SP-0007\ntitle: ' '", "value-missing", 3, 8)]
    [InlineData("board: SP/7\ntitle: x", "name-unusable", 2, 8)]
    [InlineData("board: con\ntitle: x", "name-unusable", 2, 8)]
    [InlineData("board: NUL.txt\ntitle: x", "name-unusable", 2, 8)]
    [InlineData("board: lpt9\ntitle: x", "name-unusable", 2, 8)]
    [InlineData("board: Aux.a.b\ntitle: x", "name-unusable", 2, 8)]
    [InlineData("board: SP-0007\ntitle: x\nformat: 1.5", "number-unreadable", 4, 9)]
    [InlineData("board: SP-0007\ntitle: x\nduty: { hours_per_year: 1e3 }", "number-unreadable", 4, 25)]
    public void A_value_of_the_wrong_form_is_named_where_it_stands(string yaml, string check, int line, int column)
    {
        var finding = Only(yaml);

        Assert.Equal((check, line, column), (finding.Check, finding.Place.Line, finding.Place.Column));
    }

    [Fact]
    public void A_board_with_an_empty_title_is_not_read_and_the_reason_is_said()
    {
        var reading = Reads.Board("---\nboard: SP-0007\ntitle: ''\n---\n");

        Assert.Null(reading.File);
        Assert.Equal(RecordChecks.ValueMissing, Assert.Single(reading.Findings).Check);
    }

    [Theory]
    [InlineData(
        "kind: aluminum electrolytic",
        "'aluminum electrolytic' is no kind of part, 'aluminium electrolytic' is the nearest",
        "write kind: aluminium electrolytic"
    )]
    [InlineData("kind: Fuse", "'Fuse' is no kind of part, 'fuse' is the nearest", "write kind: fuse")]
    [InlineData("kind: zener-diode", "'zener-diode' is no kind of part, 'zener diode' is the nearest", "write kind: zener diode")]
    public void An_unknown_word_names_the_nearest_known_one(string entry, string message, string next)
    {
        var finding = Only($"board: SP-0007\ntitle: x\nparts:\n  - {{ ref: C1, {entry} }}");

        Assert.Equal((RecordChecks.WordUnknown, message, next), (finding.Check, finding.Message, finding.NextStep));
        Assert.Equal((5, 22), (finding.Place.Line, finding.Place.Column));
    }

    [Theory]
    [InlineData("work:\n      - { part: C1, did: cleened }", "'cleened' is no kind of work, 'cleaned' is the nearest")]
    [InlineData(
        "work:\n      - { part: C1, did: replaced, polarity: [schematik] }",
        "'schematik' is no way to establish a polarity, 'schematic' is the nearest"
    )]
    [InlineData("work:\n      - { part: C1, did: modified, irreversible: jes }", "'jes' is neither yes nor no, 'yes' is the nearest")]
    [InlineData("work:\n      - { did: made safe, hazard: main }", "'main' is no kind of hazard, 'mains' is the nearest")]
    [InlineData("readings:\n      - { part: C1, circuit: outt }", "'outt' is neither in nor out of the circuit, 'out' is the nearest")]
    [InlineData("readings:\n      - { part: C1, state: as fond }", "'as fond' is no state of a part, 'as found' is the nearest")]
    [InlineData("readings:\n      - { part: C1, verdict: undecide }", "'undecide' is no verdict, 'undecided' is the nearest")]
    [InlineData(
        "decided:\n      - { part: C1, decision: replase, because: worn }",
        "'replase' is no decision about a part, 'replace' is the nearest"
    )]
    [InlineData("proof:\n      - { point: soak, result: fial }", "'fial' is neither pass nor fail, 'fail' is the nearest")]
    public void What_a_word_is_not_is_told_in_the_words_of_the_bench(string entry, string message) =>
        Assert.Equal(message, Only($"board: SP-0007\ntitle: x\nbench:\n  - date: 2026-03-14\n    {entry}").Message);

    [Fact]
    public void Every_closed_list_says_what_another_word_is_and_never_by_the_name_of_its_key()
    {
        var keys = AllKeys.OfClosedLists;
        Assert.InRange(keys.Count, 20, 100);
        Assert.All(keys, key => Assert.Matches("^(no [a-z ]+|neither [a-z ]+ nor [a-z ]+|nothing that [a-z ]+)$", key.OtherWord));
        Assert.All(keys, key => Assert.DoesNotContain('_', key.OtherWord));
    }

    [Fact]
    public void A_word_that_is_near_nothing_lists_the_known_ones()
    {
        var finding = Only(
            "board: SP-0007\ntitle: x\nbench:\n  - date: 2026-03-14\n    found:\n      - { at: J3, what: dust, severity: enormous }"
        );

        Assert.Equal("'enormous' is no severity of a finding", finding.Message);
        Assert.Equal("known words: note, minor, major, safety", finding.NextStep);
        Assert.Equal((7, 41), (finding.Place.Line, finding.Place.Column));
    }

    [Theory]
    [InlineData("serail: 0412", "'serail' is no key of the board, 'serial' is the nearest", "write serial:")]
    [InlineData("Serial: 0412", "'Serial' is no key of the board, 'serial' is the nearest", "write serial:")]
    [InlineData("part: []", "'part' is no key of the board, 'parts' is the nearest", "write parts:")]
    public void An_unknown_key_names_the_nearest_known_one(string entry, string message, string next)
    {
        var finding = Only($"board: SP-0007\ntitle: x\n{entry}");

        Assert.Equal(
            (RecordChecks.KeyUnknown, message, next, 4, 1),
            (finding.Check, finding.Message, finding.NextStep, finding.Place.Line, finding.Place.Column)
        );
    }

    [Fact]
    public void A_needed_key_that_is_misspelled_gives_one_message_and_no_second_about_its_absence() =>
        Assert.Equal(RecordChecks.KeyUnknown, Only("board: SP-0007\ntitel: Barograph").Check);

    [Fact]
    public void A_format_that_never_was_is_refused_and_the_known_one_named()
    {
        var finding = Only("board: SP-0007\ntitle: x\nformat: 0");

        Assert.Equal(
            (RecordChecks.FormatUnknown, "boards/SP-0007.md:4:9", "write format: 1, or leave the key out"),
            (finding.Check, finding.Place.ToString(), finding.NextStep)
        );
        Assert.Equal("there is no format 0, this program knows format 1", finding.Message);
    }

    [Fact]
    public void A_newer_format_stops_the_reading_at_its_line()
    {
        var reading = Reads.Board("---\nformat: 2\nboard: SP-0007\nanything: new\n---\n");

        Assert.Null(reading.File);
        var finding = Assert.Single(reading.Findings);
        Assert.Equal((RecordChecks.FormatNewer, 2, 9), (finding.Check, finding.Place.Line, finding.Place.Column));
        Assert.Equal("this record has format 2, this program knows format 1", finding.Message);
    }

    [Fact]
    public void Every_fault_of_a_file_is_found_in_one_run()
    {
        var findings = Reads.Findings(
            "board",
            "---\nboard: SP 7\ntitle: x\nmade: last year\nparts:\n  - { ref: C1, kind: fuze }\n  - { ref: C2, kind: mica, "
                + "capacitance: 10 }\n---\n"
        );

        Assert.Equal(
            [
                (RecordChecks.NameUnusable, 2),
                (RecordChecks.DateUnreadable, 4),
                (RecordChecks.WordUnknown, 6),
                (RecordChecks.QuantityUnreadable, 7),
            ],
            findings.Select(finding => (finding.Check, finding.Place.Line))
        );
    }

    [Theory]
    [InlineData("board", "points:\n  - { point: P1, measures: curent, nominal: 5 A, tolerance: 5 %, low: 4 A }")]
    [InlineData("board", "points:\n  - { point: P1, nominal: 5, tolerance: 0.1 V }")]
    [InlineData("board", "parts:\n  - { ref: C1, kind: mica, capacitance: 10, tolerance: F }")]
    [InlineData("board", "parts:\n  - { ref: C1, kind: mika, low: 10 nF }")]
    public void A_value_that_hangs_on_an_unreadable_one_gives_no_second_message(string name, string yaml) =>
        Assert.Single(Reads.Findings(name, $"---\nboard: SP-0007\ntitle: x\n{yaml}\n---\n"));

    [Theory]
    [InlineData("design", "---\ndesign: a\ntitle: x\nnote: [a]\n---\n", 4)]
    [InlineData("instruments", "instruments: []\nnote: [a]\n", 2)]
    [InlineData("stock", "lots: []\nnote: [a]\n", 2)]
    [InlineData("collection", "collection: Saltmarsh Point\nnote: [a]\n", 2)]
    public void A_remark_is_read_in_every_file(string name, string text, int line)
    {
        var finding = Assert.Single(Reads.Findings(name, text));

        Assert.Equal((RecordChecks.ValueShape, line), (finding.Check, finding.Place.Line));
    }

    private static Finding Only(string yaml) => Assert.Single(Reads.Findings("board", $"---\n{yaml}\n---\n"));
}
