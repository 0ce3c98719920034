using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

public sealed class RecordLayoutTests
{
    [Fact]
    public void Spaces_and_indentation_become_one_and_no_word_changes() =>
        Laid(
            """
            ---
            board:   SP-0001
            title :  "Tide-gauge logger"
            arrived: {date: 2026-01-12,from:  east tide well ,  note: 'wet'}
            bench:
            - date: 2026-02-14
              by:  RK
              readings:
                  -   {part: C1,capacitance: 1.40 µF , esr: 62 mΩ}
                  -
                    { part: C2 , polarity: [ schematic,measured in circuit ] , }
            waiting: [ ]
            ---
            """,
            """
            ---
            board: SP-0001
            title: "Tide-gauge logger"
            arrived: { date: 2026-01-12, from: east tide well, note: 'wet' }
            bench:
              - date: 2026-02-14
                by: RK
                readings:
                  - { part: C1, capacitance: 1.40 µF, esr: 62 mΩ }
                  - { part: C2, polarity: [schematic, measured in circuit] }
            waiting: []
            ---
            """
        );

    [Fact]
    public void Remarks_stay_where_they_are_and_move_with_their_block() =>
        Laid(
            """
            # yaml-language-server: $schema=../schema/stock.schema.json

            # the drawer
            lots:       # in the order they came
                # capacitors
                - {lot: L-001, kind: tantalum}   # boxed
                # another day's

                - { lot: L-002, # marked
                    kind: cell,
                # for the logger
                    cells: 3 # sealed
                  }
                # the last of the lots
            # and nothing more
            orders:
            # none yet
              - order: PO-01 # posted
                  # far in
                placed: 2026-01-19
            # end

            """,
            """
            # yaml-language-server: $schema=../schema/stock.schema.json

            # the drawer
            lots:       # in the order they came
              # capacitors
              - { lot: L-001, kind: tantalum }   # boxed
              # another day's

              - { lot: L-002, # marked
                  kind: cell,
                  # for the logger
                  cells: 3 # sealed
                  }
              # the last of the lots
            # and nothing more
            orders:
              # none yet
              - order: PO-01 # posted
                # far in
                placed: 2026-01-19
            # end
            """,
            FileForm.Yaml
        );

    [Fact]
    public void What_fits_into_140_characters_is_one_line() =>
        Laid(
            """
            lots:
              - { lot: L-001,
                  kind: tantalum,
                  note: "ten of them"
                }
            """,
            """
            lots:
              - { lot: L-001, kind: tantalum, note: "ten of them" }
            """,
            FileForm.Yaml
        );

    [Fact]
    public void What_does_not_fit_keeps_the_folds_of_the_person_and_gets_one_before_the_entry_that_goes_beyond() =>
        Laid(
            """
            lots:
              - { lot: L-001, kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: ±20 %, rated_voltage: 35 V, temperature: 105 °C,
                    lead_pitch: 7.5 mm,
                 maker: Ostrel, series: RK, date_code: "2541", received: 2026-01-28, quantity: 6, order: PO-01, shelf_life: 36 months, polarity: polarised, form: radial }
            """,
            """
            lots:
              - { lot: L-001, kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: ±20 %, rated_voltage: 35 V, temperature: 105 °C,
                  lead_pitch: 7.5 mm,
                  maker: Ostrel, series: RK, date_code: "2541", received: 2026-01-28, quantity: 6, order: PO-01, shelf_life: 36 months,
                  polarity: polarised, form: radial }
            """,
            FileForm.Yaml
        );

    [Fact]
    public void A_line_of_exactly_140_characters_stays_and_one_more_is_folded()
    {
        var note = new string('x', 140 - "duty: { temperature: 38 °C, note:  }".Length);
        Assert.Equal(LayoutState.Tidy, Lay($"duty: {{ temperature: 38 °C, note: {note} }}\n", FileForm.Yaml).State);
        Assert.Equal(
            $"duty: {{ temperature: 38 °C,\n  note: {note}x }}\n",
            Lay($"duty: {{ temperature: 38 °C, note: {note}x }}\n", FileForm.Yaml).Text
        );
    }

