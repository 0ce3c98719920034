using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>A visit tells its day in the order found, readings, work, decided, proof. What comes after something of its place that stands
/// further down begins a second visit.</summary>
public sealed class DayOrderTests
{
    private const string Evening = """
        ---
        board: SP-0001
        title: Tide-gauge logger
        bench:
          - date: 2026-03-14
            readings:
              - { part: C12, circuit: out, capacitance: 312 µF }
              - { part: C5, state: as left, capacitance: 1 µF }
            work:
              - { part: C12, did: replaced, lot: L-031, polarity: schematic, clears: J3 }
            decided:
              - { part: C7, decision: keep, because: it is good }
            proof:
              - { point: +15V, voltage: 15.06 V }
        ---
        """;

    [Theory]
    [InlineData("found", "{ at: J9, what: dust, severity: note }", true)]
    [InlineData("found", "{ at: C12, what: sleeve shrunk, severity: minor }", false)]
    [InlineData("found", "{ at: J3, what: a lifted pad, severity: major }", false)]
    [InlineData("found", "{ at: C7, what: top bulged, severity: major }", false)]
    [InlineData("readings", "{ part: C8, circuit: out, capacitance: 99 nF }", true)]
    [InlineData("readings", "{ part: C12, circuit: out, capacitance: 470 µF }", false)]
    [InlineData("readings", "{ part: C12, state: as left, circuit: in, esr: 0.2 Ω }", true)]
    [InlineData("readings", "{ part: C7, circuit: out, capacitance: 10 µF }", false)]
    [InlineData("readings", "{ part: C7, state: as left, capacitance: 10 µF }", false)]
    [InlineData("readings", "{ point: +15V, voltage: 14.1 V }", false)]
    [InlineData("readings", "{ point: -15V, voltage: -14.9 V }", true)]
    [InlineData("work", "{ at: J4, did: re-soldered }", false)]
    [InlineData("decided", "{ part: C12, decision: watch, because: a new series }", true)]
    [InlineData("proof", "{ point: soak, hours: 4, result: pass }", true)]
    public void An_entry_joins_the_visit_only_where_it_keeps_its_place_in_time(string list, string entry, bool joins) =>
        Assert.Equal(joins, Open(Evening).MayJoinLastVisit(list, entry));

    [Theory]
    [InlineData("{ at: J4, did: re-soldered }", true)]
    [InlineData("{ part: C7, did: removed }", false)]
    [InlineData("{ part: C5, did: re-soldered }", false)]
    public void Before_the_proof_work_joins_unless_its_part_was_read_as_left_or_decided_about(string entry, bool joins) =>
        Assert.Equal(
            joins,
            Open(Evening[..Evening.IndexOf("    proof:", StringComparison.Ordinal)] + "---\n").MayJoinLastVisit("work", entry)
        );

    [Fact]
    public void Where_there_is_no_visit_nothing_joins() =>
        Assert.False(Open("---\nboard: SP-0001\ntitle: Tide-gauge logger\n---\n").MayJoinLastVisit("work", "{ at: J4, did: re-soldered }"));

    private static RecordEditor Open(string text) =>
        RecordEditor.Open("boards/SP-0001.md", text, FileForm.Markdown, new YamlNodeReader(), out _)!;
}
