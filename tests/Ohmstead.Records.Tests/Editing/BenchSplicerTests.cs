using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>Entries of many days brought to their visits at once.</summary>
public sealed class BenchSplicerTests
{
    private const string Record = """
        ---
        board: SP-0001
        title: Tide-gauge logger   # the one from the east well
        bench:
          # the first look
          - date: 2019-02-14
            by: RK
            readings:
              - { part: C1, esr: 62 mΩ, verdict: in }   # warm
            # nothing was done that day
            proof:
              - { point: +5V, voltage: 5.02 V }
          - date: 2021-06-01
            by: TS
            work:
              - { part: C2, did: removed }
        # waits come last
        waiting: []
        ---
        ## Story
        Untouched: it rained.
        """;

    [Fact]
    public void A_day_between_two_visits_becomes_a_visit_between_them_and_nothing_else_changes()
    {
        var put = Put(Record, Own("2020-01-05", ("readings", "{ part: C1, esr: 80 mΩ }"), ("work", "{ part: C1, did: cleaned }")));
        const string visit = """
              - date: 2020-01-05
                by: RK
                readings:
                  - { part: C1, esr: 80 mΩ }
                work:
                  - { part: C1, did: cleaned }

            """;
        Assert.Equal(
            Record.Replace("  - date: 2021-06-01", visit.TrimEnd('\n') + "\n  - date: 2021-06-01", StringComparison.Ordinal),
            put.Text
        );
        Assert.Equal([16, 18], put.Spots.Select(spot => spot.Line));
    }

    [Fact]
    public void A_visit_that_came_first_stands_before_all_of_its_day()
    {
        var put = Put(Record, Own("2021-06-01", ("work", "{ part: C1, did: cleaned }")) with { IsFirstOfDay = true });
        Assert.Equal(
            Record.Replace(
                "  - date: 2021-06-01\n",
                "  - date: 2021-06-01\n    by: RK\n    work:\n      - { part: C1, did: cleaned }\n  - date: 2021-06-01\n",
                StringComparison.Ordinal
            ),
            put.Text
        );
    }

    [Fact]
    public void A_day_before_the_first_visit_and_one_after_the_last_stand_at_the_ends()
    {
        var put = Put(
            Record,
            Own("2022-03-01", ("proof", "{ point: +5V, voltage: 5.00 V }")),
            Own("2018-12-24", ("readings", "{ part: C9, esr: 1 Ω }"))
        );
        Assert.Contains(
            "bench:\n  - date: 2018-12-24\n    by: RK\n    readings:\n      - { part: C9, esr: 1 Ω }\n  # the first look\n",
            put.Text,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "      - { part: C2, did: removed }\n  - date: 2022-03-01\n    by: RK\n    proof:\n      - { point: +5V, voltage: "
                + "5.00 V }\n# waits",
            put.Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Entries_join_the_visit_of_their_day_each_in_its_list()
    {
        var put = Put(
            Record,
            new VisitEntries(
                "2019-02-14",
                0,
                [],
                [
                    ("proof", "{ point: +9V, voltage: 9.1 V }"),
                    ("readings", "{ part: C3, esr: 1 Ω }"),
                    ("work", "{ part: C3, did: cleaned }"),
                ]
            ),
            Own("2019-02-14", ("work", "{ part: C7, did: cleaned }"))
        );
        Assert.Equal(
            Record
                .Replace(
                    "verdict: in }   # warm\n",
                    "verdict: in }   # warm\n      - { part: C3, esr: 1 Ω }\n    work:\n      - { part: C3, did: cleaned }\n",
                    StringComparison.Ordinal
                )
                .Replace(
                    "voltage: 5.02 V }\n",
                    "voltage: 5.02 V }\n      - { point: +9V, voltage: 9.1 V }\n  - date: 2019-02-14\n    by: RK\n    work:\n  "
                        + "    - { part: C7, did: cleaned }\n",
                    StringComparison.Ordinal
                ),
            put.Text
        );
    }

    [Fact]
    public void A_record_without_visits_gets_its_list_of_them_where_it_belongs()
    {
        const string bare = "---\nboard: SP-0001\ntitle: Logger\nformat: 1\n---\n";
        Assert.Equal(
            bare.Replace(
                "format:",
                "bench:\n  - date: 2020-01-05\n    by: RK\n    readings:\n      - { part: C1, esr: 80 mΩ }\nformat:",
                StringComparison.Ordinal
            ),
            Put(bare, Own("2020-01-05", ("readings", "{ part: C1, esr: 80 mΩ }"))).Text
        );
    }

    [Fact]
    public void An_entry_that_stands_there_is_known_word_for_word_and_its_verdict_does_not_count()
    {
        var bench = new BenchSplicer(Open(Record));
        Assert.True(bench.Holds(0, "readings", "{ part: C1, esr: 62 mΩ }"));
        Assert.False(bench.Holds(0, "readings", "{ part: C1, esr: 63 mΩ }"));
        Assert.False(bench.Holds(1, "readings", "{ part: C1, esr: 62 mΩ }"));
    }

    [Theory]
    [InlineData("bench: [{ date: 2019-02-14, by: RK }]\n")]
    [InlineData("bench:\n  - { date: 2019-02-14, by: RK }\n")]
    public void Visits_that_stand_in_brackets_are_left_and_the_person_is_told_what_to_write(string bench)
    {
        var put = Put(
            $"---\nboard: SP-0001\ntitle: Logger\n{bench}---\n",
            new VisitEntries("2019-02-14", 0, [], [("readings", "{ part: C1, esr: 80 mΩ }")])
        );
        Assert.Null(put.Text);
        Assert.Equal("write it by hand: 2019-02-14, readings: { part: C1, esr: 80 mΩ }", put.Refusal!.NextStep);
    }

    // What is put in is read again: an entry that carries another along, or changes what stands there, comes to nothing.
    [Theory]
    [InlineData("{ part: C1, esr: 80 mΩ }\n      - { part: C2, esr: 1 Ω }")]
    [InlineData("{ part: C1, esr: 80 mΩ }\n    note: a word that nobody wrote")]
    [InlineData("{ part: C1, esr: 80 mΩ }\n  - date: 2019-03-01")]
    [InlineData("{ part: C1, esr: 80 mΩ")]
    public void An_entry_that_is_more_than_one_entry_changes_nothing(string item)
    {
        Assert.Null(Put(Record, new VisitEntries("2019-02-14", 0, [], [("readings", item)])).Text);
        Assert.Null(Put(Record, Own("2020-01-05", ("readings", item))).Text);
    }

    private static VisitEntries Own(string date, params (string, string)[] entries) =>
        new(date, null, [("date", date), ("by", "RK")], entries);

    private static SplicedBench Put(string text, params VisitEntries[] visits) => new BenchSplicer(Open(text)).Put(visits);

    private static RecordEditor Open(string text) =>
        RecordEditor.Open("boards/SP-0001.md", text, FileForm.Markdown, new YamlNodeReader(), out _)!;
}