    [Fact]
    public void Values_over_several_lines_move_and_say_the_same() =>
        Laid(
            """
            note: |2
                two
              lines
            keeper: >-   # folded
                all
                  on

                one
            place: "the old
                 rocket   shed,\
              next to the  mast"
            parts:
                - ref: C1
                  note:
                     plain text
                     over two lines
                - ref: C2
                  note: |
                     kept
                        as it is
                - |
                 alone
            """,
            """
            note: |2
                two
              lines
            keeper: >-   # folded
              all
                on

              one
            place: "the old
              rocket   shed,\
              next to the  mast"
            parts:
              - ref: C1
                note: plain text
                  over two lines
              - ref: C2
                note: |
                  kept
                     as it is
              - |
                alone
            """,
            FileForm.Yaml
        );

    [Theory]
    [InlineData("a: |+\n   x\n\n\nb: 1\n", "a: |+\n  x\n\n\nb: 1\n")]
    [InlineData("a: |\n   x\n \n     y\n", "a: |\n  x\n\n    y\n")]
    [InlineData("a: |\n   x", "a: |\n  x")]
    [InlineData("a:   |\n# nothing in it\nb: 1\n", "a: |\n# nothing in it\nb: 1\n")]
    [InlineData("a: |+\n  x\n \t\nb:  1\n", "a: |+\n  x\nb: 1\n")]
    [InlineData("a: >2+\n \t\n\nb: 1\n", "a: >2+\nb: 1\n")]
    [InlineData("a: |+\n  x\n\n \t\n# of b\n\nb: 1\n", "a: |+\n  x\n\n# of b\n\nb: 1\n")]
    [InlineData("a: |\n  x\n \t\nb: 1\n", "a: |\n  x\n\nb: 1\n")]
    [InlineData("a: 'it''s\n      so'\n", "a: 'it''s\n  so'\n")]
    [InlineData("a: \"x\\ \n      y\"\n", "a: \"x\\ \n  y\"\n")]
    [InlineData("- a\n", null)]
    [InlineData("a: {b: , c}\n", "a: { b: , c }\n")]
    [InlineData("a: [b:   ]\n", "a: [b: ]\n")]
    [InlineData("a: {b:   }\n", "a: { b: }\n")]
    [InlineData("a: [b:  # of it\n]\n", "a: [b:  # of it\n  ]\n")]
    [InlineData("a: [b, c:\n  # of it\n]\n", "a: [b, c:\n  # of it\n  ]\n")]
    [InlineData("a: [b: 1,[c,  d],{}]\n", "a: [b: 1, [c, d], {}]\n")]
    [InlineData("a: {\"b\":1, 'c' : 2}\n", "a: { \"b\": 1, 'c': 2 }\n")]
    [InlineData("a:\n-  - b\n   - c\n-\n  - d\n", "a:\n  - - b\n    - c\n  - - d\n")]
    [InlineData("a:\t1\t# tab\n", "a: 1  # tab\n")]
    [InlineData("{a: 1,\n  b: 2}\n", "{ a: 1, b: 2 }\n")]
    [InlineData("{a:: 1}\n", "{ a:: 1 }\n")]
    [InlineData("# first\n---\na:  1\n", "# first\n---\na: 1\n")]
    [InlineData("  a: 1\n  b:\n   c: ~\n", "a: 1\nb:\n  c: ~\n")]
    [InlineData("\n\n\na: 1\n\n\n\nb: 2\n\n\n", "a: 1\n\nb: 2\n")]
    [InlineData("a: 1   \nb: 2", "a: 1\nb: 2\n")]
    [InlineData("a:\n  # none\n\n\n  # yet\nb: # of it\n   2\n", "a:\n# none\n\n# yet\nb: # of it\n  2\n")]
    public void Odd_ways_of_writing(string before, string? after)
    {
        var outcome = Lay(before, FileForm.Yaml);
        Assert.Equal(after is null ? LayoutState.NotRead : LayoutState.Changed, outcome.State);
        Assert.Equal(after ?? before, outcome.Text);
    }

    [Fact]
    public void The_body_stays_byte_for_byte()
    {
        const string body = "\n## Story  \nhard  \nbreak\t\n```\n---\n   \n\n\n\nend without a line end";
        Assert.Equal("---\nboard: SP-0001\n---\n" + body, Lay("---  \nboard:  SP-0001  \n\n---\t\n" + body).Text);
    }

    [Theory]
    [InlineData(
        "---\r\nboard:  SP-0001\r\nnote: |\r\n   two\r\n   lines\r\n---\r\nbody\r\n",
        "---\r\nboard: SP-0001\r\nnote: |\r\n  two\r\n  lines\r\n---\r\nbody\r\n"
    )]
    [InlineData("---\r\nboard: SP-0001\n---\nbody\n", "---\nboard: SP-0001\n---\nbody\n")]
    [InlineData("---\nboard: SP-0001\r\n---\r\nbody\r\n", "---\r\nboard: SP-0001\r\n---\r\nbody\r\n")]
    [InlineData("---\rboard: SP-0001\r---\r", "---\nboard: SP-0001\n---\n")]
    public void Lines_end_with_LF_but_where_the_whole_file_has_CRLF(string before, string after) => Assert.Equal(after, Lay(before).Text);

    [Fact]
    public void A_file_that_is_not_read_without_errors_is_left_alone() =>
        Assert.Equal(
            new LayoutOutcome(LayoutState.NotRead, "---\nboard:  SP-0001\nboard: SP-0002\n---\n", null),
            Lay("---\nboard:  SP-0001\nboard: SP-0002\n---\n")
        );

    [Fact]
    public void A_way_of_writing_that_records_do_not_use_is_refused_with_its_line()
    {
        var outcome = Lay("---\nboard: SP-0001\n? title\n:   Logger\n---\n");
        Assert.Equal(LayoutState.NotLaidOut, outcome.State);
        Assert.Equal("line 3 holds a way of writing YAML that is not laid out", outcome.Refusal!.Message);
    }

    [Theory]
    [InlineData("{'a\n\n#b' c}\n")]
    [InlineData("a: {'b\r\r#c' d}\n")]
    public void A_value_without_a_colon_before_it_is_refused(string text) =>
        Assert.Equal(LayoutState.NotLaidOut, Lay(text, FileForm.Yaml).State);

    [Theory]
    [InlineData("{:}\n")]
    [InlineData("a: { b: 1,:}\n")]
    [InlineData("a: {::}\n")]
    [InlineData("{?}\n")]
    [InlineData("a: { b: 1,?}\n")]
    [InlineData("a: {b: ?}\n")]
    [InlineData("a: [b,?]\n")]
    public void A_sign_of_the_language_that_is_a_word_only_while_no_blank_follows_is_refused(string text) =>
        Assert.Equal(LayoutState.NotLaidOut, Lay(text, FileForm.Yaml).State);

    [Theory]
    [InlineData("")]
    [InlineData("# nothing\n\n\n")]
    public void Where_nothing_is_written_nothing_is_laid_out(string text) => Assert.Equal(LayoutState.Tidy, Lay(text, FileForm.Yaml).State);

    [Fact]
    public void A_change_that_reads_as_something_else_is_never_made()
    {
        var outcome = RecordLayout.Compute("collection.yaml", "a:  1\n", FileForm.Yaml, new ForgetfulReader());
        Assert.Equal(LayoutState.Doubted, outcome.State);
        Assert.Equal("a:  1\n", outcome.Text);
    }

    private static LayoutOutcome Lay(string text, FileForm form = FileForm.Markdown) =>
        RecordLayout.Compute("boards/SP-0001.md", text, form, new YamlNodeReader());

    private static void Laid(string before, string after, FileForm form = FileForm.Markdown)
    {
        var outcome = Lay(before + "\n", form);
        Assert.Equal(after + "\n", outcome.Text);
        Assert.Equal(LayoutState.Changed, outcome.State);
    }

    /// <summary>Reads a different value each time, as if the layout had changed it.</summary>
    private sealed class ForgetfulReader : INodeReader
    {
        private readonly YamlNodeReader reader = new();
        private int count;

        public NodeReading Read(string path, ReadOnlyMemory<byte> bytes, FileForm form, ReadingLimits limits)
        {
            var reading = reader.Read(path, bytes, form, limits);
            var entry = reading.Root!.Entries[0];
            return count++ == 0
                ? reading
                : reading with
                {
                    Root = reading.Root with { Entries = [entry with { Value = (ScalarNode)entry.Value with { Text = "2" } }] },
                };
        }
    }
}
